import { z } from "zod";
import { base, id, line, text } from "./columns.ts";

/** From and to, both included; an empty end is open. */
const range = z.object({ from: line, to: line });

/**
 * Where a gotcha applies, or does not. An empty place says nothing; each that is filled must hold. `serial` compares
 * by its digits within the same letters ("number"), or as text.
 */
export const scope = z.object({
  maker: line,
  model: line,
  variant: line,
  /** The assembly by its name; the same kind of assembly goes by the same name, or a synonym of the trade. */
  assembly: line,
  /** The part by its name. */
  item: line,
  years: range,
  serial: range.extend({ by: z.enum(["number", "text"]) }),
  /** Whether it concerns parts as the maker made them, or parts made since. */
  make: z.enum(["", "original", "reproduction"]),
  /** Who made the reproduction. */
  partMaker: line,
  kit: line,
});
export type Scope = z.infer<typeof scope>;

/** What a gotcha costs when it bites, from the least to the worst. */
export const severities = [
  { value: "nuisance", label: "a nuisance" },
  { value: "hours", label: "lost hours" },
  { value: "part", label: "a spoiled part" },
  { value: "machine", label: "a damaged machine" },
  { value: "injury", label: "an injury" },
] as const;
export type Severity = (typeof severities)[number]["value"];

/** Where the knowledge comes from. */
export const knowledgeSources = [
  { value: "met", label: "met it here" },
  { value: "published", label: "published" },
  { value: "told", label: "told by somebody" },
] as const;

/** A lesson that outlives the build. */
export const gotchaRow = z.object({
  ...base,
  /** As it first shows itself; its title. */
  symptom: line,
  mechanism: text,
  /** Whether the mechanism is proven by a change that made it go, or suspected. */
  cause: z.enum(["suspected", "proven"]),
  consequence: text,
  severity: z.enum(["", ...severities.map((one) => one.value)] as ["", ...Severity[]]),
  /** How to tell beforehand. */
  tell: text,
  avoid: text,
  mend: text,
  appliesTo: z.array(scope).max(50),
  notTo: z.array(scope).max(50),
  source: z.enum(["", "met", "published", "told"]),
  sourceNote: line,
  /** What it cost, in words: "3 h and a seal". */
  cost: line,
  /** Gotchas that this one takes the place of. */
  supersedes: z.array(id).max(100),
  /** The gotcha that this one is told as; null while it stands for itself. */
  joinedInto: id.nullable(),
  /** Gotchas of which the restorer has said that they are not the same as this one. */
  notSame: z.array(id).max(1000),
  /** Whose book it came from; empty for one's own. */
  origin: line,
  /** When it was written down, ISO 8601 in UTC. */
  noted: z.string().max(40),
});
export type Gotcha = z.infer<typeof gotchaRow>;

/** How a look at a gotcha came out. */
export const outcomes = [
  { value: "happened", label: "happened" },
  { value: "avoided", label: "avoided" },
  { value: "absent", label: "absent" },
  { value: "not applicable", label: "not applicable" },
] as const;
export type Outcome = (typeof outcomes)[number]["value"];

/** One time that a gotcha was met, or looked for. It outlives its build, machine and mark. */
export const sightingRow = z.object({
  ...base,
  gotchaId: id,
  outcome: z.enum(outcomes.map((one) => one.value) as [Outcome, ...Outcome[]]),
  /** ISO 8601 in UTC. */
  at: z.string().max(40),
  buildId: id.nullable(),
  machineId: id.nullable(),
  /** The mark that shows it: a moment of a recording, with its stills and values. */
  markId: id.nullable(),
  /** The machine in words, so that it is known when its records are not there: "Ostrey No. 2, serial 4120". */
  machine: line,
  assembly: line,
  note: text,
  /** Whose sighting it is; empty for one's own. */
  origin: line,
});
export type Sighting = z.infer<typeof sightingRow>;

/** A scope that says nothing, with what is given. */
export function newScope(given: Partial<Scope> = {}): Scope {
  return {
    maker: "",
    model: "",
    variant: "",
    assembly: "",
    item: "",
    years: { from: "", to: "" },
    serial: { from: "", to: "", by: "number" },
    make: "",
    partMaker: "",
    kit: "",
    ...given,
  };
}

export function newGotcha(given: Pick<Gotcha, "id" | "symptom" | "noted"> & Partial<Gotcha>): Gotcha {
  return {
    mechanism: "",
    cause: "suspected",
    consequence: "",
    severity: "",
    tell: "",
    avoid: "",
    mend: "",
    appliesTo: [],
    notTo: [],
    source: "",
    sourceNote: "",
    cost: "",
    supersedes: [],
    joinedInto: null,
    notSame: [],
    origin: "",
    gone: null,
    rev: 0,
    ...given,
  };
}

export function newSighting(
  given: Pick<Sighting, "id" | "gotchaId" | "outcome" | "at"> & Partial<Sighting>,
): Sighting {
  return {
    buildId: null,
    machineId: null,
    markId: null,
    machine: "",
    assembly: "",
    note: "",
    origin: "",
    gone: null,
    rev: 0,
    ...given,
  };
}
