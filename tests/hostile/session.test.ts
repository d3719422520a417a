import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { GET as readDocument } from "#app/builds/[build]/document/route.ts";
import { POST as carryOut } from "#app/commands/route.ts";
import { BuildSession, fetchDocument } from "#app/session/build-session.ts";
import { apply, importBuild, loadBuild, type OpenWorkshop } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop } from "../store/fresh.ts";

/*
 * A tab that goes on being typed in while what it sent is refused. The tab is the real one, and so are the routes that
 * it asks and the database behind them; only the wire between them is this file.
 */
const shared = globalThis as { witnessMarkWorkshop?: OpenWorkshop };
const wire = globalThis.fetch;
let opened: OpenWorkshop;
let session: BuildSession;
/** What happens on the way before the document comes to the tab; it may also not come at all. */
let onTheWay: () => void = () => undefined;

beforeEach(async () => {
  opened = freshWorkshop();
  shared.witnessMarkWorkshop = opened;
  onTheWay = () => undefined;
  const marks = [sampleMark(10, "action", { words: "Undo" }), sampleMark(20, "action", { words: "Lift" })];
  await importBuild(opened.client, sampleDocument({ marks }), null);
  globalThis.fetch = async (address, init) => {
    if (String(address) === "/commands") return carryOut(new Request("http://localhost/commands", init));
    onTheWay();
    const params = Promise.resolve({ build: "build-1" });
    return readDocument(new Request(`http://localhost${address}`), { params });
  };
  const fetched = await fetchDocument("build-1");
  if (!fetched) throw new Error("no document");
  session = new BuildSession(fetched.document, fetched.can);
});

afterEach(() => {
  globalThis.fetch = wire;
  delete shared.witnessMarkWorkshop;
});

const write = (id: string, words: string) => {
  const row = session.document.marks.find((one) => one.id === id);
  if (!row) throw new Error(`no mark ${id}`);
  session.change(words, [{ table: "mark", row: { ...row, fields: { ...row.fields, words } } }]);
};

/** Another tab writes into the mark at ten seconds. */
const elsewhere = (set: Record<string, unknown>) =>
  apply(opened.client, commandOf([{ table: "mark", id: "action-10", rev: 1, set }]));

async function wordsOnDisk(id: string): Promise<unknown> {
  return (await loadBuild(opened.client, "build-1"))?.marks.find((one) => one.id === id)?.fields.words;
}

describe("while a stale change is refused", () => {
  test("what is typed meanwhile is neither lost nor forgotten to be sent", async () => {
    await elsewhere({ fields: { v: 1, words: "Theirs" } });
    let typed = false;
    onTheWay = () => {
      if (!typed) write("action-20", "Lift it straight up");
      typed = true;
    };
    write("action-10", "Mine");
    await session.settled();
    expect(await wordsOnDisk("action-20")).toBe("Lift it straight up");
    expect(await wordsOnDisk("action-10")).toBe("Theirs");
    expect(session.view().conflicts).toMatchObject([
      { id: "action-10", wanted: { fields: { words: "Mine" } } },
    ]);
  });

  test("and the program ends just then, all is sent when it answers again", async () => {
    await elsewhere({ fields: { v: 1, words: "Theirs" } });
    let failures = 0;
    onTheWay = () => {
      if (failures++ < 2) throw new TypeError("fetch failed");
    };
    write("action-10", "Mine");
    write("action-20", "Lift it straight up");
    await session.settled();
    expect(failures).toBeGreaterThan(2);
    expect(await wordsOnDisk("action-20")).toBe("Lift it straight up");
    expect(session.view().conflicts).toMatchObject([
      { id: "action-10", wanted: { fields: { words: "Mine" } } },
    ]);
    expect(session.view().save.trouble).toBeNull();
  });
});

describe("“write this one over it”", () => {
  test("brings back a mark that was struck out elsewhere, with the words that were typed", async () => {
    await elsewhere({ gone: "2026-11-28T00:00:00.000Z" });
    write("action-10", "Mine");
    await session.settled();
    const [conflict] = session.view().conflicts;
    if (!conflict) throw new Error("no conflict");
    session.settle(conflict, "mine");
    await session.settled();
    const marks = (await loadBuild(opened.client, "build-1"))?.marks;
    expect(marks?.find((one) => one.id === "action-10")).toMatchObject({
      gone: null,
      fields: { words: "Mine" },
    });
  });

  test("sends a new mark once more that was refused when it was made", async () => {
    const mark = { ...sampleMark(30, "action", { words: "New" }), sittingId: "nowhere" };
    session.change("a new mark", [{ table: "mark", row: mark }]);
    await session.settled();
    const [conflict] = session.view().conflicts;
    if (!conflict) throw new Error("no conflict");
    expect(conflict.wanted).toMatchObject({ fields: { words: "New" } });
    session.settle(conflict, "mine");
    await session.settled();
    // It is refused for the same reason, and kept on the page all the same.
    expect(session.view().conflicts).toMatchObject([
      { id: "action-30", wanted: { fields: { words: "New" } } },
    ]);
  });
});
