import Link from "next/link";
import type { OpenItem } from "#lib/store/index.ts";

/** What was left provisional and is so still: it stands before everything else. */
export function OpenItems({ items, titles }: { items: OpenItem[]; titles: ReadonlyMap<string, string> }) {
  if (items.length === 0) return null;
  return (
    <section className="block" aria-label="Left provisional">
      <h2>Left provisional</h2>
      <ul className="lines">
        {items.slice(0, 12).map((one) => (
          <li key={one.markId}>
            <span className="grow">
              <Link href={`/builds/${one.buildId}/sittings/${one.sittingId}?mark=${one.markId}`}>
                {one.words || "no words yet"}
              </Link>
              {one.waitsFor && <span className="soft"> until {one.waitsFor}</span>}
            </span>
            <span className="soft small">{titles.get(one.buildId)}</span>
          </li>
        ))}
        {items.length > 12 && (
          <li className="soft">and {items.length - 12} more, on the sheets of their builds</li>
        )}
      </ul>
    </section>
  );
}
