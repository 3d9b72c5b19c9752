import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

/** What a build leaves, by name; the script is long enough to be worth packing. */
export const contents: Readonly<Record<string, string>> = {
  "index.html": "<!doctype html><title>bench</title>",
  "assets/app-1a2B_c-4.js": `${"const turns = 3.5;\n".repeat(200)}`,
  "assets/app-Zz09xY12.css": "p { margin: 0 }",
  "assets/letters-00aa11bb.woff2": "wOF2".repeat(600),
  "assets/port-00aa11bb.svg": "<svg/>",
  "bench.webmanifest": "{}",
  "odd.xyz": "?",
  ".hidden": "not to be sent",
};

/** A folder with those files, and a file beside it that must never be sent. */
export function builtFolder(): string {
  const above = mkdtempSync(join(tmpdir(), "turnsleft-"));
  writeFileSync(join(above, "secret.txt"), "secret");
  for (const [name, content] of Object.entries(contents)) {
    const path = join(above, "web", name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  }
  return join(above, "web");
}
