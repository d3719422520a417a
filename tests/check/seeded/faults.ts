import type { BuildDocument } from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";

/** A build with one fault put into it, and the rules of which one must say so, naming `names`. */
export interface Fault {
  kind: string;
  says: string;
  document: BuildDocument;
  rules: string[];
  names: string;
}

type Seeder = (document: BuildDocument) => Fault[];

const text = (mark: Mark, field: string) => String(mark.fields[field] ?? "");
const GONE = "2026-05-03T10:00:00.000Z";

function partMarks({ marks }: BuildDocument, event: string, sitting?: string): Mark[] {
  return marks.filter(
    (mark) => mark.kind === "part" && mark.fields.event === event && (!sitting || mark.sittingId === sitting),
  );
}

function without(document: BuildDocument, gone: readonly Mark[]): BuildDocument {
  const ids = new Set(gone.map((mark) => mark.id));
  return {
    ...document,
    marks: document.marks.map((mark) => (ids.has(mark.id) ? { ...mark, gone: GONE } : mark)),
  };
}

function withMark(document: BuildDocument, mark: Mark): BuildDocument {
  const marks = document.marks.filter((one) => one.id !== mark.id);
  return { ...document, marks: [...marks, mark] };
}

function withFields(document: BuildDocument, mark: Mark, fields: Record<string, unknown>): BuildDocument {
  return withMark(document, { ...mark, fields: { ...mark.fields, ...fields } });
}

function actions(document: BuildDocument, sitting?: string): Mark[] {
  return document.marks.filter((mark) => mark.kind === "action" && (!sitting || mark.sittingId === sitting));
}

const fault = (kind: string, mark: Mark, document: BuildDocument, rules: string[]): Fault => ({
  kind,
  says: `${kind}: ${text(mark, "item") || text(mark, "words")}`,
  document,
  rules,
  names: text(mark, "item") || text(mark, "words"),
});

const dropped: Seeder = (document) =>
  partMarks(document, "fitted", "assemble").map((mark) =>
    fault("a part dropped", mark, without(document, [mark]), [
      "part-not-back",
      "obtained-not-used",
      "kit-left-over",
      "scrapped-not-replaced",
      "stack-differs",
    ]),
  );

const doubled: Seeder = (document) =>
  partMarks(document, "fitted", "assemble").map((mark) =>
    fault(
      "a part doubled",
      mark,
      withMark(document, { ...mark, id: `${mark.id} again`, at: (mark.at ?? 0) + 1 }),
      ["counts-differ", "never-obtained", "stack-differs"],
    ),
  );

const miscounted: Seeder = (document) =>
  partMarks(document, "fitted", "assemble")
    .filter((mark) => Number(text(mark, "count")) > 1)
    .map((mark) =>
      fault(
        "one too few",
        mark,
        withFields(document, mark, { count: String(Number(text(mark, "count")) - 1) }),
        ["part-not-back", "obtained-not-used", "kit-left-over", "scrapped-not-replaced", "stack-differs"],
      ),
    );

const swappedInStack: Seeder = (document) => {
  const layers = partMarks(document, "fitted", "assemble").filter((mark) => text(mark, "stack") !== "");
  return layers.flatMap((one, index) =>
    layers
      .slice(index + 1)
      .filter((other) => text(other, "stack") === text(one, "stack"))
      .map((other) => {
        const first = withFields(document, one, { stackPlace: text(other, "stackPlace") });
        const both = withFields(first, other, { stackPlace: text(one, "stackPlace") });
        return { ...fault("swapped in a stack", one, both, ["stack-differs"]), names: text(one, "stack") };
      }),
  );
};

const turned: Seeder = (document) =>
  partMarks(document, "fitted", "assemble")
    .filter((mark) => text(mark, "wayRound") !== "")
    .map((mark) =>
      fault("turned round", mark, withFields(document, mark, { wayRound: "the other way" }), [
        "turned-round",
      ]),
    );

const lookAlikes: Seeder = (document) => {
  const placed = partMarks(document, "fitted", "assemble").filter((mark) => text(mark, "place") !== "");
  return placed.flatMap((one, index) =>
    placed.slice(index + 1).map((other) => {
      const first = withFields(document, one, { place: text(other, "place") });
      const both = withFields(first, other, { place: text(one, "place") });
      return fault("look-alikes swapped", one, both, ["swapped"]);
    }),
  );
};

const wrongOrder: Seeder = (document) => {
  const fitted = partMarks(document, "fitted", "assemble");
  return partMarks(document, "removed", "strip")
    .filter((mark) => text(mark, "covers") !== "")
    .flatMap((covering) =>
      text(covering, "covers")
        .split(",")
        .map((name) => name.trim())
        .flatMap((name) => {
          const under = fitted.find((mark) => text(mark, "item") === name);
          const over = fitted.find((mark) => text(mark, "item") === text(covering, "item"));
          if (!under || !over) return [];
          // On thirteen seconds sooner than what it covers: in the step before that.
          const early = withMark(document, { ...over, at: (under.at ?? 0) - 13 });
          return [fault("fitted in the wrong order", over, early, ["fitted-before-covered"])];
        }),
    );
};

const untorqued: Seeder = (document) =>
  partMarks(document, "torqued").map((mark) =>
    fault("torque missing", mark, without(document, [mark]), ["not-torqued"]),
  );

const refitted: Seeder = (document) =>
  partMarks(document, "scrapped", "inspect").map((mark) => {
    const item = text(mark, "item");
    const news = document.marks.filter(
      (one) => text(one, "item") === item && ["made", "obtained", "scrapped"].includes(text(one, "event")),
    );
    const old = without(document, news);
    const [back] = partMarks(old, "fitted", "assemble").filter((one) => text(one, "item") === item);
    return fault("single-use item refitted", mark, back ? withFields(old, back, { source: "" }) : old, [
      "single-use-refitted",
    ]);
  });

const kitUnexplained: Seeder = (document) =>
  document.kits.flatMap((kit) => {
    const taken = Object.entries(kit.lines).map(([typed, note]) => ({
      typed,
      kit: { ...kit, lines: Object.fromEntries(Object.entries(kit.lines).filter(([key]) => key !== typed)) },
      note,
    }));
    const more = [1, 2, 3].map((count) => {
      const typed = kit.text.includes(";") ? `${count}; Odd washer; XX-${count}` : `${count} x Odd washer`;
      const line = kit.text.startsWith("Qty") ? `${count},XX-1,Odd washer` : typed;
      return { typed: line, kit: { ...kit, text: `${kit.text}\n${line}` } };
    });
    return [...taken, ...more].map(({ typed, kit: changed }) => ({
      kind: "kit item unexplained",
      says: `kit item unexplained: ${typed}`,
      document: { ...document, kits: document.kits.map((one) => (one.id === kit.id ? changed : one)) },
      rules: ["kit-left-over"],
      names: "left over",
    }));
  });

const kitNotToUse: Seeder = (document) =>
  document.kits.flatMap((kit) =>
    Object.entries(kit.lines).flatMap(([typed, note]) => {
      if (!note.notToUse) return [];
      const item = typed.replace(/^\d+ x /, "");
      const [any] = partMarks(document, "fitted", "assemble");
      if (!any) return [];
      const fields = { v: 1, item, event: "fitted", count: "1", source: "Overhaul kit" };
      const used = withMark(document, { ...any, id: "from the kit", at: 9000, fields });
      return [{ ...fault("kit part not to be used, fitted", any, used, ["kit-not-to-use"]), names: item }];
    }),
  );

const leftOpen: Seeder = (document) =>
  document.marks
    .filter((mark) => (mark.fields.closes ?? []).length > 0)
    .map((mark) => {
      const closed = document.marks.find((one) => one.id === mark.fields.closes?.[0]) as Mark;
      const opened = withFields(document, mark, { closes: [] });
      const left = fault("deferred item left open", closed, opened, ["open-deferred"]);
      return { ...left, names: text(closed, "words") };
    });

const soakWrong: Seeder = (document) =>
  document.marks
    .filter((mark) => mark.fields.longest !== undefined)
    .flatMap((mark) => {
      const closer = document.marks.find((one) => one.fields.closes?.includes(mark.id)) as Mark;
      const late = withMark(document, { ...closer, at: (closer.at ?? 0) + 1e6 });
      const soon = withMark(document, { ...closer, at: (mark.at ?? 0) + 1 });
      return [
        fault("soak overrun", mark, late, ["soak-time"]),
        ...(mark.fields.least ? [fault("soak cut short", mark, soon, ["soak-time"])] : []),
      ];
    });

const trialLeftOn: Seeder = (document) =>
  partMarks(document, "removed", "trial fit").map((mark) => {
    const item = text(mark, "item");
    const final = partMarks(document, "fitted", "assemble").filter((one) => text(one, "item") === item);
    return fault("only trial-fitted", mark, without(document, [mark, ...final]), ["only-trial-fitted"]);
  });

const fromNowhere: Seeder = (document) =>
  partMarks(document, "fitted", "assemble")
    .slice(0, 3)
    .map((mark) => {
      const fields = { v: 1, item: "Odd bracket", event: "fitted", count: "1" };
      const more = withMark(document, { ...mark, id: "odd", at: (mark.at ?? 0) + 1, fields });
      return { ...fault("on, and never obtained", mark, more, ["never-obtained"]), names: "Odd bracket" };
    });

/** A tool that its step names is struck off the list, or another one is named that was never on it. */
const toolUnlisted: Seeder = (document) => {
  const tools = document.marks.filter((mark) => mark.kind === "tool");
  const used = tools.filter((tool) =>
    actions(document).some((mark) => text(mark, "words").includes(text(tool, "words").toLowerCase())),
  );
  const struck = [...new Map(used.map((tool) => [text(tool, "words"), tool])).values()].map((tool) => {
    const same = tools.filter((one) => text(one, "words") === text(tool, "words"));
    return {
      ...fault("a tool unlisted", tool, without(document, same), ["tool-not-listed"]),
      says: `struck off the list: ${text(tool, "words")}`,
    };
  });
  const named = actions(document, "strip").map((mark, index) => {
    const tool = neverListed[index % neverListed.length] as string;
    const detail = `Free it with the ${tool}.`;
    const said = fault("a tool unlisted", mark, withFields(document, mark, { detail }), ["tool-not-listed"]);
    return { ...said, names: tool };
  });
  return [...struck, ...named];
};

const neverListed = ["brass drift", "soft mallet", "two-legged puller", "pin punch", "long screwdriver"];

/** A caution is spoken once the part is off, and the next action is a minute away. */
const cautionLate: Seeder = (document) => {
  const caution = document.marks.find((mark) => mark.kind === "caution");
  if (!caution) return [];
  return partMarks(document, "removed", "strip").map((part) => {
    const off = part.at ?? 0;
    const paused = document.marks.map((mark) =>
      mark.sittingId === "strip" && (mark.at ?? 0) > off ? { ...mark, at: (mark.at ?? 0) + 60 } : mark,
    );
    const late = withMark({ ...document, marks: paused }, { ...caution, at: off + 3 });
    return {
      ...fault("a caution after its action", part, late, ["caution-after-act"]),
      names: text(caution, "words"),
    };
  });
};

/** One kind of fault each. */
export const seeders: readonly Seeder[] = [
  dropped,
  doubled,
  miscounted,
  swappedInStack,
  turned,
  lookAlikes,
  wrongOrder,
  untorqued,
  refitted,
  kitUnexplained,
  kitNotToUse,
  leftOpen,
  soakWrong,
  trialLeftOn,
  fromNowhere,
  toolUnlisted,
  cautionLate,
];
