import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { exampleCase } from "../src/sheets/caseForm/exampleCase.ts";

const root = new URL("..", import.meta.url).pathname;
const read = (path: string): string => readFileSync(join(root, path), "utf8");
const turnsleft = (...options: string[]): string =>
  execFileSync(process.execPath, [join(root, "dist/src/apps/cli/main.js"), ...options], {
    cwd: root,
    encoding: "utf8",
  });

test("the example on disk is the example of `turnsleft start --example`", () => {
  expect(JSON.parse(read("examples/chain-case-level.json"))).toEqual(exampleCase);
});

test("the README's worked answer is what its command prints", () => {
  const block = /```console\n\$ npx turnsleft (.+)\n([\s\S]*?)```/.exec(read("README.md"));
  const [, command = "", printed = ""] = block ?? [];
  const lines = printed.replace(/\n\.\.\.\n$/, "\n");
  expect(lines.split("\n").length).toBeGreaterThan(10);
  expect(turnsleft(...command.split(" "))).toContain(lines);
});

test("the README's picture is the picture of its example", () => {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-"));
  const drawn = join(folder, "drawn.svg");
  turnsleft("weigh", "examples/chain-case-level.json", "--svg", drawn);
  const svg = readFileSync(drawn, "utf8");
  rmSync(folder, { recursive: true });
  const kept = join(root, "docs/pictures/chain-case-level.svg");
  if (!existsSync(kept) || process.env["UPDATE_DRAWINGS"] === "1") writeFileSync(kept, svg);
  expect(svg).toBe(readFileSync(kept, "utf8"));
});

test("every command in the README's table runs", () => {
  const commands = [...read("README.md").matchAll(/^\| `turnsleft ([^`]+)`/gm)].map((match) => match[1] ?? "");
  expect(commands.length).toBeGreaterThan(3);
  for (const command of commands) {
    const options = [...command.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2] ?? "");
    const real = options.map((it) => (it === "case.json" ? "examples/chain-case-level.json" : it));
    expect(turnsleft(...real).trim()).not.toBe("");
  }
});
