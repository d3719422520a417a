import { readFile } from "node:fs/promises";
import type { Root } from "hast";
import { h } from "hastscript";
import rehypeStringify from "rehype-stringify";
import { unified } from "unified";
import type { CheckedProcedure } from "#lib/procedure/tree.ts";
import { type Replaced, replacedSentence, textCleaner } from "../clean.ts";
import { contentHash } from "../content-hash.ts";
import { type Output, type PublishOptions, textFile } from "../output.ts";
import { projectPath } from "../root.ts";
import { sheetState } from "../state.ts";
import { fetchStills } from "../stills.ts";
import { titleOf } from "../words.ts";
import { languageOf, procedureBody } from "./body.ts";

/** No script, nothing fetched: pictures inside the file and its own style sheet are all it may use. */
const policy = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";

/** The procedure as one self-contained file that works offline and on a phone: `procedure.html`. */
export async function toHtml(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const replaced: Replaced = new Map();
  const stills = await fetchStills(checked.procedure, options);
  const body = procedureBody(checked, {
    state: sheetState(checked, options, contentHash(checked)),
    brief: options.brief,
    replaced,
    still: ({ sha256 }) => dataAddress(stills.found.get(sha256)?.bytes),
  });
  const css = await readFile(projectPath("lib", "publish", "html", "procedure.css"), "utf8");
  const page: Root = {
    type: "root",
    children: [
      { type: "doctype" },
      h("html.standalone", { lang: languageOf(checked.procedure) }, [
        h("head", [
          h("meta", { charSet: "utf-8" }),
          h("meta", { httpEquiv: "Content-Security-Policy", content: policy }),
          h("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
          h("meta", { name: "color-scheme", content: "light dark" }),
          h("meta", { name: "referrer", content: "no-referrer" }),
          h("title", textCleaner(new Map())(titleOf(checked.procedure))),
          h("style", css),
        ]),
        h("body", [h("main", [body])]),
      ]),
    ],
  };
  const lost = replacedSentence(replaced, "U+FFFD", "they have no printed form");
  return {
    files: [textFile("procedure.html", `${unified().use(rehypeStringify).stringify(page)}\n`)],
    losses: [...stills.losses, ...(lost ? [lost] : [])],
  };
}

function dataAddress(bytes: Uint8Array | undefined): string | null {
  return bytes ? `data:image/jpeg;base64,${Buffer.from(bytes).toString("base64")}` : null;
}
