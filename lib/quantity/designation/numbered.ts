import type { Part } from "../part.ts";
import { at } from "../text.ts";
import type { Designation } from "../types.ts";
import { designationPart, designationQuestion } from "./part.ts";

const number = String.raw`(?:No\.?\s?|#|number\s)(\d{1,2}|two|three|one|four|five|six)`;
const end = String.raw`(?![\p{L}\p{N}./-])`;
const screw = new RegExp(
  String.raw`${number}\s(?:x\s\S{1,8}\s)?(?:wood\s?|self[- ]tapping\s|machine\s|sheet metal\s)?screws?${end}`,
  "iuy",
);
const pin = new RegExp(String.raw`${number}\staper\spins?${end}`, "iuy");
const pinFirst = new RegExp(String.raw`taper\spins?,?\s(?:a\s)?${number}${end}`, "iuy");
const morse = /(?:No\.?\s?|#|number\s)?([0-7])\s?-?\s?(?:MT|Morse(?:\staper)?)(?![\p{L}\p{N}])/iuy;
const morseFirst = /(?:MT|Morse(?:\staper)?)\s?(?:No\.?\s?|#)?([0-7])(?![\p{L}\p{N}./-])/uy;
const lone = new RegExp(String.raw`${number}\s?$`, "iuy");
const figures: Record<string, string> = { one: "1", two: "2", three: "3", four: "4", five: "5", six: "6" };

/** Things with a number for a size: screws, taper pins, Morse tapers. "No. 7" with nothing else is asked about. */
export function numberedAt(text: string, place: number): Part | null {
  const taper = at(morse, text, place) ?? at(morseFirst, text, place);
  if (taper) return named("taper", taper.groups[1], place, taper.end);
  const taperPin = at(pin, text, place) ?? at(pinFirst, text, place);
  if (taperPin) return named("taper pin", taperPin.groups[1], place, taperPin.end);
  const screwSize = at(screw, text, place);
  if (screwSize) return named("screw gauge", screwSize.groups[1], place, screwSize.end);
  const bare = place === 0 || text.slice(0, place).trim() === "" ? at(lone, text, place) : null;
  if (!bare) return null;
  const written = bare.groups[1];
  const ask = `“${bare.groups[0].trim()}” may be a number drill, a screw size or a taper pin`;
  return designationQuestion(
    ask,
    [of("drill", written), of("screw gauge", written), of("taper pin", written)],
    place,
    bare.end,
  );
}

type Kind = "drill" | "screw gauge" | "taper pin" | "taper";

const named = (kind: Kind, written: string | undefined, start: number, stop: number): Part =>
  designationPart(of(kind, written), start, stop);

function of(kind: Kind, written = ""): Designation {
  const size = figures[written.toLowerCase()] ?? `${Number(written)}`;
  if (kind === "drill") return { type: "drill", name: `No. ${size} drill`, scale: "number", size };
  if (kind === "taper") return { type: "taper", name: `No. ${size} Morse taper`, system: "Morse", size };
  return kind === "screw gauge"
    ? { type: "screw gauge", name: `No. ${size} screw`, size }
    : { type: "taper pin", name: `No. ${size} taper pin`, size };
}
