import { existsSync, mkdirSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileTroubleOf } from "./fileTrouble.ts";

/**
 * Makes a folder for its owner alone, with those above it, where it is not there yet.
 *
 * One by one: asked to make several at once on a disk that may only be read, the system says that it does not find them.
 * @throws StoreTrouble
 */
export function madeFolder(folder: string): void {
  const missing: string[] = [];
  for (let at = resolve(folder); !existsSync(at); at = dirname(at)) missing.unshift(at);
  try {
    for (const at of missing) mkdirSync(at, { mode: 0o700 });
    mkdirSync(folder, { recursive: true });
  } catch (cause) {
    throw fileTroubleOf(folder, cause);
  }
}
