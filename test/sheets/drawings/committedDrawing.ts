import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { expect } from "vitest";

/**
 * Compares a drawing with the file of that name kept here, which somebody looked at.
 * A changed one is laid beside it as `.new.svg`; a missing one is written only with UPDATE_DRAWINGS=1.
 */
export function expectCommitted(name: string, drawn: string): void {
  expect(malformedTags(drawn), name).toEqual([]);
  const kept = new URL(name, import.meta.url);
  if (!existsSync(kept)) {
    if (process.env["UPDATE_DRAWINGS"] !== "1")
      throw new Error(`${name} is missing: write it with UPDATE_DRAWINGS=1, then look at it`);
    writeFileSync(kept, drawn);
  }
  if (readFileSync(kept, "utf8") === drawn) return;
  const beside = name.replace(/(\.\w+)$/, ".new$1");
  writeFileSync(new URL(beside, import.meta.url), drawn);
  expect.fail(`${name} has changed: look at ${beside}, and put it in its place if it is right`);
}

/** Tags that XML does not allow: an attribute of no value, which a page forgives and a file of its own does not. */
const malformedTags = (svg: string): readonly string[] =>
  (svg.replace(/<style>.*?<\/style>/s, "").match(/<[^>]*>/g) ?? []).filter(
    (tag) => !/^<(?:\/[\w:]+|[\w:]+(?:\s+[\w:-]+="[^"<]*")*\s*\/?)>$/.test(tag),
  );
