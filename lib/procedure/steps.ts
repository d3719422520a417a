import { type BuildDocument, present, type Recording, type Still } from "#lib/build/index.ts";
import { type Film, filmOf } from "#lib/cut/index.ts";
import {
  characteristicValues,
  isPartEvent,
  type Mark,
  signalWord,
  type TypedValue,
  typedOf,
  wordsOf,
} from "#lib/mark/index.ts";
import { momentOf } from "./moment.ts";
import type { Edited } from "./overlay.ts";
import { proposeAlt } from "./propose-alt.ts";
import type {
  CautionNote,
  DeferredLine,
  Figure,
  GotchaNote,
  Loose,
  MeasurementLine,
  PartUse,
  Step,
  SupplyUse,
} from "./tree.ts";

/** What the nodes of a step are made with: lookups over one document. */
export interface Lookup {
  recordings: ReadonlyMap<string, Recording>;
  stills: ReadonlyMap<string, Still[]>;
  itemNames: ReadonlyMap<string, string>;
  /** The mark that closes a mark, by the id of the closed one. */
  closers: ReadonlyMap<string, string>;
  /** The edited film; null where the build has none. */
  film: Film | null;
  /** The number of an item in the parts list. */
  balloon: (item: string) => number;
}

/** Lookups over a document; balloons are numbered as they are first asked for. */
export function lookupOf(document: BuildDocument): Lookup {
  const stills = new Map<string, Still[]>();
  for (const still of present(document.stills).sort(compareStills)) {
    stills.set(still.markId, [...(stills.get(still.markId) ?? []), still]);
  }
  const balloons = new Map<string, number>();
  return {
    recordings: new Map(document.recordings.map((recording) => [recording.id, recording])),
    stills,
    itemNames: new Map(document.items.map((item) => [item.id, item.name])),
    closers: closersOf(document),
    film: filmOf(document),
    balloon: (item) => {
      if (!balloons.has(item)) balloons.set(item, balloons.size + 1);
      return balloons.get(item) as number;
    },
  };
}

/** Which mark closes which, in this build or in another of the machine. Of several the first by id counts. */
function closersOf(document: BuildDocument): Map<string, string> {
  const closers = new Map<string, string>();
  const candidates = [
    ...present(document.marks).map((mark) => ({ id: mark.id, closes: mark.fields.closes ?? [] })),
    ...document.foreign,
  ].sort((a, b) => (a.id < b.id ? -1 : 1));
  for (const { id, closes } of candidates) {
    for (const closed of closes) if (closed !== id && !closers.has(closed)) closers.set(closed, id);
  }
  return closers;
}

/** A step of the procedure made of an edited draft. */
export function makeStep(edited: Edited, number: number, lookup: Lookup): Step {
  const { head, marks } = edited;
  const of = (kind: string) => marks.filter((mark) => mark.kind === kind);
  const step: Step = {
    mark: head.id,
    number,
    stage: edited.stage,
    title: edited.title ?? titleOf(head),
    details: detailsOf(edited),
    result: of("action")
      .map((mark) => wordsOf(mark, "result"))
      .filter(Boolean)
      .join(" "),
    cautions: of("caution").map(cautionNote),
    parts: of("part").map((mark) => partUse(mark, lookup)),
    measurements: of("measurement").map((mark) => measurementLine(mark, number, lookup)),
    tools: of("tool").map((mark) => supplyUse(mark, "size")),
    consumables: of("consumable").map((mark) => supplyUse(mark, "amount")),
    gotchas: of("gotcha").map((mark) => gotchaNote(mark, lookup)),
    deferred: of("deferred").map((mark) => deferredLine(mark, number, lookup)),
    stills: [],
    moment: momentOf(head, lookup),
    marks: marks.map((mark) => mark.id),
  };
  step.stills = marks.flatMap((mark) =>
    (lookup.stills.get(mark.id) ?? []).map((still) => figure(still, step)),
  );
  return step;
}

function titleOf(head: Mark): string {
  return wordsOf(head) || wordsOf(head, "item");
}

function detailsOf({ head, marks, title }: Edited): Step["details"] {
  return marks
    .filter((mark) => mark.kind === "action")
    .flatMap((mark) => [
      // Words of an action that is not the step's title stand as a paragraph of it.
      ...(mark === head || title === wordsOf(mark) ? [] : [{ mark: mark.id, text: wordsOf(mark) }]),
      { mark: mark.id, text: wordsOf(mark, "detail") },
    ])
    .filter((detail) => detail.text !== "");
}

/** The item a mark speaks of: its id, or its name in lower case while it has none; and the name to print. */
export function itemOf(
  mark: Mark,
  names: ReadonlyMap<string, string>,
): { item: string; name: string } | null {
  const typed = wordsOf(mark, "item");
  const id = mark.fields.itemId;
  if (id !== undefined && names.has(id)) return { item: id, name: names.get(id) as string };
  return typed === "" ? null : { item: `name:${typed.toLowerCase().replace(/\s+/g, " ")}`, name: typed };
}

export function partUse(mark: Mark, lookup: Lookup): PartUse {
  const item = itemOf(mark, lookup.itemNames) ?? { item: `mark:${mark.id}`, name: wordsOf(mark) };
  const event = wordsOf(mark, "event");
  return {
    mark: mark.id,
    ...item,
    balloon: lookup.balloon(item.item),
    event: isPartEvent(event) ? event : "",
    count: wordsOf(mark, "count"),
    wayRound: wordsOf(mark, "wayRound"),
    seat: seatOf(mark),
    container: wordsOf(mark, "container"),
    note: wordsOf(mark),
  };
}

/** "hole 1; in the stack “Thrust”, place 2; 0.5 mm thick; stamped A": what was said of it, and no more. */
function seatOf(mark: Mark): string {
  const [stack, place] = [wordsOf(mark, "stack"), wordsOf(mark, "stackPlace")];
  const said = (field: string, before: string, after = "") => {
    const text = wordsOf(mark, field) || typedOf(mark, field);
    return text === "" ? "" : `${before}${text}${after}`;
  };
  return [
    said("place", ""),
    stack === "" ? "" : `in the stack “${stack}”${place === "" ? "" : `, place ${place}`}`,
    said("between", "between "),
    said("thickness", "", " thick"),
    said("stamped", "stamped "),
    said("lookAlike", "its look-alike: "),
    said("covers", "over "),
    said("foundWrong", "wrong as found: "),
    said("origin", ""),
    said("insteadOf", "in place of "),
    said("fittedNumber", "fitted as "),
    // The parts list has one number, that of what is fitted.
    wordsOf(mark, "fittedNumber") === "" ? "" : said("partNumber", "was "),
    said("supersedes", "supersedes "),
    said("tightness", ""),
    said("torque", "torque "),
    wordsOf(mark, "once") === "once" ? "fit once only" : "",
  ]
    .filter(Boolean)
    .join("; ");
}

export function measurementLine(mark: Mark, step: number | null, lookup: Lookup): MeasurementLine {
  const values: MeasurementLine["values"] = {};
  for (const name of characteristicValues) {
    if (typedOf(mark, name) !== "") values[name] = mark.fields[name] as TypedValue;
  }
  const source = [wordsOf(mark, "source"), wordsOf(mark, "sourceNote")].filter(Boolean).join(": ");
  return {
    mark: mark.id,
    step,
    what: wordsOf(mark),
    part: itemOf(mark, lookup.itemNames)?.name ?? "",
    ...(wordsOf(mark, "mate") !== "" && { mate: wordsOf(mark, "mate") }),
    values,
    instrument: wordsOf(mark, "instrument"),
    source,
    note: wordsOf(mark, "note"),
  };
}

function cautionNote(mark: Mark): CautionNote {
  return {
    mark: mark.id,
    signal: signalWord(mark.fields),
    hazard: wordsOf(mark),
    consequence: wordsOf(mark, "consequence"),
    avoid: wordsOf(mark, "avoid"),
    source: wordsOf(mark, "sourceNote"),
  };
}

export function supplyUse(mark: Mark, detail: "size" | "amount"): SupplyUse {
  return {
    mark: mark.id,
    name: wordsOf(mark),
    detail: wordsOf(mark, detail),
    note: wordsOf(mark, "note"),
  };
}

function gotchaNote(mark: Mark, lookup: Lookup): GotchaNote {
  return {
    mark: mark.id,
    symptom: wordsOf(mark),
    ...partOf(mark, lookup),
    why: wordsOf(mark, "why"),
    instead: wordsOf(mark, "instead"),
  };
}

export function deferredLine(mark: Mark, step: number | null, lookup: Lookup): DeferredLine {
  return {
    mark: mark.id,
    step,
    what: wordsOf(mark),
    ...partOf(mark, lookup),
    waitsFor: wordsOf(mark, "waitsFor"),
    ...soakOf(mark),
    closedBy: lookup.closers.get(mark.id) ?? null,
  };
}

function partOf(mark: Mark, lookup: Lookup): { part?: string } {
  const part = itemOf(mark, lookup.itemNames)?.name ?? "";
  return part === "" ? {} : { part };
}

function soakOf(mark: Mark): Pick<DeferredLine, "soak"> {
  const [least, longest] = [typedOf(mark, "least"), typedOf(mark, "longest")];
  return least === "" && longest === "" ? {} : { soak: { least, longest, why: wordsOf(mark, "limitWhy") } };
}

export function loose(mark: Mark, lookup: Lookup): Loose {
  const words = wordsOf(mark) || wordsOf(mark, "item");
  return { mark: mark.id, kind: mark.kind, words, moment: momentOf(mark, lookup) };
}

function figure(still: Still, step: Step): Figure {
  const written = still.alt.trim();
  return {
    still: still.id,
    mark: still.markId,
    sha256: still.sha256,
    width: still.width,
    height: still.height,
    alt: written || proposeAlt(step),
    written: written !== "",
  };
}

function compareStills(a: Still, b: Still): number {
  return a.rank - b.rank || (a.at ?? 0) - (b.at ?? 0) || (a.id < b.id ? -1 : 1);
}
