import { beats, laterBeats } from "./beats.mjs";
import { action, caution, consumable, deferred, gotcha, part, tool } from "./notation.mjs";

const spanner = ["Open-ended spanner", "1/4 in BSF"];
const layer = (place) => ({ stack: "Drain plug", stackPlace: place, thickness: { typed: "1/16 in" } });

/** What the kit brought, without film. */
export const fromTheKit = [
  part(null, "gasket", "obtained", 1, { source: "gasket kit", words: "The one of the kit." }),
];

/** The drain plug of the cover, its bath, and the gasket of the kit that does not fit. */
export const drain = [
  action(beats.plugOut, "plugOut", "Unscrew the drain plug from the cover.", {
    stage: "strip",
    detail: "Two washers lie under its head. Lay them down in the order in which they come.",
  }),
  part(beats.plugOut + 2.0, "drainPlug", "removed", 1, { size: "1/4 in BSF", container: "tin 1" }),
  part(beats.plugOut + 4.0, "steelWasher", "removed", 1, { ...layer("2"), container: "tin 1" }),
  part(beats.plugOut + 5.2, "fibreWasher", "removed", 1, { ...layer("1"), container: "tin 1" }),

  caution(beats.bath - 0.8, "Citric acid irritates eyes and airways.", {
    consequence: "A splash makes the eyes sore; the dust of the dry acid makes cough.",
    harms: "person",
    severity: "minor",
    likelihood: "could",
    avoid:
      "Wear eye protection and gloves, and breathe no dust while mixing. Rinse an eye with water for several minutes; if it stays sore, see a doctor. Follow the supplier's data sheet, and local rules for waste.",
    sourceNote:
      "GHS statements H319, H335, P261, P280, P305+P351+P338, P337+P313 (EU CLP wording), as usual for citric acid. The supplier's data sheet decides.",
  }),
  consumable(beats.bath - 0.4, "Citric acid", "250 g", "in 5 l of water"),
  action(beats.bath, "bath", "Lower the cover into the citric acid bath.", {
    stage: "clean",
    detail: "The cover alone goes in: plug and washers stay in their tin.",
  }),
  deferred(beats.bath + 2.6, "open-bath", "The cover lies in the citric acid bath.", {
    of: "cover",
    waitsFor: "clean metal in the corners of the neck",
    least: { typed: "2 h" },
    longest: { typed: "12 h" },
    limitWhy: "a habit of this invented shop: sooner leaves rust, later eats iron",
    began: "2026-05-03 10:00",
    ended: "2026-05-03 14:10",
  }),
  action(beats.bathOut, "bathOut", "Lift the cover out of the bath, and let it drip.", {
    closes: ["open-bath"],
    detail: "Rinse it in clean water at once, and dry it with a cloth.",
    result: "The corners of the neck show clean metal.",
  }),

  action(beats.trial, "trial", "Try the cover gasket of the kit dry on the studs.", {
    stage: "trial fit",
    detail: "It goes over no two studs at once. The one cut to the card's pattern goes over all four.",
  }),
  part(beats.trial + 1.6, "gasket", "fitted", 1),
  gotcha(beats.trial + 3.0, "The cover gasket of the kit does not go over the studs.", {
    on: "gasket",
    why: "Its holes lie on a larger circle than the studs of this pump.",
    instead: "Cut a gasket to the pattern printed on the card.",
  }),
  part(beats.trial + 4.2, "gasket", "removed", 1),
  part(beats.trial + 5.0, "gasket", "left out", 1, { words: "The one of the kit." }),

  tool(beats.plugIn - 0.3, ...spanner),
  action(beats.plugIn, "plugIn", "Screw the drain plug into the cover.", {
    stage: "assemble",
    detail: "The fibre washer lies against the cover, the steel washer under the head of the plug.",
  }),
  part(beats.plugIn + 1.0, "fibreWasher", "fitted", 1, layer("1")),
  part(beats.plugIn + 2.0, "steelWasher", "fitted", 1, layer("2")),
  part(beats.plugIn + 4.0, "drainPlug", "fitted", 1, { size: "1/4 in BSF" }),
  deferred(beats.plugIn + 5.2, "open-washer", "The drain plug has its old fibre washer.", {
    of: "fibreWasher",
    waitsFor: "the new fibre washer that the kit lacked",
  }),
];

/** A week later, on a recording of its own. */
export const later = [
  tool(laterBeats.plugOut - 0.6, ...spanner),
  action(laterBeats.plugOut, "laterOut", "Unscrew the drain plug from the cover again.", {
    stage: "assemble",
    detail: "The pump is dry: it has not been on the engine since.",
  }),
  part(laterBeats.plugOut + 0.4, "fibreWasher", "obtained", 1, { source: "bearing stockist, to size" }),
  part(laterBeats.plugOut + 1.6, "drainPlug", "removed", 1),
  part(laterBeats.plugOut + 2.8, "steelWasher", "removed", 1, layer("2")),
  part(laterBeats.plugOut + 3.6, "fibreWasher", "removed", 1, layer("1")),
  part(laterBeats.plugOut + 4.0, "fibreWasher", "scrapped", 1, { words: "Hard, and cracked at the rim." }),
  action(laterBeats.plugIn, "laterIn", "Screw the drain plug in with the new fibre washer.", {
    closes: ["open-washer"],
    detail: "Fibre against the cover, steel under the head, as before.",
  }),
  part(laterBeats.plugIn + 1.0, "fibreWasher", "fitted", 1, layer("1")),
  part(laterBeats.plugIn + 2.0, "steelWasher", "fitted", 1, layer("2")),
  part(laterBeats.plugIn + 4.0, "drainPlug", "fitted", 1, { size: "1/4 in BSF" }),
];
