import { plainDrawing } from "#lib/figure/index.ts";
import type { Build, Cut, Edit, Item, Kit, Machine, Recording, Sitting, Still } from "./rows.ts";

/** New rows with what a row has until somebody says otherwise. The caller gives ids. */
const fresh = { gone: null, rev: 0 } as const;

export function newMachine(given: Pick<Machine, "id" | "name"> & Partial<Machine>): Machine {
  return { ...fresh, maker: "", model: "", years: "", serial: "", variant: "", notes: "", ...given };
}

export function newItem(given: Pick<Item, "id" | "machineId" | "name"> & Partial<Item>): Item {
  return { ...fresh, assemblyId: null, partNumber: "", material: "", notes: "", ...given };
}

export function newBuild(given: Pick<Build, "id" | "machineId" | "title"> & Partial<Build>): Build {
  return {
    ...fresh,
    assemblyId: null,
    summary: "",
    language: "en-GB",
    decimal: ".",
    warnAhead: 20,
    ...given,
  };
}

export function newSitting(given: Pick<Sitting, "id" | "buildId" | "title"> & Partial<Sitting>): Sitting {
  return { ...fresh, stage: "strip", began: null, beganTrust: "", rank: 0, ...given };
}

export function newRecording(
  given: Pick<Recording, "id" | "buildId" | "sittingId" | "name"> & Partial<Recording>,
): Recording {
  return {
    ...fresh,
    offset: 0,
    rate: 1,
    madeAt: null,
    madeAtTrust: "",
    probe: null,
    trouble: null,
    publishedAt: "",
    sha256: null,
    ...given,
  };
}

export function newCut(given: Pick<Cut, "id" | "buildId" | "form"> & Partial<Cut>): Cut {
  return {
    ...fresh,
    name: "",
    text: "",
    rate: "",
    startsAt: "",
    publishedAt: "",
    reels: [],
    segments: [],
    rank: 0,
    ...given,
  };
}

export function newStill(given: Pick<Still, "id" | "buildId" | "markId"> & Partial<Still>): Still {
  return {
    ...fresh,
    source: "frame",
    recordingId: null,
    at: null,
    sha256: "",
    width: 0,
    height: 0,
    alt: "",
    drawing: plainDrawing,
    rank: 0,
    ...given,
  };
}

export function newEdit(given: Pick<Edit, "id" | "buildId" | "markId" | "edit"> & Partial<Edit>): Edit {
  return { ...fresh, value: "", basis: "", ...given };
}

export function newKit(given: Pick<Kit, "id" | "buildId" | "name"> & Partial<Kit>): Kit {
  return { ...fresh, supplier: "", text: "", lines: {}, ...given };
}
