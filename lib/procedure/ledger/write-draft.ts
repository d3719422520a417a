import { type BuildDocument, newSitting, type Sitting } from "#lib/build/index.ts";
import { fieldsVersion, type Mark, newMark } from "#lib/mark/index.ts";
import type { AssemblyEntry } from "./assembly.ts";

/** A sitting to come, with an action for each part that is still off. */
export interface WrittenDraft {
  sitting: Sitting;
  marks: Mark[];
}

/**
 * The drafted assembly as a sitting of its own: an action without film for each part that is still off, in order, which
 * says when it came off and how it sat. No part is marked as fitted by it: that is said when it has been.
 *
 * @param newId gives ids
 */
export function writeDraft(
  document: BuildDocument,
  entries: readonly AssemblyEntry[],
  newId: () => string,
): WrittenDraft {
  const sitting = newSitting({
    id: newId(),
    buildId: document.build.id,
    title: "Assembly, drafted from the strip-down",
    stage: "assemble",
    rank: Math.max(0, ...document.sittings.map((one) => one.rank)) + 1,
  });
  const marks = entries
    .filter((entry) => entry.state === "off")
    .map((entry, index) =>
      newMark({
        id: newId(),
        buildId: document.build.id,
        sittingId: sitting.id,
        rank: index + 1,
        kind: "action",
        fields: {
          v: fieldsVersion,
          words: `Fit ${entry.count > 1 ? `${entry.count} × ` : "the "}${entry.name}.`,
          detail: detailOf(entry, document),
        },
      }),
    );
  return { sitting, marks };
}

function detailOf({ off, foundWrong, fromTrial }: AssemblyEntry, document: BuildDocument): string {
  const film = document.marks.find((mark) => mark.id === off.mark)?.recordingId;
  const name = document.recordings.find((recording) => recording.id === film)?.name;
  const { wayRound, place, between } = off.says;
  const sat = [wayRound, place, between && `between ${between}`].filter(Boolean).join("; ");
  return [
    off.written ? `It came off at ${off.written}${name ? ` of ${name}` : ""}.` : "",
    sat === "" ? "" : `As it was: ${sat}.`,
    foundWrong === "" ? "" : `That was not right: ${foundWrong}.`,
    ...fromTrial.map(({ words }) => `From the trial fit: ${words}`),
  ]
    .filter(Boolean)
    .join(" ");
}
