import { randomBytes } from "node:crypto";
import http, { type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { sweepUnfinished } from "#lib/media/index.ts";
import { theWorkshop, wordsOf } from "#lib/store/index.ts";
import { answer, answerError } from "./doors/answer.ts";
import { contentPolicy, turnAway, turnAwayBody } from "./doors/guard.ts";
import { doors } from "./doors/index.ts";
import { finishArrived, indexingOf } from "./indexing/index.ts";

export interface Serving {
  address: string;
  close: () => Promise<void>;
}

/**
 * Opens the workshop and serves it on the loopback address: a look at who asks, then recordings and pictures from
 * here, then the pages.
 *
 * @param options.port 0 takes any free one.
 */
export async function serve(options: { root: string; port: number; dev?: boolean }): Promise<Serving> {
  const { root, dev = false } = options;
  const opened = theWorkshop();
  const indexing = indexingOf(opened);
  const { default: next } = await import("next");
  const pages = next({ dev, dir: root });
  await pages.prepare();
  const answerPage = pages.getRequestHandler();

  const server = http.createServer((req, res) => {
    // Whatever a request does, the next one is answered.
    answerRequest(req, res).catch((error: unknown) => answerError(res, error));
  });
  async function answerRequest(req: IncomingMessage, res: ServerResponse): Promise<void> {
    const turned = turnAway(req, (server.address() as AddressInfo).port);
    if (turned) {
      const { status, ...words } = turned;
      answer(res, status, words);
      return;
    }
    indexing.makeWay();
    res.setHeader("referrer-policy", "same-origin");
    res.setHeader("x-content-type-options", "nosniff");
    res.setHeader("cross-origin-resource-policy", "same-origin");
    if (await doors(opened, req, res, root)) return;
    const tooMuch = turnAwayBody(req);
    if (tooMuch) {
      answer(res, tooMuch.status, tooMuch);
      return;
    }
    const policy = isScript(req.url)
      ? workerPolicy(dev)
      : contentPolicy(randomBytes(16).toString("base64"), dev);
    // The pages read their nonce from the request and put it on their scripts.
    req.headers["content-security-policy"] = policy;
    res.setHeader("content-security-policy", policy);
    await answerPage(req, res);
  }
  if (dev) server.on("upgrade", pages.getUpgradeHandler());
  // A recording of many gigabytes takes longer than five minutes to come in.
  server.requestTimeout = 0;
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(options.port, "127.0.0.1", resolve);
  });
  const { port } = server.address() as AddressInfo;
  // What an earlier run left unfinished is taken up when the first screen can be shown.
  void sweepUnfinished(opened.workshop.recordings);
  void finishArrived(opened).then(() => indexing.wake());
  return {
    address: `http://127.0.0.1:${port}/`,
    close: async () => {
      server.closeAllConnections();
      await indexing.stop();
      await new Promise((resolve) => server.close(resolve));
      await opened.client.$disconnect();
    },
  };
}

function isScript(url = ""): boolean {
  return url.startsWith("/_next/static/");
}

/**
 * What a script may do that runs beside the page, without its document. It means nothing for one that runs in the
 * page. Hashing a film of many gigabytes takes WebAssembly, which the page itself may not run.
 */
function workerPolicy(dev: boolean): string {
  const scripts = `'self' 'wasm-unsafe-eval'${dev ? " 'unsafe-eval'" : ""}`;
  return `default-src 'none'; script-src ${scripts}; connect-src 'self'`;
}

export { wordsOf };
