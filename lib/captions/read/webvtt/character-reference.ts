/**
 * Named character references (HTML, section 13.5) as far as captions use them: the Latin-1 names, which also count
 * without their semicolon, and signs of typography and measure. Names that are not listed stay as they are written.
 */
const latin1 =
  "nbsp iexcl cent pound curren yen brvbar sect uml copy ordf laquo not shy reg macr deg plusmn sup2 sup3 acute micro para middot cedil sup1 ordm raquo frac14 frac12 frac34 iquest Agrave Aacute Acirc Atilde Auml Aring AElig Ccedil Egrave Eacute Ecirc Euml Igrave Iacute Icirc Iuml ETH Ntilde Ograve Oacute Ocirc Otilde Ouml times Oslash Ugrave Uacute Ucirc Uuml Yacute THORN szlig agrave aacute acirc atilde auml aring aelig ccedil egrave eacute ecirc euml igrave iacute icirc iuml eth ntilde ograve oacute ocirc otilde ouml divide oslash ugrave uacute ucirc uuml yacute thorn yuml";
const loose = new Map<string, string>([
  ...latin1.split(" ").map((name, i) => [name, String.fromCharCode(0xa0 + i)] as const),
  ["amp", "&"],
  ["AMP", "&"],
  ["lt", "<"],
  ["LT", "<"],
  ["gt", ">"],
  ["GT", ">"],
  ["quot", '"'],
  ["QUOT", '"'],
]);
const strict = new Map<string, string>([
  ...loose,
  ...Object.entries({
    apos: "'",
    lrm: "\u200e",
    rlm: "\u200f",
    zwj: "\u200d",
    zwnj: "\u200c",
    ensp: "\u2002",
    emsp: "\u2003",
    thinsp: "\u2009",
    ndash: "–",
    mdash: "—",
    hellip: "…",
    lsquo: "‘",
    rsquo: "’",
    ldquo: "“",
    rdquo: "”",
    bull: "•",
    trade: "™",
    prime: "′",
    Prime: "″",
    euro: "€",
    Omega: "Ω",
    ohm: "Ω",
    mu: "μ",
    le: "≤",
    ge: "≥",
    asymp: "≈",
    minus: "−",
    frac13: "⅓",
    frac23: "⅔",
    frac18: "⅛",
    frac38: "⅜",
    frac58: "⅝",
    frac78: "⅞",
    sung: "♪",
  }),
]);
const reference = /&(?:#(?:[xX]([0-9a-fA-F]{1,12})|(\d{1,12}));?|([A-Za-z][A-Za-z0-9]{1,31})(;?))/g;

/** What numbers of the Windows-1252 range mean in HTML (section 13.2.5.80). */
const windows = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";

/** Puts the characters in the place of their references; what is none stays. */
export function resolveReferences(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(reference, (whole, hex?: string, figures?: string, name = "", semicolon = "") => {
    if (hex !== undefined) return character(Number.parseInt(hex, 16));
    if (figures !== undefined) return character(Number.parseInt(figures, 10));
    const exact = semicolon === ";" ? strict.get(name) : undefined;
    return exact ?? beginning(name, semicolon) ?? whole;
  });
}

/** "&ampere" is "&ere": without a semicolon the longest Latin-1 name that the text begins with counts. */
function beginning(name: string, semicolon: string): string | null {
  for (let length = Math.min(name.length, 6); length >= 2; length--) {
    const found = loose.get(name.slice(0, length));
    if (found !== undefined) return found + name.slice(length) + semicolon;
  }
  return null;
}

function character(code: number): string {
  if (code === 0 || code > 0x10ffff || (code >= 0xd800 && code <= 0xdfff)) return "\ufffd";
  return code >= 0x80 && code <= 0x9f ? windows.charAt(code - 0x80) : String.fromCodePoint(code);
}
