import fs from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import modules from "#lib/modules.json" with { type: "json" };

const lib = path.resolve(import.meta.dirname, "..", "lib");

function sources(folder: string): string[] {
  return fs.readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const full = path.join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "prisma-client" ? [] : sources(full);
    return /\.(ts|tsx|mjs)$/.test(entry.name) ? [full] : [];
  });
}

/** The specifiers that a source imports, types included, static and dynamic. */
function importsOf(file: string): string[] {
  const text = fs.readFileSync(file, "utf8");
  return [...text.matchAll(/(?:from\s+|import\s*\(?\s*)["']([^"']+)["']/g)].map(
    (match) => match[1] as string,
  );
}

/** The module of lib/ that an import leads to; null for a package. */
function moduleOf(specifier: string, from: string): string | null {
  if (specifier.startsWith("#lib/")) return specifier.split("/")[1] ?? null;
  if (!specifier.startsWith(".")) return null;
  const target = path.relative(lib, path.resolve(path.dirname(from), specifier));
  return target.startsWith("..") ? `outside: ${specifier}` : (target.split(path.sep)[0] ?? null);
}

describe("the direction of modules", () => {
  const files = sources(lib);

  test("every module of lib/ has its place in the order", () => {
    const found = fs.readdirSync(lib, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    for (const { name } of found) expect(modules.order).toContain(name);
  });

  test.each(files.map((file) => [path.relative(lib, file), file]))(
    "%s uses nothing below it",
    (name, file) => {
      const own = modules.order.indexOf(name.split(path.sep)[0] as string);
      for (const specifier of importsOf(file)) {
        expect(specifier, "lib/ knows nothing of the app").not.toMatch(/^#app\//);
        const used = moduleOf(specifier, file);
        if (used === null) continue;
        // Paths out of lib/ are left to the launcher, which names files of the whole project.
        expect(used.startsWith("outside"), `${name} imports ${specifier}`).toBe(false);
        expect(modules.order.indexOf(used), `${name} imports ${specifier}`).toBeLessThanOrEqual(own);
      }
    },
  );

  test("only the store speaks with the database", () => {
    for (const file of files.filter((one) => !one.startsWith(path.join(lib, "store")))) {
      for (const specifier of importsOf(file)) expect(specifier, file).not.toMatch(/prisma|better-sqlite3/);
    }
  });

  test("what is computed between the edges reads no file and knows no clock", () => {
    const pure = new Set([
      "rational",
      "time",
      "quantity",
      "reference",
      "finding",
      "mark",
      "captions",
      "build",
      "cut",
      "procedure",
      "check",
      "gotcha",
    ]);
    for (const file of files.filter((one) =>
      pure.has(path.relative(lib, one).split(path.sep)[0] as string),
    )) {
      for (const specifier of importsOf(file)) expect(specifier, file).not.toMatch(/^node:/);
      expect(fs.readFileSync(file, "utf8"), file).not.toMatch(/Date\.now\(\)|new Date\(\)|Math\.random\(\)/);
    }
  });
});
