import { type BuildDocument, type Edit, type EditName, present } from "#lib/build/index.ts";
import { isStage, type Mark, stages, wordsOf } from "#lib/mark/index.ts";
import type { Draft, Placed } from "./place.ts";
import type { Orphan, OrphanReason } from "./tree.ts";

/** A step after the hand edits: as it was placed, with the title that was given to it, if any. */
export interface Edited extends Draft {
  title: string | null;
}

export interface Overlaid {
  /** In the order in which they are printed. */
  steps: Edited[];
  tray: Mark[];
  orphans: Orphan[];
}

/** Marks at which a step begins by hand: known before the marks are placed. */
export function splitsOf(document: BuildDocument): Set<string> {
  return new Set(editsOf(document, "split").map((edit) => edit.markId));
}

/**
 * Lays the hand edits over the placed marks, kind after kind: what belongs where, what is one step with what,
 * stages and titles, and last the order. An edit that does not find its place is an orphan and changes nothing.
 */
export function layOn(document: BuildDocument, placed: Placed): Overlaid {
  const layer = new Layer(document, placed);
  layer.splits();
  layer.belongs();
  layer.merged();
  layer.stagesAndTitles();
  const steps = layer.ordered();
  layer.changedWords();
  return { steps, tray: layer.tray, orphans: layer.orphans };
}

class Layer {
  readonly orphans: Orphan[] = [];
  readonly #steps = new Map<string, Edited>();
  readonly #marks: Map<string, Mark>;
  readonly #order: Map<string, number>;
  readonly #document: BuildDocument;
  tray: Mark[];

  constructor(document: BuildDocument, placed: Placed) {
    this.#document = document;
    this.tray = placed.tray;
    this.#marks = new Map(present(document.marks).map((mark) => [mark.id, mark]));
    const inOrder = [...placed.drafts.flatMap((draft) => draft.marks), ...placed.tray];
    this.#order = new Map(inOrder.map((mark, index) => [mark.id, index]));
    for (const draft of placed.drafts) {
      this.#steps.set(draft.head.id, { ...draft, marks: [...draft.marks], title: null });
    }
  }

  splits(): void {
    for (const edit of this.#edits("split")) {
      const mark = this.#marks.get(edit.markId) as Mark;
      const step = this.#steps.get(edit.markId);
      if (mark.kind === "action" || !step) this.#orphan(edit, "not a step");
      else step.title = edit.value.trim() || null;
    }
  }

  belongs(): void {
    for (const edit of this.#edits("belongs")) {
      const mark = this.#marks.get(edit.markId) as Mark;
      const target = this.#steps.get(edit.value);
      if (this.#steps.has(mark.id) || mark.kind === "") this.#orphan(edit, "not a step");
      else if (!target) this.#orphan(edit, "target gone");
      else {
        this.#take(mark);
        this.#give(target, [mark]);
      }
    }
  }

  merged(): void {
    const into = new Map(this.#edits("merged").map((edit) => [edit.markId, edit]));
    for (const edit of into.values()) {
      const step = this.#steps.get(edit.markId);
      const root = this.#rootOf(edit, into);
      if (!step) this.#orphan(edit, "not a step");
      else if (typeof root === "string") this.#orphan(edit, root);
      else {
        this.#give(root, step.marks);
        step.marks = [];
      }
    }
    for (const [id, step] of this.#steps) if (step.marks.length === 0) this.#steps.delete(id);
  }

  /** The step at the end of a chain of merges, or why there is none. */
  #rootOf(edit: Edit, into: ReadonlyMap<string, Edit>): Edited | OrphanReason {
    const seen = new Set([edit.markId]);
    let target = edit.value;
    for (let next = into.get(target); next; next = into.get(target)) {
      if (seen.has(target)) return "goes in a circle";
      seen.add(target);
      target = next.value;
    }
    return this.#steps.get(target) ?? "target gone";
  }

  stagesAndTitles(): void {
    for (const edit of this.#edits("stage")) {
      const step = this.#steps.get(edit.markId);
      if (!step || !isStage(edit.value)) this.#orphan(edit, "not a step");
      else step.stage = edit.value;
    }
    for (const edit of this.#edits("title")) {
      const step = this.#steps.get(edit.markId);
      if (!step) this.#orphan(edit, "not a step");
      else if (edit.value.trim() !== "") step.title = edit.value.trim();
    }
  }

  ordered(): Edited[] {
    const after = new Map<string, Edit>();
    for (const edit of this.#edits("after")) {
      const step = this.#steps.get(edit.markId);
      const target = this.#steps.get(edit.value);
      if (!step) this.#orphan(edit, "not a step");
      else if (edit.value !== "" && !target) this.#orphan(edit, "target gone");
      else if (target && target.stage !== step.stage) this.#orphan(edit, "target in another stage");
      else after.set(edit.markId, edit);
    }
    return stages.flatMap((stage) => {
      const steps = [...this.#steps.values()].filter((step) => step.stage === stage);
      return this.#insert(steps, after);
    });
  }

  /** Steps of one stage: those without an `after` in their natural order, the others put in behind theirs. */
  #insert(steps: Edited[], after: Map<string, Edit>): Edited[] {
    const followers = new Map<string, Edited[]>();
    for (const step of steps) {
      const target = after.get(step.head.id)?.value;
      if (target !== undefined) followers.set(target, [...(followers.get(target) ?? []), step]);
    }
    const result: Edited[] = [];
    const follow = (id: string): void => {
      const next = followers.get(id) ?? [];
      followers.delete(id);
      for (const step of next) {
        result.push(step);
        follow(step.head.id);
      }
    };
    follow("");
    for (const step of steps) {
      if (after.has(step.head.id)) continue;
      result.push(step);
      follow(step.head.id);
    }
    // What is left follows itself in a circle: it keeps its natural place at the end, and is said to be there.
    const circling = steps.filter((step) => !result.includes(step));
    for (const step of circling) this.#orphan(after.get(step.head.id) as Edit, "goes in a circle");
    return [...result, ...circling];
  }

  /** Edits made on words that have changed since. They stay laid on; the restorer is told. */
  changedWords(): void {
    const already = new Set(this.orphans.map((orphan) => orphan.edit));
    for (const edit of present(this.#document.edits)) {
      const mark = this.#marks.get(edit.markId);
      if (!mark || already.has(edit.id) || same(edit.basis, wordsOf(mark))) continue;
      this.#orphan(edit, "words changed");
    }
  }

  /** Edits of one kind whose mark is still there; the others become orphans. */
  #edits(name: EditName): Edit[] {
    return editsOf(this.#document, name).filter((edit) => {
      const there = this.#marks.has(edit.markId);
      if (!there) this.#orphan(edit, "mark gone");
      return there;
    });
  }

  #take(mark: Mark): void {
    this.tray = this.tray.filter((other) => other !== mark);
    for (const step of this.#steps.values()) step.marks = step.marks.filter((other) => other !== mark);
  }

  #give(step: Edited, marks: Mark[]): void {
    const order = (mark: Mark) => this.#order.get(mark.id) ?? 0;
    const [head, ...rest] = [step.head, ...step.marks.filter((mark) => mark !== step.head), ...marks];
    step.marks = [head as Mark, ...rest.sort((a, b) => order(a) - order(b))];
  }

  #orphan(edit: Edit, why: OrphanReason): void {
    this.orphans.push({ edit: edit.id, mark: edit.markId, asked: sayEdit(edit), why, basis: edit.basis });
  }
}

/** Edits of one kind in the order of their ids, one for each mark: of two that disagree the later id stands. */
function editsOf(document: BuildDocument, name: EditName): Edit[] {
  const edits = present(document.edits).filter((edit) => edit.edit === name);
  const byMark = new Map(edits.sort((a, b) => (a.id < b.id ? -1 : 1)).map((edit) => [edit.markId, edit]));
  return [...byMark.values()];
}

/** What an edit asks for, in words. */
export function sayEdit(edit: Edit): string {
  switch (edit.edit) {
    case "title":
      return `call this step “${edit.value}”`;
    case "stage":
      return `put this step under “${edit.value}”`;
    case "after":
      return edit.value === "" ? "put this step first in its stage" : "put this step after another";
    case "merged":
      return "make this one step with another";
    case "split":
      return "begin a new step at this mark";
    case "belongs":
      return "count this mark to another step";
  }
}

function same(a: string, b: string): boolean {
  const plain = (text: string) => text.replace(/\s+/g, " ").trim();
  return plain(a) === plain(b);
}
