import { expansionOf, growth, saySource } from "#lib/reference/index.ts";
import { plain, sayIn } from "../figures.ts";
import { type EntryRule, firstOf, type Remark } from "../rule.ts";
import { relatedFacts, type Sight } from "../sight.ts";

/** Whether the heat or the cold named is enough for a shrink fit. */
export const shrink: EntryRule = {
  id: "shrink-not-enough",
  title: "Heat and cold for a shrink fit",
  explanation:
    "A ring opens by its diameter, times the expansion of its metal, times the rise in temperature. If that is less than the interference, it will not drop on, and stops half way. Hot metal and frozen metal burn: gloves, and nothing flammable near.",
  source: "linear expansion near room temperature, as in the reference tables",
  check: (sight) => firstOf(sight, enough, grown),
  examples: [
    {
      says: "60 °C do not open a ring by 0.3 mm",
      entry: {
        text: "60 °C",
        what: "temperature of the ring gear for fitting",
        context: {
          material: "steel",
          related: [
            { what: "diameter", text: "250 mm" },
            { what: "interference", text: "0.30 mm" },
          ],
        },
      },
      finds: 1,
    },
    {
      says: "220 °C do",
      entry: {
        text: "220 °C",
        what: "temperature of the ring gear for fitting",
        context: {
          material: "steel",
          related: [
            { what: "diameter", text: "250 mm" },
            { what: "interference", text: "0.30 mm" },
          ],
        },
      },
      finds: 0,
    },
  ],
};

const room = 293.15;

function materialOf(sight: Sight) {
  return expansionOf(sight.material)[0] ?? expansionOf(sight.part)[0];
}

function enough(sight: Sight): Remark[] {
  const { main } = sight;
  if (main?.dimension !== "temperature") return [];
  const lengths = relatedFacts(sight).filter((fact) => fact.dimension === "length");
  const interference = lengths.find((fact) =>
    /\b(?:interference|nip|tight by|press|shrink(?:age)?)\b/.test(fact.name),
  );
  const size = lengths.find(
    (fact) =>
      fact !== interference && /\b(?:diameter|bore|dia|ring|housing|shaft|size|pin)\b/.test(fact.name),
  );
  if (!interference || !size) return [];
  const metal = materialOf(sight);
  if (!metal) return [];
  const start =
    sight.facts.find(
      (fact) =>
        fact !== main &&
        fact.dimension === "temperature" &&
        /\b(?:room|ambient|workshop|start)\b/.test(fact.name),
    )?.si ?? room;
  const rise = main.quantity.role === "difference" ? Math.abs(main.si) : Math.abs(main.si - start);
  const opens = growth(metal.perKelvin, size.si, rise);
  if (opens >= interference.si * 0.9) return [];
  const needed = interference.si / (metal.perKelvin * size.si);
  return [
    {
      severity: "wrong",
      found: `${main.raw}: ${metal.material} of ${size.raw} changes by ${sayIn(opens, interference.quantity, 2)}; the interference is ${interference.raw}.`,
      expected: `A change of ${Math.ceil(needed)} °C at the least.`,
      source: saySource(metal.source),
    },
  ];
}

/** A growth that was worked out. */
function grown(sight: Sight): Remark[] {
  const { main, what } = sight;
  if (
    main?.dimension !== "length" ||
    !/\b(?:expan\w*|growth|grows|growing|contract\w*|shrinks|opens|opening)\b/.test(what)
  )
    return [];
  const size = relatedFacts(sight).find(
    (fact) => fact.dimension === "length" && !/interference|clearance|limit|fit/.test(fact.name),
  );
  const temperatures = relatedFacts(sight).filter((fact) => fact.dimension === "temperature");
  if (!size || temperatures.length === 0) return [];
  const metal = materialOf(sight);
  if (!metal) return [];
  const [a, b] = temperatures;
  const rise =
    a?.quantity.role === "difference" || /\brise|difference|drop|above\b/.test(a?.name ?? "")
      ? a?.quantity.role === "difference"
        ? a.si
        : (a?.quantity.value.number ?? 0) / (a?.quantity.ucum === "[degF]" ? 1.8 : 1)
      : Math.abs((a?.si ?? room) - (b?.si ?? room));
  const should = growth(metal.perKelvin, size.si, Math.abs(rise));
  if (should <= 0 || (main.si / should < 1.6 && main.si / should > 0.6)) return [];
  return [
    {
      severity: "wrong",
      found: `${main.raw} for ${metal.material} of ${size.raw} and ${plain(Math.abs(rise), 3)} °C.`,
      expected: sayIn(should, main.quantity, 2),
      meant: `${sayIn(should, main.quantity, 2)}?`,
      source: saySource(metal.source),
    },
  ];
}
