import type { Element } from "hast";
import { h } from "hastscript";
import type { Procedure } from "#lib/procedure/tree.ts";
import { type BriefNote, briefHeading } from "../brief.ts";
import { limits } from "../limits.ts";
import type { SheetState } from "../state.ts";
import { allSteps, groupedCautions, openItems, standingBlock, titleBlock, titleOf } from "../words.ts";
import { listSection, partsList, supplyList } from "./lists.ts";
import { cautionNode, deferredNode, prose } from "./parts-of-step.ts";

/** What stands before the first step. */
export function frontNodes(
  procedure: Procedure,
  state: SheetState,
  { brief, corrections }: { brief: readonly BriefNote[]; corrections: Element[] },
): Element[] {
  const open = openItems(procedure);
  return [
    h("header.front", [
      h("h1", titleOf(procedure)),
      ...prose(procedure.summary, "summary"),
      block([...titleBlock(procedure), ...standingBlock(state)]),
    ]),
    ...corrections,
    ...listSection("left-open", "Left open", [
      open.length > 0
        ? h(
            "ul",
            open.map((line) => deferredNode(line, { onFront: true })),
          )
        : null,
    ]),
    ...listSection(
      "limits",
      limits.heading,
      limits.paragraphs.map((text) => h("p", { lang: "en" }, text)),
    ),
    ...listSection("brief", briefHeading, brief.map(briefNode)),
    ...listSection("before", "Before you start", groupedCautions(procedure).map(cautionNode)),
    ...supplyList("tools", "Tools", procedure.tools),
    ...partsList(procedure),
    ...supplyList("consumables", "Consumables", procedure.consumables),
    ...(allSteps(procedure).length === 0 ? [h("p.none", "There are no steps yet.")] : []),
  ];
}

function briefNode(note: BriefNote): Element {
  return h(
    "div.gotcha",
    note.map(([label, text]) => h("p", [h("strong", label), ` ${text}`])),
  );
}

function block(fields: { label: string; value: string }[]): Element {
  return h(
    "dl.title-block",
    fields.map(({ label, value }) => h("div", [h("dt", label), h("dd", value)])),
  );
}
