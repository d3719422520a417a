import { assemble, prove } from "./assemble.mjs";
import { middleOf } from "./beats.mjs";
import * as drain from "./drain.mjs";
import { bench, buildId, captionsId, desk, later, laterRecordingId, recordingId } from "./machine.mjs";
import { atTheDesk, inspect, strip } from "./strip.mjs";

const row = { gone: null, rev: 0 };
// In the order in which it was written, which gives the ids, and not in that of the moments.
const filmed = [
  ...atTheDesk,
  ...strip,
  ...inspect,
  ...assemble,
  ...prove,
  ...drain.fromTheKit,
  ...drain.drain,
];
const written = [...filmed, ...drain.later];
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
  ...placeOf(at, index),
  at: at === null ? null : middleOf(at),
  until: null,
  rank: at === null ? index : 0,
  kind,
  fields: { v: 1, ...fields, ...(closes.length > 0 ? { closes: closes.map(markId) } : {}) },
  ...row,
}));

function placeOf(at, index) {
  if (index >= filmed.length) return { sittingId: later, recordingId: laterRecordingId };
  return at === null ? { sittingId: desk, recordingId: null } : { sittingId: bench, recordingId };
}

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

const recordings = {
  [recordingId]: {
    sittingId: bench,
    name: "water-pump.mp4",
    publishedAt: "https://video.example.org/watch/ostrey-water-pump?t={seconds}",
  },
  [laterRecordingId]: {
    sittingId: later,
    name: "drain-plug.mp4",
    publishedAt: "https://video.example.org/watch/ostrey-drain-plug?t={seconds}",
  },
};

/** A recording, given what probing its file found. */
export function recordingRow(id, probe, sha256) {
  return {
    id,
    buildId,
    ...recordings[id],
    offset: 0,
    rate: 1,
    madeAt: null,
    madeAtTrust: "",
    probe,
    trouble: null,
    sha256,
    ...row,
  };
}
