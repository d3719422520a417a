import { type Fit, fit as fitNamed, type Limits, usualFits } from "../fits/index.ts";
import { columnInches, type Entry, type Figure, type SideBySide } from "./reply.ts";

const micrometres = (um: number): string => `${um > 0 ? "+" : um < 0 ? "−" : ""}${Math.abs(um)}`;
const thou = (um: number): string => `${(um / 25.4).toFixed(2)} thou`;

const toMillimetres = (mm: number): string => mm.toFixed(3);
const span = ({ least, most }: Limits, say: (mm: number) => string): string => `${say(least)} – ${say(most)}`;

function limitFigures(what: string, limits: Limits): Figure[] {
  const [source] = limits.sources;
  if (!source) return [];
  const range = `${micrometres(limits.upper)} / ${micrometres(limits.lower)} µm`;
  return [
    { label: `${what} ${limits.name}, deviations`, value: range, source: limits.sources[2] ?? source },
    { label: `${what} ${limits.name}, largest`, mm: limits.most, source },
    { label: `${what} ${limits.name}, smallest`, mm: limits.least, source },
  ];
}

/** A sentence on what a fit gives: clearance from and to, interference, or either. */
function sayFit({ kind, maxClearance = 0, minClearance = 0, name }: Fit): string | undefined {
  if (kind === "clearance")
    return `${name} has ${minClearance} to ${maxClearance} µm of clearance (${thou(minClearance)} to ${thou(maxClearance)}).`;
  if (kind === "interference")
    return `${name} has ${-maxClearance} to ${-minClearance} µm of interference (${thou(-maxClearance)} to ${thou(-minClearance)}).`;
  return (
    kind && `${name} lies between ${-minClearance} µm of interference and ${maxClearance} µm of clearance.`
  );
}

/** A fit, its limits, and how it lies among the usual fits of that size. */
export function fitEntry(found: Fit): Entry {
  return {
    title: found.name,
    about: "limits and fits, ISO 286",
    ...(sayFit(found) && { says: sayFit(found) }),
    figures: [
      ...(found.hole ? limitFigures("hole", found.hole) : []),
      ...(found.shaft ? limitFigures("shaft", found.shaft) : []),
    ],
    beside: usualBeside(found),
    notes: [],
  };
}

function usualBeside(found: Fit): SideBySide {
  const names = [
    ...new Set([
      ...usualFits,
      ...(found.hole && found.shaft ? [`${found.hole.name}/${found.shaft.name}`] : []),
    ]),
  ];
  const fits = names
    .flatMap((name) => fitNamed(`${found.nominal} ${name}`) ?? [])
    .toSorted((a, b) => (b.maxClearance ?? 0) - (a.maxClearance ?? 0));
  return {
    caption: `Usual fits at ${found.nominal} mm, loose to tight`,
    columns: ["hole, mm", "shaft, mm", "shaft, in", "clearance, µm", "kind"],
    rows: fits.map((one) => ({
      label: one.name,
      cells: [
        one.hole ? span(one.hole, toMillimetres) : "",
        one.shaft ? span(one.shaft, toMillimetres) : "",
        one.shaft ? span(one.shaft, columnInches) : "",
        `${micrometres(one.minClearance ?? 0)} to ${micrometres(one.maxClearance ?? 0)}`,
        one.kind ?? "",
      ],
    })),
    sources: found.sources,
  };
}
