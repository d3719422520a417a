/** One line of a CMX3600 edit list, by its form. Timecodes are still text: what they mean depends on the rate. */
export type ListLine =
  | { kind: "title"; name: string }
  /** Frame code mode: how the timecodes of the events below are counted. */
  | { kind: "fcm"; drop: boolean }
  | EventLine
  /** M2: frames a second at which a reel was played, and where that begins. */
  | { kind: "speed"; reel: string; fps: string; at: string }
  | { kind: "name"; of: "from" | "to"; name: string }
  | { kind: "locator"; at: string; colour: string; comment: string }
  /** A remark or a line that says nothing of the picture. */
  | { kind: "remark" }
  | { kind: "unknown" };

export interface EventLine {
  kind: "event";
  number: string;
  reel: string;
  channels: string;
  transition: Transition;
  /** How long the transition is, in frames; 0 for a cut. */
  frames: number;
  sourceIn: string;
  sourceOut: string;
  recordIn: string;
  recordOut: string;
}

export type Transition = "cut" | "dissolve" | "wipe" | "key background" | "key foreground" | "key overlay";

/** A line longer than this is no line of an edit list. */
const longestLine = 1000;

const time = String.raw`(\d{1,2}:\d{1,2}:\d{1,2}[:;.,]\d{1,3})`;
const event = new RegExp(
  String.raw`^(\d{1,6}[A-Z]?)\s+(\S.*?)\s+(\S+)\s+(C|D|W\d{1,3}|K ?[BO]?)(?:\s+(\d{1,4}))?\s+${time}\s+${time}\s+${time}\s+${time}(?:\s|$)`,
);
const speed = new RegExp(String.raw`^M2\s+(\S.*?)\s+([+-]?\d{1,4}(?:\.\d{1,4})?)\s+${time}(?:\s|$)`);
const name = /^\*\s*(FROM|TO) (?:CLIP NAME|CLIP|FILE)(?: IS)?\s*:\s*(.*)$/i;
const sourceFile = /^\*\s*SOURCE FILE\s*:\s*(.*)$/i;
const locator = new RegExp(String.raw`^\*\s*LOC\s*:\s*${time}\s+(\S+)(?:\s+(.*))?$`, "i");

/** Lines that belong to the form and say nothing of which picture stands where. */
const otherwise =
  /^(?:\*|#|>>>|SPLIT:|AUD\b|GPI\b|EFFECTS NAME|FINAL CUT|DLEDL|TC_|M1\b|REEL\b|\d{1,6}\s*$)/i;

/** The codes of transitions, as the second word of an event line has them. */
export function transitionOf(code: string): Transition {
  if (code === "C") return "cut";
  if (code === "D") return "dissolve";
  if (code.startsWith("W")) return "wipe";
  if (/^K ?B$/.test(code)) return "key background";
  return /^K ?O$/.test(code) ? "key overlay" : "key foreground";
}

export function readLine(text: string): ListLine {
  const line = text.trim();
  if (line === "") return { kind: "remark" };
  if (line.length > longestLine) return { kind: "unknown" };
  return readEvent(line) ?? readSpeed(line) ?? readHead(line) ?? readRemark(line);
}

function readEvent(line: string): EventLine | null {
  const parts = event.exec(line);
  if (!parts) return null;
  const [number, reel, channels, code, frames, sourceIn, sourceOut, recordIn, recordOut] = parts
    .slice(1)
    .map((part) => part ?? "") as [string, string, string, string, string, string, string, string, string];
  const times = { sourceIn, sourceOut, recordIn, recordOut };
  const length = frames === "" ? 0 : Number(frames);
  return { kind: "event", number, reel, channels, transition: transitionOf(code), frames: length, ...times };
}

function readSpeed(line: string): ListLine | null {
  const parts = speed.exec(line);
  return parts && { kind: "speed", reel: `${parts[1]}`, fps: `${parts[2]}`, at: `${parts[3]}` };
}

function readHead(line: string): ListLine | null {
  const title = /^TITLE\s*:\s*(.*)$/i.exec(line);
  if (title) return { kind: "title", name: `${title[1]}` };
  const mode = /^FCM\s*:\s*(NON[ -]?)?DROP/i.exec(line);
  return mode && { kind: "fcm", drop: mode[1] === undefined };
}

function readRemark(line: string): ListLine {
  const [named, file, located] = [name.exec(line), sourceFile.exec(line), locator.exec(line)];
  if (named) return { kind: "name", of: /^to$/i.test(`${named[1]}`) ? "to" : "from", name: `${named[2]}` };
  if (file) return { kind: "name", of: "from", name: `${file[1]}` };
  if (located)
    return { kind: "locator", at: `${located[1]}`, colour: `${located[2]}`, comment: located[3] ?? "" };
  return { kind: otherwise.test(line) ? "remark" : "unknown" };
}
