import type { Gotcha, Machine, Scope } from "#lib/build/index.ts";
import { type Lies, liesInSerials, liesInYears } from "./ranges.ts";
import { names, sameText } from "./words.ts";

/** What is about to be opened, as far as it is written down. An empty text is not known. */
export interface Opening {
  machine: Pick<Machine, "id" | "maker" | "model" | "variant" | "serial" | "years">;
  /** The assembly, and the names of those inside it. */
  assembly: { name: string; inside: readonly string[] };
  parts: readonly OpenedPart[];
  /** The kits that the build holds, each with its supplier. None is not known: it may be bought yet. */
  kits: readonly string[];
  /** The build it is opened in; null before there is one. */
  buildId: string | null;
}

export interface OpenedPart {
  name: string;
  /** Whether it lies in what is opened, or nobody has said where it lies. */
  here: boolean;
  make: "" | "original" | "reproduction";
  /** Who made it, where it is a reproduction. */
  maker: string;
}

/** How a scope fits an opening, from the closest to the widest. */
export type Tie = "assembly" | "inside" | "maker" | "kind" | "thing" | "model" | "sister";

export interface Match {
  tie: Tie;
  /** From 1, the same assembly of the same model, down. */
  closeness: number;
  /** What the scope asks and the machine's records do not say, in words: "its serial number". */
  unknown: string[];
  /** What of the machine lies in the scope, in words: "serial K1200 lies up to K 1400". */
  holds: string[];
}

/** How likely what was written holds here; judgement. */
const closenessOf: Record<Tie, number> = {
  assembly: 1,
  inside: 0.95,
  maker: 0.9,
  kind: 0.85,
  thing: 0.85,
  model: 0.8,
  sister: 0.5,
};

/** How likely what is not known is as the scope asks; judgement. */
const UNKNOWN = 0.5;

/** The closest way in which a gotcha applies to an opening; null where it does not. */
export function applies(gotcha: Pick<Gotcha, "appliesTo" | "notTo">, opening: Opening): Match | null {
  const excluded = gotcha.notTo.some((scope) => {
    const match = matchScope(scope, opening);
    return match !== null && match.tie !== "sister" && match.unknown.length === 0;
  });
  if (excluded) return null;
  const matches = gotcha.appliesTo.map((scope) => matchScope(scope, opening)).filter((one) => one !== null);
  const [closest] = matches.sort((a, b) => b.closeness - a.closeness);
  return closest ?? null;
}

/** How one scope fits; null where anything in it is contrary, or where it says nothing at all. */
export function matchScope(scope: Scope, opening: Opening): Match | null {
  const tie = tieOf(scope, opening);
  if (tie === null) return null;
  // Serial numbers and variants of another model say nothing about this one.
  const places = tie === "sister" ? partMade(scope, opening) : [...placesOf(scope, opening)];
  const asked = places.filter((place) => place !== null);
  if (asked.some((place) => place.lies === "contrary")) return null;
  const unknown = asked.filter((place) => place.lies === "unknown").map((place) => place.what);
  const holds = asked.filter((place) => place.lies === "same").map((place) => place.holds);
  return { tie, closeness: closenessOf[tie] * UNKNOWN ** unknown.length, unknown, holds };
}

function tieOf(scope: Scope, opening: Opening): Tie | null {
  const { machine, assembly } = opening;
  const maker = same(scope.maker, machine.maker);
  const model = same(scope.model, machine.model);
  if (maker === "contrary") return null;
  if (scope.assembly.trim() === "") return model === "contrary" ? null : tieWithoutAssembly(scope, opening);
  const here = names(scope.assembly, assembly.name);
  if (!here && !assembly.inside.some((name) => names(scope.assembly, name))) return null;
  if (model === "contrary") return maker === "same" ? "sister" : null;
  if (scope.model.trim() === "") return scope.maker.trim() === "" ? "kind" : "maker";
  return here ? "assembly" : "inside";
}

/** A part or kit ties by itself, wherever it lies here; one known to lie in another assembly does not concern this. */
function tieWithoutAssembly(scope: Scope, opening: Opening): Tie | null {
  const parts = partsNamed(scope, opening);
  if (parts.some((part) => part.here)) return "thing";
  if (parts.length > 0) return null;
  if (scope.maker.trim() + scope.model.trim() !== "") return "model";
  return scope.item.trim() === "" && kitHeld(scope, opening) === "same" ? "thing" : null;
}

interface Place {
  lies: Lies;
  what: string;
  holds: string;
}

function* placesOf(scope: Scope, opening: Opening): Generator<Place | null> {
  const { machine } = opening;
  const { variant, years, serial, kit } = scope;
  yield variant.trim() === ""
    ? null
    : place(same(variant, machine.variant), `whether it is variant ${variant}`, `variant ${machine.variant}`);
  yield years.from + years.to === ""
    ? null
    : place(liesInYears(machine.years, years), `its year (${sayRange(years)})`, `years ${machine.years}`);
  yield serial.from + serial.to === ""
    ? null
    : place(
        liesInSerials(machine.serial, serial),
        `its serial number (${sayRange(serial)})`,
        `serial ${machine.serial} (${sayRange(serial)})`,
      );
  yield kit.trim() === ""
    ? null
    : place(kitHeld(scope, opening), `whether the kit ${kit} is used`, `the kit ${kit} is used`);
  yield* partMade(scope, opening);
}

/** Whether a kit of that name or number is among those that the build holds. */
function kitHeld({ kit }: Scope, { kits }: Opening): Lies {
  if (kits.length === 0) return "unknown";
  return kits.some((one) => names(kit, one)) ? "same" : "contrary";
}

/** Whether the part is of the make that is asked for, and whether it is that maker's: what is not known counts each. */
function partMade(scope: Scope, opening: Opening): Place[] {
  const { make, partMaker } = scope;
  if (make === "") return [];
  const parts = partsNamed(scope, opening);
  const here = parts.some((part) => part.here) ? parts.filter((part) => part.here) : parts;
  const name = (scope.item || "part").toLowerCase();
  const made = anyOf(here.map((part) => same(make, part.make)));
  const places = [place(made, `whether the ${name} is ${article(make)}`, `${name} is ${article(make)}`)];
  if (partMaker.trim() === "" || made === "contrary") return places;
  const by = anyOf(
    here.map((part) => (part.make === make ? madeBy(partMaker, part) : same(make, part.make))),
  );
  return [...places, place(by, `whether ${partMaker} made it`, `made by ${partMaker}`)];
}

/** Who made a part is written with more beside it: "Nordholt, by post". */
function madeBy(wanted: string, { maker }: OpenedPart): Lies {
  if (maker.trim() === "") return "unknown";
  return names(wanted, maker) ? "same" : "contrary";
}

function partsNamed({ item }: Scope, { parts }: Opening): OpenedPart[] {
  return item.trim() === "" ? [] : parts.filter((part) => names(item, part.name));
}

/** Of several parts of a name, one that fits is enough. */
function anyOf(all: readonly Lies[]): Lies {
  if (all.includes("same")) return "same";
  return all.length === 0 || all.includes("unknown") ? "unknown" : "contrary";
}

function article(make: "original" | "reproduction"): string {
  return make === "original" ? "an original" : "a reproduction";
}

function place(lies: Lies, what: string, holds: string): Place {
  return { lies, what, holds };
}

function same(wanted: string, found: string): Lies {
  if (wanted.trim() === "") return "same";
  if (found.trim() === "") return "unknown";
  return sameText(wanted, found) ? "same" : "contrary";
}

/** A range in words: "1925 to 1930", "from 1925", "up to K 1400". */
export function sayRange({ from, to }: { from: string; to: string }): string {
  if (from === "") return `up to ${to}`;
  return to === "" ? `from ${from}` : `${from} to ${to}`;
}
