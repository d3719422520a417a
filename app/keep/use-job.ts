"use client";
import { useEffect, useState } from "react";
import type { LastBackup } from "#lib/store/last-backup.ts";
import { sayWords, send, Trouble } from "../parts/send.ts";

/** How far a backup or an audit is, and what came of it. */
export interface Job<Result> {
  state: "none" | "running" | "done" | "failed";
  progress: { words: string; done: number; of: number } | null;
  result: Result | null;
  wrong: boolean;
  last: LastBackup | null;
}

/** Follows a backup or an audit that runs beside the program; one that was begun before a reload is found again. */
export function useJob<Result>(kind: "backup" | "audit") {
  const [job, setJob] = useState<Job<Result> | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const address = `/keep/${kind}`;
  useEffect(() => {
    fetch(address)
      .then(async (response) => setJob((await response.json()) as Job<Result>))
      .catch(() => undefined);
  }, [address]);
  const running = job?.state === "running";
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(async () => {
      const response = await fetch(address).catch(() => null);
      if (response?.ok) setJob((await response.json()) as Job<Result>);
    }, 500);
    return () => clearInterval(timer);
  }, [running, address]);
  const begin = async (body: unknown) => {
    setTrouble(null);
    try {
      setJob(await send<Job<Result>>(address, body));
    } catch (error) {
      setTrouble(error instanceof Trouble ? error.message : "It did not work. Try again.");
    }
  };
  const stop = () => void fetch(address, { method: "DELETE" }).catch(() => undefined);
  const failed = job?.state === "failed" ? sayWords((job.result ?? {}) as Record<string, string>) : null;
  return { job, running, begin, stop, trouble: trouble ?? failed };
}
