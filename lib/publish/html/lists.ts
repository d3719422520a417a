import type { Element } from "hast";
import { h } from "hastscript";
import type { PartLine, Procedure, SupplyLine } from "#lib/procedure/tree.ts";
import { closeOutChecks, closeOutHeading } from "../close-out.ts";
import { tieUnits } from "../quantity.ts";
import { inRuns, measuredText, stepNumbers, valueNames } from "../words.ts";
import { balloon, valueCell } from "./parts-of-step.ts";

/** A section with its heading, left out where it would be empty. */
export function listSection(id: string, title: string, content: (Element | null)[]): Element[] {
  const shown = content.filter((one) => one !== null);
  if (shown.length === 0) return [];
  const attributes = { id, "aria-labelledby": `${id}-title`, className: "list" };
  return [h("section", attributes, [h("h2", { id: `${id}-title` }, title), h("div.words", shown)])];
}

export function partsList({ parts }: Procedure): Element[] {
  if (parts.length === 0) return [];
  const heads = ["No.", "Part", "Quantity", "Part number", "Size, material, source", "Steps"];
  return listSection("parts", "Parts list", [table(heads, parts.map(partRow))]);
}

function partRow(part: PartLine): Element {
  const about = [part.size, part.material, part.source].filter(Boolean).map(tieUnits).join(" · ");
  return h("tr", { "data-mark": part.marks.join(" ") }, [
    h("td", balloon(part.balloon)),
    h("th", { scope: "row" }, part.name || "Unnamed part"),
    h("td.number", part.quantity === null ? "–" : String(part.quantity)),
    h("td.value", part.partNumber),
    h("td", about),
    h("td.number", inRuns(part.steps)),
  ]);
}

export function supplyList(id: string, title: string, lines: SupplyLine[]): Element[] {
  if (lines.length === 0) return [];
  const items = lines.map((line) =>
    h("li", { "data-mark": line.marks.join(" ") }, [
      h("strong", line.name),
      line.detail === "" ? "" : `, ${tieUnits(line.detail)}`,
      line.steps.length > 0 ? h("span.steps", stepNumbers(line.steps)) : null,
    ]),
  );
  return listSection(id, title, [h("ul", items)]);
}

export function measurementList({ measurements }: Procedure): Element[] {
  if (measurements.length === 0) return [];
  const heads = ["Step", "What", ...valueNames.map(([, label]) => label), "Instrument and source"];
  const rows = measurements.map((line) =>
    h("tr", { "data-mark": line.mark }, [
      h("td.number", line.step === null ? "–" : String(line.step)),
      h("th", { scope: "row" }, measuredText(line)),
      ...valueNames.map(([name]) => h("td", valueCell(line, name))),
      h("td", [line.instrument, line.source].filter(Boolean).join(" · ")),
    ]),
  );
  return listSection("measurements", "Measurements", [table(heads, rows)]);
}

/** What is looked at before the work counts as done; the reader ticks it. */
export function closeOutList(procedure: Procedure, forReader = false): Element[] {
  const checks = closeOutChecks(procedure);
  if (checks.length === 0) return [];
  const items = checks.map(({ key, text }) => {
    const input = { type: "checkbox", "data-keep": `close-out/${key}` };
    return h(
      "li",
      forReader ? [h("label.check", [h("input", input), ` ${tieUnits(text)}`])] : tieUnits(text),
    );
  });
  return listSection("close-out", closeOutHeading, [h("ul", { lang: "en" }, items)]);
}

/** A table that scrolls by itself where the screen is narrow. */
function table(heads: string[], rows: Element[]): Element {
  const head = h(
    "tr",
    heads.map((text) => h("th", { scope: "col" }, text)),
  );
  return h("div.scroll", { tabIndex: 0, role: "group", "aria-label": "Table" }, [
    h("table", [h("thead", [head]), h("tbody", rows)]),
  ]);
}
