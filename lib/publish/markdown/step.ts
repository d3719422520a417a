import type { BlockContent, RootContent } from "mdast";
import type {
  CautionNote,
  Figure,
  GotchaNote,
  MeasurementLine,
  PartUse,
  Step,
  SupplyUse,
} from "#lib/procedure/tree.ts";
import { altOf, viewName } from "../figure-lines.ts";
import { printedValue } from "../quantity.ts";
import {
  filmNote,
  instructionOf,
  partEventText,
  partRemarks,
  sentence,
  signalText,
  sourceText,
  valueNames,
} from "../words.ts";
import { heading, list, oneLine, paragraph, prose, strong, table } from "./nodes.ts";

/** A step: what can hurt stands before what is done. */
export function stepNodes(step: Step, nameOf: NameOf): RootContent[] {
  return [
    heading(3, `Step ${step.number}`),
    ...step.cautions.map((one) => cautionNode(one)),
    paragraph(strong(instructionOf(step))),
    ...pictures(step, nameOf),
    ...step.gotchas.flatMap(gotchaNodes),
    ...step.details.flatMap((detail) => prose(detail.text)),
    ...group("Tools", step.tools.map(supplyItem)),
    ...group("Uses up", step.consumables.map(supplyItem)),
    ...group("Parts", step.parts.map(partItem)),
    ...step.measurements.flatMap(measurementNodes),
    ...(step.result ? [paragraph(strong("Then look for:"), ` ${oneLine(step.result)}`)] : []),
    ...step.deferred.map((line) =>
      paragraph(strong(line.closedBy === null ? "Left open:" : "Closed since:"), ` ${deferredText(line)}`),
    ),
    ...filmNodes(step),
  ];
}

/** A caution as a quotation that begins with its signal word; `after` is its last paragraph. */
export function cautionNode(caution: Omit<CautionNote, "mark">, after = ""): RootContent {
  const children: BlockContent[] = [
    paragraph(strong(signalText(caution.signal)), ` ${sentence(oneLine(caution.hazard))}`),
    ...prose(caution.consequence),
    ...prose(caution.avoid),
    paragraph(sourceText(oneLine(caution.source))),
    ...(after === "" ? [] : [paragraph(after)]),
  ];
  return { type: "blockquote", children };
}

export function deferredText(line: { what: string; waitsFor: string }): string {
  const until = line.waitsFor.trim() === "" ? "" : ` Until: ${sentence(oneLine(line.waitsFor))}`;
  return sentence(oneLine(line.what)) + until;
}

/** The name of a figure's file; null where it is missing. */
type NameOf = (figure: Figure) => string | null;

function pictures(step: Step, nameOf: NameOf): RootContent[] {
  const found = step.stills.flatMap((figure) => {
    const url = nameOf(figure);
    if (url === null) return [];
    const view = oneLine(viewName(figure));
    const image = { type: "image" as const, url, alt: oneLine(altOf(figure, instructionOf(step))) };
    return view === "" ? [paragraph(image)] : [paragraph(strong(view)), paragraph(image)];
  });
  if (found.length > 0) return found;
  return [paragraph(step.stills.length > 0 ? "Picture missing." : "No picture.")];
}

function group(title: string, items: Parameters<typeof list>[0]): RootContent[] {
  return items.length === 0 ? [] : [paragraph(strong(`${title}:`)), ...list(items)];
}

function partItem(use: PartUse): Parameters<typeof list>[0][number] {
  const said = [partEventText(use), ...partRemarks(use)]
    .filter(Boolean)
    .map((one) => sentence(oneLine(one)))
    .join(" ");
  return [`No. ${use.balloon} `, strong(use.name || "Unnamed part"), said === "" ? "" : `: ${said}`];
}

function supplyItem(use: SupplyUse): Parameters<typeof list>[0][number] {
  return [[use.name, use.detail, use.note].map(oneLine).filter(Boolean).join(", ")];
}

function measurementNodes(line: MeasurementLine): RootContent[] {
  const values = valueNames.map(([name]) => valueText(line, name));
  const notes = [
    line.instrument && `Instrument: ${oneLine(line.instrument)}`,
    sourceText(oneLine(line.source)),
    oneLine(line.note),
  ].filter((note) => note !== "");
  return [
    paragraph(strong(`Measure: ${measured(line)}`)),
    table(
      valueNames.map(([, label]) => label),
      [values],
    ),
    paragraph(notes.map(sentence).join(" ")),
  ];
}

/** What is measured, and of which part. */
export function measured(line: MeasurementLine): string {
  return [line.what || "not said what", line.part].map(oneLine).filter(Boolean).join(", ");
}

export function valueText(line: MeasurementLine, name: keyof MeasurementLine["values"]): string {
  const value = line.values[name];
  if (!value) return "";
  const { typed, other } = printedValue(value);
  return other === null ? typed : `${typed} (${other})`;
}

function gotchaNodes(gotcha: GotchaNote): RootContent[] {
  const says: [string, string][] = [
    ["What bit:", gotcha.symptom],
    ["Why:", gotcha.why],
    ["Instead:", gotcha.instead],
  ];
  return says
    .filter(([, text]) => text.trim() !== "")
    .map(([label, text]) => paragraph(strong(label), ` ${oneLine(text)}`));
}

function filmNodes({ moment }: Step): RootContent[] {
  if (!moment) return [];
  const note = filmNote(moment);
  if (moment.link === null) return note === "" ? [] : [paragraph(note)];
  const link: BlockContent = {
    type: "paragraph",
    children: [
      { type: "text", value: "Film: " },
      { type: "link", url: moment.link, children: [{ type: "text", value: moment.written }] },
      ...(note === "" ? [] : [{ type: "text" as const, value: `, ${note}` }]),
    ],
  };
  return [link];
}
