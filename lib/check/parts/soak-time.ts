import { finding } from "#lib/finding/index.ts";
import { type Soak, soaksOf } from "#lib/procedure/index.ts";
import type { Rule } from "../rule.ts";

/** A soak, cure or bath that was too short or too long. */
export const soakTime: Rule = {
  id: "soak-time",
  title: "Too long in the bath, or not long enough",
  explanation:
    "Acid goes on eating, glue that was loaded early has let go already. Where a least or a longest time was given, the beginning and the end are held against it.",
  source: "the limit that the restorer gave",
  check: ({ procedure, document }) =>
    soaksOf(procedure, document).flatMap((soak) => {
      const fault = faultOf(soak);
      if (!fault) return [];
      return finding({
        rule: "soak-time",
        severity: "wrong",
        place: { mark: soak.mark, field: fault.field },
        evidence: `${soak.lasted}\n${fault.limit}`,
        found: `“${soak.what}” lasted ${sayLong(soak.lasted ?? 0)}; ${fault.said} ${fault.limit}${soak.why ? `: ${soak.why}` : ""}.`,
        expected: `${fault.field === "longest" ? "No longer" : "No shorter"} than ${fault.limit}.`,
        todo: "Look what it did to the part, and answer with what you found; or correct the times.",
        source: soakTime.source,
      });
    }),
  examples: [
    {
      says: "an hour over",
      sketch: {
        marks: [
          [
            1,
            "deferred",
            { words: "Body in the acid", longest: { typed: "4 h" }, began: "2026-05-03 10:00" },
          ],
          [2, "action", { words: "Take it out", closes: ["deferred@1"] }],
          [
            3,
            "deferred",
            { words: "x", longest: { typed: "4 h" }, began: "2026-05-03 10:00", ended: "2026-05-03 15:00" },
          ],
        ],
      },
      finds: 1,
    },
    {
      says: "glue loaded early",
      sketch: {
        marks: [
          [
            3,
            "deferred",
            { words: "Glue", least: { typed: "24 h" }, began: "2026-05-03 10:00", ended: "2026-05-03 15:00" },
          ],
        ],
      },
      finds: 1,
    },
    {
      says: "by the film: ten minutes, five allowed",
      sketch: {
        marks: [
          [1, "deferred", { words: "Dip", longest: { typed: "5 min" } }],
          [601, "action", { words: "Take it out", closes: ["deferred@1"] }],
        ],
      },
      finds: 1,
    },
    {
      says: "within its time",
      sketch: {
        marks: [
          [1, "deferred", { words: "Dip", least: { typed: "5 min" }, longest: { typed: "15 min" } }],
          [601, "action", { words: "Take it out", closes: ["deferred@1"] }],
        ],
      },
      finds: 0,
    },
  ],
};

function faultOf({ lasted, least, longest }: Soak) {
  if (lasted === null) return null;
  if (longest && lasted > longest.seconds) {
    return { field: "longest", limit: longest.typed, said: "allowed were at most" } as const;
  }
  if (least && lasted < least.seconds) {
    return { field: "least", limit: least.typed, said: "asked for were at least" } as const;
  }
  return null;
}

/** "5 h 20 min", "40 min", "30 s". */
function sayLong(seconds: number): string {
  if (seconds < 120) return `${Math.round(seconds)} s`;
  const minutes = Math.round(seconds / 60);
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  return [hours > 0 ? `${hours} h` : "", rest > 0 || hours === 0 ? `${rest} min` : ""]
    .filter(Boolean)
    .join(" ");
}
