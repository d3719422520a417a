// A process of its own that works until it is killed. It is told what to do in its first message, and says on
// standard output what has been acknowledged, one JSON value a line: what is said there must be found afterwards.
import fs from "node:fs";

export type Tell = (acknowledged: unknown) => void;
export type Work = (order: never, tell: Tell) => Promise<void>;

const works: Record<string, () => Promise<{ work: Work; warm?: () => Promise<void> }>> = {
  mark: () => import("./works/mark.ts"),
  many: () => import("./works/many.ts"),
  bring: () => import("./works/bring.ts"),
  copy: () => import("./works/copy.ts"),
  send: () => import("./works/send.ts"),
  backup: () => import("./works/backup.ts"),
  migrate: () => import("./works/migrate.ts"),
};

/** Writes at once: what has been written to a pipe is read even when the writer is killed the next moment. */
const tell: Tell = (acknowledged) => fs.writeSync(1, `${JSON.stringify(acknowledged)}\n`);

const { work, warm } = await (works[process.argv[2] as string] as (typeof works)[string])();
await warm?.();
process.once("message", (order) => {
  work(order as never, tell).then(
    () => process.disconnect(),
    (error: unknown) => {
      console.error(error);
      process.exit(1);
    },
  );
});
process.send?.("ready");
