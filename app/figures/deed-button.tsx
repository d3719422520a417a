/** A plain button, with what it speaks of for who does not see the row it stands in. */
export function DeedButton({ words, of, onClick }: { words: string; of: string; onClick: () => void }) {
  return (
    <button type="button" className="plain" aria-label={`${words}: ${of}`} onClick={onClick}>
      {words}
    </button>
  );
}
