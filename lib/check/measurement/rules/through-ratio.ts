import { near, plain, sayIn } from "../figures.ts";
import type { EntryRule } from "../rule.ts";
import { type Fact, relatedFacts } from "../sight.ts";
import { termsOf } from "../wheels.ts";

/** A speed behind a gearbox, a worm or a belt whose ratio is told. */
export const throughRatio: EntryRule = {
  id: "speed-through-ratio",
  title: "A speed behind a reduction",
  explanation:
    "Behind a reduction of 29 to 1 a shaft turns a twenty-ninth as fast as before it. A speed that the ratio does not give is a slip, or it was taken at another shaft.",
  source: "arithmetic",
  check: (sight) => {
    const { main, what } = sight;
    const [ratio, ...others] = relatedFacts(sight).filter(isRatio);
    const before = relatedFacts(sight).filter((fact) => fact.dimension === "rotational speed" && fact.si > 0);
    const [input] = before;
    const told = ratio && termsOf(ratio);
    if (main?.dimension !== "rotational speed" || !(main.si > 0) || !input || !told || !ratio) return [];
    if (others.length > 0 || before.length > 1 || !entering.test(input.name) || !leaving.test(what))
      return [];
    const many = Math.max(told, 1 / told);
    const up = /\b(?:step[- ]?up|overdrive|speed[- ]?up|increas\w+|geared up)\b/.test(sight.all);
    const down = /\b(?:worm|reduc\w+|step[- ]?down|geared down|back ?gear)\b/.test(
      `${ratio.name} ${sight.all}`,
    );
    const should = input.si * (up ? many : 1 / many);
    if (near(main.si, should, 0.06) || (!up && !down && near(main.si, input.si * many, 0.06))) return [];
    return [
      {
        severity: "wrong" as const,
        found: `${what} ${main.raw}, from ${input.name} ${input.raw} through ${ratio.name} ${ratio.raw}.`,
        expected: `${sayIn(should, main.quantity, 4)}.`,
        meant: near(main.si, input.si * many, 0.06)
          ? "the ratio turned about?"
          : `${plain(should * 60, 4)} rpm?`,
      },
    ];
  },
  examples: [
    {
      says: "a fifth of what it should be",
      entry: {
        text: "5.0 rpm",
        what: "output shaft",
        context: {
          related: [
            { what: "motor", text: "1450 rpm" },
            { what: "worm box", text: "29:1" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "a twenty-ninth",
      entry: {
        text: "50 rpm",
        what: "output shaft",
        context: {
          related: [
            { what: "motor", text: "1450 rpm" },
            { what: "worm box", text: "29:1" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

const entering = /\b(?:motor|engine|input|driver|crank(?:shaft)?|line ?shaft)\b/;
const leaving =
  /\b(?:output|drum|spindle|final|slow|low[- ]speed|wheel shaft|last|driven|counter ?shaft|roller|conveyor|mixer|table|winch|shaft)\b/;

const isRatio = ({ quantity, name }: Fact): boolean =>
  quantity.terms?.length === 2 &&
  /\b(?:ratio|reduction|gear(?:box|ing)?|box|worm|drive|reducer|belt|chain|back ?gear)\b/.test(name);
