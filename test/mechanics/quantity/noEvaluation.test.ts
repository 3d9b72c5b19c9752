import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const source = new URL("../../../src/", import.meta.url);

/** Ways in which text becomes code; a strict Content-Security-Policy forbids every one. */
const evaluation =
  /\beval\s*\(|\bnew\s+Function\b|\bFunction\s*\(|\bset(?:Timeout|Interval)\s*\(\s*["'`]|\bimport\s*\(/;

describe.each(["mechanics", "sheets"])("src/%s", (folder) => {
  const files = readdirSync(new URL(folder, source), { recursive: true, encoding: "utf8" }).filter((name) =>
    /\.tsx?$/.test(name),
  );

  test("was found", () => expect(files.length).toBeGreaterThan(20));

  test("turns no text into code", () => {
    const guilty = files.filter((name) => evaluation.test(readFileSync(new URL(`${folder}/${name}`, source), "utf8")));
    expect(guilty).toEqual([]);
  });
});

test.each(["eval(text)", "new Function('x', body)", "Function(body)", 'setTimeout("go()", 1)', "import(name)"])(
  "%s would be seen",
  (code) => expect(evaluation.test(code)).toBe(true),
);
