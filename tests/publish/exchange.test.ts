import { describe, expect, test } from "vitest";
import { newCut } from "#lib/build/index.ts";
import { readOtio } from "#lib/cut/index.ts";
import { type Output, toAnnotations, toHowTo, toMeasurementsCsv, toOtio } from "#lib/publish/index.ts";
import { filmPlaces, makeCut } from "#lib/time/index.ts";
import { type Expanded, expand, nodesOf, valuesOf } from "./expand.ts";
import { cut, filmedJob, sha256 } from "./filmed.ts";
import { readCsv } from "./read-csv.ts";
import { checked, options, smallJob } from "./sample.ts";

const textOf = ({ files }: Output, name: string): string => {
  const file = files.find((one) => one.name === name);
  if (!file) throw new Error(`no ${name} among ${files.map((one) => one.name)}`);
  return new TextDecoder().decode(file.bytes);
};

// Terms: time-values.json, from the typings of schema.org; the processor is that of JSON-LD 1.1.
describe("schema.org HowTo", () => {
  const s = (term: string) => `http://schema.org/${term}`;

  test("expands to the terms meant", async () => {
    const output = await toHowTo(filmedJob(), options());
    const howTo = await expand(textOf(output, "howto.jsonld"));
    expect(howTo["@type"]).toEqual([s("HowTo")]);
    expect(valuesOf(howTo, s("name"))).toEqual(["Water pump"]);
    const [section] = nodesOf(howTo, s("step"));
    expect(section?.["@type"]).toEqual([s("HowToSection")]);
    const steps = nodesOf(section ?? {}, s("itemListElement"));
    expect(steps.map((step) => step["@type"])).toEqual(Array(6).fill([s("HowToStep")]));
    expect(steps.map((step) => valuesOf(step, s("position"))[0])).toEqual([1, 2, 3, 4, 5, 6]);
    expect(nodesOf(steps[1] ?? {}, s("url"))).toEqual([{ "@id": "https://video.example.org/pump#t=20" }]);
    const says = nodesOf(steps[2] ?? {}, s("itemListElement"));
    expect(says.map((one) => (one["@type"] as string[])[0])).toEqual([s("HowToTip"), s("HowToDirection")]);
    expect(valuesOf(says[0] ?? {}, s("text"))[0]).toMatch(/^WARNING: The spring is under load\./);
    expect(nodesOf(howTo, s("tool")).map((one) => [one["@type"], valuesOf(one, s("name"))])).toEqual([
      [[s("HowToTool")], ["Clamp"]],
    ]);
    expect(nodesOf(howTo, s("supply")).map((one) => valuesOf(one, s("requiredQuantity")))).toEqual([
      ["10 g"],
    ]);
  });

  test("clips count seconds from the beginning of the work, once for each place", async () => {
    const howTo = await expand(textOf(await toHowTo(filmedJob(), options()), "howto.jsonld"));
    const [section] = nodesOf(howTo, s("step"));
    const steps = nodesOf(section ?? {}, s("itemListElement"));
    const clips = steps.map((step) =>
      nodesOf(step, s("video")).map((one) => [
        valuesOf(one, s("startOffset"))[0],
        valuesOf(one, s("endOffset"))[0],
      ]),
    );
    expect(clips).toEqual([
      [[2, undefined]],
      [
        [20, undefined],
        [150, undefined],
      ],
      [
        [26, undefined],
        [156, undefined],
      ],
      [],
      [[70, 90]],
      [[130, undefined]],
    ]);
    const [video] = nodesOf(howTo, s("video"));
    expect(valuesOf(video ?? {}, s("duration"))).toEqual(["PT2M40S"]);
  });

  test("pictures lie beside it, and what has no place is said", async () => {
    const output = await toHowTo(checked(await smallJob()), options());
    const howTo = await expand(textOf(output, "howto.jsonld"));
    const pictures =
      JSON.stringify(howTo).match(/https:\/\/files\.example\.org\/job\/stills\/[0-9a-f]+\.jpg/g) ?? [];
    const names = output.files.map(({ name }) => name);
    expect(pictures.length).toBeGreaterThan(0);
    for (const picture of pictures)
      expect(names).toContain(picture.replace("https://files.example.org/job/", ""));
    const one = await toHowTo(checked(await smallJob()), options({ pictures: "inside" }));
    expect(one.files.map(({ name }) => name)).toEqual(["howto.jsonld"]);
    const inside = JSON.stringify(await expand(textOf(one, "howto.jsonld"))).match(
      /"data:image\/jpeg;base64,\/9j[^"]+"/g,
    );
    expect(inside).toHaveLength(pictures.length);
    expect(output.losses.join(" ")).toMatch(/measurements/);
    expect(output.losses.join(" ")).toMatch(/how grave a caution is/);
  });
});

// W3C Web Annotation Data Model, 4.2.1; media fragments by W3C Media Fragments URI 1.0; RFC 6920 for names by hash.
describe("W3C Web Annotations", () => {
  const oa = (term: string) => `http://www.w3.org/ns/oa#${term}`;

  test("expand to annotations of stretches of recordings and of the film", async () => {
    const output = await toAnnotations(filmedJob(), options());
    const page = await expand(textOf(output, "marks.jsonld"));
    expect(page["@type"]).toEqual(["http://www.w3.org/ns/activitystreams#OrderedCollectionPage"]);
    const [list] = page["http://www.w3.org/ns/activitystreams#items"] as { "@list": Expanded[] }[];
    const marks = list?.["@list"] ?? [];
    expect(marks).toHaveLength(10);
    for (const mark of marks) expect(mark["@type"]).toEqual([oa("Annotation")]);
    const [, undo] = marks;
    const targets = nodesOf(undo ?? {}, oa("hasTarget"));
    const said = targets.map((target) => {
      const [selector] = nodesOf(target, oa("hasSelector"));
      expect(selector?.["@type"]).toEqual([oa("FragmentSelector")]);
      expect(selector?.["http://purl.org/dc/terms/conformsTo"]).toEqual([
        { "@id": "http://www.w3.org/TR/media-frags/" },
      ]);
      const [source] = nodesOf(target, oa("hasSource"));
      const value = valuesOf(selector ?? {}, "http://www.w3.org/1999/02/22-rdf-syntax-ns#value");
      return [source?.["@id"], ...value];
    });
    // RFC 6920, section 8.1 names by the same form: ni:///sha-256;… in base64url.
    const name = `ni:///sha-256;${Buffer.from(sha256, "hex").toString("base64url")}`;
    expect(said).toEqual([
      [name, "t=40,41"],
      ["https://video.example.org/pump", "t=20,21"],
      ["https://video.example.org/pump", "t=150,151"],
    ]);
    const bodies = nodesOf(undo ?? {}, oa("hasBody"));
    expect(
      bodies.map((body) => valuesOf(body, "http://www.w3.org/1999/02/22-rdf-syntax-ns#value")[0]),
    ).toEqual(["Undo the six cover nuts", "action", "step 2"]);
    expect(bodies[1]?.[oa("hasPurpose")]).toEqual([{ "@id": oa("tagging") }]);
  });

  test("a span keeps its end", async () => {
    const page = JSON.parse(textOf(await toAnnotations(filmedJob(), options()), "marks.jsonld"));
    const fit = page.items.find((item: { id: string }) => item.id === "#mark-action-130");
    expect(fit.target.map((one: { selector: { value: string } }) => one.selector.value)).toEqual([
      "t=130,150",
      "t=70,90",
    ]);
  });
});

// Schema versions: time-values.json, from the version map of OpenTimelineIO, releases 0.15 to 0.18.
describe("OpenTimelineIO", () => {
  type Item = {
    OTIO_SCHEMA: string;
    children?: Item[];
    markers?: Item[];
    name?: string;
    [key: string]: unknown;
  };
  const schemas = (value: unknown): string[] =>
    typeof value !== "object" || value === null
      ? []
      : Object.entries(value).flatMap(([key, one]) => (key === "OTIO_SCHEMA" ? [String(one)] : schemas(one)));

  test("the film is a timeline with the marks at each of their places", async () => {
    const output = await toOtio(filmedJob(), options());
    const timeline = JSON.parse(textOf(output, "marks.otio"));
    expect(new Set(schemas(timeline))).toEqual(
      new Set([
        "Timeline.1",
        "Stack.1",
        "Track.1",
        "Clip.2",
        "Marker.2",
        "ExternalReference.1",
        "RationalTime.1",
        "TimeRange.1",
      ]),
    );
    const markers = timeline.tracks.markers as Item[];
    const at = (one: Item) =>
      (one.marked_range as { start_time: { value: number; rate: number } }).start_time;
    const undo = markers.filter(({ name }) => name === "Undo the six cover nuts").map(at);
    expect(undo.map(({ value, rate }) => value / rate)).toEqual([20, 150]);
    expect(markers.filter(({ color }) => color === "RED").map(({ name }) => name)).toEqual([
      "The spring is under load",
      "The spring is under load",
    ]);
    expect(output.losses.join(" ")).toContain("1 marks are not in the film");
  });

  test("what is written is read again as the same cut: backwards, slow, frozen, with a dissolve and a gap", async () => {
    const segments = [
      { at: 0, until: 10, recordingId: "recording-1", from: 130, speed: -1 },
      { at: 8, until: 20, recordingId: "recording-1", from: 20, speed: 0.5 },
      { at: 25, until: 30, recordingId: "recording-1", from: 60, speed: 0 },
    ];
    for (const one of [cut, newCut({ id: "c", buildId: "build-1", form: "hand", segments })]) {
      const job = filmedJob({ cuts: [one] });
      const read = readOtio(textOf(await toOtio(job, options()), "marks.otio"));
      expect(read.problems).toEqual([]);
      const again = makeCut(
        read.segments.map((segment) => ({ ...segment, source: "recording-1" })),
        { n: 1n, d: 25n },
      );
      for (const { mark, moment } of job.procedure.moments) {
        const [from, until] = [moment.at, moment.until];
        if (until !== undefined) continue;
        const places = filmPlaces(again, "recording-1", from).map(({ at }) => at);
        expect(places, mark).toEqual((moment.film ?? []).map(({ at }) => expect.closeTo(at, 6)));
      }
    }
  });

  test("without a film each recording is a track with its marks", async () => {
    const timeline = JSON.parse(textOf(await toOtio(filmedJob({ cuts: [] }), options()), "marks.otio"));
    const [clip] = timeline.tracks.children[0].children as Item[];
    expect(clip?.name).toBe("bench one.mp4");
    expect(clip?.markers).toHaveLength(10);
  });
});

describe("measurements.csv", () => {
  test("has the four values as typed, and the other system beside them", async () => {
    const rows = readCsv(textOf(await toMeasurementsCsv(filmedJob(), options()), "measurements.csv"));
    const [heads = [], line = []] = rows;
    const cell = (head: string) => line[heads.indexOf(head)];
    expect([cell("Step"), cell("What"), cell("As found"), cell("Limit")]).toEqual([
      "3",
      "Bore of the bush",
      "0.4965 in",
      "max 0.498 in",
    ]);
  });

  test("has a line for every measurement of the procedure", async () => {
    const job = checked(await smallJob());
    const rows = readCsv(textOf(await toMeasurementsCsv(job, options()), "measurements.csv"));
    expect(rows).toHaveLength(1 + job.procedure.measurements.length);
  });
});
