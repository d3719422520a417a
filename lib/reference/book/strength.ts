import {
  aircraftTorques,
  leastEngagement,
  strengthClasses,
  type TappedMetal,
  torqueFactor,
} from "../fasteners/index.ts";
import { sourceNamed } from "../source.ts";
import { type BookChapter, mm } from "./table.ts";

const metals: TappedMetal[] = ["steel", "cast iron", "brass", "bronze", "aluminium", "zinc"];
const whole = (value: number): string => `${Math.round(value)}`;
const span = ([low, high]: [number, number]): string => `${low} – ${high}`;

/** Strength of bolts and tightening. */
export const strengthChapter: BookChapter = {
  title: "Bolts: strength and tightening",
  tables: [
    {
      id: "strength",
      title: "Classes and grades",
      standard: "ISO 898-1, SAE J429",
      columns: ["class", "over, mm", "to, mm", "proof, MPa", "yield, MPa", "tensile, MPa", "proof, ksi"],
      rows: () =>
        strengthClasses.map((row) => ({
          cells: [
            row.scheme === "SAE J429" ? `grade ${row.name}` : row.name,
            mm(row.over),
            mm(row.upTo),
            whole(row.proof),
            whole(row.yield),
            whole(row.tensile),
            whole(row.ksi?.proof ?? row.proof / 6.894757),
          ],
          sources: [row.source],
        })),
    },
    {
      id: "torque-factor",
      title: "Factor K of T = K d F, steel in steel",
      standard: "common practice",
      columns: ["thread", "K"],
      rows: () =>
        Object.entries(torqueFactor).map(([state, factor]) => ({
          cells: [state, `${factor}`],
          sources: [sourceNamed("torqueFactors")],
        })),
    },
    {
      id: "aircraft-torque",
      title: "Aircraft nuts, lbf in, lightly stressed",
      standard: "FAA AC 43.13-1B",
      columns: ["thread", "tension nut", "shear nut", "most, tension", "most, shear"],
      rows: () =>
        aircraftTorques.map((row) => ({
          cells: [
            row.thread,
            span(row.tensionNut),
            span(row.shearNut),
            `${row.maxTension}`,
            `${row.maxShear}`,
          ],
          sources: [row.source],
        })),
    },
    {
      id: "engagement",
      title: "Least thread engaged",
      standard: "rule of thumb",
      columns: ["tapped metal", "diameters"],
      rows: () =>
        metals.map((metal) => {
          const { mm: diameters, source } = leastEngagement(1, metal);
          return { cells: [metal, `${diameters}`], sources: [source] };
        }),
    },
  ],
};
