import fs from "node:fs";
import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import type {
  IsolationLevel,
  SqlDriverAdapter,
  SqlDriverAdapterFactory,
  SqlQuery,
  Transaction,
} from "@prisma/driver-adapter-utils";

/**
 * What every connection sets. `synchronous = FULL`: an acknowledged mark is on disk even when the power goes the
 * next moment; with NORMAL the last commits of a write-ahead log can be lost.
 */
const PRAGMAS = `PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;
PRAGMA temp_store = MEMORY; PRAGMA journal_size_limit = 67108864;`;

/** How long a write waits for another process's transaction, in milliseconds. */
const BUSY_TIMEOUT = 5000;

/**
 * How long a transaction asks again for its turn, in milliseconds. SQLite hands out turns in no order, so that a
 * process which writes without a pause can keep another waiting longer than one timeout. Nothing has been written
 * when a turn is refused.
 */
const PATIENCE = 25_000;

/** Begins a transaction, asking again while another process has its turn. */
async function beginPatiently(begin: () => Promise<void>): Promise<void> {
  for (const until = Date.now() + PATIENCE; ; ) {
    try {
      return await begin();
    } catch (error) {
      const { kind } = (error as { cause?: { kind?: string } }).cause ?? {};
      if (kind !== "SocketTimeout" || Date.now() > until) throw error;
      await new Promise((resolve) => setTimeout(resolve, 5 + Math.random() * 45));
    }
  }
}

/** One at a time, in the order of asking. */
class Lock {
  #tail: Promise<void> = Promise.resolve();

  acquire(): Promise<() => void> {
    let release!: () => void;
    const mine = new Promise<void>((resolve) => {
      release = resolve;
    });
    const before = this.#tail;
    this.#tail = before.then(() => mine);
    return before.then(() => release);
  }
}

/**
 * The stock adapter has one connection, and a query made outside a running transaction slips into it: if that
 * transaction then rolls back, an acknowledged write is gone. Here a transaction owns the connection, begins
 * IMMEDIATE, and everything else waits for it.
 */
class OwnedConnection implements SqlDriverAdapter {
  readonly provider = "sqlite" as const;
  readonly #lock = new Lock();
  readonly #inner: SqlDriverAdapter;
  readonly #file: OpenedFile;

  constructor(inner: SqlDriverAdapter, file: OpenedFile) {
    this.#inner = inner;
    this.#file = file;
  }

  get adapterName() {
    return this.#inner.adapterName;
  }

  queryRaw(query: SqlQuery) {
    return this.#alone(() => this.#inner.queryRaw(query));
  }

  executeRaw(query: SqlQuery) {
    return this.#alone(() => this.#inner.executeRaw(query));
  }

  executeScript(script: string) {
    return this.#alone(() => this.#inner.executeScript(script));
  }

  async startTransaction(_level?: IsolationLevel): Promise<Transaction> {
    const release = await this.#lock.acquire();
    const inner = this.#inner;
    const run = async (sql: string) => {
      await inner.executeRaw({ sql, args: [], argTypes: [] });
    };
    try {
      this.#file.mustBeThere();
      await beginPatiently(() => run("BEGIN IMMEDIATE"));
    } catch (error) {
      release();
      throw error;
    }
    return {
      provider: "sqlite",
      adapterName: inner.adapterName,
      options: { usePhantomQuery: false },
      queryRaw: (query) => inner.queryRaw(query),
      executeRaw: (query) => inner.executeRaw(query),
      // Prisma itself sends COMMIT and ROLLBACK; these say that the connection is free again.
      commit: async () => release(),
      rollback: async () => release(),
      createSavepoint: (name) => run(`SAVEPOINT ${name}`),
      rollbackToSavepoint: (name) => run(`ROLLBACK TO ${name}`),
      releaseSavepoint: (name) => run(`RELEASE SAVEPOINT ${name}`),
    };
  }

  dispose() {
    return this.#inner.dispose();
  }

  async #alone<T>(work: () => Promise<T>): Promise<T> {
    const release = await this.#lock.acquire();
    try {
      return await work();
    } finally {
      release();
    }
  }
}

/**
 * The file that a connection has open. SQLite goes on writing to one that was moved, deleted or replaced, and what it
 * acknowledged then is found by nobody (sqlite.org, "How To Corrupt An SQLite Database File", 4.2).
 */
class OpenedFile {
  readonly #path: string;
  readonly #known: string;

  constructor(path: string) {
    this.#path = path;
    this.#known = this.#identity();
  }

  mustBeThere(): void {
    if (this.#identity() === this.#known) return;
    throw Object.assign(new Error(`${this.#path} is not the file that was opened`), { code: FILE_REPLACED });
  }

  #identity(): string {
    const stats = fs.statSync(this.#path, { bigint: true, throwIfNoEntry: false });
    return stats ? `${stats.dev} ${stats.ino}` : "";
  }
}

/** The code of the error that a transaction ends with when the database's file was exchanged. */
export const FILE_REPLACED = "DATABASE_FILE_REPLACED";

/** Prisma's adapter for one SQLite file. */
export class SqliteAdapter implements SqlDriverAdapterFactory {
  readonly provider = "sqlite" as const;
  readonly adapterName = "owned-better-sqlite3";
  readonly #inner: PrismaBetterSqlite3;
  readonly #file: string;

  constructor(file: string) {
    this.#file = file;
    this.#inner = new PrismaBetterSqlite3({ url: `file:${file}`, timeout: BUSY_TIMEOUT });
  }

  async connect() {
    const connection = await this.#inner.connect();
    await connection.executeScript(PRAGMAS);
    return new OwnedConnection(connection, new OpenedFile(this.#file));
  }
}
