import type { IncomingMessage } from "node:http";

/** Why a request is not let in; null when it is. */
export interface Turned {
  status: number;
  found: string;
  expected: string;
  todo: string;
}

/**
 * The one look at who asks. The program answers only to the names of this machine, so that a page elsewhere cannot
 * reach it through a name of its own that leads here; and it changes something only for its own pages.
 */
export function turnAway(req: IncomingMessage, port: number): Turned | null {
  if (!isOwnAddress(req.url ?? "")) return noAddress(req.url ?? "");
  const host = req.headers.host ?? "";
  if (!ownHosts(port).has(host.toLowerCase())) {
    return {
      status: 421,
      found: `The request was for the host “${host.slice(0, 100)}”.`,
      expected: `One of ${[...ownHosts(port)].join(", ")} was expected.`,
      todo: "Open the address that the program printed when it started.",
    };
  }
  const reading = req.method === "GET" || req.method === "HEAD";
  const from = req.headers["sec-fetch-site"];
  if (reading && from === "cross-site" && req.headers["sec-fetch-mode"] !== "navigate") {
    return foreign("a page of another site");
  }
  if (reading) return null;
  const origin = req.headers.origin;
  if (origin === undefined || origin.toLowerCase() !== `http://${host.toLowerCase()}`) {
    return foreign(origin === undefined ? "nowhere it would name" : `“${origin.slice(0, 100)}”`);
  }
  return null;
}

/**
 * Whether an address is a path here, as everything behind this takes it to be: `//elsewhere/x` names another host, `//`
 * none at all, and `%E0` half a letter.
 */
function isOwnAddress(address: string): boolean {
  try {
    const { host, pathname } = new URL(address, "http://localhost");
    decodeURIComponent(pathname);
    return host === "localhost";
  } catch {
    return false;
  }
}

function noAddress(address: string): Turned {
  return {
    status: 400,
    found: `“${address.slice(0, 100)}” is no address of this program.`,
    expected: "A path that begins with one slash, in UTF-8.",
    todo: "Open the address that the program printed when it started.",
  };
}

/** The largest body that the pages' own routes are given, in bytes: they hold it whole. */
const MOST_BODY = 150_000_000;

/** Why the body of a request is not taken in front of the pages; null when it is. */
export function turnAwayBody({ headers }: IncomingMessage): Turned | null {
  const length = Number(headers["content-length"] ?? 0);
  const said = headers["transfer-encoding"] === undefined;
  if (said && length <= MOST_BODY) return null;
  return {
    status: said ? 413 : 411,
    found: said ? `${Math.round(length / 1e6)} MB were sent.` : "It was not said how much is sent.",
    expected: `At most ${MOST_BODY / 1e6} MB, and their number in Content-Length.`,
    todo: "Choose a smaller file, or bring it in in parts.",
  };
}

function foreign(where: string): Turned {
  return {
    status: 403,
    found: `The request came from ${where}.`,
    expected: "Only the program's own pages may ask for this.",
    todo: "Use the page that the program shows.",
  };
}

function ownHosts(port: number): ReadonlySet<string> {
  const names = ["localhost", "127.0.0.1", "[::1]"];
  return new Set([...names.map((name) => `${name}:${port}`), ...(port === 80 ? names : [])]);
}

/** What a page may load and do: its own things only, scripts by a nonce made anew for each page. */
export function contentPolicy(nonce: string, dev: boolean): string {
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${dev ? " 'unsafe-eval'" : ""}`,
    `style-src-elem 'self' ${dev ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "media-src 'self' blob:",
    "connect-src 'self'",
    "worker-src 'self' blob:",
    "font-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}
