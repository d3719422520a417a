import type { DrawnFigure, MeasurementLine, PartUse, Procedure, Step } from "./tree.ts";

/**
 * How a difference concerns somebody who has followed the earlier procedure: what was done may have to be done
 * again, or it is enough to read it. Whether it has to, only the restorer can say.
 */
export type Concern = "redo" | "read";

/** One thing that differs between two procedures of one build. */
export interface Difference {
  /** The step's number: in the later procedure, or in the earlier one where it has been left out. */
  step: number;
  /** The mark it came from. */
  mark: string;
  what: string;
  /** In words; empty where it is new. */
  before: string;
  /** In words; empty where it is gone. */
  after: string;
  concern: Concern;
}

/** What differs between two procedures of one build, in the order of the steps. Equal procedures differ in nothing. */
export function compareProcedures(before: Procedure, after: Procedure): Difference[] {
  const earlier = new Map(stepsOf(before).map((step) => [step.mark, step]));
  const later = new Map(stepsOf(after).map((step) => [step.mark, step]));
  const moved = movedSteps([...earlier.keys()], [...later.keys()]);
  const differences = [...later.values()].flatMap((step) => {
    const known = earlier.get(step.mark);
    if (!known) return [ofStep(step, "Step added", "", step.title)];
    const place = moved.has(step.mark)
      ? [
          ofStep(
            step,
            "Step moved",
            `Step ${known.number}, ${known.stage}`,
            `Step ${step.number}, ${step.stage}`,
          ),
        ]
      : [];
    return [...place, ...compareSteps(known, step)];
  });
  const gone = [...earlier.values()].filter((step) => !later.has(step.mark));
  return [...differences, ...gone.map((step) => ofStep(step, "Step left out", step.title, ""))];
}

/** What a procedure says at a mark, in words; of a step's own mark, all that the step says. Empty where it says nothing. */
export function sayingsAt(procedure: Procedure, mark: string): string[] {
  return stepsOf(procedure)
    .flatMap((step) => [...sayingsOf(step).values()].filter((one) => mark === step.mark || mark === one.mark))
    .map(({ what, words }) => `${what}: ${words}`);
}

function stepsOf(procedure: Procedure): Step[] {
  return procedure.stages.flatMap(({ steps }) => steps);
}

function ofStep({ number, mark }: Step, what: string, before: string, after: string): Difference {
  return { step: number, mark, what, before, after, concern: "redo" };
}

/** Something that a step says: what it is, its words, and what it means for who has done the step. */
interface Saying {
  mark: string;
  what: string;
  words: string;
  concern: Concern;
  /** Of pictures: what tells two of them apart where their words are the same, and the words that then say so. */
  seen?: { exactly: string; otherwise: string };
}

function compareSteps(before: Step, after: Step): Difference[] {
  const earlier = sayingsOf(before);
  const later = sayingsOf(after);
  const keys = new Set([...later.keys(), ...earlier.keys()]);
  return [...keys].flatMap((key) => {
    const was = earlier.get(key);
    const is = later.get(key);
    const { mark, what, concern } = (is ?? was) as Saying;
    if (was?.words === is?.words && was?.seen?.exactly === is?.seen?.exactly) return [];
    const now = was?.words === is?.words ? is?.seen?.otherwise : is?.words;
    return [{ step: after.number, mark, what, before: was?.words ?? "", after: now ?? "", concern }];
  });
}

/** All that a step says, each under a key that is the same in every procedure of the build. */
function sayingsOf(step: Step): Map<string, Saying> {
  const all = new Map<string, Saying>();
  const say = (mark: string, what: string, words: string, concern: Concern, seen?: Saying["seen"]) => {
    if (words !== "") all.set(`${mark}/${what}`, { mark, what, words, concern, seen });
  };
  say(step.mark, "Instruction", step.title, "redo");
  for (const one of step.details) say(one.mark, "How", one.text, "redo");
  say(step.mark, "Then look for", step.result, "read");
  for (const one of step.cautions)
    say(one.mark, "Caution", join([one.signal, one.hazard, one.consequence, one.avoid]), "read");
  for (const one of step.parts) say(one.mark, "Part", partWords(one), "redo");
  for (const one of step.measurements)
    for (const [value, name] of bindingValues) say(one.mark, name, valueWords(one, value), "redo");
  for (const one of step.measurements)
    for (const [value, name] of ownValues) say(one.mark, name, valueWords(one, value), "read");
  for (const one of step.tools) say(one.mark, "Tool", join([one.name, one.detail, one.note]), "read");
  for (const one of step.consumables)
    say(one.mark, "Consumable", join([one.name, one.detail, one.note]), "redo");
  for (const one of step.gotchas)
    say(one.mark, "Gotcha", join([one.symptom, one.part ?? "", one.why, one.instead]), "read");
  for (const one of step.deferred)
    say(one.mark, "Deferred", join([one.what, one.part ?? "", one.waitsFor]), "read");
  for (const { mark, soak } of step.deferred)
    if (soak) say(mark, "How long", join([soak.least, soak.longest, soak.why]), "redo");
  const { length } = step.stills;
  const pictures = length === 0 ? "" : `${length} ${length === 1 ? "picture" : "pictures"}`;
  const exactly = step.stills.map((one) => one.sha256).join();
  say(step.mark, "Pictures", pictures, "read", { exactly, otherwise: `${pictures}, not the same as before` });
  for (const [at, one] of step.stills.entries())
    say(one.mark, `Drawing on picture ${at + 1}`, drawingWords(one.drawn), "read", {
      exactly: placesOn(one.drawn),
      otherwise: "The same, drawn in other places",
    });
  return all;
}

/** What a reader works to; and what the restorer's own machine had. */
const bindingValues = [
  ["specified", "Specified"],
  ["limit", "Limit"],
] as const;
const ownValues = [
  ["asFound", "As found"],
  ["asFitted", "As fitted"],
] as const;

function valueWords(line: MeasurementLine, value: keyof MeasurementLine["values"]): string {
  const text = line.values[value]?.typed.trim() ?? "";
  return text === "" ? "" : join([line.what, line.part, line.mate ?? "", text]);
}

/** A drawing in words: its view, how the picture is shown, and what is pointed out and measured on it. */
function drawingWords(drawn: DrawnFigure | undefined): string {
  if (!drawn) return "";
  const { drawing, numbers, values } = drawn;
  const { quarter, straighten, light, crop, view, balloons, dimensions } = drawing;
  const pointed = balloons.map(({ item }) => numbers.find((one) => one.item === item)?.number ?? "?");
  const measured = dimensions.map(({ mark }) => values.find((one) => one.mark === mark)?.text ?? "?");
  return join([
    view,
    quarter !== 0 ? `turned ${quarter}°` : "",
    straighten !== 0 ? "straightened" : "",
    crop.width < 1 || crop.height < 1 ? "cropped" : "",
    light === 0 ? "" : light > 0 ? "lighter" : "darker",
    pointed.length > 0 ? `items ${pointed.join(", ")} pointed out` : "",
    measured.length > 0 ? `dimensions ${measured.join("; ")}` : "",
  ]);
}

/** Where everything on a drawing stands, and how it shows its picture, in hundredths: to compare, not to read. */
function placesOn(drawn: DrawnFigure | undefined): string {
  if (!drawn) return "";
  const { quarter, straighten, light, crop, balloons, dimensions } = drawn.drawing;
  const places = [
    crop,
    ...balloons.map(({ at }) => at),
    ...dimensions.flatMap(({ from, to }) => [from, to]),
  ].flatMap((place) => Object.values(place));
  return [quarter, straighten, ...[light, ...places].map((one) => Math.round(one * 100))].join();
}

function partWords({ name, event, count, wayRound, seat, note }: PartUse): string {
  return join([name, event, count, wayRound, seat, note]);
}

function join(words: (string | null)[]): string {
  return words.filter((one) => one?.trim()).join(" · ");
}

/**
 * Steps that stand in another order than before: as few as explain it, which are those outside a longest rising run
 * of the earlier places.
 */
function movedSteps(before: readonly string[], after: readonly string[]): Set<string> {
  const place = new Map(before.map((mark, at) => [mark, at]));
  const common = after.filter((mark) => place.has(mark));
  const places = common.map((mark) => place.get(mark) as number);
  const lengths: number[] = [];
  const previous: number[] = [];
  for (let at = 0; at < places.length; at++) {
    const earlier = places.slice(0, at).map((one, index) => (one < (places[at] as number) ? index : -1));
    const best = earlier
      .filter((index) => index >= 0)
      .reduce((a, b) => ((lengths[b] ?? 0) > (lengths[a] ?? 0) ? b : a), -1);
    previous.push(best);
    lengths.push((lengths[best] ?? 0) + 1);
  }
  const stayed = new Set<string>();
  for (let at = lengths.indexOf(Math.max(0, ...lengths)); at >= 0; at = previous[at] ?? -1)
    stayed.add(common[at] as string);
  return new Set(common.filter((mark) => !stayed.has(mark)));
}
