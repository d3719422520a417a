import { isAt, isDigitAt } from "./text.ts";
import type { Qualifier } from "./types.ts";

export interface Lead {
  qualifier?: Qualifier;
  roughly?: true;
  between?: true;
  end: number;
}

const before: [RegExp, Qualifier | "between"][] = [
  [/(?:±|\+\/-|\+-|plus or minus\b|give or take\b)\s?/iy, "either way"],
  [
    /(?:about|approximately|approx\b\.?|roughly|around|circa|ca\b\.?|say|nearly|almost|just (?:over|under)|near(?: enough)?|c\.(?=\s?\d)|~|≈)\s{0,2}/iy,
    "about",
  ],
  [
    /(?:at least|not less than|(?:do not|don't|never|not|no)\s(?:go |fall |drop )?(?:below|under|less than|lower than|shorter than|thinner than)|minimum(?: of)?|min\b\.?(?: of)?|more than|greater than|over|from at least|≥|>=|>)\s{0,2}/iy,
    "at least",
  ],
  [
    /(?:at most|(?:do not|don't|never|not|mustn't|shouldn't)\s(?:go\s)?(?:over|above|past|beyond|exceed|more than)|not more than|no (?:more|higher|longer|thicker|greater) than|not over|not exceeding|maximum(?: of)?|max\b\.?(?: of)?|less than|under|up to|within|below|≤|<=|<)\s{0,2}/iy,
    "at most",
  ],
  [/(?:between|from)\s{1,2}/iy, "between"],
];

const after: [RegExp, Qualifier][] = [
  [/\s?(?:or more|or over|or better|minimum\b|min\b\.?|at least)/iy, "at least"],
  [/\s?(?:or less|or under|or fewer|maximum\b|max\b\.?|at most|at the most)/iy, "at most"],
  [/\s?(?:or so|approx\b\.?|approximately|roughly|or thereabouts|near enough|ish\b)/iy, "about"],
];

/** The words before a number that say how it is meant: "about", "at least", "between". */
export function leadAt(text: string, place: number): Lead {
  const lead: Lead = { end: place };
  if (isDigitAt(text, place)) return lead;
  for (let turn = 0; turn < 3; turn++) {
    const next = first(before, text, lead.end);
    if (!next) break;
    lead.end = next.end;
    if (next.meaning === "between") lead.between = true;
    else if (next.meaning === "about") lead.roughly = true;
    else lead.qualifier = next.meaning;
  }
  return lead;
}

/** The words after a unit that say how the number was meant: "max", "or so". */
export function tailAt(text: string, place: number): { qualifier: Qualifier; end: number } | null {
  const next = first(after, text, place);
  return next && { qualifier: next.meaning, end: next.end };
}

function first<T>(table: [RegExp, T][], text: string, place: number): { meaning: T; end: number } | null {
  if (place >= text.length) return null;
  for (const [pattern, meaning] of table) {
    if (isAt(pattern, text, place) && pattern.lastIndex > place) return { meaning, end: pattern.lastIndex };
  }
  return null;
}
