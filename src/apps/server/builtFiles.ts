import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { brotliCompressSync, gzipSync, constants as zlib } from "node:zlib";

/** One file of the built web app, ready to be sent. */
export type BuiltFile = {
  readonly type: string;
  readonly tag: string;
  /** Its name changes with its content, so that it may be kept for ever. */
  readonly lasting: boolean;
  readonly bytes: Record<Encoding, () => Buffer>;
};

/** How a file may travel, the smallest first. */
export const encodings = ["br", "gzip", "identity"] as const;
export type Encoding = (typeof encodings)[number];

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".jpg": "image/jpeg",
  ".webp": "image/webp",
  ".woff2": "font/woff2",
  ".txt": "text/plain; charset=utf-8",
  ".wasm": "application/wasm",
};
const alreadySmall = new Set([".woff2", ".png", ".jpg", ".webp"]);

/**
 * The files of a folder by their path in the address, as "/assets/app-1a2b3c4d.js".
 *
 * They are read once, and only what stands in this list is ever sent: no address can be bent into a path on the disk.
 * Names that begin with a point are left out. @throws if the folder cannot be read.
 */
export function builtFiles(folder: string): ReadonlyMap<string, BuiltFile> {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((it) => it.isFile() && !it.name.startsWith("."))
    .map((it) => join(it.parentPath, it.name));
  return new Map(paths.map((path) => [addressOf(folder, path), builtFile(path)]));
}

const addressOf = (folder: string, path: string): string =>
  `/${path.slice(join(folder, "/").length).replaceAll("\\", "/")}`;

function builtFile(path: string): BuiltFile {
  const content = readFileSync(path);
  const ending = extname(path).toLowerCase();
  const plain = () => content;
  const dense = !alreadySmall.has(ending) && content.length > 1000;
  const quality = { params: { [zlib.BROTLI_PARAM_QUALITY]: 9 } };
  return {
    type: types[ending] ?? "application/octet-stream",
    tag: createHash("sha256").update(content).digest("base64url").slice(0, 22),
    lasting: /[\\/]assets[\\/][^\\/]+-[\w-]{8}\.\w+$/.test(path),
    bytes: {
      br: dense ? once(() => brotliCompressSync(content, quality)) : plain,
      gzip: dense ? once(() => gzipSync(content, { level: 9 })) : plain,
      identity: plain,
    },
  };
}

function once(work: () => Buffer): () => Buffer {
  let done: Buffer | undefined;
  return () => {
    done ??= work();
    return done;
  };
}
