import { newKit } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { newMark } from "#lib/mark/index.ts";
import {
  compile,
  containersOf,
  draftAssembly,
  ledgerOf,
  reconcileKits,
  whereWasI,
} from "#lib/procedure/index.ts";
import { sampleDocument } from "../sample.ts";
import { type BenchLine, ms, time } from "./measure.ts";

/** 500 parts and 800 events: all come off, and 300 are back on; each goes on over the one before it. */
export function largeBuild() {
  const event = (index: number, at: number, fields: Record<string, unknown>) =>
    newMark({
      id: `part-${at}`,
      buildId: "build-1",
      sittingId: "sitting-1",
      recordingId: "recording-1",
      at,
      kind: "part",
      fields: { v: 1, item: `Part ${index}`, count: "1", ...fields },
    });
  const action = (at: number, words: string, stage: string) =>
    newMark({ ...event(0, at, {}), id: `action-${at}`, kind: "action", fields: { v: 1, words, stage } });
  const off = Array.from({ length: 500 }, (_, index) =>
    event(index, index * 10 + 1, {
      event: "removed",
      covers: `Part ${index + 1}`,
      container: `tin ${index % 40}`,
      wayRound: "arrow up",
    }),
  );
  const on = Array.from({ length: 300 }, (_, index) =>
    event(499 - index, 6000 + index * 10 + 1, { event: "fitted", wayRound: "arrow up" }),
  );
  const actions = [...off, ...on].map((mark) =>
    action((mark.at ?? 0) - 1, "Move it", mark.fields.event === "removed" ? "strip" : "assemble"),
  );
  const text = Array.from({ length: 60 }, (_, index) => `1 x Part ${index}`).join("\n");
  return sampleDocument({
    items: [],
    marks: [...off, ...on, ...actions],
    kits: [newKit({ id: "kit-1", buildId: "build-1", name: "Kit", text })],
  });
}

export const ledgerLine: BenchLine = {
  name: "the ledger of 500 parts and 800 events",
  measure: async () => {
    const document = largeBuild();
    const procedure = compile(document);
    const sheet = await time(9, () => {
      const ledger = ledgerOf(procedure, document);
      draftAssembly(ledger, procedure, document);
      containersOf(ledger);
      reconcileKits(ledger);
      whereWasI(ledger, procedure, document, 0);
    });
    const all = await time(9, () => check(compile(document), document));
    return [
      `ledger, assembly, kits and tins ${ms(sheet)} (100 ms are allowed)`,
      `compile and check ${ms(all)}`,
    ];
  },
};
