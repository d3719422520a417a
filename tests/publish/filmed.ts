import { type Cut, newCut, newRecording } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { type CheckedProcedure, compile } from "#lib/procedure/index.ts";
import { sampleDocument, sampleMark } from "#tests/sample.ts";

const probe = {
  duration: 300,
  frameCount: 7500,
  width: 640,
  height: 360,
  rotation: 0,
  videoCodec: "h264",
  audioCodec: "aac",
  playable: true,
};
/** SHA-256 of nothing, as RFC 6234 computes it: e3b0c442… */
export const sha256 = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

export const recording = newRecording({
  id: "recording-1",
  buildId: "build-1",
  sittingId: "sitting-1",
  name: "bench one.mp4",
  probe,
  sha256,
});

/** A film that shows 20 to 80 s of the recording, a flash of its end, then 120 to 200 s. */
export const cut: Cut = newCut({
  id: "cut-1",
  buildId: "build-1",
  form: "cmx3600",
  name: "The pump comes apart",
  rate: "25",
  publishedAt: "https://video.example.org/pump",
  text: [
    "001 AX V C 00:00:20:00 00:01:20:00 01:00:00:00 01:01:00:00",
    "* FROM CLIP NAME: bench one.mp4",
    "002 AX V C 00:02:00:00 00:03:20:00 01:01:00:00 01:02:20:00",
    "* FROM CLIP NAME: bench one.mp4",
    "003 AX V C 00:00:30:00 00:00:50:00 01:02:20:00 01:02:40:00",
    "* FROM CLIP NAME: bench one.mp4",
  ].join("\n"),
});

/** A job of six steps, checked: one seen twice, one not in the film, two close together. */
export function filmedJob(given: { cuts?: Cut[] } = {}): CheckedProcedure {
  const action = (at: number, words: string) => sampleMark(at, "action", { words });
  const document = sampleDocument({
    recordings: [recording],
    cuts: given.cuts ?? [cut],
    marks: [
      action(22, "Drain the water"),
      action(40, "Undo the six cover nuts"),
      action(46, "Lift the cover off"),
      sampleMark(47, "caution", {
        words: "The spring is under load",
        consequence: "It flies out",
        avoid: "Hold it down with a clamp",
        harms: "person",
        severity: "serious",
        likelihood: "could",
        sourceNote: "29 CFR 1910.147",
      }),
      sampleMark(48, "measurement", {
        words: "Bore of the bush",
        asFound: { typed: "0.4965 in" },
        limit: { typed: "max 0.498 in" },
        source: "measured",
      }),
      action(100, "Scrape the faces"),
      { ...action(130, "Fit the new <packing>"), until: 150 },
      action(190, "Run it & listen"),
      sampleMark(191, "tool", { words: "Clamp", size: "4 in" }),
      sampleMark(192, "consumable", { words: "Grease", amount: "10 g" }),
    ],
  });
  return check(compile(document), document);
}
