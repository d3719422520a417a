import { type BuildDocument, newItem } from "#lib/build/index.ts";
import { sampleDocument, sampleMark } from "../../sample.ts";
import { rowsOf } from "./openings.ts";
import { begun, type SecondBook, textOf } from "./read.ts";

const lines = textOf("queries.txt").split("\n").filter(Boolean);

/** What is said, fitted and measured beside the book: "said | words" in queries.txt, as rows of a build. */
const beside = lines.flatMap((line, at) => {
  const [, kind, words = ""] = /^(said|part|measurement) \| (.*)$/.exec(line) ?? [];
  return kind ? [{ id: `beside-${at}`, kind, words }] : [];
});

/** A build with the second book and what lies beside it. */
export function documentOf(book: SecondBook): BuildDocument {
  const document = sampleDocument();
  document.marks = beside
    .filter(({ kind }) => kind !== "part")
    .map(({ id, kind, words }, at) =>
      sampleMark(at, kind === "said" ? "action" : "measurement", { words }, { id }),
    );
  document.items.push(
    ...beside
      .filter(({ kind }) => kind === "part")
      .map(({ id, words }) => newItem({ id, machineId: "machine-1", name: words })),
  );
  return { ...document, ...rowsOf(book) };
}

/** The questions, each with the id of what it should find. */
export function questionsOf(book: SecondBook): { kind: string; text: string; id: string }[] {
  let kind = "";
  return lines.flatMap((line) => {
    if (line.startsWith("# ")) kind = line.slice(2);
    const [, text = "", wanted = ""] = /^(.*) \| (.*)$/.exec(line) ?? [];
    if (kind === "" || text === "") return [];
    const said = beside.find((one) => one.words.startsWith(wanted));
    return [{ kind, text, id: said?.id ?? begun(book.lessons, wanted).id }];
  });
}
