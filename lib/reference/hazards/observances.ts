import type { UsualCaution } from "./usual.ts";

const memory = "common workshop practice, from memory";
const memorySheet = "from memory: the safety data sheet of your product decides";
const specialist = "This is specialist work: local codes and licensed practice come first.";
const could = { harms: "person", severity: "serious", likelihood: "could" } as const;

/**
 * What usually is said of hazards that are no substance, in our own words. Where the work belongs to licensed
 * practice the row says so and names no figure.
 */
export const observances: readonly UsualCaution[] = [
  {
    ...could,
    name: "Springs and other stored energy",
    met: /\b(?:\w+-?)?springs?\b(?! ?(?:washers?|clips?|pins?|balances?|cotters?))|\bflywheels?\b/i,
    needed:
      /\b(?:compress(?:ed)? (?:the )?(?:\p{L}+ ){0,2}spring|spring compressor|wound mainspring|mainspring|let down the spring)\b/iu,
    said: /\b(?:(?:main)?springs?|stored energy|fl(?:y|ies)|load|restrain\w*)\b/i,
    hazard: "A spring or a flywheel holds energy",
    consequence: "It can let go and strike face or hands.",
    avoid:
      "Release or block the energy before dismantling. Restrain the part, and verify that it is at rest.",
    source: `OSHA 29 CFR 1910.147, stored energy; ${memory}`,
  },
  {
    ...could,
    name: "Raised loads",
    met: /\b(?:jacks?|jack(?:ed)? up|hoists?|chain blocks?|engine cranes?|slings?|lifting eyes?)\b/i,
    needed:
      /\b(?:lift|lower|rais|hang|hoist)\w*\b[^.]{0,40}\b(?:with|on|from|by) (?:the |a |an )?(?:hoists?|chain blocks?|(?:engine )?cranes?|slings?)\b|\bjack(?:ed)? (?:it |the \w+ )?up\b/i,
    said: /\b(?:jack|hoist|crane|sling|load|fall|stands?|underneath)\b/i,
    hazard: "The raised load can drop or tip",
    consequence: "It can crush whoever is under it.",
    avoid:
      "Use rated gear that has been examined. Find the centre of gravity. Rest it on stands, not on a jack. Nobody goes under it.",
    source: "OSHA 29 CFR 1910.147, raised parts; HSE, lifting operations (LOLER), from memory",
  },
  {
    ...could,
    name: "Mains and capacitors",
    met: /\b(?:mains|capacitors?|high[- ]voltage|live chassis|smoothing (?:block|can))\b/i,
    needed: /\b(?:mains|(?:smoothing|reservoir) capacitors?|high[- ]voltage|live chassis)\b/i,
    said: /\b(?:mains|capacitors?|shock|voltage|isolat\w+|electri\w+|discharge)\b/i,
    hazard: "Mains voltage, and the charge that stays in capacitors",
    consequence: "The shock can kill, also after the plug has been pulled.",
    avoid:
      "Isolate, prove dead, discharge the capacitors and prove again. An old set may have a live chassis. Do not plug a restored set straight in.",
    defer: "Fixed wiring and microwave ovens are for a competent person, under local codes.",
    source: `HSE HSG85, electricity at work, from memory; ${memory}`,
  },
  {
    ...could,
    name: "Pressure",
    met: /\b(?:boilers?|air receivers?|pressure vessels?|pressuris\w+|pressuriz\w+|under pressure|hydraulic (?:lines?|hoses?|rams?)|steam)\b/i,
    needed: /\b(?:pressure vessels?|air receivers?|pressuri[sz]\w+|under pressure)\b/i,
    said: /\b(?:pressure|steam|burst|vent|boiler)\b/i,
    hazard: "What is under pressure bursts or sprays",
    consequence: "Fragments, steam or oil can maim or kill.",
    avoid: "Vent it to zero and prove that before anything is loosened. Pressure tests use water, not air.",
    defer:
      "Boilers and pressure vessels are inspected and worked on by those who are licensed, under local codes.",
    source: memory,
  },
  {
    ...could,
    name: "Compressed air",
    met: /\b(?:compressed air|air ?lines?|blow ?guns?|air guns?)\b/i,
    needed: /\b(?:compressed air|air ?lines?|blow ?guns?|air guns?)\b/i,
    said: /\b(?:air|eyes?|grit)\b/i,
    hazard: "Compressed air throws grit, and goes through skin",
    consequence: "It can blind, or get into the blood.",
    avoid:
      "For cleaning, only when reduced to less than 30 psi, with a guard against chips, and eye protection. Never on skin. Never spin a bearing with it.",
    source: "OSHA 29 CFR 1910.242(b); bearings and skin: common practice, from memory",
  },
  {
    ...could,
    name: "Hot work on a tank or drum",
    met: /\b(?:weld|braz|solder|cut|grind|heat)\w*\b[^.]{0,40}\b(?:tanks?|drums?)\b|\b(?:tanks?|drums?)\b[^.]{0,40}\b(?:weld|braz|solder)\w*\b/i,
    needed:
      /\b(?:weld|braz|solder)\w*\b[^.]{0,40}\b(?:tanks?|drums?)\b|\b(?:tanks?|drums?)\b[^.]{0,40}\b(?:weld|braz|solder)\w*\b/i,
    said: /\b(?:explo\w+|vapours?|gas-?free\w*|hot work)\b/i,
    hazard: "A tank that held fuel explodes when it is heated, also when it is empty",
    consequence: "The blast can kill.",
    avoid:
      "No welding, brazing or cutting until it has been cleaned and gas-freed. Prefer a cold repair or another tank.",
    defer: specialist,
    source: `HSE INDG314, hot work on small tanks and drums; ${memory}`,
  },
  {
    ...could,
    name: "Rotating parts and the first run",
    met: /\b(?:first (?:run|start)|start (?:it|her|the engine) up|running engine|crank(?:ing)? handle|drive belts?|line ?shaft|lathe|pulleys? turning)\b/i,
    needed: /\b(?:start(?:ing)? (?:up )?the engine|running engine|engine (?:is )?running)\b/i,
    said: /\b(?:rotat\w+|guards?|sleeves?|entangle\w*|belt|exhaust|carbon monoxide)\b/i,
    hazard: "What turns catches sleeves, gloves and hair; an engine breathes out carbon monoxide",
    consequence: "It can pull in a hand or an arm. The gas kills without being smelt.",
    avoid: "Guards on. A stop that can be reached from afar. No loose sleeves, no gloves. Run it outdoors.",
    source: "HSE, work equipment (PUWER), from memory",
  },
  {
    ...could,
    name: "Nitric acid",
    met: /\bnitric acid\b/i,
    needed: /\bnitric acid\b/i,
    said: /\b(?:acids?|burns?|corrosive|splash\w*)\b/i,
    hazard: "Nitric acid",
    consequence: "It burns skin and eyes, and gives off poisonous fumes.",
    avoid:
      "Gloves, goggles, a door open to the outside. Add the acid to the water. Keep it from rags, oil and solvents, which it can set alight.",
    source: memorySheet,
  },
  {
    ...could,
    name: "Chromate paint and primer",
    met: /\b(?:zinc )?chromates?\b/i,
    needed: /\b(?:zinc )?chromates?\b/i,
    said: /\bchromates?\b/i,
    hazard: "Dust of chromate paint",
    consequence: "It can cause cancer.",
    avoid: "No dry sanding. Control the dust where it arises; a mask comes after that.",
    source: "OSHA 3373, hexavalent chromium",
  },
  {
    ...could,
    name: "Radium dial",
    met: /\bradium\b|\bluminous (?:dials?|paint|hands)\b/i,
    needed: /\bradium\b/i,
    said: /\b(?:radium|radioactive)\b/i,
    hazard: "Luminous paint with radium",
    consequence: "Its dust is radioactive and stays in the body.",
    avoid: "Do not open, scrape or dust the dial.",
    defer: specialist,
    source: memory,
  },
  {
    ...could,
    name: "Magnesium",
    met: /\bmagnesium\b/i,
    needed: null,
    said: /\b(?:magnesium|swarf)\b/i,
    hazard: "Magnesium swarf burns",
    consequence: "Water on it makes the fire worse.",
    avoid: "No water on burning swarf: dry sand, or an agent of class D.",
    source: memory,
  },
  {
    ...could,
    name: "Mercury",
    met: /\bmercury\b/i,
    needed: /\bmercury\b/,
    said: /\bmercury\b/i,
    hazard: "Mercury vapour",
    consequence: "It is poisonous, and is not smelt.",
    avoid: "Do not vacuum a spill. Keep it in a sealed container.",
    defer: specialist,
    source: memory,
  },
  {
    ...could,
    name: "Fuel gas and refrigerant",
    met: /\b(?:gas (?:pipes?|valves?|burners?|supply|fittings?)|LPG|propane|butane|refrigerants?)\b/i,
    needed: /\b(?:refrigerants?|gas (?:pipes?|supply|fittings?))\b/i,
    said: /\b(?:gas|refrigerants?|licen[cs]ed)\b/i,
    hazard: "Gas that escapes",
    consequence: "It can explode, smother or freeze.",
    avoid: "Leave it closed, and have it worked on.",
    defer: "Gas and refrigerant are for those who are licensed, under local codes.",
    source: "common practice, no source: what belongs to licensed practice",
  },
  {
    ...could,
    name: "Brakes and steering",
    met: /\b(?:brakes?|brake (?:drums?|hoses?|cylinders?)|steering)\b/i,
    needed: null,
    said: /\b(?:brakes?|steering|licen[cs]ed)\b/i,
    hazard: "Brakes and steering that fail on the road",
    consequence: "The failure can kill, and not only the driver.",
    avoid: "Have the work inspected before the machine goes on a road.",
    defer: "Brakes and steering of road vehicles are for those who are licensed, under local codes.",
    source: "common practice, no source: what belongs to licensed practice",
  },
];
