import { resolveReferences } from "./character-reference.ts";
import { collectTimestamp } from "./timestamp.ts";

/** A node of a cue's text: a piece of text, a time, or a span with its children (W3C WebVTT, section 6.4). */
export type CueNode = { text: string } | { time: number } | Span;

/** A tag with what stands in it. */
export interface Span {
  tag: "c" | "i" | "b" | "u" | "ruby" | "rt" | "v" | "lang" | "";
  classes: string[];
  /** Name of the voice, or the language. */
  value: string;
  children: CueNode[];
}

const spanTags = new Set(["c", "i", "b", "u", "ruby", "rt", "v", "lang"]);
const token = /<([^>]*)(?:>|$)|[^<]+/g;

/** Reads the text of a cue to a tree, by the standard's rules: unknown tags are passed over, open ones closed. */
export function parseCueText(text: string): Span {
  const root: Span = { tag: "", classes: [], value: "", children: [] };
  const open: Span[] = [root];
  for (const found of text.matchAll(token)) {
    const current = open.at(-1) ?? root;
    const inside = found[1];
    if (inside === undefined) current.children.push({ text: resolveReferences(found[0]) });
    else if (inside.startsWith("/")) close(open, inside.slice(1));
    else if (/^\d/.test(inside)) pushTime(current, inside);
    else openSpan(open, current, inside);
  }
  return root;
}

function pushTime(current: Span, inside: string): void {
  const time = collectTimestamp(inside, 0);
  if (time && time.end === inside.length) current.children.push({ time: time.seconds });
}

function openSpan(open: Span[], current: Span, inside: string): void {
  const blank = inside.search(/[ \t\n\f]/);
  const head = blank < 0 ? inside : inside.slice(0, blank);
  const [tag = "", ...classes] = head.split(".");
  if (!spanTags.has(tag) || (tag === "rt" && current.tag !== "ruby")) return;
  const annotation = blank < 0 ? "" : inside.slice(blank);
  const span: Span = {
    tag: tag as Span["tag"],
    classes: classes.filter((name) => name !== ""),
    value:
      tag === "v" || tag === "lang"
        ? resolveReferences(annotation)
            .replace(/[ \t\n\f\r]+/g, " ")
            .trim()
        : "",
    children: [],
  };
  current.children.push(span);
  open.push(span);
}

function close(open: Span[], name: string): void {
  const tag = open.at(-1)?.tag ?? "";
  if (open.length > 1 && tag === name) open.pop();
  else if (open.length > 2 && name === "ruby" && tag === "rt") open.splice(-2);
}

/** The text of a tree without its readings in small print (section 6.6 leaves ruby text out of titles too). */
export function plainText(node: CueNode): string {
  return [...leaves(node)].map((leaf) => leaf.text).join("");
}

/** A stretch of text, with the time that stands before it and the voice that says it. */
export interface Leaf {
  text: string;
  time?: number;
  voice?: string;
}

/** The stretches of text of a tree in order. Goes down without recursion: spans may lie thousands deep. */
export function* leaves(root: CueNode): Generator<Leaf> {
  const stack: { node: CueNode; voice?: string }[] = [{ node: root }];
  let time: number | undefined;
  for (let here = stack.pop(); here !== undefined; here = stack.pop()) {
    const { node, voice } = here;
    if ("time" in node) time = node.time;
    else if ("text" in node) {
      yield { text: node.text, ...(time === undefined ? {} : { time }), ...(voice ? { voice } : {}) };
      time = undefined;
    } else if (node.tag !== "rt") {
      const said = node.tag === "v" ? node.value : voice;
      for (let i = node.children.length - 1; i >= 0; i--) {
        stack.push({ node: node.children[i] as CueNode, ...(said ? { voice: said } : {}) });
      }
    }
  }
}
