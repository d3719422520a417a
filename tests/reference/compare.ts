import { drillNamed } from "#lib/reference/index.ts";
import type { Answer, Row } from "./row.ts";

type Tolerance = NonNullable<Row["tolerance"]>;

/** Where an answer leaves a row's expectation, in words; empty when it meets it. */
export function misses(row: Row, answer: Answer): string[] {
  const tolerance = row.tolerance ?? { exact: true };
  if (row.expected.ambiguous === true && !answer.question) return ["it is ambiguous and must be asked about"];
  if (tolerance.guidance === true && !answer.guidance) return ["guidance must be marked as guidance"];
  return Object.entries(row.expected).flatMap(([key, expected]) =>
    agrees(key, expected, answer[key], tolerance)
      ? []
      : [`${key}: expected ${JSON.stringify(expected)}, got ${JSON.stringify(answer[key])}`],
  );
}

/** Words that explain a verdict: no wording is prescribed, only that the same matter is named. */
const inWords = new Set(["reason", "note", "likely_slip", "form", "in_stages"]);

function agrees(key: string, expected: unknown, got: unknown, tolerance: Tolerance): boolean {
  if (key === "drill") return sameDrill(expected, got, tolerance);
  if (inWords.has(key) && typeof expected === "string")
    return typeof got === "string" && shares(expected, got);
  if (Array.isArray(expected)) return sameList(key, expected, got, tolerance);
  if (typeof expected === "number")
    return typeof got === "number" && near(expected, got, allowed(key, expected, tolerance));
  if (typeof expected === "object" && expected !== null) return sameObject(expected, got, tolerance);
  return expected === got;
}

function sameObject(expected: object, got: unknown, tolerance: Tolerance): boolean {
  if (typeof got !== "object" || got === null) return false;
  return Object.entries(expected).every(([key, one]) =>
    agrees(key, one, (got as Record<string, unknown>)[key], tolerance),
  );
}

function sameList(key: string, expected: unknown[], got: unknown, tolerance: Tolerance): boolean {
  if (!Array.isArray(got) || got.length !== expected.length) return false;
  if (tolerance.guidance === true) return overlap(expected as number[], got as number[]);
  if (expected.every((one) => typeof one === "string"))
    return [...expected].sort().join("|") === [...got].sort().join("|");
  return expected.every((one, index) => agrees(key, one, got[index], tolerance));
}

/** How far a number may lie off: the largest of what the row allows, and half of the last place that it prints. */
function allowed(key: string, expected: number, tolerance: Tolerance): number {
  const printed = `${expected}`.split("e")[0]?.split(".")[1]?.length ?? 0;
  const half = tolerance.exact === true && !Number.isInteger(expected) ? 0.5 * 10 ** -printed : 0;
  const given = Object.entries(tolerance).map(([name, value]) => {
    if (typeof value !== "number") return 0;
    if (name === "rel") return value * Math.abs(expected);
    return name === "abs_in" && /mm$/.test(key) ? value * 25.4 : value;
  });
  return Math.max(1e-9 * Math.abs(expected), 1e-12, half, ...given);
}

const near = (expected: number, got: number, within: number): boolean =>
  Math.abs(expected - got) <= within * (1 + 1e-9) + 1e-12;

/** Two spans of common practice agree when each covers at least half of the other. */
function overlap([a = 0, b = 0]: number[], [c = 0, d = 0]: number[]): boolean {
  const common = Math.min(b, d) - Math.max(a, c);
  return common >= 0.5 * (b - a) && common >= 0.5 * (d - c);
}

function sameDrill(expected: unknown, got: unknown, tolerance: Tolerance): boolean {
  const [one, other] = [drillNamed(`${expected}`), drillNamed(`${got}`)];
  return !!one && !!other && near(one.mm, other.mm, Number(tolerance.abs_mm ?? 0));
}

function shares(expected: string, got: string): boolean {
  const words = (text: string): string[] => text.toLowerCase().match(/\p{L}{4,}|\d+(?:[./]\d+)*/gu) ?? [];
  return words(expected).some((word) => words(got).includes(word));
}
