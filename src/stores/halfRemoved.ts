import { rmSync } from "node:fs";

/** Removes what a write that failed may have left; where that fails too, the first trouble is the one to tell. */
export function halfRemoved(path: string): void {
  try {
    rmSync(path, { force: true });
  } catch {}
}
