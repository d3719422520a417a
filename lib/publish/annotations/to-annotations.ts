import { publishedLink } from "#lib/procedure/index.ts";
import type { CheckedProcedure, MarkMoment, Procedure, RecordingLine } from "#lib/procedure/tree.ts";
import { cleanTree, type Replaced, replacedSentence, textCleaner } from "../clean.ts";
import { contentHash } from "../content-hash.ts";
import { type Output, type PublishOptions, textFile } from "../output.ts";
import { sheetState } from "../state.ts";
import { annotation, context, type Node, stretchOf, words } from "./forms.ts";

/** How long a mark that is a moment is written as, in seconds: a media fragment has no instants. */
const momentLasts = 1;

/** Every mark that has a moment as a W3C Web Annotation (JSON-LD): `marks.jsonld`. */
export async function toAnnotations(checked: CheckedProcedure, options: PublishOptions): Promise<Output> {
  const replaced: Replaced = new Map();
  const procedure = cleanTree(checked.procedure, textCleaner(replaced));
  const recordings = new Map(procedure.recordings.map((one) => [one.id, one]));
  const page = {
    "@context": context,
    id: `#build-${encodeURIComponent(procedure.buildId)}`,
    type: "AnnotationPage",
    label: `${procedure.title}. ${sheetState(checked, options, contentHash(checked)).line}`,
    startIndex: 0,
    items: procedure.moments.map((mark) => ofMark(mark, procedure, recordings)),
  };
  const cleaned = replacedSentence(replaced, "\ufffd", "JSON-LD cannot carry them");
  return {
    files: [textFile("marks.jsonld", `${JSON.stringify(page, null, 2)}\n`)],
    losses: [
      `Web annotations carry each mark's kind, words, step and place, and not its other fields; a mark at a moment is written as ${momentLasts} s, since a media fragment has no instants.`,
      ...unknownBytes(procedure.recordings),
      ...(cleaned ? [`Web annotations: ${cleaned}`] : []),
    ],
  };
}

function ofMark(
  { mark, kind, words: said, step, moment }: MarkMoment,
  procedure: Procedure,
  recordings: ReadonlyMap<string, RecordingLine>,
): Node {
  const tags = [kind || "unsorted", ...(step === null ? [] : [`step ${step}`])];
  const recording = recordings.get(moment.recordingId);
  const places = (moment.film ?? []).map(({ at, until }) => filmTarget(procedure, at, until));
  const plain = { format: "text/plain", language: procedure.language };
  const body = [
    ...(said === "" ? [] : [words(said, "describing", plain)]),
    ...tags.map((tag) => words(tag, "tagging")),
  ];
  const target = [
    ...(recording ? [recordingTarget(recording, moment.at, moment.until ?? null)] : []),
    ...places.filter((place) => place !== null),
  ];
  return annotation(`#mark-${encodeURIComponent(mark)}`, "describing", body, target);
}

/** The bytes of a recording, by their hash where it is known: a file may be renamed, its bytes stay what they are. */
function recordingTarget(recording: RecordingLine, at: number, until: number | null): Node {
  const { name, sha256 } = recording;
  const id = sha256 === null ? `recordings/${encodeURIComponent(name)}` : hashAddress(sha256);
  const known = sha256 === null ? {} : { "schema:sha256": sha256 };
  return stretchOf({ id, type: "Video", label: name, ...known }, at, until ?? at + momentLasts);
}

/** RFC 6920: a thing named by its hash. */
function hashAddress(sha256: string): string {
  return `ni:///sha-256;${Buffer.from(sha256, "hex").toString("base64url")}`;
}

function filmTarget({ film }: Procedure, at: number, until: number | null): Node | null {
  const address = film && publishedLink(film.publishedAt, 0);
  if (!address) return null;
  const url = new URL(address);
  url.hash = "";
  return stretchOf({ id: url.href, type: "Video", label: film.name }, at, until ?? at + momentLasts);
}

function unknownBytes(recordings: readonly RecordingLine[]): string[] {
  const unknown = recordings.filter(({ sha256 }) => sha256 === null).length;
  if (unknown === 0) return [];
  return [
    `Web annotations name ${unknown} of ${recordings.length} recordings by the file's name alone, since its bytes have not been hashed yet.`,
  ];
}
