import { sourceNamed } from "../source.ts";
import { allJaws, hexagonsOf, type Jaw, jawMarked, spannersNear } from "../spanners/index.ts";
import { allThreads } from "../threads/index.ts";
import { bothWays, columnInches, columnMm, distinct, type Entry, signed } from "./reply.ts";

/** What a spanner fits and which others are near it. */
export function spannerEntry(mm: number, title: string): Entry {
  const near = spannersNear(mm, 10);
  const own = near.filter(({ play }) => Math.abs(play) < 0.02).map(({ jaw }) => jaw);
  const heads = own.flatMap((jaw) => jaw.heads);
  const fits = near.filter(({ jaw, verdict }) => verdict === "fits" && !own.includes(jaw));
  return {
    title,
    about: "spanner, size across flats",
    says: [
      heads.length > 0
        ? `${bothWays(mm)} across flats is the head of ${heads.join(", ")}.`
        : `${bothWays(mm)} across flats.`,
      fits.length > 0
        ? `Also fits: ${fits.map(({ jaw, play }) => `${jaw.name} (${signed(play)})`).join(", ")}.`
        : "",
    ]
      .filter(Boolean)
      .join(" "),
    figures: own.map((jaw) => ({ label: jaw.name, mm: jaw.mm, source: jaw.source })),
    beside: {
      caption: `Spanners near ${title}`,
      columns: ["across flats, mm", "across flats, in", "play on the head", "verdict", "heads"],
      rows: near.map(({ jaw, play, verdict }) => ({
        label: jaw.name,
        cells: [
          columnMm(jaw.mm),
          columnInches(jaw.mm),
          signed(play),
          verdict,
          jaw.heads.join(", ") || "no bolt in the tables",
        ],
      })),
      sources: distinct([...near.map(({ jaw }) => jaw.source), sourceNamed("jawPlay")]),
    },
    notes: [
      "Figures are nominal; heads and jaws have tolerances. A loose spanner rounds the corners before it turns a stuck nut.",
    ],
  };
}

/** The spanner with a mark, as it was typed: "3/8 Whitworth spanner", "7 mm spanner", "2 BA spanner". */
export function markedSpanner(text: string): Entry | undefined {
  const mark = /(\d[\d./-]*)\s*(mm|AF|BA|BSW|BSF|BS|W|Whit(?:worth)?)?(?![\p{L}\d])/iu.exec(text);
  const jaw = mark && jawMarked(`${mark[1]} ${mark[2] ?? "AF"}`);
  return jaw ? spannerEntry(jaw.mm, `Spanner ${jaw.name}`) : undefined;
}

const series: [RegExp, string][] = [
  [/\bBSF\b/i, "BSF"],
  [/\bBSW\b|\bwhit/i, "BSW"],
  [/\bBA\b/i, "BA"],
  [/\bUNF\b/i, "UNF"],
  [/\bUNC\b/i, "UNC"],
  [/\bmetric bolt|\bmetric head/i, "ISO coarse"],
];
const scales: [RegExp, Jaw["scale"]][] = [
  [/\bmetric\b|\bmm\b/i, "metric"],
  [/\bAF\b|\binch/i, "AF"],
  [/\bWhit/i, "Whitworth"],
  [/\bBA\b/i, "BA"],
];

/** "BSF metric spanner": for each bolt of a series the nearest spanner of another scale, and how much it plays. */
export function seriesSpanners(text: string): Entry | undefined {
  const wanted = series.find(([word]) => word.test(text))?.[1];
  const scale =
    scales.find(
      ([word, name]) =>
        word.test(text) && !(wanted === "BSW" && name === "Whitworth") && !(wanted === "BA" && name === "BA"),
    )?.[1] ?? "metric";
  if (!wanted) return undefined;
  const rows = allThreads
    .filter((thread) => thread.series === wanted)
    .flatMap((thread) => {
      const [head] = hexagonsOf(thread);
      const near =
        head &&
        allJaws
          .filter((jaw) => jaw.scale === scale)
          .map((jaw) => ({ jaw, play: jaw.mm - head.mm }))
          .filter(({ play }) => play > -0.2)
          .sort((a, b) => Math.abs(a.play) - Math.abs(b.play))[0];
      return head && near ? [{ thread, head, ...near }] : [];
    });
  const good = rows.filter(({ play }) => play >= -0.05 && play <= 0.2);
  const plural = good.map(({ thread, jaw, play }) => `${thread.name} takes ${jaw.name} (${signed(play)})`);
  return {
    title: `${wanted} bolts and ${scale} spanners`,
    about: "spanners, sizes across flats",
    says: plural.length > 0 ? `Nearly right: ${plural.join("; ")}.` : "None is within 0.2 mm.",
    figures: [],
    beside: {
      caption: `The ${scale} spanner nearest to each ${wanted} head`,
      columns: ["head across flats, in", "head, mm", `${scale} spanner`, "play"],
      rows: rows.map(({ thread, head, jaw, play }) => ({
        label: thread.name,
        cells: [columnInches(head.mm), columnMm(head.mm), jaw.name, signed(play)],
      })),
      sources: distinct(rows.flatMap(({ head, jaw }) => [head.source, jaw.source])),
    },
    notes: [
      "Play is jaw less head, nominal. Below zero the spanner goes on only where the head is worn or small.",
    ],
  };
}
