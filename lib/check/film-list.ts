import { filmOf } from "#lib/cut/index.ts";
import { finding } from "#lib/finding/index.ts";
import type { Rule } from "./rule.ts";

const event = (reel: string) => `001 ${reel} V C 00:00:01:00 00:00:05:00 01:00:00:00 01:00:04:00`;

/** What of the film's edit list cannot be read, or not without a doubt. */
export const filmList: Rule = {
  id: "film-list",
  title: "An edit list that cannot be followed throughout",
  explanation:
    "Links, codes and chapters lead to seconds of the edited film, by its edit list. Where a line of the list cannot be read, or a reel is not known, they lead nowhere or to the wrong second.",
  source: "the list itself; drop-frame by SMPTE ST 12-1",
  check: ({ document }) => {
    const film = filmOf(document);
    return (film?.problems ?? []).map(({ severity, where, found, expected, todo }) =>
      finding({
        rule: "film-list",
        severity,
        place: { field: `${film?.row.id} ${where}`.slice(0, 500) },
        evidence: found,
        found: `The film, ${where}: ${found}`,
        expected,
        todo,
        source: filmList.source,
      }),
    );
  },
  examples: [
    { says: "no film", sketch: {}, finds: 0 },
    { says: "a reel that is the recording", sketch: { film: event("film.mp4") }, finds: 0 },
    { says: "a reel that is none", sketch: { film: event("OTHER") }, finds: 1 },
    {
      says: "an event whose frame does not exist at that rate",
      sketch: { film: `${event("film.mp4")}\n${event("film.mp4").replace("05:00", "05:25")}` },
      finds: 1,
    },
  ],
};
