import { finding } from "#lib/finding/index.ts";
import { oneSaid, type Seating, seatingsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** Two parts that went on each where the other was. */
export const swapped: Rule = {
  id: "swapped",
  title: "Two parts swapped",
  explanation:
    "Bolts of two lengths, followers graded to their valves, left and right brackets: look-alikes go back each into the other's place, fit, and spoil something. The marks say where each came from and where each went.",
  source: "the restorer's own words, compared",
  check: ({ ledger }) => {
    const moved = seatingsOf(ledger)
      .flatMap(seatOf)
      .filter(({ was, is }) => was !== is);
    return moved.flatMap((one, index) =>
      moved
        .slice(index + 1)
        .filter((other) => one.is === other.was && other.is === one.was)
        .map((other) =>
          finding({
            rule: "swapped",
            severity: "wrong",
            place: { mark: one.on?.mark, field: "place" },
            evidence: [one, other].map(({ key, was, is }) => `${key}\n${was}\n${is}`).join("\n"),
            found: `${one.words}${atMoment(one.on)} went where ${other.words} was, and the other way about.${alike(one, other)}`,
            expected: `${one.words}: ${one.wasTyped}. ${other.words}: ${other.wasTyped}.`,
            todo: "Look at both parts before anything covers them, and change them over; or correct the mark that is wrong.",
            source: swapped.source,
          }),
        ),
    );
  },
  examples: [
    {
      says: "two bolts",
      sketch: {
        marks: [
          off(1, "Long bolt", { place: "hole 1", lookAlike: "60 mm; the short one is 50 mm" }),
          off(2, "Short bolt", { place: "hole 2" }),
          assembly(5),
          on(6, "Long bolt", { place: "hole 2" }),
          on(7, "Short bolt", { place: "hole 1" }),
        ],
      },
      finds: 1,
    },
    {
      says: "two followers of one name, by their stamps",
      sketch: {
        marks: [
          off(1, "Follower", { stamped: "1", place: "inlet" }),
          off(2, "Follower", { stamped: "2", place: "exhaust" }),
          assembly(5),
          on(6, "Follower", { stamped: "2", place: "inlet" }),
          on(7, "Follower", { stamped: "1", place: "exhaust" }),
        ],
      },
      finds: 1,
    },
    {
      says: "each in its own",
      sketch: {
        marks: [
          off(1, "Long bolt", { place: "hole 1" }),
          off(2, "Short bolt", { place: "hole 2" }),
          assembly(5),
          on(6, "Short bolt", { place: "Hole 2" }),
          on(7, "Long bolt", { place: "hole 1" }),
        ],
      },
      finds: 0,
    },
  ],
};

function seatOf(seating: Seating) {
  const [was, is] = [oneSaid(seating.off, "place"), oneSaid(seating.on, "place")];
  if (was === null || is === null || seating.foundWrong) return [];
  return [
    {
      key: `${seating.item}\n${seating.stamped}`,
      words: seating.stamped ? `${seating.name} “${seating.stamped}”` : seating.name,
      was,
      wasTyped: seating.off.find((one) => one.says.place)?.says.place ?? was,
      is,
      on: seating.on.find((one) => one.says.place),
      difference: [...seating.off, ...seating.on].find((one) => one.says.lookAlike)?.says.lookAlike ?? "",
    },
  ];
}
type Seat = ReturnType<typeof seatOf>[number];

function alike(one: Seat, other: Seat): string {
  const words = [one.difference, other.difference].filter(Boolean).join("; ");
  return words === "" ? "" : ` How they differ: ${words}.`;
}
