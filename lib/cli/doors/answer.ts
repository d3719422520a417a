import type { IncomingMessage, ServerResponse } from "node:http";
import { MediaError } from "#lib/media/index.ts";
import { Refused } from "#lib/store/index.ts";

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
  if (error instanceof MediaError || error instanceof Refused) {
    const { found, expected, todo } = error;
    answer(res, 400, { found, expected, todo });
    return;
  }
  console.error(error);
  const found = error instanceof Error ? error.message : String(error);
  answer(res, 500, { found, expected: "", todo: "Nothing that was kept is lost. Try again." });
}

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
