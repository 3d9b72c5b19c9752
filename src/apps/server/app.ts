import { type Context, Hono, type Next } from "hono";
import type { BackupAge } from "../../stores/lastBackup.ts";
import { acceptedEncoding } from "./acceptedEncoding.ts";
import { refused } from "./api/refusals.ts";
import type { BuiltFile } from "./builtFiles.ts";
import { strictHeaders, withStrictHeaders } from "./strictHeaders.ts";

/** The built files by their path in the address, and what /health tells: the engine's version, and how old the last backup is. */
export type Served = {
  readonly files: ReadonlyMap<string, BuiltFile>;
  readonly version: string;
  readonly backup?: () => BackupAge | null;
  readonly lan?: OnLan;
};

/** What else the server is called where it answers in the local network, and the pages that say how a telephone comes to trust it. */
export type OnLan = { readonly isCalled: (host: string) => boolean; readonly trust: Hono };

const methods = ["GET", "HEAD"];

/** The names under which this machine reaches itself. */
const ownNames = /^(localhost|127\.0\.0\.1|\[::1\])(:\d{1,5})?$/i;

/** The web app and, where a workshop is served, its `api` as answers to requests, without a socket: `serverApp(served).fetch`. */
export function serverApp({ files, version, backup, lan }: Served, api: Hono | null = null): Hono {
  const app = new Hono();
  app.use(withStrictHeaders, ownNameOnly(lan));
  if (api) app.route("/api", api);
  app.use(readingOnly);
  if (lan) app.route("/", lan.trust);
  app.get("/health", (c) => {
    const told = { status: "ok", version, ...(backup && { backup: backup() }) };
    return c.json(told, 200, { "Cache-Control": "no-store" });
  });
  app.get("*", (c) => {
    const file = files.get(pathIn(c.req.url));
    return file ? sent(c, file) : c.notFound();
  });
  app.notFound((c) => c.text("There is nothing at this address; the bench is at /.\n", 404));
  // A middleware's headers are gone from an answer made here, so they are given again.
  app.onError((_, c) => c.text("A fault of ours: the request could not be answered.\n", 500, strictHeaders));
  return app;
}

/** What is answered where the request itself cannot be understood. */
export const notUnderstood = (): Response =>
  new Response("This request cannot be understood.\n", {
    status: 400,
    headers: { ...strictHeaders, "Content-Type": "text/plain; charset=utf-8" },
  });

/**
 * Answers only to this machine's own names, so that no foreign page can have its name pointed here and read what it likes
 * (DNS rebinding).
 */
function ownNameOnly(lan: OnLan | undefined) {
  const isOwn = (host: string): boolean =>
    ownNames.test(host) || (lan?.isCalled(host.replace(/:\d{1,5}$/, "")) ?? false);
  return async (c: Context, next: Next): Promise<Response | undefined> => {
    if (!isOwn(c.req.header("host") ?? "") || !isOwn(new URL(c.req.url).host)) {
      const sentence = lan ? "This server answers only to its own names." : thisMachineOnly;
      return isForPrograms(c) ? refused("host") : c.text(`${sentence}\n`, 403);
    }
    await next();
    return undefined;
  };
}

const thisMachineOnly = "This server answers only to localhost, 127.0.0.1 and [::1].";

const isForPrograms = (c: Context): boolean => c.req.path.startsWith("/api/");

async function readingOnly(c: Context, next: Next): Promise<Response | undefined> {
  if (!methods.includes(c.req.method))
    return c.text(`Only ${methods.join(" and ")} are answered here.\n`, 405, { Allow: methods.join(", ") });
  await next();
  return undefined;
}

/** The path as a name of a file; what cannot be decoded names none. The folder itself is its index. */
function pathIn(url: string): string {
  try {
    const path = decodeURIComponent(new URL(url).pathname);
    return path === "/" ? "/index.html" : path;
  } catch {
    return "";
  }
}

function sent(c: Context, { type, tag, lasting, bytes }: BuiltFile): Response {
  const encoding = acceptedEncoding(c.req.header("accept-encoding"));
  const body = bytes[encoding]();
  const plain = body === bytes.identity();
  const etag = `"${tag}${plain ? "" : `-${encoding}`}"`;
  const headers: Record<string, string> = {
    "Cache-Control": lasting ? "public, max-age=31536000, immutable" : "no-cache",
    ETag: etag,
    Vary: "Accept-Encoding",
  };
  const known = (c.req.header("if-none-match") ?? "").split(",").map((it) => it.trim().replace(/^W\//, ""));
  if (known.includes(etag) || known.includes("*")) return c.body(null, 304, headers);
  headers["Content-Type"] = type;
  headers["Content-Length"] = String(body.length);
  if (!plain) headers["Content-Encoding"] = encoding;
  return c.body(new Uint8Array(body), 200, headers);
}
