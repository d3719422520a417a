import fs from "node:fs";
import path from "node:path";
import { type Gotcha, newGotcha, newScope } from "#lib/build/index.ts";

/** A book with every gotcha told once, each told a second time by somebody else, and what lies near it and is another. */
export interface Told {
  book: Gotcha[];
  again: { written: Gotcha; same: string }[];
  near: { others: Gotcha[]; pairs: [string, string][] };
}

/** One half of the third set, out of the file beside this one; the notation is told in README.md. */
export function readThird(half: "mend" | "keep"): Told {
  const told: Told = { book: [], again: [], near: { others: [], pairs: [] } };
  const text = fs.readFileSync(path.join(import.meta.dirname, `${half}.txt`), "utf8");
  let machine = { maker: "", model: "" };
  let [of, assembly] = ["", ""];
  for (const [at, line] of text.split("\n").entries()) {
    const [first = "", second = "", third = ""] = line.slice(2).split(" | ");
    if (line.startsWith("machine ")) machine = { maker: second, model: third };
    if (!/^[p=~] /.test(line)) continue;
    const [place = "", item = ""] = first.split(";").map((one) => one.trim());
    if (line[0] === "p") [of, assembly] = [`${half}-${at}`, place];
    const [symptom = "", mechanism = ""] = second.split(" / ");
    const appliesTo = [newScope({ ...machine, assembly: place || assembly, item })];
    const noted = "2026-01-01T00:00:00.000Z";
    const gotcha = newGotcha({ id: `${half}-${at}`, symptom, mechanism, appliesTo, noted });
    if (line[0] === "p") told.book.push(gotcha);
    else if (line[0] === "=") told.again.push({ written: gotcha, same: of });
    else {
      told.near.others.push(gotcha);
      told.near.pairs.push([of, gotcha.id]);
    }
  }
  return told;
}
