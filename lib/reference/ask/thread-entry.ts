import { clearanceFor, tapDrillFor, tapDrillsAround } from "../drills/index.ts";
import { type Lubrication, proofLoad, stressArea, torqueFor } from "../fasteners/index.ts";
import { hexagonsOf } from "../spanners/index.ts";
import { compareThreads, confusedWith, type Thread } from "../threads/index.ts";
import {
  bothWays,
  columnInches,
  columnMm,
  distinct,
  type Entry,
  type Figure,
  type SideBySide,
  short,
} from "./reply.ts";

export type ThreadMatter = "tapping" | "clearance" | "spanner" | "strength" | "all";

/** The basic sizes of a thread. */
export function sizeFigures(thread: Thread): Figure[] {
  const { source, formSource } = thread;
  const pipe = thread.system === "NPT";
  return [
    { label: pipe ? "outside of the pipe" : "outside diameter", mm: thread.major, source },
    { label: "pitch", mm: thread.pitch, source },
    {
      label: "threads an inch",
      value: thread.tpi === undefined ? `${short(25.4 / thread.pitch)} (comes to)` : `${thread.tpi}`,
      source,
    },
    { label: "angle and form", value: thread.form, source: formSource },
    ...(thread.effective === undefined
      ? []
      : [{ label: "effective diameter", mm: thread.effective, source: formSource }]),
    ...(thread.minor === undefined ? [] : [{ label: "core diameter", mm: thread.minor, source: formSource }]),
  ];
}

const percentOf = (percent?: number): string =>
  percent === undefined ? "" : `, ${short(percent, 0)} % of full thread`;

function tappingFigures(thread: Thread): Figure[] {
  const tapping = tapDrillFor(thread);
  if (!tapping) return [];
  return [
    {
      label: `tapping drill, ${tapping.drill.name}${percentOf(tapping.percent)}`,
      mm: tapping.drill.mm,
      source: tapping.source,
    },
  ];
}

function otherTappingFigures(thread: Thread): Figure[] {
  const usual = tapDrillFor(thread)?.drill.name;
  return tapDrillsAround(thread)
    .filter(({ drill }) => drill.name !== usual)
    .slice(0, 8)
    .map(({ drill, percent, source }) => ({
      label: `${drill.name}${percentOf(percent)}`,
      mm: drill.mm,
      source,
    }));
}

function clearanceFigures(thread: Thread): Figure[] {
  const clearance = clearanceFor(thread);
  return (clearance?.fits ?? []).map(({ fit, drill }) => ({
    label: `clearance hole, ${fit}${/^No|^letter|in$/.test(drill.name) ? `, ${drill.name}` : ""}`,
    mm: drill.mm,
    source: clearance?.source ?? thread.source,
  }));
}

function spannerFigures(thread: Thread): Figure[] {
  return hexagonsOf(thread).map((jaw, index) => ({
    label: `across flats, spanner ${jaw.name}${thread.series === "BSW" && index === 0 ? " (large hexagon)" : ""}${
      thread.series === "BSW" && index === 1 ? " (small hexagon, BS 1083)" : ""
    }`,
    mm: jaw.mm,
    source: jaw.source,
  }));
}

const lubrications: [Lubrication, string][] = [
  ["dry", "dry"],
  ["zinc", "zinc plated, dry"],
  ["oiled", "oiled"],
];

/** Stress area, and with a class of strength the proof load and the torque by rule. */
function strengthFigures(thread: Thread, strength?: string): Figure[] {
  const area = stressArea(thread);
  if (!area) return [];
  const load = strength === undefined ? undefined : proofLoad(thread, strength);
  const torques = strength === undefined ? [] : lubrications;
  return [
    {
      label: "stress area",
      value: `${short(area.mm2, 1)} mm²`,
      other: `${short(area.mm2 / 645.16, 4)} in²`,
      source: area.source,
    },
    ...(load
      ? [
          {
            label: `proof load, ${strength}`,
            value: `${short(load.newtons / 1000, 1)} kN`,
            other: `${short(load.newtons / 4.4482216, 0)} lbf`,
            source: load.class.source,
          },
        ]
      : []),
    ...torques.flatMap(([lubrication, words]) => {
      const torque = strength === undefined ? undefined : torqueFor(thread, strength, lubrication);
      return torque
        ? [
            {
              label: `torque by rule, ${strength}, ${words}`,
              value: `${short(torque.newtonMetres, 1)} N m`,
              other: `${short(torque.newtonMetres / 1.3558179, 1)} lbf ft`,
              source: torque.sources[0] ?? thread.source,
            },
          ]
        : [];
    }),
  ];
}

const torqueNote =
  "The torque is a rule for steel in steel and scatters by about 30 %. The maker's figure comes first; in a casting, brass or a thin flange the tapped metal governs, and the full figure strips it.";

/** The threads with which one is easily confused, beside it. */
export function besideThread(thread: Thread, others = confusedWith(thread)): SideBySide | undefined {
  if (others.length === 0) return undefined;
  const all = [thread, ...others.slice(0, 4)];
  const row = (label: string, say: (one: Thread) => string) => ({ label, cells: all.map(say) });
  return {
    caption: `Easily confused with ${thread.name}`,
    columns: all.map(({ name }) => name),
    rows: [
      row("outside, mm", ({ major }) => columnMm(major)),
      row("outside, in", ({ major }) => columnInches(major)),
      row("pitch, mm", ({ pitch }) => columnMm(pitch)),
      row("threads an inch", ({ tpi, pitch }) => (tpi === undefined ? `${short(25.4 / pitch)}` : `${tpi}`)),
      row("angle", ({ angle }) => `${angle}°`),
      row("form", ({ form }) => form.replace(/^[\d.]+° /, "")),
      row("core, mm", ({ minor }) => (minor === undefined ? "taper" : columnMm(minor))),
      row(`goes with ${thread.name}`, (one) => goes(thread, one)),
    ],
    sources: distinct(all.map(({ source }) => source)),
  };
}

function goes(thread: Thread, other: Thread): string {
  if (thread === other) return "itself";
  const { interchangeable, willStart, differ } = compareThreads(thread, other);
  if (interchangeable) return "yes";
  if (willStart) return "no, though it starts";
  return differ.some((one) => /^(?:tpi|pitch)/.test(one)) ? "no, the pitch differs" : "no, the form differs";
}

/** The matter that was asked about, in a sentence. */
function sayMatter(thread: Thread, matter: ThreadMatter, strength?: string): { says?: string } {
  const { name } = thread;
  if (matter === "tapping") {
    const tapping = tapDrillFor(thread);
    return tapping
      ? { says: `${name} is tapped with a ${tapping.drill.name} drill, ${bothWays(tapping.drill.mm)}.` }
      : { says: `No tapping drill for ${name} is in the tables here.` };
  }
  if (matter === "clearance") {
    const fits = clearanceFor(thread)?.fits.map(({ fit, drill }) => `${drill.name} (${fit})`) ?? [];
    return fits.length > 0 ? { says: `${name} passes through a hole of ${fits.join(", ")}.` } : {};
  }
  if (matter === "spanner") {
    const [head, ...others] = hexagonsOf(thread);
    const also =
      others.length > 0 ? `; heads that take ${others.map((jaw) => jaw.name).join(", ")} occur` : "";
    return head
      ? { says: `The head of ${name} is ${bothWays(head.mm)} across flats, spanner ${head.name}${also}.` }
      : { says: `No size across flats for ${name} is in the tables here.` };
  }
  const torque = matter === "strength" && strength ? torqueFor(thread, strength, "dry") : undefined;
  return torque
    ? { says: `${name} ${strength}, dry, in steel: about ${short(torque.newtonMetres, 1)} N m by rule.` }
    : {};
}

/** What is known of a thread; the matter that was asked about comes first. */
export function threadEntry(thread: Thread, matter: ThreadMatter = "all", strength?: string): Entry {
  const parts: Record<Exclude<ThreadMatter, "all">, () => Figure[]> = {
    tapping: () => [...tappingFigures(thread), ...(matter === "tapping" ? otherTappingFigures(thread) : [])],
    clearance: () => clearanceFigures(thread),
    spanner: () => spannerFigures(thread),
    strength: () => strengthFigures(thread, strength),
  };
  const order = (["tapping", "clearance", "spanner", "strength"] as const).toSorted(
    (a, b) => Number(b === matter) - Number(a === matter),
  );
  const rest = order.flatMap((part) => parts[part]());
  const figures = matter === "all" ? [...sizeFigures(thread), ...rest] : [...rest, ...sizeFigures(thread)];
  return {
    title: thread.name,
    about: `thread, ${thread.series}, ${thread.source.standard}`,
    ...sayMatter(thread, matter, strength),
    figures,
    beside: besideThread(thread),
    notes: [
      ...(strength !== undefined && stressArea(thread) ? [torqueNote] : []),
      ...(thread.system === "BSP" ? ["The size is that of the pipe, not a diameter of the thread."] : []),
    ],
  };
}
