import { createHash } from "node:crypto";
import type { Element, ElementContent } from "hast";
import { expect, test } from "vitest";
import { contentHash, originalPicture, procedureBody, sheetState, toHtml } from "#lib/publish/index.ts";
import { type ReadHtml, readHtml } from "./read-html.ts";
import { checked, hostileJob, hostileTexts, longJob, options, procedure, smallJob } from "./sample.ts";

const decoder = new TextDecoder();

async function written(of: Parameters<typeof checked>[0]): Promise<{ html: string; read: ReadHtml }> {
  const { files } = await toHtml(checked(of), options());
  expect(files.map(({ name }) => name)).toEqual(["procedure.html"]);
  const html = decoder.decode(files[0]?.bytes);
  return { html, read: readHtml(html) };
}

const without = (text: string) => text.replace(/\s+/g, "");
const named = (read: ReadHtml, name: string) => read.tags.filter((one) => one.name === name);

// WCAG 2.2, 1.1.1, 1.3.1, 2.4.2 and 3.1.1: pictures described, headings and table heads marked up, title, language.
test("has a language, a title, one h1, no level of heading skipped, heads for tables, words for pictures", async () => {
  const { html, read } = await written(await smallJob());
  expect(html.startsWith("<!doctype html>")).toBe(true);
  expect(named(read, "html")[0]?.attributes.lang).toBe("en-GB");
  expect(html).toContain("<title>Water pump: strip and refit</title>");
  const levels = read.tags.flatMap(({ name }) => /^h(\d)$/.exec(name)?.[1] ?? []).map(Number);
  expect(levels[0]).toBe(1);
  expect(levels.filter((level) => level === 1)).toHaveLength(1);
  levels.forEach((level, index) => {
    if (index > 0) expect(level - (levels[index - 1] as number)).toBeLessThanOrEqual(1);
  });
  expect(named(read, "th").length).toBeGreaterThan(0);
  expect(named(read, "th").every(({ attributes }) => /^(col|row)$/.test(attributes.scope ?? ""))).toBe(true);
  expect(named(read, "img").map(({ attributes }) => attributes.alt)).toEqual([
    "The drain cock under the hopper, seen from the flywheel side",
    "The impeller half off its shaft, both jacking screws in",
  ]);
  const ids = read.tags.flatMap(({ attributes }) => attributes.id ?? []);
  expect(new Set(ids).size).toBe(ids.length);
});

test("fetches nothing and runs its own script alone: no address outside the file but the links to the film", async () => {
  const { html, read } = await written(await smallJob());
  // Content Security Policy Level 3, 2.3.1: a hash of its text allows one script, and no other runs.
  const [kept, script, ...others] = [...html.matchAll(/<script([^>]*)>([\s\S]*?)<\/script>/g)];
  expect(others).toEqual([]);
  expect([kept?.[1], kept?.[2]]).toEqual([' type="application/json" id="kept"', "{}"]);
  expect(script?.[1]).toBe("");
  const hash = createHash("sha256")
    .update(script?.[2] as string)
    .digest("base64");
  expect(script?.[2]).not.toMatch(/https?:|\bfetch\b|XMLHttpRequest|import\(|eval|innerHTML/);
  expect(named(read, "link")).toEqual([]);
  const [policy] = named(read, "meta").filter(
    ({ attributes }) => attributes["http-equiv"] === "Content-Security-Policy",
  );
  expect(policy?.attributes.content).toBe(
    `default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src 'sha256-${hash}'`,
  );
  for (const { name, attributes } of read.tags) {
    for (const value of ["src", "srcset", "style", "action", "poster"].flatMap(
      (key) => attributes[key] ?? [],
    )) {
      expect(value.startsWith("data:image/jpeg;base64,")).toBe(true);
    }
    if (attributes.href !== undefined) {
      expect(name).toBe("a");
      expect(attributes.href).toMatch(/^(https:\/\/film\.example\/|#)/);
    }
  }
  const style = /<style>([^<]*)<\/style>/.exec(html)?.[1] ?? "";
  expect(style.length).toBeGreaterThan(1000);
  expect(style).not.toMatch(/url\(|@import|https?:/);
});

test("every step is a section with its mark, and its cautions come before its action", async () => {
  const job = await smallJob();
  const { read } = await written(job);
  const steps = job.stages.flatMap((stage) => stage.steps);
  const sections = named(read, "section").filter(({ attributes }) => "data-step" in attributes);
  expect(sections.map(({ attributes }) => [attributes.id, attributes["data-step"]])).toEqual(
    steps.map((step) => [`step-${step.number}`, step.mark]),
  );
  steps.forEach((step, index) => {
    const [from, to] = [sections[index]?.at ?? 0, sections[index + 1]?.at ?? Number.POSITIVE_INFINITY];
    const inside = read.tags.filter(({ at }) => at > from && at < to);
    const action = inside.find(({ attributes }) => attributes.class === "instruction")?.at ?? 0;
    for (const { mark } of step.cautions) {
      const place = inside.find(({ attributes }) => attributes["data-mark"] === mark)?.at ?? Number.NaN;
      expect(place).toBeLessThan(action);
    }
  });
});

test("every mark of a step can be found by its id", async () => {
  const job = await smallJob();
  const { read } = await written(job);
  const found = new Set(read.tags.flatMap(({ attributes }) => (attributes["data-mark"] ?? "").split(" ")));
  for (const step of job.stages.flatMap((stage) => stage.steps)) {
    const lists = [
      step.cautions,
      step.parts,
      step.measurements,
      step.tools,
      step.consumables,
      step.gotchas,
      step.deferred,
      step.details,
      step.stills,
    ];
    for (const { mark } of lists.flat()) expect(found).toContain(mark);
  }
});

test("says how it stands and what it cannot do, and nothing of what is not placed", async () => {
  const { read } = await written(await smallJob());
  for (const words of [
    "Unreleased · 2 open findings · 3 May 2026 · ",
    "cannot judge wear",
    "Local codes and licensed practice come first",
    "No picture",
  ]) {
    expect(read.text).toContain(words);
  }
  expect(read.text).not.toMatch(/UNSORTEDWORD|TRAYWORD/);
  expect((await written(procedure([]))).read.text).toContain("There are no steps yet.");
});

test("hostile text stays text", async () => {
  const ordinary = (await written(await smallJob())).read;
  const { read } = await written(await hostileJob());
  expect(read.stray).toEqual([]);
  const allowed = new Set(ordinary.tags.map(({ name }) => name));
  expect(read.tags.map(({ name }) => name).filter((name) => !allowed.has(name))).toEqual([]);
  const attributes = new Set(ordinary.tags.flatMap((one) => Object.keys(one.attributes)));
  expect(
    read.tags.flatMap((one) => Object.keys(one.attributes)).filter((name) => !attributes.has(name)),
  ).toEqual([]);
  const words = without(read.text);
  const lines = hostileTexts
    .flatMap((text) => text.split(/[\r\n]+/))
    .filter((line) => !/[\p{Cc}\u202e\ud800]/u.test(line));
  expect(lines.filter((line) => !words.includes(without(line)))).toEqual([]);
  expect(read.text).not.toMatch(/(?![\n\t])\p{Cc}|[\u202a-\u202e]/u);
});

test("the body on the program's own screen has the same steps, without the film's address or a box to tick", async () => {
  const job = checked(await longJob(12));
  const state = sheetState(job, options(), contentHash(job));
  const body = procedureBody(job, {
    state,
    still: (figure) => originalPicture(figure, `/still/${figure.sha256}`),
    forScreen: true,
  });
  const elements = within(body);
  expect(
    elements.filter(({ tagName, properties }) => tagName === "section" && properties.dataStep),
  ).toHaveLength(12);
  expect(elements.filter(({ tagName }) => tagName === "a")).toEqual([]);
  const pictures = elements.filter(({ tagName }) => tagName === "img");
  expect(pictures.length).toBeGreaterThan(0);
  expect(pictures.every(({ properties }) => String(properties.src).startsWith("/still/"))).toBe(true);
});

function within(element: Element): Element[] {
  const inner = element.children.filter((child: ElementContent) => child.type === "element");
  return [element, ...inner.flatMap(within)];
}
