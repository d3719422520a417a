import fc from "fast-check";
import { expect, test } from "vitest";
import { newBuild, newSitting, type Recording } from "#lib/build/index.ts";
import { kindNames, type Mark, newMark } from "#lib/mark/index.ts";
import {
  apply,
  loadBuild,
  type OpenWorkshop,
  type Put,
  projectionsIn,
  rebuildSearch,
  step,
} from "#lib/store/index.ts";
import { sampleDocument } from "../sample.ts";
import { freshWorkshop, writeDocument } from "./fresh.ts";
import { foundEntries } from "./kept.ts";

/** One thing that a restorer does. Numbers choose among what is there at that moment. */
type Deed =
  | { does: "mark"; kind: Mark["kind"]; at: number | null; words: string }
  | { does: "type"; which: number; words: string }
  | { does: "sort"; which: number; kind: Mark["kind"] }
  | { does: "move"; which: number; at: number }
  | { does: "strike out"; which: number }
  | { does: "bring back"; which: number }
  | { does: "close"; which: number; other: number }
  | { does: "edit"; which: number; value: string }
  | { does: "answer"; reason: string }
  | { does: "set the clock"; offset: number; rate: number }
  | { does: "two at once"; which: number; words: string };

const which = fc.nat(30);
const words = fc.oneof(fc.string({ maxLength: 20 }), fc.string({ unit: "grapheme", maxLength: 12 }));
const moment = fc.double({ min: 0, max: 300, noNaN: true });
const kind = fc.constantFrom<Mark["kind"]>(...kindNames, "");
const deed: fc.Arbitrary<Deed> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ does: fc.constant("mark" as const), kind, at: fc.option(moment), words }),
  },
  { weight: 4, arbitrary: fc.record({ does: fc.constant("type" as const), which, words }) },
  fc.record({ does: fc.constant("sort" as const), which, kind }),
  fc.record({ does: fc.constant("move" as const), which, at: moment }),
  { weight: 2, arbitrary: fc.record({ does: fc.constant("strike out" as const), which }) },
  fc.record({ does: fc.constant("bring back" as const), which }),
  fc.record({ does: fc.constant("close" as const), which, other: which }),
  fc.record({ does: fc.constant("edit" as const), which, value: words }),
  fc.record({ does: fc.constant("answer" as const), reason: words }),
  fc.record({
    does: fc.constant("set the clock" as const),
    offset: fc.double({ min: -1e4, max: 1e4, noNaN: true }),
    rate: fc.double({ min: 0.5, max: 2, noNaN: true }),
  }),
  fc.record({ does: fc.constant("two at once" as const), which, words }),
);

/** Everything of a build, revisions apart: they count on. */
type State = Record<string, Record<string, unknown>>;

test("any sequence of commands, undone completely, gives the first state; redone, the last; the search table is always what a rebuild makes it", {
  timeout: 3_600_000,
}, async () => {
  const opened = freshWorkshop();
  await writeDocument(opened, sampleDocument());
  let runs = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(deed, { minLength: 1, maxLength: 12 }), async (deeds) => {
      const bench = await newBench(opened, `law-${runs++}`);
      const states = [await bench.state()];
      for (const one of deeds) {
        await bench.carryOut(one);
        states.push(await bench.state());
      }
      await expectProjection(opened);
      // Backwards through every state, to the first.
      for (const earlier of states.slice(0, -1).reverse()) {
        expect(await bench.step("undo")).not.toBeNull();
        expect(present(await bench.state())).toEqual(present(earlier));
      }
      expect(await bench.step("undo")).toBeNull();
      await expectProjection(opened);
      for (const later of states.slice(1)) {
        expect(await bench.step("redo")).not.toBeNull();
        expect(present(await bench.state())).toEqual(present(later));
      }
      expect(await bench.state()).toEqual(states.at(-1));
      expect(await bench.step("redo")).toBeNull();
      await expectProjection(opened);
    }),
    { numRuns: process.env.LONG ? 500 : 50, seed: 1911 },
  );
});

/** A build of its own in the workshop, and a hand that works on it. */
async function newBench(opened: OpenWorkshop, buildId: string) {
  const { client } = opened;
  const sitting = newSitting({ id: `${buildId}-sitting`, buildId, title: "An evening" });
  const [sample] = sampleDocument().recordings;
  const recording = { ...sample, id: `${buildId}-film`, buildId, sittingId: sitting.id } as Recording;
  const begin: Put[] = [
    {
      table: "build",
      id: buildId,
      rev: 0,
      set: { ...newBuild({ id: buildId, machineId: "machine-1", title: buildId }) },
    },
    { table: "sitting", id: sitting.id, rev: 0, set: { ...sitting } },
    { table: "recording", id: recording.id, rev: 0, set: { ...recording } },
  ];
  let made = 0;
  const id = () => `${buildId}-${made++}`.padEnd(8, "-");
  await apply(client, { id: id(), buildId: null, label: "begun", puts: begin });

  const load = async () => {
    const loaded = await loadBuild(client, buildId);
    if (!loaded) throw new Error("the build is there");
    return loaded;
  };
  // What is on the screen: as it was when it was last looked at.
  let screen = await load();
  const commit = (puts: Put[]) => apply(client, { id: id(), buildId, label: "a deed", puts });

  const carryOut = async (deed: Deed): Promise<void> => {
    const { marks, recordings, edits } = screen;
    const sorted = [...marks].sort((a, b) => (a.id < b.id ? -1 : 1));
    const at = (index: number) => sorted[index % Math.max(1, sorted.length)];
    const mark = "which" in deed ? at(deed.which) : undefined;
    const change = (set: Record<string, unknown>) =>
      mark
        ? commit([{ table: "mark", id: mark.id, rev: mark.rev, set }])
        : drop(newMark({ id: id(), buildId, sittingId: sitting.id }));
    const drop = (made: Mark) => commit([{ table: "mark", id: made.id, rev: 0, set: { ...made } }]);
    if (deed.does === "mark") {
      const recordingId = deed.at === null ? null : recording.id;
      const fields = { v: 1, words: deed.words };
      await drop(
        newMark({
          id: id(),
          buildId,
          sittingId: sitting.id,
          recordingId,
          at: deed.at,
          kind: deed.kind,
          fields,
        }),
      );
    } else if (deed.does === "type") await change({ fields: { ...mark?.fields, words: deed.words } });
    else if (deed.does === "sort") await change({ kind: deed.kind });
    else if (deed.does === "move") await change({ at: deed.at, until: null });
    else if (deed.does === "strike out") await change({ gone: "2026-05-03T10:00:00.000Z" });
    else if (deed.does === "bring back") await change({ gone: null });
    else if (deed.does === "close")
      await change({ fields: { ...mark?.fields, closes: [at(deed.other)?.id ?? "none"] } });
    else if (deed.does === "edit") {
      const markId = mark?.id ?? "none";
      const editId = `title-${buildId}-${markId}`;
      const known = edits.find((one) => one.id === editId);
      const set = { buildId, markId, edit: "title", value: deed.value, basis: "", gone: null };
      await commit([{ table: "edit", id: editId, rev: known?.rev ?? 0, set }]);
    } else if (deed.does === "answer") {
      const set = { buildId, key: "k", evidence: "e", reason: deed.reason, gone: null };
      await commit([{ table: "answer", id: id(), rev: 0, set }]);
    } else if (deed.does === "set the clock") {
      const rev = recordings[0]?.rev ?? 0;
      await commit([
        { table: "recording", id: recording.id, rev, set: { offset: deed.offset, rate: deed.rate } },
      ]);
    } else {
      // One row twice in one command, and a new one beside it.
      const beside = newMark({ id: id(), buildId, sittingId: sitting.id });
      const twice: Put[] = mark
        ? [0, 1].map((more) => ({
            table: "mark",
            id: mark.id,
            rev: mark.rev + more,
            set: { rank: more + 0.5, fields: { ...mark.fields, words: deed.words } },
          }))
        : [];
      await commit([...twice, { table: "mark", id: beside.id, rev: 0, set: { ...beside } }]);
    }
  };

  return {
    carryOut,
    state: async (): Promise<State> => {
      screen = await load();
      const { foreign: _, machine: _m, assemblies: _a, items: _i, build, ...lists } = screen;
      const rows = [build, ...Object.values(lists).flat()] as { id: string; rev: number }[];
      return Object.fromEntries(rows.map(({ rev: _rev, ...row }) => [row.id, row]));
    },
    step: (which: "undo" | "redo") => step(client, { id: id(), buildId, step: which }),
  };
}

/** What is not struck out: undoing the making of a row leaves its tombstone, since others may refer to it. */
function present(state: State): State {
  return Object.fromEntries(Object.entries(state).filter(([, row]) => row.gone === null));
}

async function expectProjection({ workshop }: OpenWorkshop): Promise<void> {
  const words = () => foundEntries(workshop.database);
  const before = words();
  rebuildSearch(workshop.database, projectionsIn(process.cwd()));
  expect(words()).toEqual(before);
}
