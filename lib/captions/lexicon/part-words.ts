import type { PartAction } from "./part-events.ts";

/** What mends a part, as it is told afterwards. */
export const repairWords = new Set(
  "sealed resealed plated undercut straightened welded brazed soldered resoldered rebushed bushed sleeved rebored bored honed skimmed reground lapped stoned dressed scraped filed rewound recovered relined repacked patched glued remetalled recut recast stitched refaced trued shimmed freed repinned burnished regulated replated rechromed chromed replaited painted tinned rerubbered re-leathered rebuilt mended repaired regreased reset refurbished".split(
    " ",
  ),
);

/** What cleans a part. */
export const cleanWords = new Set(
  "cleaned washed degreased scrubbed blasted derusted flushed decoked boiled descaled".split(" "),
);

/** Words for the state of a part. */
export const conditions = new Set(
  "worn perished cracked split scored pitted bent missing shot hard frayed kinked grooved rounded broken corroded rusted rusty seized gummed melted stripped chewed torn weak tired burnt burned chipped loose leaking sticky stuck warped damaged bare dead rotten mashed stretched swollen rumbling dribbling noisy junk sloppy snapped sheared crushed dented mangled flat threadbare mushroomed egged ovalled brittle oval".split(
    " ",
  ),
);

/** Materials. */
export const materials: readonly string[] = [
  "sintered bronze",
  "phosphor bronze",
  "oilite bronze",
  "silver steel",
  "stainless steel",
  "mild steel",
  "tool steel",
  "spring steel",
  "gauge plate",
  "cast iron",
  "blued pivot steel",
  "pivot steel",
  "drill rod",
  "bronze",
  "brass",
  "copper",
  "aluminium",
  "aluminum",
  "stainless",
  "steel",
  "iron",
  "nylon",
  "delrin",
  "ptfe",
  "nitrile",
  "viton",
  "neoprene",
  "rubber",
  "leather",
  "hide",
  "felt",
  "cork",
  "fibre",
  "fiber",
  "beech",
  "oak",
  "ash",
  "boxwood",
  "mahogany",
  "paper",
  "bakelite",
  "babbitt",
  "white metal",
  "lignum",
  "gut",
  "tufnol",
  "acetal",
];

/** What sounds like one of these and is none. */
export const notEvents = [
  "go/goes/going back to back",
  "go/goes/going back to the/my/a/work",
  "going back on the *1 lake/road/water/air/market",
  "going back in time",
  "new to me",
  "new to this",
  "anyone/anybody new",
] as const;

/** Behind these, taking off or putting back has not been done yet. */
export const notYet = new Set("when once until till before after as".split(" "));

/** Where one of these stands just before, nothing was done: "don't reuse", "if you made one". */
export const undone = new Set(
  "than told tell said says not never if should would could can unless whether cannot".split(" "),
);

/** Materials that are new where the part is not named again: "both were cracked. New urethane." */
export const materialWords = new Set(
  "rubber urethane leather felt cork nylon brass bronze copper steel silicone neoprene viton nitrile canvas cloth lining linings packing foam baize webbing braid gut leads wiring hose tubing".split(
    " ",
  ),
);

/** A sentence of one word that says what was done: "Replaced." */
export const wholeSentences: Readonly<Record<string, PartAction>> = {
  changed: "replace",
  replaced: "replace",
  renewed: "replace",
  swapped: "replace",
  binned: "replace",
  scrapped: "replace",
  cleaned: "clean",
  washed: "clean",
  degreased: "clean",
  straightened: "repair",
  rebushed: "repair",
  soldered: "repair",
  repaired: "repair",
  mended: "repair",
  refitted: "reuse",
  reused: "reuse",
  reuse: "reuse",
};

/** Verbs in -ed that a speaker says of himself and that are no work on a part. */
export const notWork = new Set(
  "collected mushroomed need feed shed seed bleed speed exceed proceed indeed peaked cranked rocked twisted drifted levered prised hammered tapped wiggled eased worked rolled scratched rounded needed wanted tried noticed asked called used started counted measured checked looked thought heard reckoned loved moved turned removed undid dropped showed filmed promised figured guessed hated liked ordered bought needed missed wished wondered worried hoped expected planned decided learned learnt realised realized remembered mentioned said told explained finished stopped watched passed picked pulled opened shut closed loosened slackened tightened torqued tested timed weighed lifted carried borrowed owned forgot posted wired placed slipped chased treadled treadled leaned leant snapped cracked ruined wrecked bumped knocked rattled nipped screwed marked labelled labeled bagged stored stored parked happened read read".split(
    " ",
  ),
);

/** What others do to a part, behind "had it". */
export const doneWords = new Set(
  "ground made done cut rewound built spun bent set wound sewn woven cast".split(" "),
);

/** How a part comes to be made, told afterwards. */
export const madeWords = new Set(
  "wound spun carved whittled sewed sewn stitched cast printed sawed plaited knitted forged turned machined filed cut milled fabricated folded rolled moulded laminated".split(
    " ",
  ),
);

/** What mends a part, as it had to be done: "I had to bush the arm". */
export const mendVerbs = new Set(
  "weld braze bush rebush sleeve bore file straighten rewind solder drill skim lap hone shim true polish grind ream tap scrape stone patch glue recut repack".split(
    " ",
  ),
);
