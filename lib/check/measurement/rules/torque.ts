import { slipsOf, strengthClass, stressArea, stressAreaMetric, type Thread } from "#lib/reference/index.ts";
import { sayIn } from "../figures.ts";
import type { EntryRule, Remark } from "../rule.ts";
import type { Fact, Sight } from "../sight.ts";
import { threadsOf } from "../threads-of.ts";
import { softnessOf } from "../words.ts";

/** More torque than the fastener, or the metal it is screwed into, can bear. */
export const torque: EntryRule = {
  id: "torque-too-much",
  title: "Torque against its fastener",
  explanation:
    "T = K d F tells what a fastener bears: K about 0.2 dry and 0.15 oiled, d its diameter, F the load at which its class of steel begins to stretch. Friction scatters by a third, so that a figure is asked about well above that, and called wrong above one and a half times, where its class is known. Threads in brass, aluminium, zinc and what is not metal bear less.",
  source: "T = K d F (Shigley, equations 8-27 and 8-31); ISO 898-1; K: common practice",
  check: (sight) => {
    const { main } = sight;
    if (
      main?.dimension !== "torque" ||
      /\b(?:motor|engine|output|starting|running|stall|drag|turning|shaft|peak|resistance|breakaway|break-?out|rolling|brake|rated|input|worm|spindle|crank|friction|cogging|pull-?out)\b.{0,14}torque|torque (?:motor|arm|at|to turn|converter|needed to turn)|\bmagnet(?!o)|preload drag/.test(
        sight.what,
      )
    )
      return [];
    return [...feel(sight, main), ...sparkPlug(sight, main), ...bolt(sight, main)].slice(0, 1);
  },
  examples: [
    {
      says: "an M5 of class 8.8 breaks",
      entry: { text: "45 N·m", what: "screw torque", context: { fastener: "M5, 8.8" } },
      finds: 1,
    },
    {
      says: "an M5 of class 8.8 holds",
      entry: { text: "6 N·m", what: "screw torque", context: { fastener: "M5, 8.8" } },
      finds: 0,
    },
    {
      says: "a brass screw strips",
      entry: {
        text: "40 lbf ft",
        what: "screw torque",
        context: { material: "brass", fastener: "10-32 UNF" },
      },
      finds: 1,
    },
    {
      says: "a little in brass is right",
      entry: { text: "5 lbf in", what: "screw torque", context: { material: "brass", fastener: "6-32 UNC" } },
      finds: 0,
    },
    {
      says: "aluminium strips",
      entry: {
        text: "24 N·m",
        what: "cover screw torque",
        context: { material: "aluminium", fastener: "M6" },
      },
      finds: 1,
    },
    {
      says: "BSF as usual",
      entry: { text: "9 lbf ft", what: "pump bolts", context: { fastener: "5/16 BSF" } },
      finds: 0,
    },
    {
      says: "a nut on a thin flange is tightened by feel: the figure for its stud's full strength is asked about",
      entry: {
        text: "25 N·m",
        what: "nut torque",
        context: { part: "thin pressed flange", fastener: "M8, 8.8" },
      },
      finds: 1,
    },
    {
      says: "on a thick one it is usual",
      entry: {
        text: "25 N·m",
        what: "nut torque",
        context: { part: "flange of the cylinder", fastener: "M8, 8.8" },
      },
      finds: 0,
    },
  ],
};

interface Strength {
  /** Stress in MPa at which it begins to give. */
  stress: number;
  /** What holds so little. */
  words: string;
  /** Known from a class of strength, not assumed. */
  sure: boolean;
  /** How far above the estimate a figure is let pass. */
  room: number;
}

function bolt(sight: Sight, main: Fact): Remark[] {
  const thread = threadOfJoint(sight);
  if (!thread) return [];
  const area = stressArea(thread)?.mm2 ?? stressAreaMetric(thread.major, thread.pitch);
  const is = strengthOf(sight, thread);
  const factor =
    /\b(?:oil(?:ed)?|lubricat|greas|moly|anti-?seize|copper ?slip|wet|waxed)/.test(sight.all) &&
    !/\b(?:not|un|without)[- ]?(?:oil|lubricat)/.test(sight.all)
      ? 0.15
      : 0.2;
  const bears = (factor * thread.major * area * is.stress) / 1000;
  const value = main.quantity.siHigh ?? main.si;
  const ratio = value / bears;
  if (ratio <= is.room) return ratio < leastShare(sight, is) ? [tooLittle(main, thread, bears)] : [];
  const meant = slipsOf(ratio / 0.6, "torque", 0.45)[0];
  return [
    {
      severity: is.sure && ratio > 1.5 ? "wrong" : "doubtful",
      found: `${main.raw} on ${thread.name}${is.words}.`,
      expected: `It begins to give near ${sayIn(bears, main.quantity, 2)}; a usual figure is ${sayIn(bears * 0.75, main.quantity, 2)} or less.`,
      ...(meant ? { meant: meant.words } : { meant: `${sayIn(bears * 0.7, main.quantity, 2)}?` }),
    },
  ];
}

/** Joints that the pressure, the load or a rotor pulls at: they are never left loose. */
const loaded =
  /\b(?:cyl(?:inder|\.)? ?head|big[- ]end|con(?:necting)?[- ]rod|main bearing (?:cap|bolt|stud|nut)|fly ?wheel|crank(?:shaft)? (?:bolt|nut)|head (?:nut|bolt|stud))/;
const lightly =
  /\b(?:brass|alumin|zinc|plastic|gasket|lock|adjust|preload|thumb|grub|set screw|snug|model|toy|slacken)|\b(?:first|initial|1st|stage (?:1|one)|stage)\b/;

/** The share of what a fastener bears below which a figure is asked about; 0 where little may be meant. */
function leastShare({ all, what, part }: Sight, is: Strength): number {
  if (lightly.test(all.replace(/\bgasket set\b/g, ""))) return 0;
  return loaded.test(`${part} ${what}`) ? 0.12 : is.sure ? 0.035 : 0;
}

function tooLittle(main: Fact, thread: Thread, bears: number): Remark {
  return {
    severity: "doubtful",
    found: `${main.raw} on ${thread.name}.`,
    expected: `A usual figure is near ${sayIn(bears * 0.75, main.quantity, 2)}.`,
    meant: "a unit or a decimal point?",
  };
}

/** The thread that is tightened. */
export function threadOfJoint({ named }: Sight): Thread | undefined {
  for (const from of ["fastener", "text", "spec", "related"] as const)
    for (const one of named)
      if (one.from === from && one.designation.type === "thread") {
        const [thread] = threadsOf(one.designation);
        if (thread && thread.system !== "BSP" && thread.system !== "NPT") return thread;
      }
  return undefined;
}

/** Assumed for a screw of unknown steel, in MPa: metric and unified as 8.8 and grade 5; British ones of their time; BA small screws. */
const assumed: Record<string, number> = {
  "ISO metric": 580,
  UN: 580,
  BSW: 480,
  BSF: 500,
  BA: 340,
  BSC: 480,
  BSB: 300,
};

function strengthOf(sight: Sight, thread: Thread): Strength {
  const mark = classOf(sight);
  const steel = mark ? (strengthClass(mark, thread.major) ?? strengthClass(mark)) : undefined;
  const stainless = /\bA[24]-?(50|70|80)\b/.exec(sight.entry.context.fastener ?? "")?.[1];
  const proof = steel?.proof ?? (stainless ? { "50": 210, "70": 450, "80": 600 }[stainless] : undefined);
  const soft = softnessOf(
    `${sight.material} ${/\b(?:brass|alumin|zinc|bakelite)/.test(sight.part) ? sight.part : ""} ${/\b(?:brass|bronze|nylon|alumin\w+)\b/.exec(sight.entry.context.fastener?.toLowerCase() ?? "")?.[0] ?? ""}`,
  );
  const threaded = Math.min(proof ?? assumed[thread.system] ?? 500, 580);
  if (soft === "weak") return { stress: 130, words: ` in ${sight.material}`, sure: false, room: 1.3 };
  if (soft === "zinc")
    return { stress: threaded * 0.5, words: ` in ${sight.material}`, sure: false, room: 1.1 };
  if (soft === "brass")
    return { stress: proof ? 400 : 230, words: `, with brass in the joint`, sure: false, room: 1.35 };
  if (soft === "soft metal")
    return { stress: threaded * 0.75, words: ` in ${sight.material}`, sure: false, room: 1.2 };
  if (proof) return { stress: proof, words: ` of ${mark ?? `class ${stainless}`}`, sure: true, room: 1.2 };
  return {
    stress: assumed[thread.system] ?? 500,
    words: "",
    sure: false,
    room: thread.system === "ISO metric" || thread.system === "UN" ? 1.45 : 1.3,
  };
}

function classOf({ named, entry }: Sight): string | null {
  for (const one of named) {
    if (one.designation.type === "strength") return one.designation.grade;
    if (one.designation.type === "thread" && one.designation.strength) return one.designation.strength;
  }
  return (
    /\b(3\.6|4\.6|4\.8|5\.6|5\.8|6\.8|8\.8|9\.8|10\.9|12\.9)\b/.exec(entry.context.fastener ?? "")?.[1] ??
    /\bgrade ([258])\b/i.exec(entry.context.fastener ?? "")?.[1] ??
    null
  );
}

/** A thin flange bends long before its stud is loaded. */
function feel(sight: Sight, main: Fact): Remark[] {
  const thread = threadOfJoint(sight);
  if (
    !thread ||
    !/\bthin\b|\bpressed[- ](?:steel|tin|sheet)|\bsheet[- ](?:metal|steel)|\btinplate|\btin cover/.test(
      `${sight.part} ${sight.what} ${sight.material} ${sight.remarks}`,
    )
  )
    return [];
  const mark = classOf(sight) ?? "8.8";
  const proof = (strengthClass(mark, thread.major) ?? strengthClass("8.8"))?.proof ?? 580;
  const usual = (0.2 * thread.major * stressAreaMetric(thread.major, thread.pitch) * proof * 0.75) / 1000;
  if (main.si < usual * 0.5) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw} on ${thread.name} and a thin flange.`,
      expected: `By feel: ${sayIn(usual, main.quantity, 2)} would load the stud fully, and the flange bends before that.`,
      source: "common practice, no source",
    },
  ];
}

/** Spark plugs are hollow, and sit in the head's metal: usual figures in N m, guidance only. */
const plugs: [number, number][] = [
  [10, 15],
  [12, 25],
  [14, 40],
  [18, 55],
];

function sparkPlug(sight: Sight, main: Fact): Remark[] {
  if (!/\b(?:spark(?:ing)?|glow) ?plug\b|\bplugs? torque/.test(`${sight.what} ${sight.part}`)) return [];
  const mm =
    threadOfJoint(sight)?.major ??
    sight.facts.find((fact) => fact.dimension === "length" && fact.si < 0.02)?.si ??
    0.014;
  const size = mm < 1 ? mm * 1000 : mm;
  const most = plugs.find(([diameter]) => Math.abs(diameter - size) < 0.9)?.[1];
  if (most === undefined || main.si <= most * 1.2) return [];
  return [
    {
      severity: "doubtful",
      found: `${main.raw} on a sparking plug of ${Math.round(size)} mm.`,
      expected: `${sayIn(most, main.quantity, 2)} at the most.`,
      source: "common practice, no source",
    },
  ];
}
