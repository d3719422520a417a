import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { check } from "#lib/check/index.ts";
import { partEvents, type Stage, stages } from "#lib/mark/index.ts";
import { type Covering, compile, knownOf, ledgerOf, legalOrder, offOf, onOf } from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "../../sample.ts";

/** A thing done to some pieces of one part, whatever pieces there are. */
interface Deed {
  item: string;
  event: string;
  count: number | null;
  stage: Stage;
  source: string;
  insteadOf: string;
}

const item = fc.constantFrom("Nut", "Washer", "Seal");
const anyDeed: fc.Arbitrary<Deed> = fc.record({
  item,
  event: fc.constantFrom(...partEvents.map(({ value }) => value)),
  count: fc.option(fc.integer({ min: 1, max: 5 }), { freq: 4 }),
  stage: fc.constantFrom(...stages),
  source: fc.constantFrom("", "", "the supplier"),
  insteadOf: fc.constantFrom("", "", "Washer"),
});

function documentOf(deeds: readonly Deed[]) {
  const marks = deeds.flatMap(({ stage, count, ...fields }, index) => [
    sampleMark(index * 2 + 1, "action", { words: "Do it", stage }),
    sampleMark(index * 2 + 2, "part", { ...fields, ...(count === null ? {} : { count: String(count) }) }),
  ]);
  return sampleDocument({ marks, items: [] });
}

describe("every piece is somewhere", () => {
  test("whatever is done: none is lost, none appears but as found, obtained, made or unexplained", () => {
    fc.assert(
      fc.property(fc.array(anyDeed, { maxLength: 30 }), (deeds) => {
        const document = documentOf(deeds);
        const { accounts } = ledgerOf(compile(document), document);
        for (const { lines, now, gained } of accounts) {
          let known = 0;
          for (const { after, gained: more, act, moved } of lines) {
            expect(Math.min(...Object.values(after))).toBeGreaterThanOrEqual(0);
            const added = more.found + more.obtained + more.made + more.unexplained;
            expect(knownOf(after)).toBe(known + added);
            if (act === "obtain" || act === "make") expect(added).toBe(moved);
            known = knownOf(after);
          }
          expect(known).toBe(knownOf(now));
          expect(known).toBe(gained.found + gained.obtained + gained.made + gained.unexplained);
        }
      }),
      { numRuns: 500 },
    );
  });

  /** One piece of one part, as somebody would follow it with the eye. */
  type Place = "on" | "trial" | "off" | "left out" | "scrapped";
  const wish = fc.record({
    item,
    does: fc.constantFrom(
      "removed",
      "obtained",
      "made",
      "fitted",
      "trial",
      "scrapped",
      "left out",
      "cleaned",
    ),
    count: fc.integer({ min: 1, max: 4 }),
  });

  test("followed one by one with the eye, they lie where the ledger says, at every moment", () => {
    fc.assert(
      fc.property(fc.array(wish, { minLength: 1, maxLength: 40 }), (wishes) => {
        const pieces = new Map<string, Place[]>();
        const seen: { item: string; places: Place[] }[] = [];
        const deeds: Deed[] = [];
        for (const { item, does, count } of wishes) {
          const own = pieces.get(item) ?? [];
          pieces.set(item, own);
          const lying = (place: Place) => own.flatMap((one, index) => (one === place ? [index] : []));
          const put = (place: Place, indices: number[]) => {
            for (const index of indices) own[index] = place;
          };
          if (does === "obtained" || does === "made") own.push(...Array<Place>(count).fill("off"));
          else if (does === "removed") {
            const there = () => [...lying("trial"), ...lying("on")];
            // What is on and not known yet came with the machine.
            while (there().length < count) own.push("on");
            put("off", there().slice(0, count));
          } else if (does !== "cleaned") {
            // What is on for a trial is what is then fitted for good.
            const there = does === "fitted" ? [...lying("trial"), ...lying("off")] : lying("off");
            if (there.length < count) continue;
            put(does === "fitted" ? "on" : does, there.slice(0, count));
          }
          const event = does === "trial" ? "fitted" : does;
          deeds.push({
            item,
            event,
            count,
            stage: does === "trial" ? "trial fit" : "assemble",
            source: "",
            insteadOf: "",
          });
          seen.push({ item, places: [...own] });
        }
        const document = documentOf(deeds);
        const { byItem } = ledgerOf(compile(document), document);
        const next = new Map<string, number>();
        for (const { item, places } of seen) {
          const index = next.get(item) ?? 0;
          next.set(item, index + 1);
          const after = byItem.get(`name:${item.toLowerCase()}`)?.lines[index]?.after;
          if (!after) throw new Error("the ledger has no line for it");
          const many = (place: Place) => places.filter((one) => one === place).length;
          expect([onOf(after), offOf(after), after.leftOut, after.scrapped]).toEqual([
            many("on") + many("trial"),
            many("off"),
            many("left out"),
            many("scrapped"),
          ]);
          expect(knownOf(after)).toBe(places.length);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe("the proposed order", () => {
  const covering = fc.record({ over: fc.nat(9), under: fc.nat(9) });
  const toCovering = ({ over, under }: { over: number; under: number }): Covering => ({
    over: `part ${over}`,
    overName: `Part ${over}`,
    under: `part ${under}`,
    underName: `Part ${under}`,
    mark: `mark ${over} ${under}`,
  });
  const items = Array.from({ length: 10 }, (_, index) => `part ${index}`);

  test("satisfies every covering, and leaves nothing out that has a place in an order", () => {
    fc.assert(
      fc.property(fc.array(covering, { maxLength: 20 }), (given) => {
        const coverings = given.map(toCovering);
        const { legal, circles } = legalOrder(items, coverings);
        const place = new Map(legal.map((item, index) => [item, index]));
        for (const { over, under } of coverings) {
          if (place.has(over)) expect(place.get(under)).toBeLessThan(place.get(over) as number);
        }
        // What is left out lies on a circle, or over something that does.
        const inCircles = new Set(circles.flat().map((one) => one.over));
        for (const item of items.filter((one) => !place.has(one))) {
          expect(
            inCircles.has(item) || coverings.some((one) => one.over === item && !place.has(one.under)),
          ).toBe(true);
        }
        expect(circles.length > 0).toBe(legal.length < items.length);
        for (const circle of circles) {
          circle.forEach((one, index) => {
            expect(one.under).toBe(circle[(index + 1) % circle.length]?.over);
          });
        }
      }),
      { numRuns: 1000 },
    );
  });

  test("is the given one where that is legal already", () => {
    fc.assert(
      fc.property(fc.array(covering, { maxLength: 20 }), (given) => {
        const upwards = given.filter(({ over, under }) => under < over).map(toCovering);
        expect(legalOrder(items, upwards)).toEqual({ legal: items, circles: [] });
      }),
    );
  });
});

test("closing a deferred item and taking that back restores the findings exactly", () => {
  const deferred = fc.record({ words: fc.string({ maxLength: 12 }), waitsFor: fc.string({ maxLength: 8 }) });
  fc.assert(
    fc.property(
      fc.array(deferred, { minLength: 1, maxLength: 6 }),
      fc.array(anyDeed, { maxLength: 8 }),
      fc.nat(),
      (left, deeds, n) => {
        const document = documentOf(deeds);
        left.forEach((fields, index) => {
          document.marks.push(sampleMark(200 + index, "deferred", fields));
        });
        const found = (marks: typeof document.marks) => {
          const now = { ...document, marks };
          return check(compile(now), now).findings;
        };
        const before = found(document.marks);
        const target = `deferred-${200 + (n % left.length)}`;
        const closer = sampleMark(299, "part", { item: "Nut", event: "inspected", closes: [target] });
        const closed = found([...document.marks, closer]);
        expect(closed.some((one) => one.rule === "open-deferred" && one.place.mark === target)).toBe(false);
        expect(before.some((one) => one.rule === "open-deferred" && one.place.mark === target)).toBe(true);
        expect(found([...document.marks, { ...closer, gone: "2026-05-03T10:00:00.000Z" }])).toEqual(before);
      },
    ),
    { numRuns: 100 },
  );
});
