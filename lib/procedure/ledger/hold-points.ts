import { type BuildDocument, present } from "#lib/build/index.ts";
import { type CharacteristicValue, type Mark, typedOf, wordsOf } from "#lib/mark/index.ts";
import { stepsOf } from "../compile.ts";
import type { Procedure } from "../tree.ts";
import { fastenersOf } from "./fasteners.ts";
import { fold } from "./fold.ts";
import type { Ledger } from "./ledger.ts";

/** Something to be looked at before the machine first runs. */
export interface HoldPoint {
  /** What it was made from. */
  from: "left provisional" | "not torqued" | "limit" | "hazard";
  mark: string;
  words: string;
  /** Under which key the restorer's word is kept that it was looked at. */
  key: string;
  /** What the restorer said; null while it stands. Open items and torques are answered by marks alone. */
  answer: string | null;
}

/** A reading of the first run. */
export interface FirstReading {
  mark: string;
  words: string;
  asFitted: string;
  limit: string;
}

/** The hold points of the stage “prove”, made from what is open, from limits and from hazards. */
export function holdPointsOf(ledger: Ledger, procedure: Procedure, document: BuildDocument): HoldPoint[] {
  const answers = new Map(present(document.answers).map((one) => [one.key, one.reason]));
  const point = (from: HoldPoint["from"], mark: string, words: string): HoldPoint => {
    const key = `hold/${from}/${mark}`;
    return { from, mark, words, key, answer: answers.get(key) ?? null };
  };
  const open = procedure.deferred
    .filter((line) => line.closedBy === null)
    .map((line) => point("left provisional", line.mark, line.what));
  const loose = fastenersOf(ledger, document).flatMap((one) =>
    one.fitted && one.torqued < one.on ? [point("not torqued", one.fitted.mark, one.name)] : [],
  );
  const marks = present(document.marks);
  const measured = marks.filter((mark) => mark.kind === "measurement");
  const met = new Set(measured.filter((mark) => typedOf(mark, "asFitted") !== "").map(characteristic));
  const limits = measured
    .filter((mark) => typedOf(mark, "limit") !== "" && !met.has(characteristic(mark)))
    .map((mark) =>
      point("limit", mark.id, `${wordsOf(mark)}: limit ${typedOf(mark, "limit")}, not measured as fitted`),
    );
  const hazards = stepsOf(procedure)
    .filter((step) => step.stage === "set up" || step.stage === "prove")
    .flatMap((step) => step.cautions)
    .map((one) =>
      point("hazard", one.mark, [one.hazard.replace(/[.\s]+$/, ""), one.avoid].filter(Boolean).join(": ")),
    );
  return [...open, ...loose, ...limits, ...hazards];
}

/** What tells one characteristic from another: the part, and what is measured of it. */
function characteristic(mark: Mark): string {
  return `${fold(wordsOf(mark, "item"))}\n${fold(wordsOf(mark))}`;
}

/** What was read at the first run: measurements of the stage “prove”. */
export function firstReadings(procedure: Procedure): FirstReading[] {
  const typed = (value: { typed: string } | undefined) => value?.typed ?? "";
  return stepsOf(procedure)
    .filter((step) => step.stage === "prove")
    .flatMap((step) => step.measurements)
    .map(({ mark, what, values }) => {
      const of = (name: CharacteristicValue) => typed(values[name]);
      return { mark, words: what, asFitted: of("asFitted"), limit: of("limit") || of("specified") };
    });
}
