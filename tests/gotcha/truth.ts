import {
  type Gotcha,
  newGotcha,
  newScope,
  newSighting,
  type Scope,
  type Severity,
  type Sighting,
} from "#lib/build/index.ts";
import type { Opening } from "#lib/gotcha/index.ts";
import { random } from "./random.ts";

/**
 * A world of invented machines with a written truth of which trap lies where, and a book such as a restorer would
 * have of it. The truth was written before the ranking and knows nothing of it: an extent is a question put to a real
 * machine, answered from what that machine is, whether or not the restorer wrote it down. One in twenty of its serial
 * numbers, variants, years and makes of parts is not written down; one in twenty designs that a maker took over into
 * another model is not known to be the same; and what is written of a whole kind is true of nineteen designs in twenty.
 */
export interface World {
  gotchas: Gotcha[];
  sightings: Sighting[];
  openings: {
    opening: Opening /** Ids of those that truly apply, the one dearest to miss first. */;
    truth: string[];
  }[];
  superseded: Set<string>;
}

/** Hours that a trap costs when it bites; judgement. */
const hours: Record<Severity, number> = { nuisance: 0.3, hours: 1, part: 3, machine: 10, injury: 30 };
const grades = Object.keys(hours) as Severity[];

/** Kinds of assembly, some with another name that is used for the same thing. */
const assemblyKinds = [
  ["Water pump", "Circulating pump"],
  ["Magneto", "Ignition magneto"],
  ["Governor", ""],
  ["Oil pump", "Lubricating pump"],
  ["Gearbox", "Gear case"],
  ["Cylinder head", ""],
  ["Fuel tap", ""],
  ["Crank case", "Crankcase"],
  ["Feed gear", ""],
  ["Hand brake", ""],
] as const;
const partNames = ["Seal", "Gasket", "Spring", "Shaft", "Bush"];
const makers = ["Ostrey", "Halden Works", "Brammel", "Tolvik"];

interface Model {
  maker: string;
  model: string;
  /** Assemblies by kind; the same design number means that the maker took the assembly over whole. */
  assemblies: { kind: string; name: string; design: number }[];
}

/** A machine as it really is. */
interface Real {
  model: Model;
  variant: string;
  serial: number;
  year: number;
  /** Parts in the assembly that are reproductions. */
  reproductions: Set<string>;
}

interface Trap {
  gotcha: Gotcha;
  severity: Severity;
  /** How often it bites where it lies, of one look. */
  rate: number;
  bites: (real: Real, assembly: Model["assemblies"][number]) => boolean;
}

export function makeWorld(seed: number): World {
  const dice = random(seed);
  const models = makeModels(dice);
  const homes = models.flatMap((model) => model.assemblies.map((assembly) => ({ model, assembly })));
  const traps = Array.from({ length: 400 }, (_, index) => {
    const home = homes[index % homes.length] as (typeof homes)[number];
    return makeTrap(dice, `gotcha-${index}`, home, models);
  });
  const seen = new Map(traps.map((trap) => [trap.gotcha.id, look(dice, trap)]));
  const weight = ({ severity, gotcha }: Trap) => hours[severity] * share(seen.get(gotcha.id) ?? []);
  const superseded = supersede(dice, traps);
  const openings = Array.from({ length: 200 }, () => {
    const { model, assembly } = dice.pick(homes);
    const real = makeReal(dice, model);
    const truth = traps
      .filter((trap) => !superseded.has(trap.gotcha.id) && trap.bites(real, assembly))
      .sort((a, b) => weight(b) - weight(a))
      .map((trap) => trap.gotcha.id);
    return { opening: asWritten(dice, real, assembly), truth };
  });
  const gotchas = traps.map((trap) => trap.gotcha);
  return { gotchas, sightings: [...seen.values()].flat(), openings, superseded };
}

/** How often a trap was there of the looks taken, as the book counts it (docs/decisions/012): one look each way added. */
function share(sightings: readonly Sighting[]): number {
  const met = sightings.filter((one) => one.outcome !== "absent").length;
  return (met + 1) / (sightings.length + 2);
}

type Dice = ReturnType<typeof random>;

function makeModels(dice: Dice): Model[] {
  let designs = 0;
  const known = new Map<string, number>();
  return makers.flatMap((maker) =>
    ["No. 1", "No. 2", "No. 5"].map((model) => ({
      maker,
      model,
      assemblies: dice.some(assemblyKinds, 5).map(([kind, other]) => {
        const taken = known.get(`${maker} ${kind}`);
        const design = taken !== undefined && dice.chance(0.25) ? taken : ++designs;
        known.set(`${maker} ${kind}`, design);
        return { kind, name: other !== "" && dice.chance(0.3) ? other : kind, design };
      }),
    })),
  );
}

function makeTrap(
  dice: Dice,
  id: string,
  { model, assembly }: { model: Model; assembly: Model["assemblies"][number] },
  models: readonly Model[],
): Trap {
  const part = dice.pick(partNames);
  const severity = dice.pick(grades);
  const rate = dice.pick([0.15, 0.5, 0.85]);
  const variant = dice.pick(["A", "B"]);
  const cut = 1000 + dice.whole(3, 7) * 100;
  const here = { maker: model.maker, model: model.model, assembly: assembly.kind, item: part };
  // What is written of a whole kind or machine was met on one of them, and is true of nineteen designs in twenty.
  const elsewhere = new Map<number, boolean>([[assembly.design, true]]);
  const really = (one: Model["assemblies"][number]) => {
    const known = elsewhere.get(one.design) ?? dice.chance(0.95);
    elsewhere.set(one.design, known);
    return known;
  };
  const lies = (one: Model["assemblies"][number]) => one.design === assembly.design;
  const extents: [number, Partial<Scope>, Partial<Scope> | null, Trap["bites"]][] = [
    [40, here, null, (_, one) => lies(one)],
    [8, here, { ...here, item: "", variant }, (real, one) => lies(one) && real.variant !== variant],
    [14, { ...here, variant }, null, (real, one) => lies(one) && real.variant === variant],
    [
      14,
      { ...here, serial: { from: "", to: `K ${cut}`, by: "number" } },
      null,
      (real, one) => lies(one) && real.serial <= cut,
    ],
    [4, { ...here, years: { from: "1925", to: "" } }, null, (real, one) => lies(one) && real.year >= 1925],
    [10, { ...here, make: "reproduction" }, null, (real, one) => lies(one) && real.reproductions.has(part)],
    [4, { assembly: assembly.kind, item: part }, null, (_, one) => one.kind === assembly.kind && really(one)],
    [1, { maker: model.maker, model: model.model }, null, (real, one) => real.model === model && really(one)],
    [1, { maker: model.maker }, null, (real, one) => real.model.maker === model.maker && really(one)],
  ];
  const [, applies, not, bites] = dice.weighted(extents);
  // Where the maker took the assembly over whole, the restorer mostly knows it, by the part numbers.
  const sisters = models.filter(
    (one) => one !== model && one.assemblies.some(lies) && dice.chance(0.95) && "item" in applies,
  );
  const written = [applies, ...sisters.map((one) => ({ ...applies, model: one.model }))];
  const gotcha = newGotcha({
    id,
    symptom: `${part} ${id}`,
    noted: "2026-01-01T00:00:00.000Z",
    severity,
    appliesTo: "model" in applies ? written.map(newScope) : [newScope(applies)],
    notTo: not ? [not, ...sisters.map((one) => ({ ...not, model: one.model }))].map(newScope) : [],
  });
  return { gotcha, severity, rate, bites };
}

/** Forty traps of which somebody later wrote down better what they are. */
function supersede(dice: Dice, traps: Trap[]): Set<string> {
  const old = dice.some(traps.slice(0, 360), 40);
  for (const trap of old) {
    const better = dice.pick(traps.slice(360));
    better.gotcha.supersedes.push(trap.gotcha.id);
  }
  return new Set(old.map((trap) => trap.gotcha.id));
}

function makeReal(dice: Dice, model: Model): Real {
  return {
    model,
    variant: dice.pick(["A", "B"]),
    serial: dice.whole(1000, 1999),
    year: dice.whole(1919, 1932),
    reproductions: new Set(partNames.filter(() => dice.chance(0.35))),
  };
}

/** The machine as the restorer's records have it: some of it is not known. */
function asWritten(dice: Dice, real: Real, assembly: Model["assemblies"][number]): Opening {
  const known = (chance: number, words: string) => (dice.chance(chance) ? words : "");
  return {
    machine: {
      id: `${real.model.maker} ${real.model.model} ${real.serial}`,
      maker: real.model.maker,
      model: real.model.model,
      variant: known(0.95, real.variant),
      serial: known(0.95, `K${real.serial}`),
      years: known(0.95, dice.pick([String(real.year), `about ${real.year}`])),
    },
    assembly: { name: assembly.name, inside: [] },
    parts: partNames.map((name) => ({
      name,
      here: true,
      make: dice.chance(0.95) ? (real.reproductions.has(name) ? "reproduction" : "original") : "",
      maker: "",
    })),
    kits: [],
    buildId: null,
  };
}

/** What a restorer has seen of a trap: looks where it lies, each of which it bit, was avoided, or was not there. */
function look(dice: Dice, { gotcha, rate }: Trap): Sighting[] {
  const looks = dice.pick([0, 1, 1, 2, 3, 4, 6]);
  return Array.from({ length: looks }, (_, index) =>
    newSighting({
      id: `${gotcha.id}-${index}`,
      gotchaId: gotcha.id,
      at: `202${dice.whole(4, 6)}-02-0${dice.whole(1, 9)}T09:00:00.000Z`,
      // The first is why it was written down.
      outcome: index === 0 ? "happened" : dice.chance(rate) ? dice.pick(["happened", "avoided"]) : "absent",
    }),
  );
}
