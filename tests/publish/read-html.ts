/** A reader of well-formed HTML, for checks alone: tags with quoted attributes, texts, and nothing else. */
export interface ReadTag {
  name: string;
  attributes: Record<string, string>;
  /** Place of the tag in the file, so that order can be asked about. */
  at: number;
}

export interface ReadHtml {
  tags: ReadTag[];
  /** All text outside tags, style and script left out, with character references resolved. */
  text: string;
  /** What is left between tags and looks like one, which a well-formed file has none of. */
  stray: string[];
}

const tag = /<(\/?)([a-zA-Z][a-zA-Z0-9]*)((?:\s+[^\s=>"']+(?:="[^"]*"|='[^']*'|=[^\s"'>]+)?)*)\s*\/?>/g;
const attribute = /([^\s=>"']+)(?:=(?:"([^"]*)"|'([^']*)'|([^\s"'>]+)))?/g;

export function readHtml(html: string): ReadHtml {
  const body = html
    .replace(/^<!doctype html>/i, "")
    .replace(/<style>[^<]*<\/style>/g, "<style></style>")
    .replace(/(<script[^>]*>)[\s\S]*?(<\/script>)/g, "$1$2");
  const tags = [...body.matchAll(tag)]
    .filter(([, closing]) => closing === "")
    .map((match) => ({
      name: match[2] as string,
      attributes: attributesOf(match[3] as string),
      at: match.index,
    }));
  const texts = body.replace(tag, "\u0000");
  return { tags, text: resolved(texts.replaceAll("\u0000", "")), stray: texts.match(/<[^\s]{0,20}/g) ?? [] };
}

function attributesOf(text: string): Record<string, string> {
  return Object.fromEntries(
    [...text.matchAll(attribute)].map(([, name, a, b, c]) => [name as string, resolved(a ?? b ?? c ?? "")]),
  );
}

function resolved(text: string): string {
  const names: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'", nbsp: "\u00a0" };
  return text.replace(/&(?:#x([0-9a-f]+)|#(\d+)|([a-z]+));/gi, (all, hex, decimal, name) => {
    if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
    return decimal ? String.fromCodePoint(Number(decimal)) : (names[name] ?? all);
  });
}
