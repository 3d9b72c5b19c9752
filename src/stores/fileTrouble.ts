import { randomBytes } from "node:crypto";
import { closeSync, openSync, rmSync, statSync, writeSync } from "node:fs";
import { dirname, join } from "node:path";
import { StoreTrouble, type Trouble } from "../journal/storeTrouble.ts";

/** What the operating system says of a file, as a trouble of the store; what is none is a fault of ours. */
export function fileTroubleOf(path: string, cause: unknown): unknown {
  const { code } = cause as NodeJS.ErrnoException;
  const trouble = code === undefined ? undefined : troubles[code];
  return trouble ? new StoreTrouble(trouble, path, cause) : cause;
}

/** Larger than a page of SQLite and than what a full disk may still have left. */
const PROBE_bytes = 65_536;

/**
 * What the system says to the next bytes of a file, null if it takes them: SQLite calls a full quota, and a file that has become
 * as large as its file system takes, a broken disk. They go into a file of their own, which has nothing before them.
 */
export function troubleBeyond(path: string, reached_bytes: number): Trouble | null {
  const probe = join(dirname(path), `probe-${randomBytes(6).toString("hex")}`);
  const sizeOf = (it: string): number => statSync(it, { throwIfNoEntry: false })?.size ?? 0;
  const end = Math.max(reached_bytes, sizeOf(path), sizeOf(`${path}-wal`));
  try {
    const file = openSync(probe, "wx", 0o600);
    try {
      writeSync(file, Buffer.alloc(PROBE_bytes), 0, PROBE_bytes, end);
      return null;
    } finally {
      closeSync(file);
    }
  } catch (cause) {
    return troubles[(cause as NodeJS.ErrnoException).code ?? ""] ?? null;
  } finally {
    rmSync(probe, { force: true });
  }
}

const troubles: Readonly<Record<string, Trouble>> = {
  EACCES: "read-only",
  EPERM: "read-only",
  EROFS: "read-only",
  ENOSPC: "full",
  EDQUOT: "full",
  EFBIG: "full",
  ENOENT: "not there",
  ENOTDIR: "not reachable",
  EISDIR: "not reachable",
  EEXIST: "already there",
  EIO: "not reachable",
};
