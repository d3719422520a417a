import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { expect, test } from "vitest";

const run = (...args: string[]) =>
  spawnSync(process.execPath, ["--import", "tsx", "lib/cli/witness.ts", ...args], { encoding: "utf8" });
const file = (text: string) => {
  const name = path.join(mkdtempSync(path.join(tmpdir(), "check-")), "values.json");
  writeFileSync(name, text);
  return name;
};

test("check prints one JSON array: an id and its findings for each value", { timeout: 60_000 }, () => {
  const given = JSON.parse(readFileSync("tests/check/cases/development.json", "utf8"));
  const { status, stdout, stderr } = run("check", "tests/check/cases/development.json");
  expect(stderr).toBe("");
  expect(status).toBe(0);
  const answers: { id: string; findings: Record<string, string>[] }[] = JSON.parse(stdout);
  expect(answers.map((one) => one.id)).toEqual(given.map((one: { id: string }) => one.id));
  for (const finding of answers.flatMap((one) => one.findings)) {
    expect(Object.keys(finding)).toEqual(
      expect.arrayContaining(["rule", "severity", "found", "expected", "source"]),
    );
  }
});

test.each([
  ["not JSON", "{"],
  ["no array", "{}"],
  ["an entry without a text", '[{"what": "gap"}]'],
])("check says what it cannot read: %s", { timeout: 60_000 }, (_, text) => {
  const name = file(text);
  const { status, stdout, stderr } = run("check", name);
  expect(status).toBe(2);
  expect(stdout).toBe("");
  expect(stderr).toContain(name);
});

test("quantity says how a text is read, and a minus is no option", { timeout: 60_000 }, () => {
  const { status, stdout } = run("quantity", "-0.5 mm");
  expect(status).toBe(0);
  expect(JSON.parse(stdout)).toMatchObject({ text: "-0.5 mm", said: expect.stringContaining("-0.5") });
});
