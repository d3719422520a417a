import { expect, test } from "vitest";
import { newBuild, newSitting } from "#lib/build/index.ts";
import { apply, openSoaks } from "#lib/store/index.ts";
import { sampleDocument, sampleMark } from "../sample.ts";
import { commandOf, freshWorkshop, writeDocument } from "./fresh.ts";

const limits = { least: { typed: "2 h" }, longest: { typed: "12 h" } };
/** 09:00 on 3 May 2026 in UTC, as seconds since 1970 (by `date -u -d 2026-05-03T09:00 +%s`). */
const nine = 1_777_798_800;

test("what soaks is known with its beginning, from what was written or from the sitting's clock; what is over is not", async () => {
  const workshop = freshWorkshop();
  const document = sampleDocument({
    sittings: [
      newSitting({
        id: "sitting-1",
        buildId: "build-1",
        title: "One morning",
        began: "2026-05-03T09:00:00.000Z",
      }),
    ],
    marks: [
      sampleMark(60, "deferred", { words: "By the film", ...limits }),
      sampleMark(61, "deferred", { words: "As written", ...limits, began: "2026-05-03 08:00" }),
      sampleMark(62, "deferred", { words: "Ended", ...limits, ended: "2026-05-03 14:00" }),
      sampleMark(63, "deferred", { words: "Closed", ...limits }),
      sampleMark(64, "deferred", { words: "Waits for a part, not for a time" }),
      sampleMark(70, "action", { words: "Take it out", closes: ["deferred-63"] }),
    ],
  });
  await writeDocument(workshop, document);
  const soaks = await openSoaks(workshop.client);
  expect(soaks.map(({ what, began }) => [what, began])).toEqual([
    ["As written", nine - 3600],
    ["By the film", nine + 60],
  ]);
  expect(soaks[0]?.least?.seconds).toBe(2 * 3600);
  expect(soaks[0]?.longest?.seconds).toBe(12 * 3600);
  expect(soaks[0]).toMatchObject({ buildId: "build-1", sittingId: "sitting-1", buildTitle: "Water pump" });
});

test("it is over too when a later build of the machine closes it, and nothing of a build that was struck out is due", async () => {
  const workshop = freshWorkshop();
  const mark = sampleMark(60, "deferred", { words: "Glued", ...limits });
  await writeDocument(workshop, sampleDocument({ marks: [mark] }));
  expect(await openSoaks(workshop.client)).toHaveLength(1);
  const later = newBuild({ id: "build-2", machineId: "machine-1", title: "Two years later" });
  const closing = sampleMark(null, "action", { words: "It held", closes: [mark.id] });
  await apply(
    workshop.client,
    commandOf(
      [
        { table: "build", id: later.id, rev: 0, set: { ...later } },
        {
          table: "sitting",
          id: "sitting-later",
          rev: 0,
          set: { ...newSitting({ id: "sitting-later", buildId: later.id, title: "Evening" }) },
        },
        {
          table: "mark",
          id: closing.id,
          rev: 0,
          set: { ...closing, buildId: later.id, sittingId: "sitting-later" },
        },
      ],
      "the later build",
      later.id,
    ),
  );
  expect(await openSoaks(workshop.client)).toEqual([]);

  const other = freshWorkshop();
  const struck = sampleDocument({ marks: [mark] });
  await writeDocument(other, {
    ...struck,
    build: { ...struck.build, gone: "2026-05-04T09:00:00.000Z" },
  });
  expect(await openSoaks(other.client)).toEqual([]);
});
