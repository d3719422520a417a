// Writes docs/build-folder.schema.json from the form that the program reads. `npm run -s schema`.
import fs from "node:fs";
import { z } from "zod";
import { buildFolder } from "#lib/build/index.ts";

const schema = z.toJSONSchema(buildFolder, { target: "draft-2020-12", io: "input", unrepresentable: "any" });
fs.writeFileSync("docs/build-folder.schema.json", `${JSON.stringify(schema, null, 2)}\n`);
