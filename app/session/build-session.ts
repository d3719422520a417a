import type {
  AnswerRow,
  Assembly,
  Build,
  BuildDocument,
  CaptionTrack,
  Cut,
  DraftDecisionRow,
  Edit,
  Gotcha,
  Item,
  Kit,
  Machine,
  Recording,
  Sighting,
  Sitting,
  Still,
} from "#lib/build/index.ts";
import type { Mark } from "#lib/mark/index.ts";
import type { Applied, Command, HistoryStep, Put, Stale } from "#lib/store/command.ts";
import type { Row, TableName } from "#lib/store/tables.ts";

/** A row to write, whole, as it is to be. The session finds out what is new in it. */
export interface Change {
  table: TableName;
  row: AnyRow;
}

type AnyRow =
  | Row
  | Machine
  | Assembly
  | Item
  | Build
  | Sitting
  | Recording
  | CaptionTrack
  | Cut
  | Mark
  | Still
  | Edit
  | AnswerRow
  | DraftDecisionRow
  | Gotcha
  | Sighting
  | Kit;

/** What the screen may say of saving. `saved` names the last thing that is on disk. */
export interface SaveState {
  pending: number;
  saved: string | null;
  /** Why the last attempt failed, while it is being tried again. */
  trouble: string | null;
  /** Why something that was asked for was not done; nothing waits to be tried again. */
  refused?: string | null;
}

/** A change that was refused because the row had been changed elsewhere: both versions. */
export interface Conflict extends Stale {
  label: string;
  words: string;
}

export interface SessionView {
  document: BuildDocument;
  save: SaveState;
  conflicts: Conflict[];
  canUndo: boolean;
  canRedo: boolean;
}

const lists = {
  assembly: "assemblies",
  item: "items",
  sitting: "sittings",
  recording: "recordings",
  captionTrack: "captions",
  cut: "cuts",
  mark: "marks",
  still: "stills",
  edit: "edits",
  answer: "answers",
  release: "releases",
  erratum: "errata",
  draftDecision: "decisions",
  gotcha: "gotchas",
  sighting: "sightings",
  kit: "kits",
} as const;

const RETRY_AFTER = [300, 1000, 3000, 5000];

/**
 * One build, open in this tab. Changes show at once and are sent in order; a change counts as saved only when
 * the program has answered that it is on disk. What could not be sent yet is tried again until it is.
 */
export class BuildSession {
  #view: SessionView;
  #queue: Command[] = [];
  #sending = false;
  readonly #listeners = new Set<() => void>();

  constructor(document: BuildDocument, can: { undo: boolean; redo: boolean }) {
    this.#view = {
      document,
      save: { pending: 0, saved: null, trouble: null },
      conflicts: [],
      canUndo: can.undo,
      canRedo: can.redo,
    };
  }

  view = (): SessionView => this.#view;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  get document(): BuildDocument {
    return this.#view.document;
  }

  /** The row as it now is here, or undefined. */
  row(table: TableName, id: string): Row | undefined {
    return rowOf(this.document, table, id);
  }

  /** Writes rows as one command, called `label` in the history. Rows that are as they were are left out. */
  change(label: string, changes: Change[]): void {
    const puts = changes.map((change) => this.#putOf(change)).filter((put) => put !== null);
    if (puts.length === 0) return;
    const rows = puts.map((put) => ({
      table: put.table,
      row: { gone: null, ...this.row(put.table, put.id), ...put.set, id: put.id, rev: put.rev + 1 } as Row,
    }));
    const command: Command = { id: crypto.randomUUID(), buildId: this.document.build.id, label, puts };
    this.#queue.push(command);
    this.#show({ ...this.#take(rows), canUndo: true, canRedo: false });
    void this.#send();
  }

  undo = (): Promise<string | null> => this.#retrace("undo");
  redo = (): Promise<string | null> => this.#retrace("redo");
  /** Takes the build back to how it was after that change; undo brings back what came after. */
  backTo = (seq: number): Promise<string | null> => this.#retrace({ backTo: seq });

  /** Rows that the program itself has written (a recording brought in, its length found out). */
  take(rows: { table: TableName; row: Row }[]): void {
    const waiting = new Set(this.#queue.flatMap((command) => command.puts.map((put) => put.id)));
    this.#show(this.#take(rows.filter(({ row }) => !waiting.has(row.id))));
  }

  /** Settles a conflict: with what is on disk, or by writing the refused version over it. */
  settle(conflict: Conflict, choice: "disk" | "mine"): void {
    this.#show({ conflicts: this.#view.conflicts.filter((one) => one !== conflict) });
    if (choice === "disk") return;
    // A row that was struck out meanwhile comes back, and one that never came to disk is new.
    const row = { ...this.row(conflict.table, conflict.id), gone: null, ...conflict.wanted, id: conflict.id };
    this.change(conflict.label, [{ table: conflict.table, row: row as unknown as Row }]);
  }

  /** Resolves when everything changed so far is on disk. */
  async settled(): Promise<void> {
    while (this.#queue.length > 0) await new Promise((resolve) => setTimeout(resolve, 20));
  }

  #putOf({ table, row }: Change): Put | null {
    const before = this.row(table, row.id);
    if (!before) return { table, id: row.id, rev: 0, set: withoutRev(row) };
    const set = Object.fromEntries(
      Object.entries(withoutRev(row)).filter(([column, value]) => !sameValue(value, before[column])),
    );
    return Object.keys(set).length > 0 ? { table, id: row.id, rev: before.rev, set } : null;
  }

  async #send(): Promise<void> {
    if (this.#sending) return;
    this.#sending = true;
    for (let tries = 0; this.#queue[0]; ) {
      const command = this.#queue[0];
      const answer = await post(command);
      if (answer.kind === "done") {
        tries = 0;
        this.#queue.shift();
        this.#show({ save: { pending: this.#queue.length, saved: command.label, trouble: null } });
      } else if (answer.kind === "refused" && (await this.#refused(command, answer))) {
        tries = 0;
      } else {
        this.#show({ save: { ...this.#view.save, pending: this.#queue.length, trouble: answer.words } });
        await new Promise((resolve) => setTimeout(resolve, RETRY_AFTER[Math.min(tries++, 3)]));
      }
    }
    this.#sending = false;
  }

  /**
   * A refused change, and those after it that write the same rows, are kept as conflicts; the rest go on.
   *
   * @returns false, with everything as it was, when what is on disk could not be asked for
   */
  async #refused(
    command: Command,
    { words, stale }: { words: string; stale: Stale | null },
  ): Promise<boolean> {
    const document = await fetchDocument(this.document.build.id).catch(() => null);
    if (!document) return false;
    // From here on nothing is waited for: what was changed while the document came stands in the queue.
    const disputed = new Set(stale ? [stale.id] : command.puts.map((put) => put.id));
    const [held, going] = partition(
      this.#queue,
      (one) => one === command || one.puts.some((put) => disputed.has(put.id)),
    );
    this.#queue = [];
    const conflicts = held.flatMap((one) =>
      one.puts.map((put) => ({
        table: put.table,
        id: put.id,
        wanted: put.set,
        label: one.label,
        words,
        current: rowOf(document.document, put.table, put.id) ?? null,
      })),
    );
    this.#show({
      document: document.document,
      conflicts: [...this.#view.conflicts, ...mergeConflicts(conflicts)],
      save: { pending: 0, saved: this.#view.save.saved, trouble: null },
    });
    for (const one of going) {
      this.change(
        one.label,
        one.puts.map((put) => ({
          table: put.table,
          row: { ...this.row(put.table, put.id), ...put.set, id: put.id } as Row,
        })),
      );
    }
    return true;
  }

  async #retrace(step: HistoryStep["step"]): Promise<string | null> {
    await this.settled();
    const answer = await post({ id: crypto.randomUUID(), buildId: this.document.build.id, step });
    if (answer.kind !== "done") {
      this.#show({ save: { ...this.#view.save, refused: answer.words } });
      return null;
    }
    if (!answer.applied) {
      if (step === "undo") this.#show({ canUndo: false });
      if (step === "redo") this.#show({ canRedo: false });
      return null;
    }
    const { label, rows } = answer.applied;
    this.#show({ ...this.#take(rows), canUndo: true, canRedo: true });
    this.#show({ save: { pending: 0, saved: label, trouble: null } });
    return label;
  }

  #take(rows: { table: TableName; row: Row }[]): Partial<SessionView> {
    const document = rows.reduce((so_far, { table, row }) => withRow(so_far, table, row), this.document);
    return { document, save: { ...this.#view.save, pending: this.#queue.length } };
  }

  #show(change: Partial<SessionView>): void {
    this.#view = { ...this.#view, ...change };
    for (const listener of this.#listeners) listener();
  }
}

function rowOf(document: BuildDocument, table: TableName, id: string): Row | undefined {
  if (table === "machine") return document.machine as unknown as Row;
  if (table === "build") return document.build as unknown as Row;
  return (document[lists[table]] as unknown as Row[]).find((row) => row.id === id);
}

function withRow(document: BuildDocument, table: TableName, row: Row): BuildDocument {
  if (table === "machine" || table === "build") {
    return document[table].id === row.id ? { ...document, [table]: row } : document;
  }
  const list = lists[table];
  const rows = document[list] as unknown as Row[];
  const place = rows.findIndex((one) => one.id === row.id);
  return { ...document, [list]: place < 0 ? [...rows, row] : rows.with(place, row) };
}

function withoutRev(row: { id: string }): Record<string, unknown> {
  const { rev: _, ...rest } = row as { id: string; rev?: number };
  return rest;
}

function sameValue(a: unknown, b: unknown): boolean {
  return a === b || (typeof a === "object" && JSON.stringify(a) === JSON.stringify(b));
}

function partition<T>(all: T[], belongs: (one: T) => boolean): [T[], T[]] {
  return [all.filter(belongs), all.filter((one) => !belongs(one))];
}

/** Several refused changes of one row, as one: the later columns stand. */
function mergeConflicts(conflicts: Conflict[]): Conflict[] {
  const byRow = new Map<string, Conflict>();
  for (const one of conflicts) {
    const before = byRow.get(one.id);
    byRow.set(one.id, before ? { ...one, wanted: { ...before.wanted, ...one.wanted } } : one);
  }
  return [...byRow.values()];
}

type Answer =
  | { kind: "done"; applied: Applied | null }
  | { kind: "refused"; words: string; stale: Stale | null }
  | { kind: "failed"; words: string };

async function post(body: unknown): Promise<Answer> {
  try {
    const response = await fetch("/commands", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    if (response.ok) return { kind: "done", applied: (await response.json()) as Applied | null };
    if (response.status >= 500) return { kind: "failed", words: await wordsOfFailure(response) };
    const refusal = (await response.json()) as {
      found: string;
      expected: string;
      todo: string;
      stale: Stale | null;
    };
    return { kind: "refused", words: `${refusal.found} ${refusal.todo}`, stale: refusal.stale };
  } catch {
    return { kind: "failed", words: "The program does not answer. Is it still running?" };
  }
}

async function wordsOfFailure(response: Response): Promise<string> {
  const { found, todo } = (await response.json().catch(() => ({}))) as { found?: string; todo?: string };
  return found ? `${found} ${todo ?? ""}` : "The program could not write to the disk.";
}

/** A build whole, as it is on disk, with whether there is something to undo or redo. */
export interface Fetched {
  document: BuildDocument;
  can: { undo: boolean; redo: boolean };
}

export async function fetchDocument(buildId: string): Promise<Fetched | null> {
  const response = await fetch(`/builds/${encodeURIComponent(buildId)}/document`);
  return response.ok ? ((await response.json()) as Fetched) : null;
}
