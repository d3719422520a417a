import fs from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { buildFolder } from "#lib/build/index.ts";

const published = JSON.parse(fs.readFileSync("docs/build-folder.schema.json", "utf8"));
const demo = JSON.parse(fs.readFileSync("content-demo/ostrey-pump/build.json", "utf8"));

describe("the published form of a build folder", () => {
  test("is the one the program reads", () => {
    // To renew the file: npm run -s schema
    expect(published).toEqual(JSON.parse(JSON.stringify(schemaOf())));
  });

  test("an independent validator (ajv, JSON Schema 2020-12) takes the demonstration and refuses what the program refuses", () => {
    const validate = new Ajv2020({ strict: false }).compile(published);
    expect(validate(demo), JSON.stringify(validate.errors)).toBe(true);
    for (const spoil of [
      (json: typeof demo) => delete json.machine,
      (json: typeof demo) => Object.assign(json, { version: 2 }),
      (json: typeof demo) => Object.assign(json.marks[0], { at: "early" }),
      (json: typeof demo) => Object.assign(json.stills[0], { sha256: "not a hash" }),
    ]) {
      const spoilt = structuredClone(demo);
      spoil(spoilt);
      expect(validate(spoilt)).toBe(false);
      expect(buildFolder.safeParse(spoilt).success).toBe(false);
    }
  });
});

function schemaOf() {
  return z.toJSONSchema(buildFolder, { target: "draft-2020-12", io: "input", unrepresentable: "any" });
}
