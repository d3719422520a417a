import { assemble, prove } from "./assemble.mjs";
import { middleOf } from "./beats.mjs";
import { bench, buildId, captionsId, desk, recordingId } from "./machine.mjs";
import { atTheDesk, inspect, strip } from "./strip.mjs";

const row = { gone: null, rev: 0 };
const written = [...atTheDesk, ...strip, ...inspect, ...assemble, ...prove];
const idOf = (index) => `demo-mark-${String(index + 1).padStart(3, "0")}`;
const ids = new Map(written.flatMap((mark, index) => (mark.name ? [[mark.name, idOf(index)]] : [])));

/** The id of the mark that goes by a handle. */
export function markId(name) {
  const id = ids.get(name);
  if (!id) throw new RangeError(`no mark is called ${name}`);
  return id;
}

/** The marks as rows, with ids in the order in which the job is written. */
export const marks = written.map(({ kind, at, fields, closes }, index) => ({
  id: idOf(index),
  buildId,
  sittingId: at === null ? desk : bench,
  recordingId: at === null ? null : recordingId,
  at: at === null ? null : middleOf(at),
  until: null,
  rank: at === null ? index : 0,
  kind,
  fields: { v: 1, ...fields, ...(closes.length > 0 ? { closes: closes.map(markId) } : {}) },
  ...row,
}));

/** Hand edits: each keeps the words that it was made on. */
export const edits = [
  edit("title", "impellerOff", "Draw the impeller off its key with the two jacking screws."),
  edit("stage", "turn", "prove"),
];

function edit(kind, name, value) {
  const basis = marks.find((mark) => mark.id === markId(name)).fields.words;
  return { id: `${kind}-${markId(name)}`, buildId, markId: markId(name), edit: kind, value, basis, ...row };
}

export const captionTrack = {
  id: captionsId,
  buildId,
  recordingId,
  name: "water-pump.vtt",
  clock: "recording",
  ...row,
};

/** The recording, given what probing its file found. */
export function recordingRow(probe, sha256) {
  return {
    id: recordingId,
    buildId,
    sittingId: bench,
    name: "water-pump.mp4",
    offset: 0,
    rate: 1,
    madeAt: null,
    madeAtTrust: "",
    probe,
    trouble: null,
    publishedAt: "https://video.example.org/watch/ostrey-water-pump?t={seconds}",
    sha256,
    ...row,
  };
}
