/** The machine, its assemblies and its parts. All of it is invented: maker, place, card and numbers. */

export const buildId = "demo-build-water-pump";
const machineId = "demo-machine-ostrey-b";
const pumpId = "demo-assembly-water-pump";
const row = { gone: null, rev: 0 };

/** Where the published figures stand. There is no such card. */
export const card = "maker's card No. 14, supplied with the pump (invented for this demonstration)";

export const machine = {
  id: machineId,
  name: "Stationary engine, 2 hp",
  maker: "Ostrey & Daw, Fennimarsh",
  model: "Type B",
  years: "about 1923",
  serial: "B 1187",
  variant: "tank-cooled, with belt-driven water pump",
  notes: "Invented for this demonstration. No maker, place or machine of these names is meant.",
  ...row,
};

export const assemblies = [
  { id: "demo-assembly-cooling", machineId, parentId: null, name: "Cooling", rank: 0, ...row },
  { id: pumpId, machineId, parentId: "demo-assembly-cooling", name: "Water pump", rank: 0, ...row },
];

const parts = {
  coverNut: ["Cover nut", "OD 14/9", "brass"],
  cover: ["Cover", "OD 14/2", "cast iron"],
  gasket: ["Cover gasket", "OD 14/3", "oiled paper, 1/64 in"],
  impellerNut: ["Impeller nut", "OD 14/8", "brass"],
  impeller: ["Impeller", "OD 14/4", "brass"],
  key: ["Key", "OD 14/7", "steel"],
  shaft: ["Shaft with pulley", "OD 14/5", "steel and cast iron"],
  washer: ["Thrust washer", "OD 14/6", "bronze"],
  seal: ["Lip seal", "OD 14/10", "rubber on steel"],
};

export const items = Object.entries(parts).map(([name, [words, partNumber, material]]) => ({
  id: itemId(name),
  machineId,
  assemblyId: pumpId,
  name: words,
  partNumber,
  material,
  notes: "",
  ...row,
}));

/** The permanent id and the name of a part, as a part mark keeps them. */
export function itemFields(name) {
  const known = parts[name];
  if (!known) throw new RangeError(`no part called ${name} in job/machine.mjs`);
  return { item: known[0], itemId: itemId(name) };
}

export function itemId(name) {
  return `demo-item-${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}

export const build = {
  id: buildId,
  machineId,
  assemblyId: pumpId,
  title: "Water pump: renew the lip seal",
  summary:
    "Takes the water pump apart on the bench, renews the lip seal, thrust washer and cover gasket, and puts the pump together again. The pump is off the engine, drained and cold. An invented job on an invented machine: its figures are of no use on any other.",
  language: "en-GB",
  decimal: ".",
  warnAhead: 20,
  ...row,
};

export const sittings = [
  {
    id: "demo-sitting-desk",
    buildId,
    title: "At the desk",
    stage: "strip",
    began: "2026-05-02T18:30:00.000Z",
    beganTrust: "typed",
    rank: 0,
    ...row,
  },
  {
    id: "demo-sitting-bench",
    buildId,
    title: "At the bench: strip, inspect, assemble, prove",
    stage: "strip",
    began: "2026-05-03T09:10:00.000Z",
    beganTrust: "typed",
    rank: 1,
    ...row,
  },
];
export const desk = "demo-sitting-desk";
export const bench = "demo-sitting-bench";
export const recordingId = "demo-recording-water-pump";
export const captionsId = "demo-captions-water-pump";
