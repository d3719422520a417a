import type { Element } from "hast";
import { h } from "hastscript";
import { tieUnits } from "../quantity.ts";
import type { History } from "../release/history.ts";
import { againText, changedText, correctionPlace, correctionStanding } from "../words.ts";
import { listSection } from "./lists.ts";
import { prose } from "./parts-of-step.ts";

/** Mistakes that were found, before the steps: who has an earlier sheet must meet them first. */
export function correctionNodes({ corrections }: History): Element[] {
  const items = corrections.map((line) =>
    h("li", [
      h("strong", `${correctionPlace(line)}: `),
      ...(line.value === "" ? [] : [h("span.value", tieUnits(line.value)), ". "]),
      line.correction === "" ? "" : `Right is: ${tieUnits(line.correction)} `,
      h("span.soft", correctionStanding(line)),
    ]),
  );
  return listSection("corrections", "Corrections", [items.length > 0 ? h("ul", items) : null]);
}

/** Every revision, latest first, with what changed in it. */
export function revisionNodes({ revisions }: History): Element[] {
  const items = revisions.map((line, index) =>
    h("li", [
      h("strong", `Revision ${line.revision}, ${line.date}`),
      ...prose(changedText(revisions, index)),
      ...(index === revisions.length - 1 ? [] : prose(againText(line))),
    ]),
  );
  return listSection("revisions", "Revisions", [items.length > 0 ? h("ul", items) : null]);
}
