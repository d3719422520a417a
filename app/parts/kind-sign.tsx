import { kindOf, type Mark, signalWord } from "#lib/mark/index.ts";

/**
 * The sign of a mark's kind: a circled number for a part (ISO 6433), a dimension line for a measurement, the
 * signal word for a caution, the printed word for the rest.
 */
export function KindSign({ mark, balloon }: { mark: Pick<Mark, "kind" | "fields">; balloon?: number }) {
  const { word } = kindOf(mark.kind);
  if (mark.kind === "part") {
    return (
      <span className="sign light">
        <span className="item" aria-hidden={balloon === undefined}>
          {balloon ?? ""}
        </span>
        {word}
      </span>
    );
  }
  if (mark.kind === "measurement") {
    return (
      <span className="sign light">
        <span className="dimension" aria-hidden="true" />
        {word}
      </span>
    );
  }
  const signal = mark.kind === "caution" ? signalWord(mark.fields) : null;
  if (signal) return <span className={`signal-word ${signal}`}>{signal}</span>;
  return <span className={mark.kind === "" ? "sign light soft" : "sign"}>{word}</span>;
}
