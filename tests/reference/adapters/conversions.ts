import {
  convert,
  type Quantity,
  quantitiesOf,
  type ReadOptions,
  type Role,
  rational,
  read,
  toNumber,
  type Unit,
  unitByCode,
} from "#lib/quantity/index.ts";
import type { Adapter } from "../row.ts";

/** Long names of forces, as tables write them, in the short form in which people do. */
const short = (name: string): string =>
  name
    .replace(/\bpounds?[- ]force\b/, "lbf")
    .replace(/\bounces?[- ]force\b/, "ozf")
    .replace(/\bkilograms?[- ]force\b/, "kgf")
    .replace(/\bmillimetres? of\b/, "mm of")
    .replace(/\binch(?:es)?\b(?= *$)/, "in");

/** The unit that a table of conversions calls so: "horsepower, metric (PS)", "inch of mercury, conventional". */
function unitNamed(name: string): Unit {
  const plain = name.replace(/\s*\([^)]*\)/g, "").trim();
  const bracketed = /\(([^)]*)\)/.exec(name)?.[1]?.split(", ") ?? [];
  const turned = plain.split(", ").reverse().join(" ");
  const bare = plain.replace(/^(?:standard|conventional|hex(?:agon)?) |,.*$| avoirdupois$/g, "");
  const spellings = [name, plain, ...bracketed, turned, bare, short(bare)];
  const found = spellings.map(unitOf).find((unit) => unit !== null) ?? unitByCode(name);
  if (!found) throw new Error(`the unit “${name}” is not known`);
  return found;
}

/** What settles a name that has several meanings in a sentence, but not in a table. */
const settled: ReadOptions[] = [{ region: "GB" }, { expect: "angle" }, { region: "US" }];

function unitOf(spelling: string): Unit | null {
  for (const options of settled) {
    const reading = read(`1 ${spelling}`, options);
    const [only, more] = quantitiesOf(reading);
    const alone = !("words" in reading && reading.words);
    if (only && !more && alone && only.ucum !== "1" && only.value.exact === "1") return unitByCode(only.ucum);
  }
  return null;
}

/** What is converted: a written value, or a number with a unit's name. Screws advance by their pitch. */
function given(value: unknown, from: string): { exact: string; ucum: string; role?: Role } {
  const pitch = /^turns? (?:at|of) (.+)$/.exec(from)?.[1];
  if (pitch) return advance(Number(value), quantitiesOf(read(pitch))[0]);
  if (typeof value === "string") {
    const [written] = quantitiesOf(read(value));
    if (!written) throw new Error(`“${value}” was not read`);
    return { exact: written.value.exact, ucum: written.ucum };
  }
  return { exact: `${value}`, ucum: unitNamed(from).ucum };
}

function advance(turns: number, pitch: Quantity | undefined): { exact: string; ucum: string } {
  if (!pitch) throw new Error("the pitch was not read");
  const perInch = toNumber(rational(convert(pitch.value.exact, pitch.ucum, "/[in_i]")));
  return { exact: `${turns / perInch}`, ucum: "[in_i]" };
}

export const adapter: Adapter = ({ input }) => {
  const { exact, ucum } = given(input.value, `${input.from}`);
  const target = unitNamed(`${input.to}`);
  const role = input.kind === "temperature difference" ? "difference" : undefined;
  return { value: toNumber(rational(convert(exact, ucum, target.ucum, role))), unit: input.to };
};
