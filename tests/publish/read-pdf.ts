import { getDocument, OPS, type PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A PDF read back with a library that had no part in making it. */
export interface ReadPdf {
  pages: ReadPage[];
  title: string;
  language: string;
  /** Whether the file says that it is tagged. */
  marked: boolean;
  /** The part of PDF/UA that the file claims, by its XMP metadata. */
  uaPart: string | null;
  /** Its bookmarks in order, with their depth from 0. */
  bookmarks: { title: string; depth: number }[];
  /** The leaves of the structure tree in its order, and the roles about them. */
  nodes: ReadNode[];
}

export interface ReadPage {
  /** Points. */
  width: number;
  height: number;
  /** All text of the page, its foot included, with single spaces. */
  text: string;
  /** Texts with their size and place in points; y counts from the foot of the page. */
  sizes: { text: string; size: number; x: number; y: number }[];
  /** Bounds of the paths that are drawn, in points; empty unless they were asked for. */
  boxes: { width: number; height: number }[];
}

export interface ReadNode {
  page: number;
  role: string;
  path: string[];
  alt: string;
  text: string;
}

/** Reads a whole PDF; `boxesOn` is the number of the page whose drawn paths are wanted. */
export async function readPdf(bytes: Uint8Array, boxesOn = 0): Promise<ReadPdf> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const { info, metadata } = await document.getMetadata();
  const pages: ReadPage[] = [];
  const nodes: ReadNode[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { texts, sizes, text } = await textsOf(page);
    const [, , width = 0, height = 0] = page.view;
    pages.push({
      width,
      height,
      text: oneSpaced(text),
      sizes,
      boxes: number === boxesOn ? await boxesOf(page) : [],
    });
    const tree = await page.getStructTree();
    if (tree) nodes.push(...leaves(tree as Tree, number, [], texts));
  }
  const said = info as { Title?: string; Language?: string };
  const read = {
    pages,
    nodes,
    title: said.Title ?? "",
    language: said.Language ?? "",
    marked: (await document.getMarkInfo())?.Marked === true,
    bookmarks: bookmarksOf(await document.getOutline()),
    uaPart: (metadata?.get("pdfuaid:part") as string | null) ?? null,
  };
  await document.destroy();
  return read;
}

function bookmarksOf(items: Bookmark[] | null, depth = 0): ReadPdf["bookmarks"] {
  return (items ?? []).flatMap(({ title, items: below }) => [
    { title: oneSpaced(title), depth },
    ...bookmarksOf(below, depth + 1),
  ]);
}

interface Bookmark {
  title: string;
  items: Bookmark[];
}

/** Breaks and no-break spaces as single spaces; places where a long word may break are taken out. */
export function oneSpaced(text: string): string {
  return text.replaceAll("\u200b", "").replace(/\s+/g, " ").trim();
}

/** All spaces taken out: a long word may be printed on many lines. */
export function unspaced(text: string): string {
  return text.replace(/[\s\u200b]+/g, "");
}

interface Tree {
  role?: string;
  alt?: string;
  type?: string;
  id?: string;
  children?: Tree[];
}

function leaves(tree: Tree, page: number, path: string[], texts: ReadonlyMap<string, string>): ReadNode[] {
  const children = tree.children ?? [];
  const role = tree.role ?? "";
  const inner = children.filter((child) => child.role !== undefined);
  const own = children
    .filter((child) => child.type === "content")
    .map((child) => texts.get(child.id ?? "") ?? "");
  const node = { page, role, path, alt: tree.alt ?? "", text: oneSpaced(own.join("")) };
  const isLeaf = own.length > 0 || role === "Figure";
  return [
    ...(isLeaf ? [node] : []),
    ...inner.flatMap((child) => leaves(child, page, [...path, role], texts)),
  ];
}

interface TextItem {
  str?: string;
  hasEOL?: boolean;
  type?: string;
  id?: string | null;
  transform?: number[];
}

async function textsOf(page: PDFPageProxy) {
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const texts = new Map<string, string>();
  const sizes: ReadPage["sizes"] = [];
  let whole = "";
  const open: (string | null | undefined)[] = [];
  for (const item of items as TextItem[]) {
    if (item.type?.startsWith("beginMarkedContent")) {
      open.push(item.id);
      if (typeof item.id === "string") whole += " ";
    }
    if (item.type === "endMarkedContent") open.pop();
    if (item.type === undefined) {
      const id = open.findLast((one) => typeof one === "string");
      const text = `${item.str ?? ""}${item.hasEOL ? " " : ""}`;
      whole += text;
      if (typeof id === "string") texts.set(id, (texts.get(id) ?? "") + text);
      if (item.str?.trim()) {
        const [, , , size = 0, x = 0, y = 0] = item.transform ?? [];
        sizes.push({ text: item.str, size: Math.abs(size), x, y });
      }
    }
  }
  return { texts, sizes, text: whole };
}

/** Bounds of all paths that are drawn, with the scale they are drawn at. */
async function boxesOf(page: PDFPageProxy): Promise<ReadPage["boxes"]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const boxes: ReadPage["boxes"] = [];
  let scale: [number, number] = [1, 1];
  const saved: [number, number][] = [];
  fnArray.forEach((name, index) => {
    const args = argsArray[index] as unknown[] | null;
    if (name === OPS.save) saved.push(scale);
    if (name === OPS.restore) scale = saved.pop() ?? [1, 1];
    if (name === OPS.transform) {
      const [a, , , d] = args as number[];
      scale = [scale[0] * (a ?? 1), scale[1] * (d ?? 1)];
    }
    if (name === OPS.constructPath) {
      const [left = 0, top = 0, right = 0, bottom = 0] = Array.from((args?.[2] ?? []) as Float32Array);
      boxes.push({ width: Math.abs((right - left) * scale[0]), height: Math.abs((bottom - top) * scale[1]) });
    }
  });
  return boxes;
}
