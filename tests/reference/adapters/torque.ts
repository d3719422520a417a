import { convert, rational, toNumber } from "#lib/quantity/index.ts";
import {
  againstEstimate,
  aircraftTorque,
  type Lubrication,
  leastEngagement,
  softMetalCeiling,
  type TappedMetal,
  type Thread,
  torqueFactor,
  torqueFor,
} from "#lib/reference/index.ts";
import { designations, first, of, threads } from "../read/figures.ts";
import type { Adapter, Answer } from "../row.ts";

const codes: Record<string, string> = {
  "lbf in": "[lbf_av].[in_i]",
  "lbf ft": "[lbf_av].[ft_i]",
  "N m": "N.m",
};
const inUnit = (newtonMetres: number, unit: string): number =>
  toNumber(rational(convert(`${Number(newtonMetres.toFixed(9))}`, "N.m", codes[unit] ?? unit)));

const metals: [RegExp, TappedMetal][] = [
  [/cast iron/, "cast iron"],
  [/alumini?um/, "aluminium"],
  [/zinc|die ?cast/, "zinc"],
  [/brass/, "brass"],
  [/bronze/, "bronze"],
  [/steel/, "steel"],
];

const lubrication = (text: string): Lubrication =>
  /zinc/.test(text) ? "zinc" : /lubric|oiled|wet/.test(text) ? "oiled" : "dry";

function classIn(text: string): string {
  const found = designations(text)
    .map((one) => (one.type === "thread" ? one.strength : one.type === "strength" ? one.grade : undefined))
    .find((one) => one !== undefined);
  return first(found === undefined ? [] : [found], "the class of strength");
}

function byRule(text: string, thread: Thread): Answer {
  const estimate = torqueFor(thread, classIn(text), lubrication(text));
  if (!estimate) return { question: "no rule for this thread" };
  const { newtonMetres } = estimate;
  const [stated] = of(text, "torque", "N.m");
  const verdict = stated === undefined ? undefined : againstEstimate(stated, estimate);
  return {
    Nm: newtonMetres,
    lbf_ft: inUnit(newtonMetres, "lbf ft"),
    lbf_in: inUnit(newtonMetres, "lbf in"),
    expected_Nm: newtonMetres,
    plausible: verdict?.plausible,
    likely_slip: verdict?.slips.map(({ words }) => words).join("; "),
  };
}

function publishedRow(text: string, thread: Thread, unit: string): Answer {
  const dry = torqueFor(thread, classIn(text), "dry")?.newtonMetres ?? Number.NaN;
  const oiled = torqueFor(thread, classIn(text), "oiled")?.newtonMetres ?? Number.NaN;
  return { dry: inUnit(dry, unit), lubricated: inUnit(oiled, unit), unit };
}

function aircraft(text: string): Answer {
  const size = /torque, ([#\d/-]+)/.exec(text)?.[1] ?? "";
  const row = aircraftTorque(size) ?? aircraftTorque(`#${size}`);
  return {
    tension_nut: row?.tensionNut,
    shear_nut: row?.shearNut,
    max_tension: row?.maxTension,
    max_shear: row?.maxShear,
  };
}

export const adapter: Adapter = ({ input, expected }) => {
  const { text } = input;
  if (/FAA/.test(text)) return aircraft(text);
  if (/factor K/.test(text))
    return {
      plain_dry: torqueFactor.dry,
      zinc_plated_dry: torqueFactor.zinc,
      lubricated: torqueFactor.oiled,
    };
  const thread = first(
    threads(text, ({ system }) => system === "ISO metric" || system === "UN"),
    "the thread",
  );
  const metal = metals.find(([word]) => word.test(text))?.[1];
  if (/engagement/.test(text) && metal) return { min_mm: leastEngagement(thread.major, metal).mm };
  if (/ceiling/.test(text)) {
    const ceiling = softMetalCeiling(thread);
    return { guidance: true, Nm_range: ceiling && [ceiling.low, ceiling.high] };
  }
  return /published table/.test(text)
    ? publishedRow(text, thread, `${input.unit ?? expected.unit}`)
    : byRule(text, thread);
};
