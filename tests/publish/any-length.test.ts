import fc from "fast-check";
import { expect, test } from "vitest";
import { toPdf } from "#lib/publish/index.ts";
import { readPdf, unspaced } from "./read-pdf.ts";
import { caution, checked, measurement, options, part, picture, procedure, step, typed } from "./sample.ts";

/** How many words a field may have: none, a few, and more than a page holds. */
const lengths = [0, 3, 3, 8, 20, 60, 150, 300, 900];

// A block that breaks across pages where the typesetter thinks it may not loses its end without a word. Every field of
// a step is tried at every length beside every other.
test("whatever the lengths of its texts, a print has every word of them", async () => {
  const figure = await picture("any length");
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.constantFrom(...lengths), { minLength: 40, maxLength: 40 }),
      fc.constantFrom("page" as const, "bench" as const),
      fc.constantFrom("a4" as const, "letter" as const),
      async (sizes, edition, paper) => {
        const words = new Map<string, string>();
        const text = (field: string) => {
          const next = Array.from(
            { length: sizes.pop() ?? 3 },
            (_, index) => `q${10_000 + words.size + index}z`,
          );
          for (const word of next) words.set(word, field);
          return next.join(" ");
        };
        const one = step(1, text("instruction"), {
          cautions: [1, 2].map(() =>
            caution({
              hazard: text("hazard"),
              consequence: text("consequence"),
              avoid: text("avoid"),
              source: text("source"),
            }),
          ),
          details: [{ mark: "how", text: text("how") }],
          result: text("result"),
          parts: [
            part(1, text("part"), {
              note: text("note of the part"),
              seat: text("seat"),
              wayRound: text("way round"),
            }),
          ],
          measurements: [
            measurement(text("what is measured"), {
              part: text("part measured"),
              note: text("note of the measurement"),
              instrument: text("instrument"),
              values: { asFound: typed(text("as found")), limit: typed(text("limit")) },
            }),
          ],
          tools: [{ mark: "tool", name: text("tool"), detail: text("size"), note: text("note of the tool") }],
          gotchas: [
            { mark: "gotcha", symptom: text("what bit"), why: text("why"), instead: text("instead") },
          ],
          deferred: [
            {
              mark: "left",
              step: 1,
              what: text("what is left"),
              waitsFor: text("until"),
              soak: { least: text("least"), longest: text("longest"), why: text("why so long") },
              closedBy: null,
            },
          ],
          stills: [figure],
        });
        const job = procedure([one], { title: text("title"), summary: text("summary") });
        const { files } = await toPdf(checked(job), options({ edition, paper }));
        const { nodes } = await readPdf(files[0]?.bytes as Uint8Array);
        const printed = unspaced(nodes.map((node) => node.text).join(""));
        const lost = [...words].filter(([word]) => !printed.includes(word)).map(([, field]) => field);
        expect([...new Set(lost)]).toEqual([]);
      },
    ),
    // Each print takes seconds.
    { numRuns: process.env.LONG ? 60 : 5, endOnFailure: true },
  );
}, 600_000);
