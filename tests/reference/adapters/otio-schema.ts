import { readOtio } from "#lib/cut/index.ts";
import { clip, formsAt, gap, marker, timeline, track, transition } from "#lib/publish/otio/forms.ts";
import type { Adapter, Answer } from "../row.ts";

type Item = { OTIO_SCHEMA: string } & Record<string, unknown>;

const { range, time } = formsAt(25);
const parts = { name: "a.mp4", url: "a.mp4", range: range(0, 1), available: null, effects: [], markers: [] };
const oneClip = clip({ ...parts, metadata: {} }) as Item & { media_references: { DEFAULT_MEDIA: Item } };
const film = timeline("film", [track("V1", [oneClip])], [], {}) as Item & {
  tracks: Item & { children: Item[] };
};

/** What is written of each class. */
const written: Record<string, unknown> = {
  Timeline: film,
  Stack: film.tracks,
  Track: film.tracks.children[0],
  Clip: oneClip,
  Gap: gap(range(0, 1)),
  Transition: transition(time(1), time(1)),
  ExternalReference: oneClip.media_references.DEFAULT_MEDIA,
  Marker: marker("a mark", range(0, 0), "RED", {}),
};

function fieldsOf(item: object): string[] {
  return Object.keys(item).filter((field) => field !== "OTIO_SCHEMA");
}

/** A version that is not written yet must at least be read. */
function reads(schema: string): Answer {
  const later = { ...marker("a mark", range(2, 0), "RED", {}), OTIO_SCHEMA: schema };
  const { locators } = readOtio(JSON.stringify(timeline("film", [track("V1", [oneClip])], [later], {})));
  return locators[0]?.at === 2 ? { OTIO_SCHEMA: schema } : { note: "not read" };
}

export const adapter: Adapter = ({ input }) => {
  const name = `${input.class}`;
  if (name === "Marker" && /dev/.test(`${input.release}`)) return reads("Marker.3");
  if (name in written) return { OTIO_SCHEMA: (written[name] as Item).OTIO_SCHEMA };
  const [moment, stretch] = [time(1), range(0, 1)] as [Item, Item];
  return {
    OTIO_SCHEMA: [moment.OTIO_SCHEMA, stretch.OTIO_SCHEMA],
    fields: { RationalTime: fieldsOf(moment), TimeRange: fieldsOf(stretch) },
  };
};
