import { units } from "#lib/quantity/index.ts";
import { bearings } from "../bearings/index.ts";
import { colourRows, preferredSeries, preferredSource, seriesNames } from "../electrical/index.ts";
import { recipes } from "../mixes/index.ts";
import type { Source } from "../source.ts";
import { expansions } from "../thermal/index.ts";
import { type BookChapter, orDash } from "./table.ts";

export const bearingChapter: BookChapter = {
  title: "Bearings",
  tables: [
    {
      id: "bearings",
      title: "Boundary dimensions",
      standard: "ISO 15, ISO 104",
      columns: ["number", "bore, mm", "outside, mm", "width, mm", "kind"],
      rows: () =>
        bearings.map(({ number, bore, outside, width, kind, source }) => ({
          cells: [number, `${bore}`, `${outside}`, `${width}`, kind],
          sources: [source],
        })),
    },
  ],
};

export const electricalChapter: BookChapter = {
  title: "Electrics",
  tables: [
    {
      id: "preferred",
      title: "Preferred values",
      standard: "IEC 60063",
      columns: ["series", "values in a decade"],
      rows: () =>
        seriesNames.map((series) => ({
          cells: [series, preferredSeries[series].join(" ")],
          sources: [preferredSource],
        })),
    },
    {
      id: "colours",
      title: "Colour code",
      standard: "IEC 60062",
      columns: ["colour", "digit", "power of ten", "tolerance, %"],
      rows: () =>
        colourRows.map(({ colour, digit, power, tolerance, source }) => ({
          cells: [colour, orDash(digit), `${power}`, orDash(tolerance)],
          sources: [source],
        })),
    },
  ],
};

export const materialChapter: BookChapter = {
  title: "Heat, baths and units",
  tables: [
    {
      id: "expansion",
      title: "Linear expansion",
      standard: "near room temperature",
      columns: ["material", "10⁻⁶ per K", "10⁻⁶ per °F"],
      rows: () =>
        expansions.map(({ material, perKelvin, source }) => ({
          cells: [material, (perKelvin * 1e6).toFixed(1), ((perKelvin * 1e6) / 1.8).toFixed(1)],
          sources: [source],
        })),
    },
    {
      id: "baths",
      title: "Published baths",
      standard: "as each row says",
      columns: ["bath", "parts", "note"],
      rows: () =>
        recipes.map(({ name, parts, note, source }) => ({
          cells: [
            name,
            parts
              .map(
                ({ what, low, high, unit, optional }) =>
                  `${low === high ? low : `${low} – ${high}`} ${unit} ${what}${optional ? " (optional)" : ""}`,
              )
              .join(", "),
            note,
          ],
          sources: [source],
        })),
    },
    {
      id: "units",
      title: "Units",
      standard: "SI Brochure, NIST SP 811",
      columns: ["unit", "measures", "UCUM code", "in SI units, exactly"],
      rows: () =>
        units.map((unit) => ({
          cells: [
            unit.symbol,
            unit.dimension,
            unit.ucum,
            `${unit.factor.d === 1n ? unit.factor.n : Number(unit.factor.n) / Number(unit.factor.d)}${unit.pi === 1 ? " × π" : unit.pi === -1 ? " / π" : ""}`,
          ],
          sources: [unitSource(unit.source)],
        })),
    },
  ],
};

const standards: Record<string, string> = {
  SI: "SI Brochure, 9th ed.",
  SP: "NIST SP 811 (2008), appendix B",
  HB: "NIST Handbook 44, appendix C",
  WM: "Weights and Measures Act 1985, schedule 1",
  UC: "UCUM, ucum.org",
  TR: "usage of the trade, no source",
};

const unitSources = new Map(
  Object.entries(standards).map(([code, standard]): [string, Source] => [
    code,
    { standard, seen: "exact by definition; agrees with UCUM", how: "read" },
  ]),
);

function unitSource(code: string): Source {
  return unitSources.get(code) ?? { standard: code, seen: "unit table", how: "read" };
}
