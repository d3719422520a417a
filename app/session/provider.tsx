"use client";
import { createContext, type ReactNode, useContext, useEffect, useState, useSyncExternalStore } from "react";
import type { BuildDocument } from "#lib/build/index.ts";
import { compile } from "#lib/procedure/index.ts";
import { BuildSession, fetchDocument, type SessionView } from "./build-session.ts";
import { type Derived, derive, deriveFrom } from "./derived.ts";

interface Opened {
  session: BuildSession;
  derived: DerivedStore;
}

/** How long after a change the procedure is compiled again: after a burst of typing, before anybody looks. */
const COMPILE_AFTER = 120;

/** The compiled procedure of a session, a moment behind it, so that marking never waits for it. */
class DerivedStore {
  #value: Derived;
  #timer: ReturnType<typeof setTimeout> | undefined;
  readonly #listeners = new Set<() => void>();

  constructor(session: BuildSession) {
    this.#value = derive(session.document);
    session.subscribe(() => {
      if (session.document === this.#value.document) return;
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => this.#compile(session.document), COMPILE_AFTER);
    });
  }

  /** Compiles, and checks in a task of its own: together they could hold the film up for a moment. */
  #compile(document: BuildDocument): void {
    const procedure = compile(document);
    this.#timer = setTimeout(() => {
      this.#value = deriveFrom(procedure, document);
      for (const listener of this.#listeners) listener();
    });
  }

  get = (): Derived => this.#value;

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
}

const Session = createContext<Opened | null>(null);

/** Sessions outlive the sheets: what is still to be sent goes on being sent while the restorer looks elsewhere. */
const sessions = new Map<string, Opened>();

async function open(buildId: string): Promise<Opened | null> {
  const known = sessions.get(buildId);
  if (known && known.session.view().save.pending > 0) return known;
  const fetched = await fetchDocument(buildId);
  if (!fetched) return null;
  const session = new BuildSession(fetched.document, fetched.can);
  const opened = { session, derived: new DerivedStore(session) };
  sessions.set(buildId, opened);
  return opened;
}

/** Opens a build for the sheets inside it. */
export function BuildProvider({ buildId, children }: { buildId: string; children: ReactNode }) {
  const [opened, setOpened] = useState<Opened | null | "missing">(null);
  useEffect(() => {
    let current = true;
    void open(buildId).then((found) => current && setOpened(found ?? "missing"));
    return () => {
      current = false;
    };
  }, [buildId]);
  useEffect(() => {
    const warn = (event: BeforeUnloadEvent) => {
      if (opened && opened !== "missing" && opened.session.view().save.pending > 0) event.preventDefault();
    };
    window.addEventListener("beforeunload", warn);
    return () => window.removeEventListener("beforeunload", warn);
  }, [opened]);
  if (opened === "missing") {
    return (
      <main className="page">
        <h1>This build is not in the workshop</h1>
        <p>
          It may have been struck out, or the address may be from another workshop.{" "}
          <a href="/">All machines</a>
        </p>
      </main>
    );
  }
  if (!opened) {
    return (
      <main className="page" aria-busy="true">
        <p className="soft">Reading the build…</p>
      </main>
    );
  }
  return <Session.Provider value={opened}>{children}</Session.Provider>;
}

function useOpened(): Opened {
  const opened = useContext(Session);
  if (!opened) throw new Error("a sheet of a build stands inside BuildProvider");
  return opened;
}

/** The session, for writing. */
export function useSession(): BuildSession {
  return useOpened().session;
}

/** The build as it is now in this tab. */
export function useSessionView(): SessionView {
  const { session } = useOpened();
  return useSyncExternalStore(session.subscribe, session.view, session.view);
}

/** The compiled procedure and what the checks say of it, a moment behind the last change. */
export function useDerived(): Derived {
  const { derived } = useOpened();
  return useSyncExternalStore(derived.subscribe, derived.get, derived.get);
}
