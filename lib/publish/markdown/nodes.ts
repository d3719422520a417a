import type { List, Paragraph, PhrasingContent, Root, RootContent, Table } from "mdast";
import { paragraphs } from "../clean.ts";

/** Small makers of mdast nodes. User text goes in as text nodes alone, so that remark escapes it. */

type Inline = string | PhrasingContent;

export function root(children: RootContent[]): Root {
  return { type: "root", children };
}

export function heading(depth: 1 | 2 | 3, text: string): RootContent {
  return { type: "heading", depth, children: inline([oneLine(text)]) };
}

export function paragraph(...content: Inline[]): Paragraph {
  return { type: "paragraph", children: inline(content) };
}

/** A paragraph for each line of a text that says something. */
export function prose(text: string): Paragraph[] {
  return paragraphs(text).map((line) => paragraph(line));
}

export function strong(text: string): PhrasingContent {
  return { type: "strong", children: [{ type: "text", value: oneLine(text) }] };
}

export function list(items: Inline[][]): List[] {
  if (items.length === 0) return [];
  const children = items.map((item) => ({ type: "listItem" as const, children: [paragraph(...item)] }));
  return [{ type: "list", ordered: false, spread: false, children }];
}

export function table(heads: string[], rows: string[][]): Table {
  const row = (cells: string[]) => ({
    type: "tableRow" as const,
    children: cells.map((cell) => ({ type: "tableCell" as const, children: inline([oneLine(cell)]) })),
  });
  return { type: "table", children: [row(heads), ...rows.map(row)] };
}

/** Texts as text nodes; empty ones are left out, since Markdown has no form for them. */
function inline(content: Inline[]): PhrasingContent[] {
  return content
    .map((one): PhrasingContent => (typeof one === "string" ? { type: "text", value: one } : one))
    .filter((one) => one.type !== "text" || one.value !== "");
}

/** Line ends and the spaces about them as one space. */
export function oneLine(text: string): string {
  return text.replace(/\s*\n\s*/g, " ").trim();
}
