import type { RootContent } from "mdast";
import { remark } from "remark";
import remarkGfm from "remark-gfm";
import type { CheckedProcedure, Procedure } from "#lib/procedure/tree.ts";
import { type BriefNote, briefHeading } from "../brief.ts";
import { cleanTree, type Replaced, replacedSentence, textCleaner } from "../clean.ts";
import { closeOutChecks, closeOutHeading } from "../close-out.ts";
import { contentHash } from "../content-hash.ts";
import { limits } from "../limits.ts";
import { type Output, type PublishOptions, textFile } from "../output.ts";
import type { History } from "../release/history.ts";
import { type SheetState, sheetState } from "../state.ts";
import { fetchStills, figureFiles, filesOnce } from "../stills.ts";
import {
  againText,
  allSteps,
  changedText,
  correctionPlace,
  correctionStanding,
  groupedCautions,
  inRuns,
  measuredText,
  openItems,
  stageName,
  stepNumbers,
  titleBlock,
  titleOf,
  valueNames,
} from "../words.ts";
import { heading, list, oneLine, paragraph, prose, root, strong, table } from "./nodes.ts";
import { cautionNode, deferredText, stepNodes, valueText } from "./step.ts";

/**
 * The procedure as Markdown (GFM): `procedure.md`, and its stills beside it. Equal procedures give equal bytes.
 */
export async function toMarkdown(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const replaced: Replaced = new Map();
  const procedure = cleanTree(checked.procedure, textCleaner(replaced));
  const stills = await fetchStills(procedure, options);
  const figures = figureFiles(procedure, stills);
  const history = options.history && cleanTree(options.history, textCleaner(replaced));
  const state = cleanTree(sheetState(checked, options, contentHash(checked)), textCleaner(replaced));
  const brief = cleanTree(options.brief ?? [], textCleaner(replaced));
  const tree = root([
    ...front(procedure, state, { brief, corrections: history ? corrections(history) : [] }),
    ...procedure.stages.flatMap(({ stage, steps }) => [
      heading(2, stageName(stage)),
      ...steps.flatMap((step) => stepNodes(step, (figure) => figures.get(figure.still)?.name ?? null)),
    ]),
    ...measurements(procedure),
    ...closeOut(procedure),
    ...(history ? revisions(history) : []),
  ]);
  const text = remark().use(remarkGfm).data("settings", { bullet: "-", rule: "-" }).stringify(tree);
  const lost = replacedSentence(replaced, "U+FFFD", "they have no printed form");
  return {
    files: [textFile("procedure.md", text), ...filesOnce(figures)],
    losses: [
      "Markdown has no tick boxes to write on, no boxes for the reader's own readings and no QR codes.",
      ...stills.losses,
      ...(lost ? [lost] : []),
    ],
  };
}

function front(
  procedure: Procedure,
  state: SheetState,
  { brief, corrections }: { brief: readonly BriefNote[]; corrections: RootContent[] },
): RootContent[] {
  const open = openItems(procedure);
  const cautions = groupedCautions(procedure);
  return [
    heading(1, titleOf(procedure)),
    paragraph(state.line),
    ...list(titleBlock(procedure).map(({ label, value }) => [strong(`${label}:`), ` ${oneLine(value)}`])),
    ...prose(procedure.summary),
    ...corrections,
    ...(open.length > 0
      ? [
          heading(2, "Left open"),
          ...list(
            open.map((line) => [deferredText(line), stepSuffix(line.step === null ? [] : [line.step])]),
          ),
        ]
      : []),
    heading(2, limits.heading),
    ...limits.paragraphs.map((text) => paragraph(text)),
    ...(brief.length > 0 ? [heading(2, briefHeading), ...brief.flatMap(briefNodes)] : []),
    ...(cautions.length > 0
      ? [heading(2, "Before you start"), ...cautions.map((one) => cautionNode(one, stepNumbers(one.steps)))]
      : []),
    ...supplies("Tools", procedure.tools),
    ...supplies("Consumables", procedure.consumables),
    ...parts(procedure),
    ...(allSteps(procedure).length === 0 ? [paragraph("There are no steps yet.")] : []),
  ];
}

function corrections({ corrections }: History): RootContent[] {
  if (corrections.length === 0) return [];
  const items = corrections.map((line) => [
    strong(`${correctionPlace(line)}:`),
    ` ${[line.value, line.correction && `Right is: ${line.correction}`, correctionStanding(line)].map(oneLine).filter(Boolean).join(" ")}`,
  ]);
  return [heading(2, "Corrections"), ...list(items)];
}

function revisions({ revisions }: History): RootContent[] {
  if (revisions.length === 0) return [];
  const items = revisions.map((line, index) => [
    strong(`Revision ${line.revision}, ${line.date}:`),
    ` ${[changedText(revisions, index), index === revisions.length - 1 ? "" : againText(line)].map(oneLine).filter(Boolean).join(" ")}`,
  ]);
  return [heading(2, "Revisions"), ...list(items)];
}

/** A gotcha stands as one list, its symptom first. */
function briefNodes(note: BriefNote): RootContent[] {
  const [symptom, ...rest] = note;
  return [
    ...(symptom ? [paragraph(strong(symptom[1]))] : []),
    ...list(rest.map(([label, text]) => [strong(label), ` ${oneLine(text)}`])),
  ];
}

function supplies(title: string, lines: Procedure["tools"]): RootContent[] {
  if (lines.length === 0) return [];
  const items = lines.map((line) => [
    [line.name, line.detail].map(oneLine).filter(Boolean).join(", "),
    stepSuffix(line.steps),
  ]);
  return [heading(2, title), ...list(items)];
}

function parts({ parts }: Procedure): RootContent[] {
  if (parts.length === 0) return [];
  const heads = [
    "No.",
    "Part",
    "Quantity",
    "Part number",
    "Size or thread",
    "Material",
    "Where from",
    "Steps",
  ];
  const rows = parts.map((part) => [
    String(part.balloon),
    part.name,
    part.quantity === null ? "" : String(part.quantity),
    part.partNumber,
    part.size,
    part.material,
    part.source,
    inRuns(part.steps),
  ]);
  return [heading(2, "Parts list"), table(heads, rows)];
}

function measurements({ measurements }: Procedure): RootContent[] {
  if (measurements.length === 0) return [];
  const heads = ["Step", "What", ...valueNames.map(([, label]) => label), "Instrument", "Source"];
  const rows = measurements.map((line) => [
    line.step === null ? "" : String(line.step),
    oneLine(measuredText(line)),
    ...valueNames.map(([name]) => valueText(line, name)),
    line.instrument,
    line.source,
  ]);
  return [heading(2, "Measurements"), table(heads, rows)];
}

function closeOut(procedure: Procedure): RootContent[] {
  const checks = closeOutChecks(procedure);
  return checks.length === 0
    ? []
    : [heading(2, closeOutHeading), ...list(checks.map(({ text }) => [oneLine(text)]))];
}

function stepSuffix(steps: readonly number[]): string {
  return steps.length === 0 ? "" : ` (${stepNumbers(steps).toLowerCase()})`;
}
