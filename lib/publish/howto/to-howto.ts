import { publishedLink } from "#lib/procedure/index.ts";
import type {
  CautionNote,
  CheckedProcedure,
  DeferredLine,
  GotchaNote,
  Procedure,
  StageOfSteps,
  Step,
  SupplyLine,
} from "#lib/procedure/tree.ts";
import { isoDuration } from "#lib/time/index.ts";
import { cleanTree, type Replaced, replacedSentence, textCleaner } from "../clean.ts";
import { contentHash } from "../content-hash.ts";
import { altOf } from "../figure-lines.ts";
import { limits } from "../limits.ts";
import { type Output, type OutputFile, type PublishOptions, textFile } from "../output.ts";
import { sheetState } from "../state.ts";
import { fetchStills, figureFiles, filesOnce } from "../stills.ts";
import { instructionOf, sentence, signalText, sourceText, stageName, titleOf } from "../words.ts";
import { type Node, node } from "./terms.ts";

/** The procedure as a schema.org HowTo in JSON-LD, for search engines and other programs: `howto.jsonld`. */
export async function toHowTo(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const replaced: Replaced = new Map();
  const procedure = cleanTree(checked.procedure, textCleaner(replaced));
  const stills = await fetchStills(procedure, options);
  const figures = figureFiles(procedure, stills);
  const state = sheetState(checked, options, contentHash(checked));
  const howTo = {
    "@context": "https://schema.org",
    ...node("HowTo", {
      name: titleOf(procedure),
      description: [procedure.summary.trim(), ...limits.paragraphs].filter(Boolean).join("\n"),
      inLanguage: procedure.language,
      creativeWorkStatus: state.line,
      about: about(procedure),
      video: video(procedure),
      tool: procedure.tools.map(tool),
      supply: procedure.consumables.map(supply),
      step: procedure.stages.map((stage, index) => section(stage, index + 1, figures)),
    }),
  };
  const cleaned = replacedSentence(replaced, "\ufffd", "JSON-LD cannot carry them");
  return {
    files: [textFile("howto.jsonld", `${JSON.stringify(howTo, null, 2)}\n`), ...filesOnce(figures)],
    losses: [...lossesOf(procedure), ...stills.losses, ...(cleaned ? [`HowTo: ${cleaned}`] : [])],
  };
}

function about({ machine }: Procedure): Node | undefined {
  const name = [machine.maker, machine.model].filter(Boolean).join(" ") || machine.name;
  return name.trim() === "" ? undefined : node("Product", { name: name.trim(), category: machine.name });
}

/** The film it was made from, as a work that clips belong to. */
function video({ film, ...procedure }: Procedure): Node | undefined {
  const url = film && publishedLink(film.publishedAt, 0);
  if (!url) return undefined;
  const name = film.name.trim() || titleOf(procedure);
  return node("VideoObject", { name, url, duration: isoDuration(film.duration) });
}

function tool({ name, detail }: SupplyLine): Node {
  return node("HowToTool", { name, ...(detail.trim() !== "" && { description: detail }) });
}

function supply({ name, detail }: SupplyLine): Node {
  return node("HowToSupply", { name, ...(detail.trim() !== "" && { requiredQuantity: detail }) });
}

function section(
  { stage, steps }: StageOfSteps,
  position: number,
  figures: ReadonlyMap<string, OutputFile>,
): Node {
  return node("HowToSection", {
    name: stageName(stage),
    position,
    itemListElement: steps.map((step) => stepNode(step, figures)),
  });
}

/** What can hurt stands before what is done, as in every output. */
function stepNode(step: Step, figures: ReadonlyMap<string, OutputFile>): Node {
  const says = [
    ...step.cautions.map((caution) => tip(cautionText(caution))),
    direction(instructionOf(step)),
    ...step.details.map(({ text }) => direction(text)),
    ...step.gotchas.map((gotcha) => tip(gotchaText(gotcha))),
    ...(step.result.trim() === "" ? [] : [direction(`Then look for: ${step.result}`)]),
    ...step.deferred.filter(({ closedBy }) => closedBy === null).map((line) => tip(deferredText(line))),
  ];
  return node("HowToStep", {
    position: step.number,
    name: instructionOf(step),
    url: step.moment?.link ?? undefined,
    image: step.stills.flatMap((figure) => {
      const file = figures.get(figure.still);
      const caption = altOf(figure, instructionOf(step));
      return file ? [node("ImageObject", { contentUrl: file.name, caption })] : [];
    }),
    video: clips(step),
    itemListElement: says.map((one, index) => ({ ...one, position: index + 1 })),
  });
}

const direction = (text: string): Node => node("HowToDirection", { text: sentence(text) });
const tip = (text: string): Node => node("HowToTip", { text });

function cautionText({ signal, hazard, consequence, avoid, source }: CautionNote): string {
  const says = [hazard, consequence, avoid].map(sentence).filter(Boolean);
  return [`${signalText(signal)}:`, ...says, sentence(sourceText(source))].join(" ");
}

function gotchaText({ symptom, why, instead }: GotchaNote): string {
  return [symptom, why, instead].map(sentence).filter(Boolean).join(" ");
}

function deferredText({ what, waitsFor }: DeferredLine): string {
  return [sentence(`Left open: ${what}`), waitsFor.trim() && sentence(`Until: ${waitsFor}`)]
    .filter(Boolean)
    .join(" ");
}

/** Where the film shows the step: `startOffset` and `endOffset` count seconds from the work's beginning. */
function clips(step: Step): Node[] | undefined {
  const places = step.moment?.film?.filter(({ link }) => link !== null) ?? [];
  if (places.length === 0) return undefined;
  return places.map(({ at, until, link }) =>
    node("Clip", {
      name: instructionOf(step),
      startOffset: Math.floor(at),
      ...(until !== null && { endOffset: Math.ceil(until) }),
      url: link,
    }),
  );
}

function lossesOf(procedure: Procedure): string[] {
  const { parts, measurements } = procedure;
  const losses = [
    "schema.org HowTo has no place for how grave a caution is, nor for its source: both stand in the text of a tip.",
    "HowTo says no total time, since nobody has said how long the work takes.",
  ];
  if (measurements.length > 0)
    losses.push(
      `HowTo has no place for ${measurements.length} measurements with their limits and torques: measurements.csv has them.`,
    );
  if (parts.length > 0)
    losses.push(
      `HowTo has no place for ${parts.length} parts, their numbers, and which way round they go: parts.csv and the print have them.`,
    );
  return losses;
}
