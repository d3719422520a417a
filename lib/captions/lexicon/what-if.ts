/** What happens if it is done wrong: the condition, then the outcome. */
export const conditions = [
  "if you/it/they/that/one {act}",
  "if you do not {act}",
  "one slip/knock/wrong *1 and",
  "if the *4 you get no",
  "any more/tighter/harder/hotter/further/deeper/longer/faster *3 and",
  "too much/tight/hot/far/fast/hard *2 and",
  "if you do {number}",
  "if you do it/that/them",
  "if the/your/a *3 burns/breaks/fails/slips/comes/falls/drops/sticks/jams/wears/leaks/moves/turns/binds",
  "if you do *4 first/last",
  "if the/your/a *3 is/are/goes/gets/sits/lets/runs",
  "without it/the/that/them",
] as const;

/** What comes of it. */
export const outcomes = [
  "it/you/they/that/which/we will",
  "it/you/they will not",
  "you get no/nothing",
  "the *3 never",
  "looks right",
  "does nothing",
  "and does not",
  "the/your *2 {damage}",
  "it/they/that *1 {damage}",
  "you are in/back/looking/stuck/out/into",
  "you have got {number}",
  "you have got a/no/to/the",
  "it/they/that goes/gets/jams/locks/sticks/runs/knocks/leaks/drags/snags/wears/comes/stops/slips/picks/pick",
  "the *3 will not",
  "the *3 will {plain}",
  "and/then *4 {damage}",
] as const;

/** Outcomes that are no harm: "if you look, you'll see". */
export const mildOutcomes = new Set(
  "see notice find hear feel know be want need get have understand recognise recognize remember like love work do last hold fit".split(
    " ",
  ),
);

/** Verbs of an order that stands for a condition: "open it out and it'll lose more than it pumps". */
export const ifVerbs = new Set(
  "open put wind get push pull turn lean leave miss skip scratch squeeze force hit tap heat over overtighten tighten cut file fit use run fill let drop mix swap bend pack grease oil scrape sand lift stretch crank".split(
    " ",
  ),
);
