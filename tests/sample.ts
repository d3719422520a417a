import {
  type BuildDocument,
  newBuild,
  newDocument,
  newItem,
  newMachine,
  newRecording,
  newSitting,
} from "#lib/build/index.ts";
import { type Fields, type KindName, type Mark, newMark } from "#lib/mark/index.ts";

/** An empty build of an invented machine: one sitting, one recording of five minutes. */
export function sampleDocument(given: Partial<BuildDocument> = {}): BuildDocument {
  return newDocument({
    machine: newMachine({ id: "machine-1", name: "Trial engine", maker: "Invented Works", model: "No. 1" }),
    items: [newItem({ id: "item-cover", machineId: "machine-1", name: "Cover" })],
    build: newBuild({ id: "build-1", machineId: "machine-1", title: "Water pump" }),
    sittings: [newSitting({ id: "sitting-1", buildId: "build-1", title: "First evening", stage: "strip" })],
    recordings: [
      newRecording({ id: "recording-1", buildId: "build-1", sittingId: "sitting-1", name: "first.mp4" }),
    ],
    ...given,
  });
}

/** A mark on the sample's recording; its id says its kind and second unless another is given. */
export function sampleMark(
  at: number | null,
  kind: KindName | "",
  fields: Omit<Partial<Fields>, "v"> = {},
  given: Partial<Mark> = {},
): Mark {
  return newMark({
    id: `${kind || "unsorted"}-${at}`,
    buildId: "build-1",
    sittingId: "sitting-1",
    recordingId: at === null ? null : "recording-1",
    at,
    kind,
    fields: { v: 1, ...fields },
    ...given,
  });
}
