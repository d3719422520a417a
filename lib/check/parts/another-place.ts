import { finding } from "#lib/finding/index.ts";
import { oneSaid, seatingsOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";
import { assembly, atMoment, off, on } from "./words.ts";

/** A part that went on somewhere else than it came off. */
export const anotherPlace: Rule = {
  id: "another-place",
  title: "In another place",
  explanation:
    "The marks say where a part sat when it came off, and another place when it went on. Parts that look alike are often not.",
  source: "the restorer's own words, compared",
  check: ({ ledger }) => {
    const moved = seatingsOf(ledger).flatMap((seating) => {
      const [was, is] = [oneSaid(seating.off, "place"), oneSaid(seating.on, "place")];
      return was === null || is === null || was === is || seating.foundWrong ? [] : [{ ...seating, was, is }];
    });
    const swapped = (one: { was: string; is: string }) =>
      moved.some((other) => other.was === one.is && other.is === one.was);
    return moved
      .filter((one) => !swapped(one))
      .map(({ item, name, stamped, off, on, was, is }) => {
        const [from, to] = [off.find((one) => one.says.place), on.find((one) => one.says.place)];
        return finding({
          rule: "another-place",
          severity: "doubtful",
          place: { mark: to?.mark, field: "place" },
          evidence: `${item}\n${stamped}\n${was}\n${is}`,
          found: `${name} sat “${from?.says.place}”${atMoment(from)} and went on “${to?.says.place}”${atMoment(to)}.`,
          expected: "The place it came from, or a word that it was wrong as found.",
          todo: "Look at both moments, and correct the part or the words.",
          source: anotherPlace.source,
        });
      });
  },
  examples: [
    {
      says: "another hole",
      sketch: {
        marks: [off(1, "Bolt", { place: "hole 1" }), assembly(5), on(6, "Bolt", { place: "hole 3" })],
      },
      finds: 1,
    },
    {
      says: "the same hole",
      sketch: {
        marks: [off(1, "Bolt", { place: "hole 1" }), assembly(5), on(6, "Bolt", { place: "hole 1" })],
      },
      finds: 0,
    },
    {
      says: "four of a kind in four holes may change about",
      sketch: {
        marks: [
          off(1, "Bolt", { place: "hole 1" }),
          off(2, "Bolt", { place: "hole 2" }),
          assembly(5),
          on(6, "Bolt", { place: "hole 2" }),
          on(7, "Bolt", { place: "hole 1" }),
        ],
      },
      finds: 0,
    },
  ],
};
