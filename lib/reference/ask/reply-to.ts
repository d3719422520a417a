import {
  convert,
  type Designation,
  type Quantity,
  type Reading,
  rational,
  read,
  say,
  toNumber,
} from "#lib/quantity/index.ts";
import { bearing } from "../bearings/index.ts";
import { drillNamed } from "../drills/index.ts";
import { colourBands } from "../electrical/index.ts";
import { fitOf } from "../fits/index.ts";
import { threadOf } from "../threads/index.ts";
import { bearingEntry, sizedBearings } from "./bearing.ts";
import { drillEntry, lengthEntries } from "./drill.ts";
import { valueEntry } from "./electric.ts";
import { fitEntry } from "./fit.ts";
import { gaugeEntry } from "./gauge.ts";
import { materialEntry } from "./material.ts";
import type { Entry, Reply } from "./reply.ts";
import { markedSpanner, seriesSpanners, spannerEntry } from "./spanner.ts";
import { strengthEntry } from "./strength.ts";
import { comparedThreads, likeEntries, matterOf, namedThread } from "./thread.ts";

const longest = 200;
const examples =
  "Try “1/4 BSF”, “0.247 in 26 tpi”, “2 BA tap”, “10 mm spanner”, “25 H7/g6”, “6205” or “4k7”.";

/**
 * What the tables say to a text: it is read as every quantity is, each thing in it is looked up, and what cannot be
 * found is said. Never throws; texts beyond 200 characters are not read.
 */
export function replyTo(text: string): Reply {
  const asked = text.trim();
  if (asked.length > longest)
    return {
      read: "",
      entries: [],
      nothing: `The text has ${asked.length} characters; up to ${longest} are read. ${examples}`,
    };
  const reading = read(asked);
  if (reading.kind === "empty") return { read: "", entries: [] };
  const entries = byWords(asked, reading) ?? entriesOf(reading, asked);
  const wordsOnly = reading.kind === "unread" && entries.length > 0;
  const reply: Reply = { read: wordsOnly ? "" : say(reading), entries };
  if (reading.kind === "question") reply.ask = reading.ask;
  if (entries.length === 0) reply.nothing = nothingFor(reading, asked);
  return reply;
}

/** Questions that lie in the words rather than in the figures. */
function byWords(text: string, reading: Reading): Entry[] | undefined {
  if (matterOf(text) === "spanner") {
    const found = /\d/.test(text) ? markedSpanner(text) : seriesSpanners(text);
    if (found) return [found];
  }
  const bands = colourBands(text);
  if (bands) return [valueEntry(bands.ohms, "Ω", bands)];
  const number = bearing(text);
  if (number) return [bearingEntry(number)];
  if (/\bexpan|\bgrow|\bheat|\bshrink|\bwarm/i.test(text) || reading.kind === "unread") {
    const material = heated(text, reading);
    if (material) return [material];
  }
  return undefined;
}

function heated(text: string, reading: Reading): Entry | undefined {
  const all = quantities(reading);
  const length = all.find(({ dimension }) => dimension === "length");
  const rise = all.find(({ dimension }) => dimension === "temperature");
  return materialEntry(
    text,
    length && millimetres(length),
    rise && toNumber(rational(convert(rise.value.exact, rise.ucum, "K", "difference"))),
  );
}

function entriesOf(reading: Reading, text: string): Entry[] {
  switch (reading.kind) {
    case "question":
      return reading.candidates.flatMap((one) => entriesOf(one, text)).slice(0, 6);
    case "designation":
      return designated(reading.designation, text);
    case "product":
      return sizedBearings(reading.quantities.map(millimetresOrNumber));
    case "list":
      return ofList(reading.parts, text);
    case "quantity":
    case "bare":
      return reading.quantities.flatMap((one) => measured(one, text)).slice(0, 6);
    default:
      return [];
  }
}

/** Several things in one text: two threads are compared, a diameter and a pitch are one thread. */
function ofList(parts: Reading[], text: string): Entry[] {
  const threads = parts.flatMap((part) =>
    part.kind === "designation" && part.designation.type === "thread" ? part.designation : [],
  );
  const [one, other] = threads.map((thread) => threadOf(thread)[0]);
  if (one && other) return [comparedThreads(one, other)];
  const strength = parts.flatMap((part) =>
    part.kind === "designation" && part.designation.type === "strength" ? part.designation.grade : [],
  )[0];
  const [thread] = threads;
  if (thread && strength !== undefined) return namedThread(thread, text, strength);
  const all = parts.flatMap(quantities);
  const lengths = all.filter(({ dimension }) => dimension === "length").map(millimetres);
  const counts = all.filter(({ dimension }) => dimension === "thread pitch");
  const [diameter, second] = lengths.toSorted((a, b) => b - a);
  const tpi = counts[0] && toNumber(rational(convert(counts[0].value.exact, counts[0].ucum, "/[in_i]")));
  if (!thread && diameter !== undefined && tpi) return likeEntries({ diameter, pitch: 25.4 / tpi });
  if (!thread && diameter !== undefined && second !== undefined && /pitch/i.test(text))
    return likeEntries({ diameter, pitch: second });
  return parts.flatMap((part) => entriesOf(part, text)).slice(0, 6);
}

function designated(designation: Designation, text: string): Entry[] {
  const one = (entry: Entry | undefined): Entry[] => (entry ? [entry] : []);
  switch (designation.type) {
    case "thread":
      return namedThread(designation, text);
    case "drill": {
      const drill = drillNamed(`${designation.scale === "number" ? "No." : "letter"} ${designation.size}`);
      return one(drill && drillEntry(drill));
    }
    case "wire gauge":
      return one(gaugeEntry(designation.system, designation.size));
    case "sheet gauge":
      return one(gaugeEntry("MSG", designation.size));
    case "screw gauge":
      return one(gaugeEntry("screw", designation.size));
    case "fit": {
      const found = fitOf(designation);
      return one(found && fitEntry(found));
    }
    case "bearing": {
      const found = bearing(designation.number);
      return one(found && bearingEntry(found));
    }
    case "strength":
      return one(strengthEntry(designation.grade));
    default:
      return [];
  }
}

function measured(quantity: Quantity, text: string): Entry[] {
  const { dimension, si } = quantity;
  if (dimension === "resistance" && si > 0) return [valueEntry(si, "Ω")];
  if (dimension === "capacitance" && si > 0) return [valueEntry(si, "F")];
  if (dimension === "thread pitch") return likeEntries({ pitch: pitchIn(quantity) }).slice(0, 1);
  if (dimension !== "length") return [];
  const mm = millimetres(quantity);
  if (!(mm > 0)) return [];
  return matterOf(text) === "spanner"
    ? [spannerEntry(mm, quantity.unit ? say(read(text)) : text)]
    : lengthEntries(mm, text);
}

const pitchIn = ({ value, ucum }: Quantity): number =>
  25.4 / toNumber(rational(convert(value.exact, ucum, "/[in_i]")));
const millimetres = ({ value, ucum }: Quantity): number =>
  toNumber(rational(convert(value.exact, ucum, "mm")));
const millimetresOrNumber = (quantity: Quantity): number =>
  quantity.dimension === "length" ? millimetres(quantity) : quantity.value.number;

function quantities(reading: Reading): Quantity[] {
  if (reading.kind === "list") return reading.parts.flatMap(quantities);
  return "quantities" in reading ? reading.quantities : [];
}

function nothingFor(reading: Reading, text: string): string {
  if (reading.kind === "designation" && reading.designation.type === "fit")
    return reading.designation.nominal === undefined
      ? `“${text}” names a fit without a size. Type the size too: “25 ${text}”.`
      : `ISO 286 to 500 mm has no such class as in “${text}”.`;
  if (reading.kind === "designation")
    return `The tables here do not have “${reading.designation.name}”. Nothing is made up for it.`;
  if (reading.kind === "unread" || reading.kind === "bare")
    return `“${text}” names nothing that the tables here have. ${examples}`;
  return `The tables here have nothing to add to it. ${examples}`;
}
