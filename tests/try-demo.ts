import { readFileSync } from "node:fs";
import { buildFolder } from "#lib/build/index.ts";
import { check } from "#lib/check/index.ts";
import { compile } from "#lib/procedure/index.ts";
const d = buildFolder.parse(JSON.parse(readFileSync("content-demo/ostrey-pump/build.json","utf8"))) as never as Parameters<typeof compile>[0];
for (const f of check(compile(d), d).findings) console.log(f.severity, f.rule, "|", f.found, f.expected);
