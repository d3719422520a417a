import { near, plain } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Sight } from "../sight.ts";
import { isMeasured } from "../words.ts";

/** A capacitor's value against the three figures printed on it. */
export const capacitorCode: EntryRule = {
  id: "capacitor-code-mismatch",
  title: "A capacitor's code",
  explanation:
    "Three figures on a small capacitor are two digits and the number of noughts after them, in picofarads: 103 is 10 000 pF, which is 10 nF.",
  source: "IEC 60062",
  check: (sight) => coded(sight),
  examples: [
    {
      says: "103 is 10 nF",
      entry: { text: "1 nF", what: "tone capacitor, nominal", context: { spec: "marked 103" } },
      finds: 1,
    },
    {
      says: "471 is 470 pF",
      entry: { text: "470 pF", what: "detector capacitor", context: { spec: "marked 471" } },
      finds: 0,
    },
    {
      says: "measured, and within what such a one may be out",
      entry: {
        text: "112 nF",
        what: "coupling capacitor, measured",
        context: { part: "capacitor stamped 104K", instrument: "capacitance meter" },
      },
      finds: 0,
    },
  ],
};

const code =
  /\b(?:mark(?:ed|ing)|code[d]?|stamped|printed|reads|body)\D{0,6}(\d\d)([0-7])([a-z]?)\b(?! ?[a-zµ%])/i;

/** The code of a capacitor in a text, and what it comes to in farads; null where there is none. */
export function capacitorCodeIn(text: string): { said: string; farads: number } | null {
  const [, digits = "", noughts = "", letter = ""] = code.exec(text) ?? [];
  if (digits === "") return null;
  return { said: digits + noughts + letter, farads: Number(digits) * 10 ** Number(noughts) * 1e-12 };
}

function coded({ main, entry, what }: Sight): Remark[] {
  if (main?.dimension !== "capacitance") return [];
  const { spec, part, related = [], instrument = "" } = entry.context;
  const texts = [spec, part, ...related.map((one) => `${one.what} ${one.text}`)];
  const told = texts.map((text) => (text ? capacitorCodeIn(text) : null)).find((one) => one !== null);
  if (!told) return [];
  const measured = isMeasured(`${what} ${instrument}`);
  if (near(main.si, told.farads, measured ? 0.35 : 0.01)) return [];
  const should = sayFarads(told.farads);
  return [
    {
      severity: measured && near(main.si, told.farads, 0.8) ? "doubtful" : "wrong",
      found: `${main.raw}, and it is marked ${told.said}.`,
      expected: `${should}.`,
      meant: `${should}?`,
    },
  ];
}

function sayFarads(farads: number): string {
  const pico = farads * 1e12;
  if (pico >= 1e6) return `${plain(pico / 1e6)} µF`;
  return pico >= 1e3 ? `${plain(pico / 1e3)} nF` : `${plain(pico)} pF`;
}
