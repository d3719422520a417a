import { type BuildDocument, clocksOf, present, sittingsInOrder } from "#lib/build/index.ts";
import { compareMarks, kindOf, type Mark } from "#lib/mark/index.ts";
import { sayBytes } from "#lib/media/index.ts";
import { sayMoment } from "#lib/time/index.ts";
import type { WrittenBuild } from "./builds.ts";
import type { Manifest } from "./manifest.ts";

/** README.txt of a backup: what it is, for somebody who has it and not the program. */
export function backupReadme(made: Omit<Manifest, "files">, builds: readonly WrittenBuild[]): string {
  const lines = builds.map((build) => `  ${build.folder}/   ${build.machine}: ${build.title}`);
  const elsewhere = made.elsewhere.map(
    (film) => `  ${film.folder}, ${film.path}   (${sayBytes(film.bytes)})`,
  );
  return `A backup of a workshop of Witness Mark, made on ${made.at} (UTC) from ${made.workshop}.

These are plain files. They can be read without the program:

  builds/       one folder for each build: README.txt and marks.txt to read, build.json with everything
                that was written, its captions and its stills
  gotchas/      the gotcha book: book.csv opens in any spreadsheet, book.json has everything that was
                written in it, with every time that one was met
  stills/       every picture, as JPEG; each is called after its own SHA-256
  recordings/   the films that were brought in, as they came from the camera
  releases/     procedures as they were published
  workshop.db   the database, SQLite 3, with the whole history; any SQLite program opens it
  manifest.json every file with its size and its SHA-256, and what is not here and why
  SHA256SUMS    the same hashes; on Linux and macOS “sha256sum -c SHA256SUMS” checks them

To bring it back: put the program on a computer, and run in its folder

  npm run -s witness -- restore "(this folder)" --workshop "(a new or empty folder)"

It checks every file first, and refuses a folder in which anything lies. Nothing in here is changed by it.

Builds in this backup (those that were struck out are in workshop.db alone):
${lines.join("\n") || "  none"}

Films that stay where they lie, on their own drives, and are NOT in this backup:
${elsewhere.join("\n") || "  none"}
`;
}

/** README.txt beside a build's build.json. */
export function buildReadme(document: BuildDocument, films: readonly { name: string; at: string }[]): string {
  const { build, machine } = document;
  return `${machine.name}: ${build.title}
${[machine.maker, machine.model, machine.years, machine.serial].filter(Boolean).join(", ")}
${build.summary}

  marks.txt    every mark, in order, to read
  build.json   everything that was written about this build
  captions/    captions as they came
  stills/      its pictures

Witness Mark brings this folder in as it is (“Bring in a build folder”).

Recordings:
${films.map((film) => `  ${film.name}: ${film.at}`).join("\n") || "  none"}
`;
}

/** The marks of a build as a text: by sitting, in their order, those struck out left away. */
export function marksText(document: BuildDocument): string {
  const names = new Map(document.recordings.map((recording) => [recording.id, recording.name]));
  const marks = present(document.marks).sort(compareMarks(clocksOf(document)));
  const sittings = sittingsInOrder(document).map((sitting) => {
    const own = marks.filter((mark) => mark.sittingId === sitting.id);
    const lines = own.map((mark) => markLine(mark, names.get(mark.recordingId ?? "") ?? ""));
    return `${sitting.title} (${sitting.stage})${sitting.began ? `, began ${sitting.began}` : ""}\n${lines.join("")}`;
  });
  return `Times are minutes and seconds of the recording that is named.\n\n${sittings.join("\n")}`;
}

function markLine(mark: Mark, recording: string): string {
  const moment = mark.at === null ? "without film" : `${sayMoment(mark.at)} of ${recording}`;
  const kind = kindOf(mark.kind);
  const fields = kind.fields.flatMap((field) => {
    const value = mark.fields[field.name];
    const text = typeof value === "string" ? value : ((value as { typed?: string } | undefined)?.typed ?? "");
    return text.trim() === "" ? [] : [`    ${field.label}: ${text.replace(/\s*\n\s*/g, " / ")}\n`];
  });
  return `  ${moment}: ${kind.word || "not sorted"}\n${fields.join("")}`;
}
