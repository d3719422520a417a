#!/usr/bin/env node
// The schema engine as `prisma generate` and `prisma migrate` call it: JSON-RPC over standard input and output,
// answered by the engine's WebAssembly build, so that development needs no download. Never used at run time.
import { mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { createInterface } from "node:readline";
import { pathToFileURL } from "node:url";

const require = createRequire(import.meta.url);
const { PrismaBetterSqlite3 } = require("@prisma/adapter-better-sqlite3");
const { bindMigrationAwareSqlAdapterFactory } = require("@prisma/driver-adapter-utils");

const MIGRATIONS_TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
    "id"                    TEXT PRIMARY KEY NOT NULL,
    "checksum"              TEXT NOT NULL,
    "finished_at"           DATETIME,
    "migration_name"        TEXT NOT NULL,
    "logs"                  TEXT,
    "rolled_back_at"        DATETIME,
    "started_at"            DATETIME NOT NULL DEFAULT current_timestamp,
    "applied_steps_count"   INTEGER UNSIGNED NOT NULL DEFAULT 0
);`;
const NEEDS_MIGRATIONS_TABLE = new Set([
  "devDiagnostic",
  "diagnoseMigrationHistory",
  "applyMigrations",
  "evaluateDataLoss",
  "createMigration",
]);

const args = process.argv.slice(2);
const option = (name) => (args.includes(name) ? args[args.indexOf(name) + 1] : undefined);
const options = (name) => args.flatMap((arg, index) => (arg === name ? [args[index + 1]] : []));

if (args.includes("--version")) {
  console.log("schema-engine-cli wasm");
  process.exit(0);
}

const { url } = JSON.parse(option("--datasource") ?? "{}");
if (url?.startsWith("file:")) mkdirSync(path.dirname(path.resolve(url.slice(5))), { recursive: true });
const factory = new PrismaBetterSqlite3({ url: url ?? ":memory:", shadowDatabaseUrl: ":memory:" });

if (args.includes("cli")) {
  await (await factory.connect()).dispose();
  process.exit(0);
}

const engine = await loadEngine();
for await (const line of createInterface({ input: process.stdin })) {
  if (line.trim() !== "") await answer(JSON.parse(line));
}
process.exit(0);

async function loadEngine() {
  const glue = require.resolve("@prisma/schema-engine-wasm/schema_engine_bg");
  const bindings = await import(pathToFileURL(glue).href);
  const wasm = new WebAssembly.Module(readFileSync(glue.replace(/\.js$/, ".wasm")));
  const instance = new WebAssembly.Instance(wasm, { "./schema_engine_bg.js": bindings });
  bindings.__wbg_set_wasm(instance.exports);
  instance.exports.__wbindgen_start();
  globalThis.PRISMA_WASM_PANIC_REGISTRY = {
    message: "",
    get() {
      return this.message;
    },
    set_message(message) {
      this.message = `RuntimeError: ${message}`;
    },
  };
  const connectToShadowDb = factory.connectToShadowDb.bind(factory);
  factory.connectToShadowDb = async () => {
    const database = await connectToShadowDb();
    const executeRaw = database.executeRaw.bind(database);
    // better-sqlite3 prepares one statement at a time; the engine replays whole migration files.
    database.executeRaw = async (query) => {
      if (query.args.length > 0) return executeRaw(query);
      await database.executeScript(query.sql);
      return 0;
    };
    return database;
  };
  const datamodels = options("--datamodels").map((file) => [file, readFileSync(file, "utf8")]);
  const given = { datamodels: datamodels.length > 0 ? datamodels : undefined };
  return bindings.SchemaEngine.new(given, () => {}, bindMigrationAwareSqlAdapterFactory(factory));
}

async function answer({ id, method, params }) {
  if (!method) return;
  try {
    if (NEEDS_MIGRATIONS_TABLE.has(method)) {
      const connection = await factory.connect();
      await connection.executeScript(MIGRATIONS_TABLE);
      await connection.dispose();
    }
    const result = await engine[method === "getDatabaseVersion" ? "version" : method](params);
    if (method === "diff" && result?.stdout != null) {
      send({ id: 0, jsonrpc: "2.0", method: "print", params: { content: result.stdout } });
      result.stdout = null;
    }
    send({ id, jsonrpc: "2.0", result: result ?? {} });
  } catch (error) {
    const message = String(error?.message ?? error);
    const data = { is_panic: false, message, error_code: error?.code ?? null, meta: error?.meta ?? null };
    send({ id, jsonrpc: "2.0", error: { code: 4466, message, data } });
  }
}

function send(value) {
  process.stdout.write(`${JSON.stringify(value)}\n`);
}
