import type { BuildDocument } from "#lib/build/index.ts";
import { type Mark, newMark } from "#lib/mark/index.ts";

/** One fault put into one step of a clean build. */
export interface Seed {
  rule: string;
  /** The ways in which the fault is written; they are used in turn, from step to step. */
  /** The least share that must be found, where the words of the clean step itself may answer the rule. */
  least?: number;
  ways: ((document: BuildDocument, action: Mark) => BuildDocument)[];
}

const withMark = (document: BuildDocument, mark: Mark): BuildDocument => ({
  ...document,
  marks: [...document.marks.filter(({ id }) => id !== mark.id), mark],
});

const plain = (words: unknown) => String(words).replace(/[.!]+$/, "");
const instruction = (make: (words: string) => string) => (document: BuildDocument, action: Mark) =>
  withMark(document, { ...action, fields: { ...action.fields, words: make(plain(action.fields.words)) } });
const below = (text: string) => (document: BuildDocument, action: Mark) =>
  withMark(document, { ...action, fields: { ...action.fields, detail: text } });
const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** Marks put behind an action, some seconds after it. */
const behind =
  (...marks: [kind: Mark["kind"], after: number, fields: Record<string, unknown>][]) =>
  (document: BuildDocument, action: Mark) =>
    marks.reduce(
      (so_far, [kind, after, fields], index) =>
        withMark(
          so_far,
          newMark({
            id: `seeded-${index}`,
            buildId: action.buildId,
            sittingId: action.sittingId,
            recordingId: action.recordingId,
            at: (action.at as number) + after,
            kind,
            fields: { v: 1, ...fields },
          }),
        ),
      document,
    );

const person = {
  harms: "person",
  severity: "minor",
  likelihood: "could",
  avoid: "Wear gloves.",
  sourceNote: "A book",
};
const thing = { harms: "thing", avoid: "Wear gloves.", sourceNote: "A book" };
const torque = (words: string, typed: string, source: string) =>
  behind(["measurement", 3, { words, specified: { typed }, source }]);

export const seeds: Seed[] = [
  {
    rule: "missing-step",
    ways: [
      below("As in step 99."),
      below("Repeat steps 1 to 40."),
      below("Use the nuts of step 77."),
      below("Go back to step 0."),
    ],
  },
  {
    rule: "units-disagree-in-words",
    ways: [
      below("The gap is 0.5 mm (0.2 in)."),
      below("To 12 lbf ft (163 N m)."),
      below("Heat it to 80 °C (276 °F)."),
      below("Leave 1/16 in (16 mm)."),
    ],
  },
  {
    rule: "number-alone",
    ways: [
      below("Set the gap to 0.4."),
      instruction(() => "Tighten the nut to 12."),
      below("Ream it to 0.375, from the back."),
      below("The end float is 0.2 with the cap on."),
    ],
  },
  {
    rule: "wait-without-time",
    ways: [
      below("Leave it to cure."),
      below("Let the paint dry."),
      instruction(() => "Soak the parts in the bath."),
      below("Allow it to cool slowly."),
    ],
  },
  {
    rule: "reverse-of-removal",
    ways: [
      below("Refitting is the reverse of removal."),
      instruction(() => "Reassemble in reverse order."),
      below("Put it back in the reverse order."),
      below("Assembly is simply the reverse."),
    ],
  },
  {
    rule: "verb-first",
    ways: [
      instruction((w) => `You ${lower(w)}`),
      instruction((w) => `I now ${lower(w)}`),
      instruction(() => "The cover comes off straight"),
      instruction(() => "Removing the two screws"),
    ],
  },
  {
    rule: "two-commands",
    ways: [
      instruction((w) => `${w}, then lift the cover off.`),
      instruction((w) => `${w}. Unscrew the two studs.`),
      instruction((w) => `${w}; withdraw the pin.`),
      instruction(() => "Slacken the clamp and remove the lever."),
    ],
  },
  {
    rule: "late-condition",
    ways: [
      instruction(() => "Tap the rim if the cover sticks."),
      below("Warm the boss if the pin will not move."),
      instruction(() => "Renew the spring unless it measures as new."),
      below("It is soft. Back the screw off if the thread binds."),
    ],
  },
  {
    rule: "which-part",
    ways: [
      instruction(() => "Lift it off."),
      instruction(() => "Press them home."),
      instruction(() => "Now turn it over."),
      instruction(() => "Wipe it dry."),
    ],
  },
  {
    rule: "vague",
    ways: [
      below("Draw it with a suitable puller."),
      below("Oil as required."),
      instruction((w) => `${w} in the usual way.`),
      below("Tighten the nut securely."),
    ],
  },
  {
    rule: "weak-order",
    ways: [
      below("The nuts should be tightened evenly."),
      below("The lip may be greased."),
      below("All wax should first be removed."),
      below("It could be pressed in cold."),
    ],
  },
  {
    rule: "order-in-note",
    ways: [
      behind(["part", 2, { item: "Seal", event: "fitted", words: "Renew the seal each time." }]),
      behind(["tool", 2, { words: "Press", note: "Grease the screw first." }]),
      behind(["part", 2, { item: "Tab", event: "fitted", words: "Do not bend it twice." }]),
      behind(["measurement", 2, { words: "Gap", note: "Adjust the screw afterwards." }]),
    ],
  },
  {
    rule: "long-sentence",
    ways: [
      instruction(
        (w) =>
          `${w} while the other hand holds the frame steady on the bench and a cloth lies under it to catch whatever may fall out of it`,
      ),
      below(
        "It sits between the shoulder and the ring nut and is held there by nothing but a wire that was bent by hand and bends again whenever it is touched by a spanner.",
      ),
    ],
  },
  {
    rule: "tool-not-listed",
    ways: [
      below("Hold it with a toolmaker's clamp."),
      below("Use a gasket cutter."),
      below("Press it home with the arbor press."),
      below("Draw it with a two-legged puller."),
    ],
  },
  {
    rule: "consumable-not-listed",
    ways: [
      below("Wipe it with methylated spirit."),
      below("Clean it with bronze wool."),
      below("Fill it with graphite."),
      below("Use threadlock."),
    ],
  },
  {
    rule: "one-part-two-names",
    ways: [
      behind(
        ["part", 2, { item: "Cover nut", event: "removed" }],
        ["part", 3, { item: "Cover nuts", event: "fitted" }],
      ),
      behind(
        ["part", 2, { item: "Hand wheel", event: "removed" }],
        ["part", 3, { item: "Handwheel", event: "fitted" }],
      ),
      behind(
        ["part", 2, { item: "Needle-bar", event: "removed" }],
        ["part", 3, { item: "needle bar", event: "fitted" }],
      ),
    ],
  },
  {
    rule: "no-way-back",
    // The step before may measure or check, and then there was a way back.
    least: 0.85,
    ways: [
      instruction(() => "Drill the frame for a second screw."),
      instruction(() => "Stake the nut."),
      instruction(() => "Grind the stem to length."),
    ],
  },
  {
    rule: "hazard-without-caution",
    ways: [
      below("Wash it in petrol."),
      below("Blow it out with compressed air."),
      below("The lining is asbestos."),
      below("Dip it into hydrochloric acid."),
    ],
  },
  {
    rule: "caution-after-act",
    ways: [
      behind(["part", 3, { item: "Pin", event: "removed" }], ["caution", 9, { words: "Burr.", ...person }]),
    ],
  },
  {
    rule: "notice-of-injury",
    ways: [
      behind(["caution", 2, { words: "The gear traps fingers.", ...thing }]),
      behind(["caution", 2, { words: "Swarf flies into the eyes.", ...thing }]),
      behind(["caution", 2, { words: "The flux burns the skin.", ...thing }]),
    ],
  },
  {
    rule: "says-safe",
    ways: [
      below("It is safe now."),
      below("The dust is harmless."),
      below("There is no danger in it."),
      below("It is safe to touch."),
    ],
  },
  {
    rule: "caution-without-source",
    ways: [behind(["caution", 2, { words: "Burr.", ...person, sourceNote: "" }])],
  },
  {
    rule: "too-many-cautions",
    ways: [
      behind(
        ...["Burr.", "Dust.", "Heat.", "Weight."].map(
          (words) => ["caution", 2, { words, ...person }] as ["caution", number, object] as never,
        ),
      ),
      behind(...["Burr.", "burr"].map((words) => ["caution", 2, { words, ...person }] as never)),
    ],
  },
  {
    rule: "thread-condition",
    // A step that speaks of oil, or lists it, is believed to mean the thread.
    least: 0.8,
    ways: [torque("Nut, torque", "12 lbf ft", "published"), torque("Clamp screw", "4 N m", "published")],
  },
  {
    rule: "tightening-order",
    ways: [
      instruction(() => "Tighten the four cover nuts."),
      instruction(() => "Nip up all six screws."),
      instruction(() => "Torque the 8 bed bolts to 40 N m."),
    ],
  },
  {
    rule: "guess-on-a-joint",
    ways: [torque("Nut, torque, dry", "12 lbf ft", "guess"), torque("Clamp screw, oiled", "4 N m", "guess")],
  },
];
