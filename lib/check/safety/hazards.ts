/** A hazard of the workshop: the words by which a step and a caution speak of it, and who says so. */
export interface Hazard {
  name: string;
  /** Words of a step in which it is met. */
  met: RegExp;
  /** Words by which a caution is known to speak of it. */
  said: RegExp;
  source: string;
}

/** Hazards that are met by name in steps. Only what is certain to be one: a rule that cries wolf is not read. */
export const hazards: readonly Hazard[] = [
  {
    name: "petrol",
    met: /\b(?:petrol|gasoline)\b/i,
    said: /\b(?:petrol|gasoline|fuel|vapours?|flammable)\b/i,
    source: "HSE, safe use of petrol in garages (INDG331), from memory",
  },
  {
    name: "asbestos",
    met: /\basbestos\b/i,
    said: /\basbestos\b/i,
    source:
      "US EPA, Current Best Practices for Preventing Asbestos Exposure, March 2007; OSHA 29 CFR 1926.1101",
  },
  {
    name: "compressed air",
    met: /\b(?:compressed air|air line|airline|blow gun)\b/i,
    said: /\b(?:air|eyes?|grit)\b/i,
    source: "OSHA 29 CFR 1910.242(b)",
  },
  {
    name: "hot work on a tank",
    met: /\b(?:weld|braze|solder)\w*\b[^.]{0,40}\b(?:tank|drum)\b/i,
    said: /\b(?:tank|drum|explo\w+|vapours?)\b/i,
    source: "HSE INDG314, hot work on small tanks and drums",
  },
  {
    name: "strong acid or lye",
    met: /\b(?:hydrochloric|phosphoric|sulphuric|sulfuric|nitric|battery) acid\b|\bcaustic soda\b/i,
    said: /\b(?:acid|caustic|lye|burns?|corrosive|gloves?|goggles|eyes?)\b/i,
    source: "GHS statements of the supplier's data sheet, from memory",
  },
  {
    name: "a spring under load",
    met: /\b(?:compress(?:ed)? (?:the )?(?:\p{L}+ ){0,2}spring|spring compressor|wound mainspring|mainspring|let down the spring)\b/iu,
    said: /\b(?:(?:main)?springs?|fl(?:y|ies)|eyes?|load)\b/i,
    source: "OSHA 29 CFR 1910.147, stored energy",
  },
  {
    name: "mains or a charged capacitor",
    met: /\b(?:mains|smoothing capacitors?|reservoir capacitors?|high voltage|high-voltage|live chassis)\b/i,
    said: /\b(?:mains|capacitors?|shock|voltage|isolat\w+|electri\w+)\b/i,
    source: "HSE HSG85, electricity at work, from memory",
  },
  {
    name: "lead paint",
    met: /\blead paint\b/i,
    said: /\blead\b/i,
    source: "OSHA 29 CFR 1910.1025 and technical manual on lead, from memory",
  },
];
