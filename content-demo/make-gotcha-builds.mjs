// Writes the three small builds of the gotcha book's demonstration: `node --import tsx content-demo/make-gotcha-builds.mjs`.
// The maker, the machines and everything that happens to them are invented. There is no film: the marks stand without.
import fs from "node:fs";
import path from "node:path";
import {
  buildFolder,
  newBuild,
  newGotcha,
  newItem,
  newMachine,
  newScope,
  newSighting,
  newSitting,
  toFolder,
} from "#lib/build/index.ts";
import { machineWords } from "#lib/gotcha/index.ts";
import { newMark } from "#lib/mark/index.ts";

const pump = { maker: "Halvern Works", model: "H3", assembly: "Plunger and barrel" };
const scope = (given) => [newScope({ ...pump, ...given })];

const gotchas = {
  gland: newGotcha({
    id: "halvern-gotcha-gland",
    symptom: "The gland nut only gets tighter, and its thread pulls",
    mechanism: "The gland nut has a left-hand thread, so that the turning rod cannot undo it",
    cause: "proven",
    consequence: "A new gland nut has to be made",
    severity: "part",
    tell: "One turn of thread shows above the gland; it rises to the left",
    avoid: "Turn it clockwise to undo it",
    appliesTo: scope({ item: "Gland nut" }),
    source: "met",
    cost: "a gland nut and an evening",
    noted: "2025-03-08T18:10:00.000Z",
  }),
  cotter: newGotcha({
    id: "halvern-gotcha-cotter",
    symptom: "The cotter of the plunger falls down the barrel",
    mechanism: "The rod is lifted before the cotter is clear, and tips it out",
    consequence: "The foot valve has to come out to get it back",
    severity: "hours",
    avoid: "Stop the barrel with a rag before the cotter is touched",
    appliesTo: scope({ item: "Cotter" }),
    source: "met",
    noted: "2025-03-08T19:02:00.000Z",
  }),
  cup: newGotcha({
    id: "halvern-gotcha-cup",
    symptom: "The new leather cup jams dry in the barrel and folds",
    mechanism: "The reproduction cup is cut from thicker leather than the old one",
    consequence: "The cup is spoiled, and the plunger has to be drawn again",
    severity: "part",
    tell: "It stands wider than the plunger when it is held against it",
    avoid: "Soak it overnight in neatsfoot oil, and draw it in with a turning motion",
    appliesTo: scope({ item: "Leather cup", make: "reproduction" }),
    source: "met",
    cost: "one cup",
    noted: "2025-11-15T17:40:00.000Z",
  }),
  valve: newGotcha({
    id: "halvern-gotcha-valve",
    symptom: "The foot valve leaks more after it was lapped",
    mechanism: "Variant B has a cone seat; lapped on a flat plate it touches at its rim alone",
    consequence: "The pump loses its prime overnight",
    severity: "hours",
    avoid: "Lap the valve on its own seat, never on a plate",
    appliesTo: scope({ item: "Foot valve", variant: "B" }),
    source: "met",
    noted: "2025-11-16T10:20:00.000Z",
  }),
};

const machines = {
  first: { serial: "1204", variant: "A", years: "about 1912" },
  second: { serial: "2231", variant: "B", years: "about 1924" },
  third: { serial: "1310", variant: "A", years: "about 1913" },
};

/** What happened in each build: kind, fields, and the sighting that a gotcha mark is. */
const jobs = {
  first: {
    title: "First pump",
    summary: "The pump of the orchard well, taken apart for a new cup.",
    began: "2025-03-08T17:30:00.000Z",
    marks: [
      ["action", { words: "Undo the gland nut" }],
      ["part", { item: "Gland nut", event: "removed", count: "1", container: "tin 1" }],
      [
        "gotcha",
        { words: gotchas.gland.symptom, why: gotchas.gland.mechanism, instead: gotchas.gland.avoid },
        "gland",
      ],
      ["action", { words: "Drive the cotter out and lift the rod" }],
      ["part", { item: "Cotter", event: "removed", count: "1", container: "tin 1" }],
      [
        "gotcha",
        { words: gotchas.cotter.symptom, why: gotchas.cotter.mechanism, instead: gotchas.cotter.avoid },
        "cotter",
      ],
    ],
    answers: [],
  },
  second: {
    title: "Second pump",
    summary: "The pump of the yard, a later one with the cone seat.",
    began: "2025-11-15T15:00:00.000Z",
    marks: [
      ["action", { words: "Undo the gland nut, clockwise" }],
      ["part", { item: "Gland nut", event: "removed", count: "1", container: "tray" }],
      ["part", { item: "Leather cup", event: "obtained", count: "1", source: "reproduction, from a kit" }],
      ["action", { words: "Draw the new cup into the barrel" }],
      [
        "gotcha",
        { words: gotchas.cup.symptom, why: gotchas.cup.mechanism, instead: gotchas.cup.avoid },
        "cup",
      ],
      ["action", { words: "Lap the foot valve" }],
      ["part", { item: "Foot valve", event: "repaired", count: "1" }],
      [
        "gotcha",
        { words: gotchas.valve.symptom, why: gotchas.valve.mechanism, instead: gotchas.valve.avoid },
        "valve",
      ],
    ],
    answers: [
      ["gland", "avoided"],
      ["cotter", "absent"],
    ],
  },
  third: {
    title: "Third pump",
    summary: "The pump of the upper field, not opened yet. The cup of the kit has come.",
    began: "2026-05-02T09:00:00.000Z",
    marks: [
      ["part", { item: "Leather cup", event: "obtained", count: "1", source: "reproduction, from a kit" }],
    ],
    answers: [],
  },
};

const partNames = ["Gland nut", "Cotter", "Plunger rod", "Leather cup", "Foot valve"];

function documentOf(name) {
  const job = jobs[name];
  const machineId = `halvern-machine-${name}`;
  const buildId = `halvern-build-${name}`;
  const sittingId = `halvern-sitting-${name}`;
  const assemblyId = `halvern-assembly-${name}`;
  const machine = newMachine({
    id: machineId,
    name: `H3 hand pump, ${machines[name].serial}`,
    ...pumpOf(),
    ...machines[name],
  });
  const items = partNames.map((part) =>
    newItem({ id: `${machineId}-${slug(part)}`, machineId, assemblyId, name: part }),
  );
  const itemId = (part) => items.find((item) => item.name === part)?.id;
  const marks = job.marks.map(([kind, fields], index) =>
    newMark({
      id: `halvern-${name}-${index + 1}`,
      buildId,
      sittingId,
      rank: index + 1,
      kind,
      fields: { v: 1, ...fields, ...(fields.item ? { itemId: itemId(fields.item) } : {}) },
    }),
  );
  const about = {
    buildId,
    machineId,
    machine: machineWords(machine),
    assembly: pump.assembly,
    at: job.began,
  };
  const met = job.marks.flatMap(([, , gotcha], index) =>
    gotcha
      ? [
          newSighting({
            id: `halvern-met-${gotcha}-${name}`,
            gotchaId: gotchas[gotcha].id,
            outcome: "happened",
            markId: marks[index].id,
            ...about,
          }),
        ]
      : [],
  );
  const answered = job.answers.map(([gotcha, outcome]) =>
    newSighting({ id: `halvern-answer-${gotcha}-${name}`, gotchaId: gotchas[gotcha].id, outcome, ...about }),
  );
  const sightings = [...met, ...answered];
  const named = new Set(sightings.map((one) => one.gotchaId));
  return {
    machine,
    assemblies: [
      { id: assemblyId, machineId, parentId: null, name: pump.assembly, rank: 1, gone: null, rev: 0 },
    ],
    items,
    build: newBuild({ id: buildId, machineId, assemblyId, title: job.title, summary: job.summary }),
    sittings: [
      newSitting({
        id: sittingId,
        buildId,
        title: "At the bench",
        began: job.began,
        beganTrust: "invented",
        rank: 1,
      }),
    ],
    recordings: [],
    captions: [],
    marks,
    stills: [],
    edits: [],
    answers: [],
    gotchas: Object.values(gotchas).filter((one) => named.has(one.id)),
    sightings,
    foreign: [],
  };
}

function pumpOf() {
  return { maker: pump.maker, model: pump.model };
}

function slug(words) {
  return words.toLowerCase().replaceAll(" ", "-");
}

for (const name of Object.keys(jobs)) {
  const folder = path.join(import.meta.dirname, "halvern-pumps", name);
  fs.mkdirSync(folder, { recursive: true });
  const json = buildFolder.parse(toFolder(documentOf(name), {}));
  fs.writeFileSync(path.join(folder, "build.json"), `${JSON.stringify(json, null, 1)}\n`);
}
