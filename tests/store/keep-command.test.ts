import { spawnSync } from "node:child_process";
import fs from "node:fs";
import http from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { answerError } from "#lib/cli/doors/answer.ts";
import { keepDoor } from "#lib/cli/doors/keep.ts";
import type { OpenWorkshop } from "#lib/store/index.ts";
import { allRows, freshFolder, programRoot, tamper, workshopWithEverything } from "./kept.ts";

/** The command as `npm run -s witness --` runs it. */
function witness(workshop: string, ...args: string[]) {
  const env = { ...process.env, WORKSHOP_DIR: workshop };
  const { status, stdout, stderr } = spawnSync(process.execPath, ["lib/cli/witness.mjs", ...args], {
    cwd: programRoot,
    env,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}

describe("the command line", () => {
  test("backs up, restores and audits; its machine output is one JSON value", {
    timeout: 300_000,
  }, async () => {
    const { client, workshop } = await workshopWithEverything();
    await client.$disconnect();
    const made = witness(workshop.folder, "backup", freshFolder(), "--json");
    expect(made).toMatchObject({ status: 0, stderr: "" });
    const { folder } = JSON.parse(made.stdout) as { folder: string };

    const target = path.join(freshFolder(), "new");
    const restored = witness(target, "restore", folder);
    expect(restored.status).toBe(0);
    expect(restored.stdout).toContain("An audit of it found nothing.");
    expect(allRows(path.join(target, "workshop.db")).Mark).toEqual(allRows(workshop.database).Mark);

    expect(witness(target, "restore", folder)).toMatchObject({ status: 2, stdout: "" });
    const refused = witness(target, "restore", folder, "--json");
    expect(JSON.parse(refused.stdout)).toMatchObject({ found: expect.stringContaining("workshop.db") });

    tamper(path.join(target, "workshop.db"), "DELETE FROM search_entry");
    const wrong = witness(workshop.folder, "audit", "--workshop", target, "--json");
    expect(wrong).toMatchObject({ status: 3, stderr: "" });
    expect(JSON.parse(wrong.stdout).findings).toMatchObject([{ rule: "search-differs" }]);
    expect(witness(target, "audit", "--rebuild").status).toBe(0);
  });

  test("exits 2 for what cannot be read, with words on standard error", () => {
    const nowhere = path.join(freshFolder(), "nowhere");
    const none = witness(nowhere, "audit");
    expect(none).toMatchObject({ status: 2, stdout: "" });
    expect(none.stderr).toContain("There is no workshop");
    expect(fs.existsSync(nowhere)).toBe(false);
    expect(witness(nowhere, "backup").stderr).toContain("The folder that holds backups was expected.");
  });
});

describe("the door of the page", () => {
  let opened: OpenWorkshop;
  let server: http.Server;
  let address: string;

  beforeAll(() => {
    server = http.createServer((req, res) => {
      const kind = new URL(req.url ?? "/", "http://localhost").pathname.split("/")[2] ?? "";
      keepDoor(opened, req, res, { kind, root: programRoot }).catch((error) => answerError(res, error));
    });
    return new Promise<void>((resolve) =>
      server.listen(0, "127.0.0.1", () => {
        address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/keep`;
        resolve();
      }),
    );
  });
  afterAll(() => new Promise((resolve) => server.close(resolve)));

  const ask = async (kind: string, init: RequestInit = {}) => {
    const response = await fetch(`${address}/${kind}`, init);
    return { status: response.status, body: await response.json() };
  };
  const begin = (kind: string, body: unknown) => ask(kind, { method: "POST", body: JSON.stringify(body) });
  const ended = async (kind: string) => {
    for (;;) {
      const { body } = await ask(kind);
      if (body.state !== "running") return body;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  };

  test("runs a backup beside the program, says what was written, and when the last one was", async () => {
    opened = await workshopWithEverything();
    expect((await ask("backup")).body).toMatchObject({ state: "none", last: null });
    const parent = freshFolder();
    expect((await begin("backup", { folder: parent })).body.state).toBe("running");
    const done = await ended("backup");
    expect(done).toMatchObject({ state: "done", wrong: false, result: { builds: 1, findings: [] } });
    expect(fs.readdirSync(parent)).toEqual([path.basename(done.result.folder)]);
    expect(done.last).toMatchObject({ folder: done.result.folder, files: done.result.files });
  });

  test("runs an audit, says what is wrong, and mends the search table when that is asked for", async () => {
    opened = await workshopWithEverything();
    tamper(opened.workshop.database, "DELETE FROM search_entry");
    await begin("audit", {});
    expect(await ended("audit")).toMatchObject({
      wrong: true,
      result: { findings: [{ rule: "search-differs" }] },
    });
    await begin("audit", { rebuild: true });
    expect(await ended("audit")).toMatchObject({
      wrong: false,
      result: { findings: [], rebuilt: ["search_entry"] },
    });
  });

  test("says what is wrong with a folder, and takes no option for one", async () => {
    opened = await workshopWithEverything();
    expect((await begin("backup", { folder: "backups" })).body.todo).toContain("Copy the path");
    expect((await begin("backup", {})).status).toBe(400);
    expect((await ask("elsewhere")).status).toBe(404);
    await begin("backup", { folder: path.join(opened.workshop.folder, "--workshop=x") });
    expect(await ended("backup")).toMatchObject({
      state: "failed",
      result: { found: expect.stringContaining("own folder") },
    });
  });
});
