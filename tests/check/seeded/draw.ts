import {
  type BuildDocument,
  type KitNote,
  newBuild,
  newDocument,
  newItem,
  newKit,
  newMachine,
  newRecording,
  newSitting,
  newStill,
} from "#lib/build/index.ts";
import { type Fields, type Mark, newMark, type Stage } from "#lib/mark/index.ts";

export interface BuildSpec {
  trade: string;
  title: string;
  parts: string[];
  kit?: string[];
  notes?: Record<string, KitNote>;
  /** Parts that are tried before anything is put together. */
  trial?: string[];
  left: { words: string; until: string; item: string }[];
  soak?: { words: string; least?: string; longest: string; lasts: number };
}

interface Part {
  name: string;
  count: string;
  says: Record<string, unknown>;
  once: boolean;
  from: string;
  container: string;
  torque: string;
}

/** "Name; 4; way=…; over=…; stack=name:place:thickness; stamped=…; place=…; alike=…; torque=…; once; new=kit". */
function partOf(line: string): Part {
  const [name = "", count = "1", ...rest] = line.split(";").map((cell) => cell.trim());
  const said = new Map(rest.map((cell) => cell.split("=", 2) as [string, string | undefined]));
  const [stack, stackPlace, thickness] = (said.get("stack") ?? "").split(":");
  const says = {
    wayRound: said.get("way"),
    covers: said.get("over"),
    stamped: said.get("stamped"),
    place: said.get("place"),
    lookAlike: said.get("alike"),
    ...(stack ? { stack, stackPlace, thickness: { typed: thickness } } : {}),
  };
  return {
    name,
    count,
    says: Object.fromEntries(Object.entries(says).filter(([, value]) => value !== undefined)),
    once: said.has("once"),
    from: said.get("new") ?? "",
    container: said.get("container") ?? "",
    torque: said.get("torque") ?? "",
  };
}

/** The build that a few lines stand for, filmed in four sittings, with all that a clean one has. */
export function draw(spec: BuildSpec, number: number): BuildDocument {
  const parts = spec.parts.map(partOf);
  const pen = new Pen(`build-${number}`);
  const names = [...new Set(parts.map((part) => part.name))];
  const document = newDocument({
    machine: newMachine({ id: `machine-${number}`, name: spec.title, serial: String(1000 + number) }),
    items: names.map((name, index) =>
      newItem({ id: `item-${number}-${index}`, machineId: `machine-${number}`, name }),
    ),
    build: newBuild({ id: `build-${number}`, machineId: `machine-${number}`, title: spec.title }),
    sittings: ["strip", "inspect", "trial fit", "assemble"].map((stage, rank) =>
      newSitting({ id: stage, buildId: `build-${number}`, title: stage, stage: stage as Stage, rank }),
    ),
    recordings: ["strip", "inspect", "trial fit", "assemble"].map((stage) =>
      newRecording({
        id: `film of ${stage}`,
        buildId: `build-${number}`,
        sittingId: stage,
        name: `${stage}.mp4`,
      }),
    ),
    kits: spec.kit
      ? [
          newKit({
            id: `kit-${number}`,
            buildId: `build-${number}`,
            name: "Overhaul kit",
            text: spec.kit.join("\n"),
            lines: spec.notes ?? {},
          }),
        ]
      : [],
  });
  strip(pen, parts);
  inspect(pen, parts, spec);
  tryOut(pen, parts, spec);
  assemble(pen, parts, spec);
  document.marks = pen.marks.map((mark) => ({ ...mark, fields: withItem(mark.fields, document) }));
  document.stills = pen.marks
    .filter((mark) => mark.kind === "action")
    .map((mark) =>
      newStill({
        id: `still of ${mark.id}`,
        buildId: mark.buildId,
        markId: mark.id,
        sha256: "0".repeat(64),
        alt: "The place before the hand covers it.",
      }),
    );
  return document;
}

function withItem(fields: Fields, document: BuildDocument): Fields {
  const item = document.items.find((one) => one.name === fields.item);
  return item ? { ...fields, itemId: item.id } : fields;
}

/** Writes marks one after the other, ten seconds apart. */
class Pen {
  readonly marks: Mark[] = [];
  #at = 0;
  #sitting = "strip";
  readonly buildId: string;

  constructor(buildId: string) {
    this.buildId = buildId;
  }

  sitting(id: string): void {
    this.#sitting = id;
    this.#at = 0;
  }

  wait(seconds: number): void {
    this.#at += seconds;
  }

  write(kind: Mark["kind"], fields: Record<string, unknown>): Mark {
    this.#at += 10;
    const mark = newMark({
      id: `${this.#sitting} ${this.#at}`,
      buildId: this.buildId,
      sittingId: this.#sitting,
      recordingId: `film of ${this.#sitting}`,
      at: this.#at,
      kind,
      fields: { v: 1, ...fields },
    });
    this.marks.push(mark);
    return mark;
  }

  part(part: Part, event: string, more: Record<string, unknown> = {}): Mark {
    return this.write("part", { item: part.name, event, count: part.count, ...more });
  }
}

const lower = (part: Part) => part.name.toLowerCase();

/** Spoken before the first part and the fourth: the part is heavy, sharp or under load. */
const warning = (part: Part) => ({
  words: `The edge of the ${lower(part)} can cut.`,
  consequence: "A cut hand.",
  harms: "person",
  severity: "minor",
  likelihood: "could",
  avoid: "Wear gloves.",
  sourceNote: "common practice, no source",
});

function strip(pen: Pen, parts: Part[]): void {
  pen.write("tool", { words: "Ring spanner", size: "a set" });
  for (const [index, part] of parts.entries()) {
    if (index % 3 === 0 && index < 6) pen.write("caution", warning(part));
    const how = part.torque ? " with the ring spanner" : "";
    pen.write("action", { words: `Take off the ${lower(part)}${how}.` });
    pen.part(part, "removed", {
      ...part.says,
      ...(part.once ? { once: "once" } : {}),
      ...(part.container ? { container: part.container } : {}),
    });
  }
}

function inspect(pen: Pen, parts: Part[], { soak }: BuildSpec): void {
  pen.sitting("inspect");
  for (const part of parts.filter((one) => one.once)) {
    pen.write("action", { words: `Put the old ${lower(part)} aside.` });
    pen.part(part, "scrapped");
    if (part.from === "made" || part.from === "obtained") pen.part(part, part.from);
  }
  if (soak) {
    const { words, least, longest, lasts } = soak;
    pen.write("action", { words: "Hang the parts in." });
    const limits = { ...(least ? { least: { typed: least } } : {}), longest: { typed: longest } };
    const left = pen.write("deferred", { words, ...limits, limitWhy: "common practice of this shop" });
    pen.wait(lasts - 10);
    pen.write("action", { words: "Take the parts out.", closes: [left.id] });
  }
}

function tryOut(pen: Pen, parts: Part[], { trial = [] }: BuildSpec): void {
  pen.sitting("trial fit");
  const tried = parts.filter((part) => trial.includes(part.name));
  for (const part of tried.toReversed()) {
    pen.write("action", { words: `Try the ${lower(part)} dry.` });
    pen.part(part, "fitted");
  }
  for (const part of tried) {
    pen.write("action", { words: `Take off the ${lower(part)} again.` });
    pen.part(part, "removed");
  }
}

function assemble(pen: Pen, parts: Part[], { left }: BuildSpec): void {
  pen.sitting("assemble");
  const open: Mark[] = [];
  for (const part of parts.toReversed()) {
    pen.write("action", { words: `Fit the ${lower(part)}.` });
    const torque = part.torque ? { torque: { typed: part.torque } } : {};
    const source = part.from === "kit" ? { source: "Overhaul kit" } : {};
    const { lookAlike: _, ...says } = part.says;
    pen.part(part, "fitted", { ...says, ...torque, ...source });
    for (const { words, until, item } of left.filter((one) => one.item === part.name)) {
      open.push(pen.write("deferred", { words, waitsFor: until, item }));
    }
    if (part.torque) {
      pen.write("tool", { words: "Torque wrench", size: "1/4 in square" });
      pen.write("action", { words: `Torque the ${lower(part)} to ${part.torque} with the torque wrench.` });
      pen.part(part, "torqued");
    }
  }
  for (const deferred of open) {
    pen.write("action", { words: "Put right what was left.", closes: [deferred.id] });
  }
}
