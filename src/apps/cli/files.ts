import { readFileSync, writeFileSync } from "node:fs";
import { mistaken } from "./mistake.ts";

/** The text of a file, or of standard input for "-". @throws InputMistake if it cannot be read. */
export function textIn(field: string, file: string): string {
  try {
    return readFileSync(file === "-" ? 0 : file, "utf8");
  } catch (cause) {
    throw mistaken(field, file, `a file that can be read (${codeOf(cause)})`);
  }
}

/** Writes a picture. @throws InputMistake if it cannot be written. */
export function writeSvg(file: string, svg: string): void {
  try {
    writeFileSync(file, svg);
  } catch (cause) {
    throw mistaken("--svg", file, `a file that can be written (${codeOf(cause)})`);
  }
}

const codeOf = (cause: unknown): string => (cause as NodeJS.ErrnoException).code ?? "not reachable";
