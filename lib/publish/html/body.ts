import type { Element } from "hast";
import { h } from "hastscript";
import type { PictureOfFigure } from "#lib/figure/index.ts";
import type { CheckedProcedure, Figure, Procedure, StageOfSteps } from "#lib/procedure/tree.ts";
import type { BriefNote } from "../brief.ts";
import { cleanTree, type Replaced, textCleaner } from "../clean.ts";
import type { PublishOptions } from "../output.ts";
import type { SheetState } from "../state.ts";
import { stageName } from "../words.ts";
import { frontNodes } from "./front.ts";
import { correctionNodes, revisionNodes } from "./history.ts";
import { measurementList } from "./lists.ts";
import { stepNode } from "./step.ts";

export interface BodyOptions extends Pick<PublishOptions, "history" | "changedSteps" | "notices"> {
  /** The sheet's own standing, from `sheetState`. */
  state: SheetState;
  /** A still's picture; null where there is none. */
  still: (figure: Figure) => PictureOfFigure | null;
  /** On a screen of the program the film is at hand, and nothing is to be written on paper. */
  forScreen?: boolean;
  /** The reader ticks steps and writes own readings into the file. */
  forReader?: boolean;
  /** What bit before, in front of the steps. */
  brief?: readonly BriefNote[];
  /** Receives what was replaced in the texts. */
  replaced?: Replaced;
}

/**
 * The procedure as a tree of HTML, without a page about it: what the self-contained file holds, and what the
 * program's own page shows with its controls put in. Every node that came from a mark has `data-mark`; every
 * step is a section with `data-step` (its mark) and `id` "step-N". Runs in a browser too.
 */
export function procedureBody(checked: CheckedProcedure, options: BodyOptions): Element {
  const clean = textCleaner(options.replaced ?? new Map());
  const procedure = cleanTree(checked.procedure, clean);
  const state = cleanTree(options.state, clean);
  const history = options.history && cleanTree(options.history, clean);
  return h("article.procedure", { lang: languageOf(procedure), "data-build": procedure.buildId }, [
    ...(options.notices ?? []).map((text) => h("p.notice", { role: "note" }, clean(text))),
    ...frontNodes(procedure, state, {
      brief: cleanTree(options.brief ?? [], clean),
      corrections: history ? correctionNodes(history) : [],
    }),
    ...procedure.stages.map((stage) => stageNode(stage, options)),
    ...measurementList(procedure),
    ...(history ? revisionNodes(history) : []),
    h("footer.sheet-state", [h("p", state.line)]),
  ]);
}

function stageNode({ stage, steps }: StageOfSteps, options: BodyOptions): Element {
  const id = `stage-${stage.replaceAll(" ", "-")}`;
  return h("section.stage", { id, "aria-labelledby": `${id}-title` }, [
    h("h2", { id: `${id}-title` }, stageName(stage)),
    ...steps.map((step) => stepNode(step, options)),
  ]);
}

/** The language of the restorer's words, or English where it is not a language tag. */
export function languageOf(procedure: Pick<Procedure, "language">): string {
  return /^[a-z]{2,3}(-[a-z0-9]{2,8})*$/i.test(procedure.language) ? procedure.language : "en";
}

/** The picture of a still as it was taken, at an address; null where there is none. */
export function originalPicture({ sha256, width, height }: Figure, address: string): PictureOfFigure | null {
  return sha256 === "" ? null : { address, is: "original", width, height };
}
