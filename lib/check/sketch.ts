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
import { type Drawing, plainDrawing } from "#lib/figure/index.ts";
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
    stills: stillsOf(sketch),
    edits: (sketch.edits ?? []).map(({ mark, ...edit }) =>
      newEdit({ id: `${edit.edit}-${mark}`, buildId: BUILD, markId: mark, ...edit }),
    ),
    kits: (sketch.kits ?? []).map((kit, index) =>
      newKit({ id: `kit-${index + 1}`, buildId: BUILD, name: `Kit ${index + 1}`, ...kit }),
    ),
  });
}

function stillsOf({ stills = [], drawings = [] }: Sketch) {
  const still = (markId: string, drawing = plainDrawing) =>
    newStill({
      id: `still of ${markId}`,
      buildId: BUILD,
      markId,
      sha256: "0".repeat(64),
      alt: "What it shows.",
      drawing,
    });
  return [...stills.map((mark) => still(mark)), ...drawings.map((one) => still(one.mark, drawingOf(one)))];
}

function drawingOf({ items = [], measurements = [] }: NonNullable<Sketch["drawings"]>[number]): Drawing {
  const [from, to] = [
    { x: 0.2, y: 0.8 },
    { x: 0.8, y: 0.8 },
  ];
  return {
    ...plainDrawing,
    balloons: items.map((item) => ({ id: `balloon of ${item}`, item, at: { x: 0.5, y: 0.5 }, seat: null })),
    dimensions: measurements.map((mark) => ({ id: `dimension of ${mark}`, mark, from, to, stand: 0 })),
  };
}

function cutsOf({ film }: Sketch) {
  if (film === undefined) return [];
  return [newCut({ id: "cut", buildId: BUILD, form: "cmx3600", rate: "25", text: film })];
}
