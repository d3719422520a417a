import { pairs, percentage } from "./settings.ts";

/** A region of the picture in which cues are shown (W3C WebVTT, section 6.2). */
export interface Region {
  id: string;
  width: number;
  lines: number;
  regionAnchor: [number, number];
  viewportAnchor: [number, number];
  scroll: "" | "up";
}

/** Reads the settings of a REGION block; what is not a setting is passed over. */
export function parseRegion(text: string): Region {
  const region: Region = {
    id: "",
    width: 100,
    lines: 3,
    regionAnchor: [0, 100],
    viewportAnchor: [0, 100],
    scroll: "",
  };
  for (const [name, value] of pairs(text)) {
    if (name === "id") region.id = value;
    else if (name === "width") region.width = percentage(value) ?? region.width;
    else if (name === "lines" && /^\d{1,9}$/.test(value)) region.lines = Number(value);
    else if (name === "regionanchor") region.regionAnchor = point(value) ?? region.regionAnchor;
    else if (name === "viewportanchor") region.viewportAnchor = point(value) ?? region.viewportAnchor;
    else if (name === "scroll" && value === "up") region.scroll = "up";
  }
  return region;
}

function point(value: string): [number, number] | null {
  const comma = value.indexOf(",");
  const x = percentage(value.slice(0, Math.max(comma, 0)));
  const y = percentage(value.slice(comma + 1));
  return comma < 0 || x === null || y === null ? null : [x, y];
}
