import { type BuildDocument, newItem } from "#lib/build/index.ts";
import type { KindName } from "#lib/mark/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";

const turn: (KindName | "")[] = [
  "action",
  "part",
  "measurement",
  "tool",
  "caution",
  "part",
  "consumable",
  "gotcha",
  "",
];

/** A build with that many marks on one recording, a few seconds apart, of all kinds in turn. */
export function documentWith(count: number, seconds: number): BuildDocument {
  const marks = Array.from({ length: count }, (_, index) => {
    const kind = turn[index % turn.length] as KindName | "";
    return sampleMark(((index + 0.5) / count) * seconds, kind, {
      words: `Words of mark ${index}, as long as a restorer writes them`,
      item: `Part ${index % 40}`,
      itemId: `item-${index % 40}`,
      event: index % 2 ? "removed" : "fitted",
      count: "2",
      asFound: { typed: "0.4965 in" },
      instrument: "micrometer",
      avoid: "Stand aside",
      harms: "person",
      severity: "minor",
    });
  });
  const items = Array.from({ length: 40 }, (_, index) =>
    newItem({ id: `item-${index}`, machineId: "machine-1", name: `Part ${index}` }),
  );
  return sampleDocument({ marks, items });
}
