import { type LedgerEvent, readCount } from "./events.ts";
import { fold } from "./fold.ts";
import { type Ledger, putsOn } from "./ledger.ts";

/** One layer of a stack. */
export interface Layer {
  event: LedgerEvent;
  /** Item and stamp: what tells this layer from the next. */
  key: string;
  words: string;
}

/** A stack as it came off and as it went back, from the bottom up. */
export interface Stack {
  name: string;
  off: Layer[];
  on: Layer[];
  /** Thickness of all layers in metres; null where one of them has none. */
  before: number | null;
  after: number | null;
  /** Every layer was taken off, or put on, with its place said. */
  difference: StackDifference | null;
}

export type StackDifference = "missing" | "more" | "the other way round" | "another order";

/** Every stack that is named, by its name. Trial fits are left aside. */
export function stacksOf(ledger: Ledger): Stack[] {
  const names = new Map<string, string>();
  for (const { says } of ledger.events) if (says.stack !== "") names.set(fold(says.stack), says.stack);
  return [...names].map(([folded, name]) => {
    const own = ledger.events.filter((one) => fold(one.says.stack) === folded && one.stage !== "trial fit");
    const lastOn = own.filter(putsOn);
    const firstBack = lastOn[0]?.order ?? Number.POSITIVE_INFINITY;
    const off = layers(own.filter((one) => one.event === "removed" && one.order < firstBack)).reverse();
    const on = layers(lastFitting(own));
    const bottomUpOff = byPlace(off);
    const bottomUpOn = byPlace(on);
    return {
      name,
      off: bottomUpOff,
      on: bottomUpOn,
      before: total(bottomUpOff),
      after: total(bottomUpOn),
      difference: bottomUpOff.length > 0 && bottomUpOn.length > 0 ? compare(bottomUpOff, bottomUpOn) : null,
    };
  });
}

/** The fittings that stand: those before a later taking-off have been undone. */
function lastFitting(events: readonly LedgerEvent[]): LedgerEvent[] {
  const on: LedgerEvent[] = [];
  for (const event of events) {
    if (putsOn(event)) on.push(event);
    else if (event.event === "removed") {
      const index = on.findLastIndex((one) => keyOf(one) === keyOf(event));
      if (index >= 0) on.splice(index, 1);
    }
  }
  return on;
}

function layers(events: readonly LedgerEvent[]): Layer[] {
  return events.flatMap((event) =>
    Array.from({ length: Math.min(event.count ?? 1, 100) }, () => ({
      event,
      key: keyOf(event),
      words: [event.name, event.says.stamped, event.says.thickness].filter(Boolean).join(", "),
    })),
  );
}

function keyOf({ item, says }: LedgerEvent): string {
  return `${item}\n${fold(says.stamped)}`;
}

/** By the place that each layer says; in the order given where one of them does not. */
function byPlace(given: Layer[]): Layer[] {
  const places = given.map((layer) => readCount(layer.event.says.stackPlace));
  if (places.some((place) => place === null)) return given;
  return given
    .map((layer, index) => ({ layer, place: places[index] as number, index }))
    .sort((a, b) => a.place - b.place || a.index - b.index)
    .map(({ layer }) => layer);
}

function compare(off: Layer[], on: Layer[]): StackDifference | null {
  const [a, b] = [off.map((layer) => layer.key), on.map((layer) => layer.key)];
  if (a.length > b.length) return "missing";
  if (b.length > a.length) return "more";
  if (same([...a].sort(), [...b].sort()) === false) return "missing";
  if (same(a, b)) return null;
  return same(a.toReversed(), b) ? "the other way round" : "another order";
}

function same(a: string[], b: string[]): boolean {
  return a.length === b.length && a.every((key, index) => key === b[index]);
}

function total(all: Layer[]): number | null {
  if (all.length === 0 || all.some((layer) => layer.event.thickness === null)) return null;
  return all.reduce((sum, layer) => sum + (layer.event.thickness as number), 0);
}

/** A length for words: "1.25 mm". Metres in, thousandths of a millimetre out, no figures that mean nothing. */
export function sayMillimetres(metres: number, decimal: "." | ","): string {
  const text = (metres * 1000).toFixed(3).replace(/\.?0+$/, "");
  return `${decimal === "," ? text.replace(".", ",") : text} mm`;
}
