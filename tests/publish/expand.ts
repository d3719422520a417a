import fs from "node:fs";
import path from "node:path";
import jsonld from "jsonld";

/** Contexts, by the addresses that name them: nothing is fetched. Each file says where it comes from. */
const contexts: Record<string, string> = {
  "https://schema.org": "schema-org.jsonld",
  "http://www.w3.org/ns/anno.jsonld": "anno.jsonld",
};

export type Expanded = Record<string, unknown>;

/** A document with every term in full, by a JSON-LD processor; it refuses a term that it would have to drop. */
export async function expand(json: string, base = "https://files.example.org/job/"): Promise<Expanded> {
  const [one] = await jsonld.expand(JSON.parse(json), { documentLoader: local, base, safe: true });
  if (!one) throw new Error("nothing came out");
  return one;
}

async function local(url: string) {
  const file = contexts[url.replace(/\/$/, "")];
  if (!file) throw new Error(`no copy of ${url}`);
  const document = JSON.parse(fs.readFileSync(path.join(import.meta.dirname, "data", file), "utf8"));
  return { contextUrl: null, documentUrl: url, document };
}

/** The values of a property, in order. */
export function valuesOf(node: Expanded, property: string): unknown[] {
  const values = (node[property] ?? []) as Expanded[];
  return values.map((value) => ("@value" in value ? value["@value"] : value));
}

/** The nodes of a property. */
export const nodesOf = (node: Expanded, property: string): Expanded[] =>
  valuesOf(node, property) as Expanded[];
