/** Names of inch threads as they are said, and the letters they are written with. Longest first. */
export const threadNames: readonly (readonly [string, string])[] = [
  ["british standard whitworth", "BSW"],
  ["british standard fine", "BSF"],
  ["british standard pipe", "BSP"],
  ["british standard cycle", "BSC"],
  ["b s w", "BSW"],
  ["b s f", "BSF"],
  ["b s p", "BSP"],
  ["u n f", "UNF"],
  ["u n c", "UNC"],
  ["n p t", "NPT"],
  ["whitworth", "BSW"],
  ["whit", "BSW"],
  ["bsw", "BSW"],
  ["bsf", "BSF"],
  ["bsp", "BSP"],
  ["gas thread", "BSP"],
  ["bsc", "BSC"],
  ["cei", "CEI"],
  ["cycle thread", "BSC"],
  ["unf", "UNF"],
  ["unc", "UNC"],
  ["unef", "UNEF"],
  ["npt", "NPT"],
  ["pipe thread", "NPT"],
  ["acme", "Acme"],
  ["m e", "ME"],
  ["national fine", "UNF"],
  ["national coarse", "UNC"],
  ["sae fine", "UNF"],
];

/** "three eighths fine": American for UNF. */
export const fineness: Readonly<Record<string, string>> = { fine: "UNF", coarse: "UNC" };

/** Metric sizes that "M" stands before (ISO 261, first and second choice, and the small ones in use). */
export const metricSizes = new Set([
  1, 1.2, 1.4, 1.6, 2, 2.2, 2.5, 3, 3.5, 4, 5, 6, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39,
  42,
]);

/** What shows that two numbers, "ten thirty two", are a screw. */
export const screwWords = new Set(
  "screw screws bolt bolts nut nuts tap tapped thread threads threaded stud studs die setscrew setscrews hardware".split(
    " ",
  ),
);
