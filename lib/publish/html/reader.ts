import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import type { Element } from "hast";
import { h } from "hastscript";
import { projectPath } from "../root.ts";

/** The script of the reader's file, and what the file's policy must allow for it: this text and no other. */
export async function readerScript(): Promise<{ text: string; allowed: string }> {
  const text = await readFile(projectPath("lib", "publish", "html", "reader.js"), "utf8");
  return { text, allowed: `'sha256-${createHash("sha256").update(text).digest("base64")}'` };
}

/** Above the procedure, once the script runs: how far the reader is, words to find, and the copy to keep. */
export function readerBar(): Element {
  return h("section.reader", { hidden: true, "aria-label": "Your copy" }, [
    h("p", { role: "status" }, [h("strong", { "data-says": "done" })]),
    h("a", { href: "#", hidden: true, "data-onward": true }, "Go on"),
    h("label", ["Find words ", h("input", { type: "search", "data-do": "find" })]),
    h("p", { role: "status", "data-says": "found" }),
    h("button", { type: "button", "data-do": "copy" }, "Save a copy with your ticks and readings"),
    h("p", { role: "status", "data-says": "kept" }),
  ]);
}

/** What the file carries of the reader's own; empty as it is published. */
export function keptBlock(): Element {
  return h("script", { type: "application/json", id: "kept" }, "{}");
}
