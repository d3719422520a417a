import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A PDF read back by an independent reader (pdf.js): its pages' text, and its structure tree. */
export interface ReadPdf {
  pages: { text: string; width: number; height: number }[];
  /** Nodes of the structure tree in reading order, with role, alternative text, and the text they hold. */
  nodes: { role: string; alt?: string; text: string; page: number }[];
  lang: string | null;
  title: string;
  tagged: boolean;
}

interface TreeNode {
  role?: string;
  alt?: string;
  lang?: string;
  children?: (TreeNode | { type: string; id?: string })[];
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const info = (await document.getMetadata()) as { info: { Title?: string; Language?: string | null } };
  const marked = await document.getMarkInfo();
  const read: ReadPdf = {
    pages: [],
    nodes: [],
    lang: info.info.Language ?? null,
    title: info.info.Title ?? "",
    tagged: marked?.Marked === true,
  };
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const content = await page.getTextContent({ includeMarkedContent: true });
    const texts = new Map<string, string>();
    let open: string[] = [];
    let whole = "";
    for (const item of content.items as { type?: string; id?: string; str?: string; hasEOL?: boolean }[]) {
      if (item.type?.startsWith("beginMarkedContent")) open = [...open, item.id ?? ""];
      else if (item.type === "endMarkedContent") open = open.slice(0, -1);
      else {
        const text = `${item.str ?? ""}${item.hasEOL ? " " : ""}`;
        whole += text;
        const id = open.findLast((one) => one !== "");
        if (id !== undefined) texts.set(id, (texts.get(id) ?? "") + text);
      }
    }
    read.pages.push({ text: squeeze(whole), width, height });
    const tree = (await page.getStructTree()) as TreeNode | null;
    if (tree) walk(tree, texts, number, read.nodes);
  }
  await document.destroy();
  return read;
}

/** Visits the tree in reading order; gives the text below the node. */
function walk(node: TreeNode, texts: Map<string, string>, page: number, into: ReadPdf["nodes"]): string {
  const own = { role: node.role ?? "", alt: node.alt, text: "", page };
  if (own.role !== "" && own.role !== "Root") into.push(own);
  for (const child of node.children ?? []) {
    own.text +=
      "type" in child ? (texts.get(child.id ?? "") ?? "") : walk(child as TreeNode, texts, page, into);
  }
  own.text = squeeze(own.text);
  return `${own.text} `;
}

function squeeze(text: string): string {
  return text.replace(/[\s\u00a0]+/g, " ").trim();
}
