/**
 * Materials: a flat tone with a little shade. `pattern` names marks that are drawn on the surface, worked out
 * from the pattern coordinates of the solid: darker (below 1) or lighter (above 1).
 */
const tones = {
  paint: { colour: [137, 160, 148] },
  paintInside: { colour: [104, 120, 112] },
  machined: { colour: [196, 198, 196] },
  cut: { colour: [233, 222, 205], pattern: "hatch", flat: true },
  cutBronze: { colour: [226, 178, 122], pattern: "hatchBack", flat: true },
  cutSteel: { colour: [205, 212, 218], pattern: "hatchFine", flat: true },
  steel: { colour: [172, 180, 187], shine: 0.35 },
  track: { colour: [208, 213, 216], shine: 0.45 },
  thread: { colour: [170, 176, 181], pattern: "thread" },
  brass: { colour: [214, 177, 92], shine: 0.3 },
  brassDark: { colour: [176, 140, 66] },
  bronze: { colour: [198, 138, 84], shine: 0.25 },
  pulley: { colour: [113, 121, 128] },
  rubber: { colour: [66, 68, 72], shine: 0.12 },
  rubberCut: { colour: [78, 80, 84], flat: true },
  sealCase: { colour: [150, 158, 165], shine: 0.3 },
  gasketOld: { colour: [150, 116, 80] },
  gasketWet: { colour: [96, 72, 50] },
  gasketNew: { colour: [226, 212, 166] },
  tin: { colour: [190, 196, 200], shine: 0.3 },
  tinInside: { colour: [152, 158, 162] },
  wood: { colour: [205, 172, 128], pattern: "grain" },
  tool: { colour: [124, 133, 141], shine: 0.3 },
  toolBright: { colour: [186, 193, 198], shine: 0.4 },
  graduated: { colour: [190, 197, 202], pattern: "graduated", shine: 0.3 },
  knurl: { colour: [150, 157, 163], pattern: "knurl", shine: 0.2 },
  handle: { colour: [161, 74, 62] },
  cloth: { colour: [238, 236, 230], pattern: "cloth" },
  bottle: { colour: [232, 233, 228], shine: 0.15 },
  cap: { colour: [70, 104, 134] },
  water: { colour: [150, 190, 214], shine: 0.5 },
  bag: { colour: [252, 240, 196] },
  label: { colour: [246, 243, 234], pattern: "lines" },
  scratch: { colour: [250, 250, 246], flat: true },
  rule: { colour: [206, 211, 214], pattern: "rule" },
  paper: { colour: [250, 249, 245], flat: true },
  fibre: { colour: [176, 92, 74] },
  acid: { colour: [206, 214, 190], shine: 0.4 },
  dark: { colour: [48, 51, 54], flat: true },
};

export const shades = 64;
const names = Object.keys(tones);
export const materialNumber = Object.fromEntries(names.map((name, index) => [name, index]));

const fraction = (x) => x - Math.floor(x);
const stripe = (x, width) => (fraction(x) < width ? 1 : 0);

/** How much a pattern darkens or lightens a place; 1 leaves it. */
const patterns = {
  hatch: (a, b) => (stripe((a + b) * 6.2, 0.16) ? 0.42 : 1),
  hatchBack: (a, b) => (stripe((a - b) * 8.5, 0.18) ? 0.45 : 1),
  hatchFine: (a, b) => (stripe((a + b) * 13, 0.22) ? 0.5 : 1),
  thread: (x, angle) => (stripe(x * 20 - angle / (2 * Math.PI), 0.36) ? 0.62 : 1.04),
  knurl: (x, angle) => (stripe(x * 14 + angle * 5, 0.3) || stripe(x * 14 - angle * 5, 0.3) ? 0.78 : 1.04),
  graduated: (x, angle) => (stripe(x * 10, 0.14) && fraction(angle / (2 * Math.PI)) < 0.34 ? 0.35 : 1),
  grain: (a, b) => (stripe(b * 4 + 0.22 * Math.sin(a * 2.1) + 0.1 * Math.sin(a * 5.3), 0.09) ? 0.9 : 1),
  cloth: (x, angle) => (stripe(x * 5, 0.1) || stripe((angle * 6) / Math.PI, 0.08) ? 0.88 : 1),
  lines: (a, b) => (stripe(b * 5 + 0.3, 0.14) && Math.abs(a) < 0.42 ? 0.55 : 1),
  rule: (a, b) => {
    if (stripe(a, 0.02)) return b > 0.1 ? 0.3 : 1;
    if (stripe(a * 4, 0.06)) return b > 0.32 ? 0.4 : 1;
    return stripe(a * 16, 0.16) && b > 0.44 ? 0.5 : 1;
  },
};
export const patternOf = names.map((name) => patterns[tones[name].pattern] ?? null);

/** Colours by material and shade, packed blue-green-red; shade 0 is the darkest. */
export const colours = names.map((name) => {
  const { colour, flat = false, shine = 0 } = tones[name];
  return Uint32Array.from({ length: shades }, (_, i) => packed(colour, i / (shades - 1), flat, shine));
});

function packed(colour, light, flat, shine) {
  const shaded = flat ? 1 : 0.52 + 0.6 * soft(light);
  const gleam = flat ? 0 : shine * Math.max(0, (light - 0.8) / 0.2) ** 2;
  const channel = (value, coolness) => {
    const cool = flat ? 1 : 1 + coolness * (1 - light);
    return Math.min(255, Math.round(value * shaded * cool + (255 - value * shaded) * gleam));
  };
  return channel(colour[0], -0.03) | (channel(colour[1], 0) << 8) | (channel(colour[2], 0.05) << 16);
}

/** Three tones that run softly into each other. */
function soft(light) {
  const step = (edge, width) => 1 / (1 + Math.exp(-(light - edge) / width));
  return 0.4 * light + 0.3 * step(0.32, 0.045) + 0.3 * step(0.66, 0.045);
}

/** A packed colour darkened or lightened. */
export function toned(colour, factor) {
  const channel = (shift) => Math.min(255, ((colour >>> shift) & 255) * factor) << shift;
  return channel(0) | channel(8) | channel(16);
}
