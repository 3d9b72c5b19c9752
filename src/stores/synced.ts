import { closeSync, fsyncSync, openSync } from "node:fs";

/** Puts a file, or the names in a folder, on the disk for good. On Windows a folder cannot be opened for it; there a rename is by itself. */
export function synced(path: string): void {
  if (process.platform === "win32") return;
  const file = openSync(path, "r");
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
