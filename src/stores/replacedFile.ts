import { closeSync, fsyncSync, openSync, renameSync, writeSync } from "node:fs";
import { fileTroubleOf } from "./fileTrouble.ts";
import { halfRemoved } from "./halfRemoved.ts";

/**
 * Puts `text` in the place of what a file holds, all of it or nothing whatever comes in between, for its owner alone to read.
 * @throws StoreTrouble
 */
export function replaceFile(path: string, text: string): void {
  const part = `${path}.part`;
  try {
    const file = openSync(part, "w", 0o600);
    try {
      writeSync(file, text);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(part, path);
  } catch (cause) {
    halfRemoved(part);
    throw fileTroubleOf(path, cause);
  }
}
