import path from "node:path";
import { defineConfig } from "prisma/config";

// Development only: `prisma generate` and `prisma migrate` without a downloaded engine.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= path.join(import.meta.dirname, "prisma", "schema-engine.mjs");

export default defineConfig({
  schema: "prisma/schema.prisma",
  migrations: { path: "prisma/migrations" },
  datasource: { url: `file:${path.join(import.meta.dirname, ".stamp", "development.db")}` },
  tables: { external: ["search_entry", "search_words", "search_term", "search_grams"] },
  experimental: { externalTables: true },
});
