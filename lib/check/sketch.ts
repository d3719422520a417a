import {
  type BuildDocument,
  newBuild,
  newCut,
  newDocument,
  newEdit,
  newKit,
  newMachine,
  newRecording,
  newSitting,
  newStill,
} from "#lib/build/index.ts";
import { fieldsVersion, newMark } from "#lib/mark/index.ts";
import type { Sketch } from "./rule.ts";

const BUILD = "sketch";

/** The document a sketch stands for. */
export function drawSketch(sketch: Sketch): BuildDocument {
  const marks = (sketch.marks ?? []).map(([at, kind, fields]) =>
    newMark({
      id: `${kind || "unsorted"}@${at}`,
      buildId: BUILD,
      sittingId: "sitting",
      recordingId: "recording",
      at,
      kind,
      fields: { v: fieldsVersion, ...fields },
    }),
  );
  return newDocument({
    machine: newMachine({ id: "machine", name: "A machine" }),
    build: newBuild({ id: BUILD, machineId: "machine", title: "A build" }),
    sittings: [newSitting({ id: "sitting", buildId: BUILD, title: "A sitting" })],
    recordings: [newRecording({ id: "recording", buildId: BUILD, sittingId: "sitting", name: "film.mp4" })],
    cuts: cutsOf(sketch),
    marks,
    stills: (sketch.stills ?? []).map((markId) =>
      newStill({
        id: `still of ${markId}`,
        buildId: BUILD,
        markId,
        sha256: "0".repeat(64),
        alt: "What it shows.",
      }),
    ),
    edits: (sketch.edits ?? []).map(({ mark, ...edit }) =>
      newEdit({ id: `${edit.edit}-${mark}`, buildId: BUILD, markId: mark, ...edit }),
    ),
    kits: (sketch.kits ?? []).map((kit, index) =>
      newKit({ id: `kit-${index + 1}`, buildId: BUILD, name: `Kit ${index + 1}`, ...kit }),
    ),
  });
}

function cutsOf({ film }: Sketch) {
  if (film === undefined) return [];
  return [newCut({ id: "cut", buildId: BUILD, form: "cmx3600", rate: "25", text: film })];
}
