import fc from "fast-check";
import type { Nodes, Root } from "mdast";
import { remark } from "remark";
import remarkGfm from "remark-gfm";
import { expect, test } from "vitest";
import { toMarkdown } from "#lib/publish/index.ts";
import {
  caution,
  checked,
  hostileJob,
  hostileTexts,
  options,
  part,
  procedure,
  smallJob,
  step,
} from "./sample.ts";

const decoder = new TextDecoder();

async function written(of: Parameters<typeof checked>[0]): Promise<string> {
  const { files } = await toMarkdown(checked(of), options());
  return decoder.decode(files.find(({ name }) => name === "procedure.md")?.bytes);
}

/** Links of a tree that are more than an address which is written out. */
function hidden(tree: Nodes): Nodes[] {
  return all(tree).filter((node) => {
    if (node.type !== "link") return false;
    const words = wordsOf(node);
    return ![words, `http://${words}`, `mailto:${words}`].includes(decodeURI(node.url));
  });
}

const readBack = (text: string): Root => remark().use(remarkGfm).parse(text);

function all(node: Nodes): Nodes[] {
  return [node, ...("children" in node ? node.children.flatMap((child) => all(child as Nodes)) : [])];
}

/** Words of a tree, with single spaces; what could not be written stands there as U+FFFD. */
function wordsOf(node: Nodes): string {
  const texts = all(node).map((one) => ("value" in one ? one.value : one.type === "break" ? " " : ""));
  return texts.join("").replace(/\s+/g, "");
}

const without = (text: string) => text.replace(/\s+/g, "");

test("is the same to the byte for the same procedure", async () => {
  const job = await smallJob();
  expect(await written(structuredClone(job))).toBe(await written(job));
});

test("holds everything of the job, cautions before their action", async () => {
  const job = await smallJob();
  const text = await written(job);
  const from = text.indexOf("### Step 2");
  const places = [
    "The gland packing may hold asbestos",
    "The vanes are thin cast brass",
    "**Draw the impeller off",
  ].map((words) => text.indexOf(words, from));
  expect(places.every((place, index) => place > (places[index - 1] ?? from))).toBe(true);
  for (const words of [
    "Unreleased · 2 open findings · 3 May 2026 · ",
    "cannot judge wear",
    "Local codes and licensed practice come first",
    "Cover nuts finger-tight. Until: the new belt is here.",
    "0.4965 in (12.611",
    "No. 3 **Jacking screw, 1/4 in BSW**: fitted, 2 off.",
    "Mark the arrow on the outer face with chalk",
    "No picture.",
  ]) {
    expect(text).toContain(words);
  }
  expect(text).not.toContain("UNSORTEDWORD");
  expect(text).not.toContain("TRAYWORD");
});

test("names its stills, and brings them along", async () => {
  const { files } = await toMarkdown(checked(await smallJob()), options());
  const tree = readBack(decoder.decode(files[0]?.bytes));
  const images = all(tree).flatMap((node) => (node.type === "image" ? [node] : []));
  expect(images).toHaveLength(2);
  expect(images.every(({ alt }) => alt !== "")).toBe(true);
  const names = files.slice(1).map(({ name }) => name);
  expect(images.map(({ url }) => url).sort()).toEqual(names.sort());
  expect(names.every((name) => /^stills\/[0-9a-f]{16}\.jpg$/.test(name))).toBe(true);
});

test("hostile text stays text", async () => {
  const tree = readBack(await written(await hostileJob()));
  const nodes = all(tree);
  const kinds = new Set(nodes.map((node) => node.type));
  expect(hidden(tree)).toEqual([]);
  for (const kind of [
    "html",
    "code",
    "inlineCode",
    "delete",
    "thematicBreak",
    "definition",
    "footnoteReference",
  ]) {
    expect([...kinds]).not.toContain(kind);
  }
  const images = nodes.flatMap((node) => (node.type === "image" ? [node.url] : []));
  expect(images.every((url) => url.startsWith("stills/"))).toBe(true);
  const words = wordsOf(tree);
  const lines = hostileTexts
    .flatMap((text) => text.split(/[\r\n]+/))
    .filter((line) => !/[\p{Cc}\u202e\ud800]/u.test(line));
  expect(lines.filter((line) => !words.includes(without(line)))).toEqual([]);
});

test("any words come back as the same words, as text alone", async () => {
  const bits = fc.constantFrom(
    "*",
    "_",
    "`",
    "[",
    "]",
    "(",
    ")",
    "#",
    "-",
    "+",
    "1.",
    "|",
    "<",
    ">",
    "&amp;",
    "\\",
    "!",
    "~",
    "www.a.b",
    "http://a.b",
    "a@b.c",
    "word",
    " ",
    ":",
    "$",
  );
  const text = fc.oneof(
    fc.array(bits, { maxLength: 14 }).map((some) => some.join("")),
    fc.string({ unit: "grapheme" }),
  );
  await fc.assert(
    fc.asyncProperty(text, text, text, async (title, detail, name) => {
      const job = procedure([
        step(1, title, {
          details: [{ mark: "d", text: detail }],
          cautions: [caution({ hazard: detail, avoid: name })],
          parts: [part(1, name)],
        }),
      ]);
      const tree = readBack(await written(job));
      const words = wordsOf(tree);
      for (const one of [title, detail, name]) {
        const printed = without(one.replace(/\p{Cc}/gu, (sign) => (/\s/.test(sign) ? sign : "\ufffd")));
        expect(words).toContain(printed);
      }
      expect(hidden(tree)).toEqual([]);
      expect(all(tree).map((node) => node.type)).not.toContain("html");
    }),
    { seed: 20260503, numRuns: 80 },
  );
});
