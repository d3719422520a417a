import { finding } from "#lib/finding/index.ts";
import { stepsOf } from "#lib/procedure/index.ts";
import type { Rule } from "./rule.ts";

const oneStretch = "001 film.mp4 V C 00:00:01:00 00:00:05:00 01:00:00:00 01:00:04:00";

/** A step that was filmed and fell out of the edited film. */
export const notInFilm: Rule = {
  id: "not-in-film",
  title: "A step that is not in the film",
  explanation:
    "It was filmed, and the edited film does not show that second. A reader of the print finds no link there, and a viewer no such step. It may well be meant so.",
  source: "common practice, no source",
  check: ({ procedure }) =>
    stepsOf(procedure)
      .filter(({ moment }) => moment?.film?.length === 0)
      .map(({ mark, number, title, moment }) =>
        finding({
          rule: "not-in-film",
          severity: "advice",
          place: { mark },
          evidence: `${procedure.film?.cut}\n${moment?.at}`,
          found: `Step ${number}, “${title}”, is not in the film: ${moment?.recordingName} at ${moment?.written} was cut out.`,
          expected: "A place in the film, or a word that it is left out on purpose.",
          todo: "Nothing, if it is meant so: answer why. Else put it back when the film is next cut.",
          source: notInFilm.source,
        }),
      ),
  examples: [
    { says: "no film", sketch: { marks: [[9, "action", { words: "Undo the nuts" }]] }, finds: 0 },
    {
      says: "one in the film and one cut out",
      sketch: {
        film: oneStretch,
        marks: [
          [2, "action", { words: "Undo the nuts" }],
          [9, "action", { words: "Lift the cover off" }],
        ],
      },
      finds: 1,
    },
  ],
};
