import type { Element } from "hast";
import { h } from "hastscript";
import type {
  CautionNote,
  DeferredLine,
  GotchaNote,
  MeasurementLine,
  PartUse,
  SupplyUse,
} from "#lib/procedure/tree.ts";
import { paragraphs } from "../clean.ts";
import { printedValue, tieUnits } from "../quantity.ts";
import {
  deferredHead,
  gotchaSays,
  isAboutInjury,
  leftText,
  measuredText,
  partEventText,
  partRemarks,
  sentence,
  signalText,
  soakText,
  soakTimes,
  sourceText,
  stepNumbers,
  valueNames,
} from "../words.ts";

/** A caution: signal word first, then the hazard, what can happen, how to avoid it, and who says so. */
export function cautionNode(
  caution: Omit<CautionNote, "mark"> & { mark?: string; marks?: string[]; steps?: number[] },
): Element {
  const kind = `signal-${caution.signal?.toLowerCase() ?? "ungraded"}`;
  const marks = caution.mark ?? caution.marks?.join(" ");
  return h("div.caution", { className: [kind], "data-mark": marks, role: "note" }, [
    h("p.signal", [
      isAboutInjury(caution.signal) ? h("span.alert", { "aria-hidden": "true" }, "⚠") : null,
      h("strong", signalText(caution.signal)),
      caution.steps ? h("span.steps", ` ${stepNumbers(caution.steps)}`) : null,
    ]),
    h("div.words", [
      ...prose(sentence(caution.hazard), "hazard"),
      ...prose(sentence(caution.consequence), "consequence"),
      ...prose(sentence(caution.avoid), "avoid"),
      h("p.source", sourceText(caution.source)),
    ]),
  ]);
}

/** A paragraph for each line of a text. */
export function prose(text: string, className?: string, mark?: string): Element[] {
  return paragraphs(text).map((line) => h("p", { className, "data-mark": mark }, tieUnits(line)));
}

export function partItem(use: PartUse): Element {
  const event = partEventText(use);
  const remarks = partRemarks(use).map(sentence).join(" ");
  return h("li", { "data-mark": use.mark }, [
    balloon(use.balloon),
    h("span.words", [
      h("strong", use.name || "Unnamed part"),
      event === "" ? "" : ` · ${event}`,
      remarks === "" ? null : h("span.remarks", ` ${tieUnits(remarks)}`),
    ]),
  ]);
}

/** The number of a part in the parts list, circled as on a drawing (ISO 6433). */
export function balloon(number: number): Element {
  return h("span.balloon", String(number));
}

export function supplyItem(use: SupplyUse): Element {
  const said = [use.detail, use.note].filter(Boolean).join(", ");
  return h("li", { "data-mark": use.mark }, [
    h("strong", use.name),
    said === "" ? "" : `, ${tieUnits(said)}`,
  ]);
}

/** A characteristic with its four values, and a place for the reader's own. */
export function measurementNode(line: MeasurementLine, forReader = false): Element {
  const notes = [
    line.instrument && `Instrument: ${line.instrument}`,
    sourceText(line.source),
    line.note,
  ].filter(Boolean);
  return h("div.measurement", { "data-mark": line.mark }, [
    h("table", [
      h("caption", measuredText(line)),
      h("thead", [
        h(
          "tr",
          valueNames.map(([, label]) => h("th", { scope: "col" }, label)),
        ),
      ]),
      h("tbody", [
        h(
          "tr",
          valueNames.map(([name]) => h("td", valueCell(line, name))),
        ),
        forReader
          ? h(
              "tr.own",
              valueNames.map(([name, label]) => ownCell(line, name, label)),
            )
          : null,
      ]),
    ]),
    h("p.source", notes.map((note) => tieUnits(sentence(note))).join(" ")),
  ]);
}

/** Where the reader writes what their own machine had. */
function ownCell(line: MeasurementLine, name: keyof MeasurementLine["values"], label: string): Element {
  if (name !== "asFound" && name !== "asFitted") return h("td");
  const words = `Your reading, ${label.toLowerCase()}: ${measuredText(line)}`;
  return h("td.box", [
    h("span", { "aria-hidden": "true" }, "your reading"),
    h("input", { type: "text", "data-keep": `${name}/${line.mark}`, "aria-label": words }),
  ]);
}

export function valueCell(
  line: MeasurementLine,
  name: keyof MeasurementLine["values"],
): (Element | string)[] {
  const value = line.values[name];
  if (!value) return ["–"];
  const { typed, other } = printedValue(value);
  return [
    h("span.value", tieUnits(typed)),
    ...(other === null ? [] : [" ", h("span.other", tieUnits(other))]),
  ];
}

export function gotchaNode(gotcha: GotchaNote): Element {
  return h(
    "div.gotcha",
    { "data-mark": gotcha.mark },
    gotchaSays(gotcha).map(([label, text]) =>
      h("p", [h("strong", `${label} `), tieUnits(paragraphs(text).join(" "))]),
    ),
  );
}

/**
 * Something left provisional, `onFront` under its own heading and with its step; in a step a reader has places for
 * the times of a soak.
 */
export function deferredNode(
  line: DeferredLine,
  { onFront = false, forReader = false }: { onFront?: boolean; forReader?: boolean },
): Element {
  const time = soakText(line);
  return h("li.deferred", { "data-mark": line.mark, className: line.closedBy === null ? "open" : "closed" }, [
    onFront ? null : h("strong", `${deferredHead(line)} `),
    tieUnits(sentence(leftText(line))),
    line.waitsFor.trim() === "" ? "" : ` Until: ${tieUnits(sentence(line.waitsFor))}`,
    time === "" ? "" : ` ${tieUnits(time)}`,
    onFront && line.step !== null ? h("span.steps", `Step ${line.step}`) : null,
    forReader ? soakTable(line) : null,
  ]);
}

/** Where the reader writes when a soak began, and between which times it ends. */
function soakTable(line: DeferredLine): Element | null {
  const times = soakTimes(line);
  if (times.length === 0) return null;
  return h("table.soak", [
    h("thead", [
      h(
        "tr",
        times.map(({ head }) => h("th", { scope: "col" }, head)),
      ),
    ]),
    h("tbody", [
      h(
        "tr.own",
        times.map(({ name, head, reckoned }) => {
          const input = { type: "text", "data-keep": `${name}/${line.mark}` };
          const words = `${head} (${reckoned}): ${leftText(line)}`;
          return h("td.box", [
            h("span", { "aria-hidden": "true" }, tieUnits(reckoned)),
            h("input", { ...input, "aria-label": words }),
          ]);
        }),
      ),
    ]),
  ]);
}
