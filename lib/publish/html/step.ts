import type { Element, ElementContent } from "hast";
import { h } from "hastscript";
import type { Moment, Step } from "#lib/procedure/tree.ts";
import { paragraphs } from "../clean.ts";
import { tieUnits } from "../quantity.ts";
import { filmNote, instructionOf } from "../words.ts";
import type { BodyOptions } from "./body.ts";
import { figureNode } from "./figure.ts";
import {
  cautionNode,
  deferredNode,
  gotchaNode,
  measurementNode,
  partItem,
  prose,
  supplyItem,
} from "./parts-of-step.ts";

/** A step: number and tick box, then what can hurt, then what is done. */
export function stepNode(step: Step, options: BodyOptions): Element {
  const id = `step-${step.number}`;
  const changed = options.changedSteps?.includes(step.mark);
  const attributes = { id, "data-step": step.mark, "aria-labelledby": `${id}-title` };
  return h(changed ? "section.step.changed" : "section.step", attributes, [
    h("div.margin", [
      h("h3", { id: `${id}-title` }, `Step ${step.number}`),
      changed ? h("p.changed-word", "Changed") : null,
      options.forReader ? tickOf(step) : null,
      ...film(step.moment, options),
    ]),
    h("div.sheet", [
      ...step.cautions.map(cautionNode),
      h("p.instruction", { "data-mark": step.mark }, tieUnits(paragraphs(instructionOf(step)).join(" "))),
      ...pictures(step, options),
      ...group("Gotcha", step.gotchas.length, ...step.gotchas.map(gotchaNode)),
      ...group(
        "How",
        step.details.length,
        ...step.details.flatMap(({ text, mark }) => prose(text, "detail", mark)),
      ),
      ...group("Tools", step.tools.length, h("ul", step.tools.map(supplyItem))),
      ...group("Uses up", step.consumables.length, h("ul", step.consumables.map(supplyItem))),
      ...group("Parts", step.parts.length, h("ul.parts", step.parts.map(partItem))),
      ...group(
        "Measure",
        step.measurements.length,
        ...step.measurements.map((line) => measurementNode(line, options.forReader)),
      ),
      ...group("Then look for", step.result.trim() === "" ? 0 : 1, ...prose(step.result)),
      ...group(
        "Deferred",
        step.deferred.length,
        h(
          "ul",
          step.deferred.map((line) => deferredNode(line)),
        ),
      ),
    ]),
  ]);
}

function tickOf(step: Step): Element {
  const input = {
    type: "checkbox",
    "data-keep": `tick/${step.mark}`,
    "aria-label": `Step ${step.number} done`,
  };
  return h("label.tick-box", [h("input", input), " done"]);
}

/** A ruled row: the kind's word in the margin, and what is said. */
function group(word: string, count: number, ...content: ElementContent[]): Element[] {
  return count === 0 ? [] : [h("div.row", [h("p.kind", word), h("div.words", content)])];
}

function pictures(step: Step, options: BodyOptions): Element[] {
  const shown = step.stills.flatMap((figure) => {
    const picture = options.still(figure);
    return picture === null ? [] : [figureNode(figure, picture, step)];
  });
  if (shown.length > 0) return shown;
  return [h("p.no-picture", step.stills.length > 0 ? "Picture missing" : "No picture")];
}

function film(moment: Moment | null, options: BodyOptions): Element[] {
  if (!moment) return [];
  const time = h("span.time", moment.written);
  const link = options.forScreen ? null : moment.link;
  const note = filmNote(moment);
  return [
    h("p.film", link === null ? [time] : [h("a", { href: link, rel: "noreferrer" }, ["Film ", time])]),
    ...(note === "" ? [] : [h("p.film", note)]),
  ];
}
