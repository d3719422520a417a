import type { Source } from "../source.ts";

/**
 * Hazard (H, EUH) and precautionary (P) statements, to the letter: their wording is fixed by regulation. `<…>` stands
 * for a clause that may be left out; where a slash or `...` stands, the writer of a label picks or completes.
 */
export const statementSource: Source = {
  standard: "EU CLP, wording of 2021",
  seen: "copy of the European Commission's page in Gewerd-Strauss/Create-GHS-Phrases, CreateGHSPhrases.ahk",
  how: "read",
  doubt: "later GHS revisions split P310 to P313; the edition in force decides",
};

export const statements = {
  EUH066: "Repeated exposure may cause skin dryness or cracking.",
  H222: "Extremely flammable aerosol.",
  H224: "Extremely flammable liquid and vapour.",
  H225: "Highly flammable liquid and vapour.",
  H226: "Flammable liquid and vapour.",
  H229: "Pressurised container: May burst if heated.",
  H280: "Contains gas under pressure; may explode if heated.",
  H290: "May be corrosive to metals.",
  H304: "May be fatal if swallowed and enters airways.",
  H314: "Causes severe skin burns and eye damage.",
  H315: "Causes skin irritation.",
  H319: "Causes serious eye irritation.",
  H335: "May cause respiratory irritation.",
  H336: "May cause drowsiness or dizziness.",
  H340: "May cause genetic defects <route>.",
  H350: "May cause cancer <route>.",
  H360FD: "May damage fertility. May damage the unborn child.",
  H362: "May cause harm to breast-fed children.",
  H372: "Causes damage to organs <organs> through prolonged or repeated exposure <route>.",
  H410: "Very toxic to aquatic life with long lasting effects.",
  H411: "Toxic to aquatic life with long lasting effects.",
  P201: "Obtain special instructions before use.",
  P202: "Do not handle until all safety precautions have been read and understood.",
  P210: "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.",
  P211: "Do not spray on an open flame or other ignition source.",
  P233: "Keep container tightly closed.",
  P234: "Keep only in original packaging.",
  P240: "Ground and bond container and receiving equipment.",
  P243: "Take action to prevent static discharges.",
  P251: "Do not pierce or burn, even after use.",
  P260: "Do not breathe dust/fume/gas/mist/vapours/spray.",
  P261: "Avoid breathing dust/fume/gas/mist/vapours/spray.",
  P264: "Wash ... thoroughly after handling.",
  P270: "Do not eat, drink or smoke when using this product.",
  P271: "Use only outdoors or in a well-ventilated area.",
  P273: "Avoid release to the environment.",
  P280: "Wear protective gloves/protective clothing/eye protection/face protection.",
  "P301+P310": "IF SWALLOWED: Immediately call a POISON CENTER/doctor/...",
  "P301+P330+P331": "IF SWALLOWED: rinse mouth. Do NOT induce vomiting.",
  "P303+P361+P353":
    "IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water [or shower].",
  "P304+P340": "IF INHALED: Remove person to fresh air and keep comfortable for breathing.",
  "P305+P351+P338":
    "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing.",
  "P308+P313": "IF exposed or concerned: Get medical advice/attention.",
  P331: "Do NOT induce vomiting.",
  "P337+P313": "If eye irritation persists: Get medical advice/attention.",
  "P403+P233": "Store in a well-ventilated place. Keep container tightly closed.",
  "P403+P235": "Store in a well-ventilated place. Keep cool.",
  P405: "Store locked up.",
  "P410+P403": "Protect from sunlight. Store in a well-ventilated place.",
  "P410+P412": "Protect from sunlight. Do not expose to temperatures exceeding 50 °C/122 °F.",
  P501: "Dispose of contents/container to ...",
} as const;

export type StatementCode = keyof typeof statements;
