import type { IncomingMessage, ServerResponse } from "node:http";
import type { Words } from "#lib/finding/index.ts";
import { isOfTheDisk, Refused, wordsOf } from "#lib/store/index.ts";

/** Answers with one JSON value. */
export function answer(res: ServerResponse, status: number, value: unknown): void {
  if (res.headersSent) {
    res.destroy();
    return;
  }
  const body = Buffer.from(JSON.stringify(value));
  res.writeHead(status, {
    "content-type": "application/json; charset=utf-8",
    "content-length": body.length,
    "cache-control": "no-store",
    "x-content-type-options": "nosniff",
    ...(status >= 400 ? { connection: "close" } : {}),
  });
  res.end(body);
}

/** Answers with what went wrong, in words where the person can do something about it. */
export function answerError(res: ServerResponse, error: unknown): void {
  const words = wordsOf(error);
  if (words) {
    answer(res, isOfTheDisk(error) ? 503 : 400, words);
    return;
  }
  // Who asked may have gone, and hears no answer.
  if (res.req.destroyed && !res.writableEnded) res.destroy();
  else {
    console.error(error);
    answer(res, 500, ownFault);
  }
}

/** What is said where the program itself is at fault: its own words are in its terminal, for who mends it. */
export const ownFault: Words = {
  found: "The program met a fault of its own; its terminal says which.",
  expected: "",
  todo: "What was kept is as it was. Try again, or load the page again.",
};

/** The whole body of a request, up to a limit in bytes. */
export async function readBody(req: IncomingMessage, limit: number): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of req as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > limit) {
      throw new Refused({
        found: `More than ${Math.round(limit / 1e6)} MB came.`,
        expected: `At most ${Math.round(limit / 1e6)} MB are taken here.`,
        todo: "Choose a smaller file.",
      });
    }
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** The body of a request as a JSON value. */
export async function readJson(req: IncomingMessage): Promise<unknown> {
  try {
    return JSON.parse((await readBody(req, 1_000_000)).toString("utf8"));
  } catch (error) {
    if (error instanceof Refused) throw error;
    throw new Refused({
      found: "The request is not JSON.",
      expected: "A JSON value.",
      todo: "Load the page again.",
    });
  }
}
