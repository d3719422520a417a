import type { StatementCode } from "./statements.ts";

/**
 * Substances of the workshop, with the statements that suppliers usually give them. The classification is recalled,
 * and the safety data sheet of the product in hand decides.
 */
export interface Substance {
  name: string;
  /** Words of a step in which it is met. */
  met: RegExp;
  /** Words that leave no doubt; see UsualCaution. */
  needed: RegExp | null;
  /** Words by which a caution is known to speak of it. */
  said: RegExp;
  /** The GHS label's own word. It is chosen by other rules than ANSI's, and never printed as one of those. */
  label: "Danger" | "Warning";
  hazards: readonly StatementCode[];
  precautions: readonly StatementCode[];
  /** What restorers add, in our own words. */
  own: string;
  /** Who else says so, beside the statements. */
  who?: string;
  defer?: string;
}

export const substanceSource =
  "classification from memory (CLP Annex VI, usual supplier data sheets): the safety data sheet of your product decides";

export const substances: readonly Substance[] = [
  {
    name: "Petrol",
    met: /\b(?:petrol|gasoline)\b/i,
    needed: /\b(?:petrol|gasoline)\b/i,
    said: /\b(?:petrol|gasoline|fuel|vapours?|flammable)\b/i,
    label: "Danger",
    hazards: ["H224", "H304", "H315", "H336", "H340", "H350", "H411"],
    precautions: [
      "P201",
      "P210",
      "P240",
      "P243",
      "P261",
      "P273",
      "P280",
      "P301+P310",
      "P331",
      "P403+P233",
      "P501",
    ],
    own: "Never use it as a bath for cleaning parts: its vapour is heavier than air.",
    who: "HSE, safe use of petrol in garages (INDG331), from memory",
  },
  {
    name: "White spirit, paraffin and the like",
    met: /\b(?:white spirit|paraffin|kerosene|mineral spirits?|stoddard solvent|degreaser|solvents?)\b/i,
    needed: /\b(?:white spirit|mineral spirits?|stoddard solvent|solvents?)\b/i,
    said: /\b(?:spirit|paraffin|kerosene|solvents?|degreaser|vapours?|flammable)\b/i,
    label: "Danger",
    hazards: ["H226", "H304", "H336", "H372", "H411", "EUH066"],
    precautions: ["P210", "P260", "P271", "P280", "P301+P310", "P331", "P403+P235"],
    own: "",
  },
  {
    name: "Acetone",
    met: /\bacetone\b/i,
    needed: /\bacetone\b/i,
    said: /\b(?:acetone|solvents?|vapours?|flammable)\b/i,
    label: "Danger",
    hazards: ["H225", "H319", "H336", "EUH066"],
    precautions: ["P210", "P233", "P261", "P280", "P305+P351+P338", "P403+P235"],
    own: "",
  },
  {
    name: "Phosphoric acid",
    met: /\b(?:phosphoric acid|rust remover)\b/i,
    needed: /\bphosphoric acid\b/i,
    said: /\b(?:acids?|rust remover|burns?|corrosive|splash\w*)\b/i,
    label: "Danger",
    hazards: ["H290", "H314"],
    precautions: ["P234", "P260", "P280", "P301+P330+P331", "P303+P361+P353", "P305+P351+P338", "P405"],
    own: "Add the acid to the water.",
  },
  {
    name: "Hydrochloric acid",
    met: /\b(?:hydrochloric|muriatic) acid\b/i,
    needed: /\b(?:hydrochloric|muriatic) acid\b/i,
    said: /\b(?:acids?|rust remover|burns?|corrosive|splash\w*)\b/i,
    label: "Danger",
    hazards: ["H290", "H314", "H335"],
    precautions: ["P260", "P271", "P280", "P301+P330+P331", "P303+P361+P353", "P304+P340", "P305+P351+P338"],
    own: "Never mix it with bleach: chlorine forms.",
  },
  {
    name: "Citric acid",
    met: /\bcitric acid\b/i,
    needed: null,
    said: /\b(?:acid|eyes?)\b/i,
    label: "Warning",
    hazards: ["H319", "H335"],
    precautions: ["P261", "P280", "P305+P351+P338", "P337+P313"],
    own: "",
  },
  {
    name: "Sulphuric acid",
    met: /\b(?:sul(?:ph|f)uric acid|battery acid|electrolyte)\b/i,
    needed: /\b(?:sul(?:ph|f)uric acid|battery acid)\b/i,
    said: /\b(?:acids?|electrolyte|burns?|corrosive|splash\w*)\b/i,
    label: "Danger",
    hazards: ["H290", "H314"],
    precautions: ["P260", "P280", "P301+P330+P331", "P303+P361+P353", "P305+P351+P338"],
    own: "Add the acid to the water.",
  },
  {
    name: "Caustic soda",
    met: /\b(?:sodium hydroxide|caustic soda|caustic strip\w*|lye)\b/i,
    needed: /\b(?:sodium hydroxide|caustic soda|caustic strip\w*|lye)\b/i,
    said: /\b(?:hydroxide|caustic|lye|burns?|corrosive|splash\w*)\b/i,
    label: "Danger",
    hazards: ["H290", "H314"],
    precautions: ["P260", "P280", "P301+P330+P331", "P303+P361+P353", "P305+P351+P338"],
    own: "Keep it from aluminium: hydrogen forms. Washing soda is the milder electrolyte.",
  },
  {
    name: "Lead and lead paint",
    met: /\b(?:lead(?:-based)? paint|red lead|white lead|lead dust)\b/i,
    needed: /\b(?:lead(?:-based)? paint|red lead|white lead|lead dust)\b/i,
    said: /\blead\b/i,
    label: "Danger",
    hazards: ["H360FD", "H362", "H372", "H410"],
    precautions: ["P201", "P202", "P260", "P264", "P270", "P273", "P280", "P308+P313", "P405", "P501"],
    own: "No dry sanding and no burning off: paint of unknown age is treated as lead paint.",
    who: "OSHA 29 CFR 1910.1025 and technical manual on lead, from memory",
    defer: "The waste goes by local rules.",
  },
  {
    name: "Asbestos",
    met: /\basbestos\b|\b(?:brake|clutch) (?:linings?|shoes?|pads?)\b|\b(?:old|original) (?:gaskets?|lagging|linings?)\b/i,
    needed: /\basbestos\b|\b(?:old|original) (?:lagging|(?:brake |clutch )?linings?)\b/i,
    said: /\b(?:asbestos|fibres?)\b/i,
    label: "Danger",
    hazards: ["H350", "H372"],
    precautions: ["P201", "P202", "P260", "P280", "P308+P313", "P501"],
    own: "Treat old linings, gaskets and lagging as asbestos. No blowing, brushing or dry sanding.",
    who: "US EPA, Current Best Practices for Preventing Asbestos Exposure, March 2007; OSHA 29 CFR 1926.1101",
    defer: "Removal of lagging, and the waste, are for those who are licensed, under local rules.",
  },
  {
    name: "Aerosol",
    met: /\b(?:aerosols?|spray cans?|penetrating spray)\b/i,
    needed: null,
    said: /\b(?:aerosols?|spray|flammable|burst)\b/i,
    label: "Danger",
    hazards: ["H222", "H229"],
    precautions: ["P210", "P211", "P251", "P410+P412"],
    own: "",
  },
  {
    name: "Gas under pressure in a cylinder",
    met: /\b(?:gas cylinders?|gas bottles?|oxygen bottles?)\b/i,
    needed: null,
    said: /\b(?:cylinders?|bottles?|gas)\b/i,
    label: "Warning",
    hazards: ["H280"],
    precautions: ["P410+P403"],
    own: "",
    defer: "Gas and its fittings are for those who are licensed, under local codes.",
  },
];
