import { StoreTrouble, type Trouble } from "../journal/storeTrouble.ts";

/** What the operating system says of a file, as a trouble of the store; what is none is a fault of ours. */
export function fileTroubleOf(path: string, cause: unknown): unknown {
  const { code } = cause as NodeJS.ErrnoException;
  const trouble = code === undefined ? undefined : troubles[code];
  return trouble ? new StoreTrouble(trouble, path, cause) : cause;
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
