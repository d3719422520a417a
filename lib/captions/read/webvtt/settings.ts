/** Where and how a cue is shown, as far as its settings say (W3C WebVTT, section 6.3). */
export interface CueSettings {
  region: string | null;
  vertical: "" | "rl" | "lr";
  line: number | "auto";
  snapToLines: boolean;
  lineAlign: "start" | "center" | "end";
  position: number | "auto";
  positionAlign: "line-left" | "center" | "line-right" | "auto";
  size: number;
  align: "start" | "center" | "end" | "left" | "right";
}

/** What a cue has where its settings say nothing (W3C WebVTT, section 3.1). */
export const plainSettings: Readonly<CueSettings> = {
  region: null,
  vertical: "",
  line: "auto",
  snapToLines: true,
  lineAlign: "start",
  position: "auto",
  positionAlign: "auto",
  size: 100,
  align: "center",
};

/** Reads the settings behind a cue's times. What is not a setting is passed over, as the standard has it. */
export function parseSettings(text: string, regions: ReadonlySet<string> = new Set()): CueSettings {
  const settings: CueSettings = { ...plainSettings };
  for (const [name, value] of pairs(text)) {
    if (name === "region") settings.region = regions.has(value) ? value : null;
    else if (name === "vertical" && (value === "rl" || value === "lr")) {
      settings.vertical = value;
      settings.region = null;
    } else if (name === "line") setLine(settings, value);
    else if (name === "position") setPosition(settings, value);
    else if (name === "size") setSize(settings, value);
    else if (name === "align" && isAlign(value)) settings.align = value;
  }
  return settings;
}

/** Splits settings on spaces, and each on its first colon. */
export function pairs(text: string): [string, string][] {
  return text
    .split(/[ \t\n\f\r]+/)
    .map((setting): [string, string] => {
      const colon = setting.indexOf(":");
      return [setting.slice(0, Math.max(colon, 0)), setting.slice(colon + 1)];
    })
    .filter(([name, value]) => name !== "" && value !== "");
}

/** A percentage from 0 to 100, or null. */
export function percentage(text: string): number | null {
  if (!/^\d+(?:\.\d+)?%$/.test(text)) return null;
  const value = Number(text.slice(0, -1));
  return value <= 100 ? value : null;
}

function setLine(settings: CueSettings, value: string): void {
  const [place, align] = parted(value);
  const share = place.endsWith("%");
  const number = share ? percentage(place) : /^-?\d+(?:\.\d+)?$/.test(place) ? Number(place) : null;
  if (number === null || !Number.isFinite(number)) return;
  if (align !== null && align !== "start" && align !== "center" && align !== "end") return;
  if (align !== null) settings.lineAlign = align;
  settings.line = number;
  settings.snapToLines = !share;
  settings.region = null;
}

function setPosition(settings: CueSettings, value: string): void {
  const [place, align] = parted(value);
  const number = percentage(place);
  if (number === null) return;
  if (align !== null && align !== "line-left" && align !== "center" && align !== "line-right") return;
  if (align !== null) settings.positionAlign = align;
  settings.position = number;
}

function setSize(settings: CueSettings, value: string): void {
  const number = percentage(value);
  if (number === null) return;
  settings.size = number;
  if (number !== 100) settings.region = null;
}

function parted(value: string): [string, string | null] {
  const comma = value.indexOf(",");
  return comma < 0 ? [value, null] : [value.slice(0, comma), value.slice(comma + 1)];
}

function isAlign(value: string): value is CueSettings["align"] {
  return ["start", "center", "end", "left", "right"].includes(value);
}
