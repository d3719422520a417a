import { createHash } from "node:crypto";
import sharp from "sharp";
import type { Finding } from "#lib/finding/index.ts";
import type { Stage, TypedValue } from "#lib/mark/index.ts";
import type {
  CautionNote,
  CheckedProcedure,
  Figure,
  MeasurementLine,
  PartUse,
  Procedure,
  Step,
  SupplyLine,
} from "#lib/procedure/tree.ts";
import type { PublishOptions } from "#lib/publish/index.ts";
import { read } from "#lib/quantity/index.ts";

/** Procedures made by hand. The machine, its maker and the job are invented. */

let count = 0;
const nextId = () => `m${String(++count).padStart(4, "0")}`;

export function step(number: number, title: string, rest: Partial<Step> = {}): Step {
  return {
    mark: nextId(),
    number,
    stage: "strip",
    title,
    details: [],
    result: "",
    cautions: [],
    parts: [],
    measurements: [],
    tools: [],
    consumables: [],
    gotchas: [],
    deferred: [],
    stills: [],
    moment: null,
    marks: [],
    ...rest,
  };
}

export function caution(rest: Partial<CautionNote> = {}): CautionNote {
  return {
    mark: nextId(),
    signal: "WARNING",
    hazard: "The gland packing may hold asbestos",
    consequence: "Fibres that are breathed in can cause cancer",
    avoid: "Leave it wet and whole, and ask a licensed remover",
    source: "common practice, no source",
    ...rest,
  };
}

export function part(balloon: number, name: string, rest: Partial<PartUse> = {}): PartUse {
  return {
    mark: nextId(),
    item: `name:${name.toLowerCase()}`,
    balloon,
    name,
    event: "removed",
    count: "1",
    wayRound: "",
    seat: "",
    container: "",
    note: "",
    ...rest,
  };
}

export function measurement(what: string, rest: Partial<MeasurementLine> = {}): MeasurementLine {
  return {
    mark: nextId(),
    step: null,
    what,
    part: "",
    values: {},
    instrument: "",
    source: "",
    note: "",
    ...rest,
  };
}

/** A value as typed, with what is read from it. */
export function typed(text: string): TypedValue {
  return { typed: text, read: read(text, { decimal: "." }) };
}

const pictures = new Map<string, Uint8Array>();

/** A drawn picture of that size; its alternative text is `alt`. */
export async function picture(alt: string, width = 1280, height = 720): Promise<Figure> {
  const hue = (alt.length * 37) % 90;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 600 338" width="${width}" height="${height}" preserveAspectRatio="xMidYMid slice"><rect width="600" height="338" fill="#3a4145"/><g fill="#8d8f86" stroke="#1c1f21" stroke-width="2"><rect x="${60 + hue}" y="150" width="360" height="44" rx="4"/><circle cx="430" cy="172" r="78" fill="#a58b52"/><circle cx="430" cy="172" r="30" fill="#6d5c36"/><rect x="${120 + hue}" y="120" width="60" height="104" rx="6" fill="#787b74"/></g></svg>`;
  const bytes = new Uint8Array(await sharp(Buffer.from(svg)).jpeg({ quality: 80 }).toBuffer());
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  pictures.set(sha256, bytes);
  return { still: nextId(), mark: nextId(), sha256, width, height, alt, written: true };
}

/** Options with the pictures made so far. */
export function options(rest: Partial<PublishOptions> = {}): PublishOptions {
  return {
    stills: async (sha256) => pictures.get(sha256) ?? null,
    printedOn: "2026-05-03",
    ...rest,
  };
}

/** A procedure of these steps; stages, lists of parts, tools, consumables and measurements follow from them. */
export function procedure(steps: Step[], rest: Partial<Procedure> = {}): Procedure {
  const stages = new Map<Stage, Step[]>();
  for (const one of steps) stages.set(one.stage, [...(stages.get(one.stage) ?? []), one]);
  const uses = steps.flatMap((one) => one.parts.map((use) => ({ use, number: one.number })));
  const balloons = [...new Map(uses.map(({ use }) => [use.balloon, use])).values()];
  const supplies = (of: "tools" | "consumables") => {
    const lines = new Map<string, SupplyLine>();
    for (const one of steps) {
      for (const use of one[of]) {
        const key = `${use.name}\n${use.detail}`;
        const line = lines.get(key) ?? { name: use.name, detail: use.detail, steps: [], marks: [] };
        lines.set(key, { ...line, steps: [...line.steps, one.number], marks: [...line.marks, use.mark] });
      }
    }
    return [...lines.values()];
  };
  return {
    buildId: "build-1",
    title: "Water pump: strip and refit",
    summary: "Takes the water pump off the engine, renews its seal and packing, and puts it back.",
    machine: {
      name: "Stationary engine",
      maker: "Ostrey",
      model: "Type B, 2 hp",
      years: "about 1911",
      serial: "4117",
      variant: "water-cooled",
    },
    assembly: "Water pump",
    language: "en-GB",
    decimal: ".",
    stages: [...stages].map(([stage, of]) => ({ stage, steps: of })),
    parts: balloons.map((use) => ({
      item: use.item,
      balloon: use.balloon,
      name: use.name,
      quantity: /^\d+$/.test(use.count) ? Number(use.count) : null,
      partNumber: `OB-${100 + use.balloon}`,
      material: "brass",
      size: "",
      source: "",
      steps: uses.filter((one) => one.use.balloon === use.balloon).map(({ number }) => number),
      marks: [use.mark],
    })),
    tools: supplies("tools"),
    consumables: supplies("consumables"),
    measurements: steps.flatMap((one) => one.measurements.map((line) => ({ ...line, step: one.number }))),
    deferred: steps.flatMap((one) => one.deferred),
    tray: [{ mark: nextId(), kind: "part", words: "TRAYWORD", moment: null }],
    unsorted: [{ mark: nextId(), kind: "", words: "UNSORTEDWORD", moment: null }],
    orphans: [],
    recordings: [],
    moments: [],
    ...rest,
  };
}

export function finding(rest: Partial<Finding> = {}): Finding {
  return {
    key: `rule/${nextId()}`,
    evidence: "",
    rule: "rule",
    severity: "doubtful",
    place: {},
    found: "",
    expected: "",
    todo: "",
    source: "common practice, no source",
    ...rest,
  };
}

export function checked(of: Procedure, findings: Finding[] = [finding(), finding()]): CheckedProcedure {
  return { procedure: of, findings };
}

/** A small job with something of every kind. */
export async function smallJob(): Promise<Procedure> {
  const film = (seconds: number, written: string) => ({
    recordingId: "r1",
    recordingName: "pump-strip.mp4",
    at: seconds,
    written,
    link: `https://film.example/watch?v=ostrey-pump&t=${seconds}`,
  });
  return procedure([
    step(1, "Drain the cooling hopper into a clean bucket", {
      cautions: [
        caution({
          signal: "CAUTION",
          hazard: "Water in the hopper may still be hot",
          consequence: "Scalds to hands and arms",
          avoid: "Wait until the hopper is cool to the hand before you open the cock",
          source: "common practice, no source",
        }),
      ],
      parts: [part(1, "Drain cock", { event: "inspected", note: "Thread is tapered" })],
      tools: [{ mark: nextId(), name: "Spanner", detail: "7/16 in Whitworth", note: "" }],
      result: "No water runs from the cock.",
      stills: [await picture("The drain cock under the hopper, seen from the flywheel side")],
      moment: film(72, "1:12"),
    }),
    step(2, "Draw the impeller off with the two jacking screws", {
      cautions: [
        caution({ signal: "WARNING" }),
        caution({
          signal: "NOTICE",
          hazard: "The vanes are thin cast brass",
          consequence: "A lever under the rim breaks them off",
          avoid: "Use the jacking screws, a quarter turn each in turn",
          source: "seen on this machine",
        }),
      ],
      details: [
        {
          mark: nextId(),
          text: "Turn the two screws a quarter turn each, one after the other, so that the impeller comes off square. If it stops, put a drop of penetrating oil on the shaft and wait 10 minutes.",
        },
      ],
      parts: [
        part(2, "Impeller", { wayRound: "Vanes point to the cover", container: "tin 3" }),
        part(3, "Jacking screw, 1/4 in BSW", {
          count: "2",
          event: "fitted",
          note: "Borrowed from the lathe tray",
        }),
        part(4, "Gland nut"),
      ],
      measurements: [
        measurement("Shaft at the seal, two places", {
          part: "Pump shaft",
          values: {
            asFound: typed("0.4965 in"),
            specified: typed("1/2 in −0.001"),
            limit: typed("0.497 in"),
          },
          instrument: "micrometer, 0–1 in",
          source: "measured",
        }),
      ],
      tools: [{ mark: nextId(), name: "Micrometer", detail: "0–1 in", note: "" }],
      consumables: [
        { mark: nextId(), name: "Penetrating oil", detail: "a few drops", note: "on the shaft only" },
      ],
      gotchas: [
        {
          mark: nextId(),
          symptom: "The new lip seal wept after ten minutes",
          why: "It goes in only one way round; the arrow is on the hidden face",
          instead: "Mark the arrow on the outer face with chalk before pressing it in",
        },
      ],
      stills: [await picture("The impeller half off its shaft, both jacking screws in")],
      moment: film(784, "13:04"),
    }),
    step(3, "Fit the cover with its four nuts", {
      stage: "assemble",
      parts: [part(5, "Cover", { event: "fitted" }), part(6, "Cover nut", { event: "fitted", count: "4" })],
      measurements: [
        measurement("Torque of the cover nuts", {
          part: "Cover nut",
          values: { specified: typed("12 N·m"), asFitted: typed("finger-tight") },
          source: "common practice",
        }),
      ],
      deferred: [
        {
          mark: "deferred-open",
          step: 3,
          what: "Cover nuts finger-tight",
          waitsFor: "the new belt is here",
          closedBy: null,
        },
        {
          mark: "deferred-closed",
          step: 3,
          what: "Old gasket for the trial",
          waitsFor: "the new one is cut",
          closedBy: "m9",
        },
        {
          mark: "deferred-soak",
          step: 3,
          what: "Jointing compound cures under the cover",
          waitsFor: "",
          soak: { least: "2 h", longest: "24 h", why: "after that it no longer takes up the nuts' pull" },
          closedBy: "m10",
        },
      ],
      stills: [],
      moment: { ...film(885, "14:45"), link: null },
    }),
  ]);
}

/** Texts that would do harm if an output took them for more than text. */
export const hostileTexts = [
  "<script>alert('HOSTILEA')</script><img src=x onerror=alert(1)>",
  '#import "@preview/x:1.0.0": * #panic("HOSTILEB") $x^2$ @ref <label> *bold* _it_ \\ \\u{1F600} // c /* d */',
  "# HOSTILEC\n\n* list\n> quote\n![i](http://evil.example/p.png) [l](javascript:alert(1)) `c` ~~s~~ | a | b |\n---",
  '=HYPERLINK("http://evil.example";"HOSTILED")',
  "\u202eDESREVER\u202c \u0007bell \u0000nul \ud800half HOSTILEE",
  "שלום עולם مرحبا HOSTILEF 中文 🔧👩‍🔧 é é",
  `HOSTILEG ${"W".repeat(5000)} end`,
  "https://evil.example/HOSTILEH www.evil.example mailto:a@evil.example",
  "\"quotes\", commas, 'single' & ampersand; HOSTILEI\r\nsecond line\ttab",
] as const;

/** A procedure in which every text field holds a hostile text. */
export async function hostileJob(): Promise<Procedure> {
  let turn = 0;
  const text = () => hostileTexts[turn++ % hostileTexts.length] as string;
  const figure = { ...(await picture("hostile")), alt: text() };
  const steps = [1, 2].map((number) =>
    step(number, text(), {
      details: [{ mark: nextId(), text: text() }],
      result: text(),
      cautions: [caution({ hazard: text(), consequence: text(), avoid: text(), source: text() })],
      parts: [part(number, text(), { count: text(), wayRound: text(), container: text(), note: text() })],
      measurements: [
        measurement(text(), {
          part: text(),
          values: { asFound: { typed: text() }, limit: { typed: text() } },
          instrument: text(),
          source: text(),
          note: text(),
        }),
      ],
      tools: [{ mark: nextId(), name: text(), detail: text(), note: text() }],
      consumables: [{ mark: nextId(), name: text(), detail: text(), note: text() }],
      gotchas: [{ mark: nextId(), symptom: text(), why: text(), instead: text() }],
      deferred: [{ mark: nextId(), step: number, what: text(), waitsFor: text(), closedBy: null }],
      stills: [figure],
      moment: { recordingId: "r", recordingName: text(), at: 1, written: "0:01", link: null },
    }),
  );
  const machine = {
    name: text(),
    maker: text(),
    model: text(),
    years: text(),
    serial: text(),
    variant: text(),
  };
  return procedure(steps, {
    title: hostileTexts[1],
    summary: text(),
    assembly: text(),
    language: text().slice(0, 30),
    machine,
  });
}

/** A job of so many steps, with a picture each; the same every time. */
export async function longJob(count: number): Promise<Procedure> {
  const shapes = [
    [1280, 720],
    [720, 1280],
    [1000, 1000],
  ] as const;
  const stages: Stage[] = ["strip", "clean", "inspect", "repair", "trial fit", "assemble", "set up", "prove"];
  const steps: Step[] = [];
  for (let number = 1; number <= count; number++) {
    const [width, height] = shapes[number % 3] as (typeof shapes)[number];
    const seconds = number * 61;
    steps.push(
      step(number, `Loosen the nut of stud ${number} a quarter turn, and mark its place`, {
        stage: stages[Math.floor(((number - 1) * stages.length) / count)] as Stage,
        details:
          number % 2
            ? [{ mark: nextId(), text: "Hold the stud with the second spanner. ".repeat(number % 5) }]
            : [],
        cautions: number % 4 === 0 ? [caution({ signal: number % 8 === 0 ? "DANGER" : "CAUTION" })] : [],
        parts: [part(number, `Nut of stud ${number}`, { container: `bag ${number}` })],
        tools: number % 3 ? [{ mark: nextId(), name: "Ring spanner", detail: "1/2 in", note: "" }] : [],
        measurements:
          number % 5 ? [] : [measurement("Stud height", { values: { asFound: typed("22.4 mm") } })],
        stills: number % 7 ? [await picture(`Stud ${number}`, width, height)] : [],
        moment: {
          recordingId: "r1",
          recordingName: "studs.mp4",
          at: seconds,
          written: `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`,
          link: `https://film.example/w?t=${seconds}`,
        },
      }),
    );
  }
  return procedure(steps, { title: "Cylinder head: off and on" });
}
