import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const root = new URL("..", import.meta.url).pathname;

/** A copy of the house in which a wall may be broken; inside the checkout, so that packages are found. */
let copy: string;

beforeAll(() => {
  mkdirSync(join(root, "dist"), { recursive: true });
  copy = mkdtempSync(join(root, "dist/house-"));
  cpSync(join(root, "src"), join(copy, "src"), { recursive: true });
  cpSync(join(root, "tsconfig.base.json"), join(copy, "tsconfig.base.json"));
});

afterAll(() => rmSync(copy, { recursive: true, force: true }));

const planted: readonly (readonly [wall: string, folder: string, code: string, refusal: string])[] = [
  [
    "mechanics may not import sheets",
    "mechanics",
    'export { torqueText } from "../sheets/words/figures.ts";',
    "TS6307",
  ],
  ["mechanics may not touch the disk", "mechanics", 'export { readFileSync } from "node:fs";', "TS2307"],
  ["mechanics may not print", "mechanics", 'console.log("12 N·m");', "TS2584"],
  ["mechanics may not touch a page", "mechanics", "export const page = document;", "TS2584"],
  ["mechanics may not import the journal", "mechanics", 'export { entryId } from "../journal/entry.ts";', "TS6307"],
  [
    "the journal may not import sheets",
    "journal",
    'export { torqueText } from "../sheets/words/figures.ts";',
    "TS6307",
  ],
  ["the journal may not touch the disk", "journal", 'export { readFileSync } from "node:fs";', "TS2307"],
  ["the journal may not print", "journal", 'console.log("by hand");', "TS2584"],
  ["sheets may not import an app", "sheets", 'export { engine } from "../apps/cli/version.ts";', "TS6307"],
  ["the server may not reckon", "apps/server", 'export { torqueText } from "../../sheets/words/figures.ts";', "TS6307"],
  [
    "the journal may not import where it is kept",
    "journal",
    'export { memoryStore } from "../stores/memory.ts";',
    "TS6307",
  ],
  ["what keeps journals may not import an app", "stores", 'export { api } from "../apps/server/api/api.ts";', "TS6307"],
  ["a browser's store may not touch the disk", "stores/browser", 'export { readFileSync } from "node:fs";', "TS2307"],
  [
    "a browser's store may not import SQLite",
    "stores/browser",
    'export { sqliteFile } from "../sqliteFile.ts";',
    "TS6307",
  ],
  ["sheets may not touch the disk", "sheets", 'export { readFileSync } from "node:fs";', "TS2307"],
];

describe("the compiler holds the walls", () => {
  test.each(planted)("%s", (_, folder, code, refusal) => {
    const file = join(copy, "src", folder, "planted.ts");
    writeFileSync(file, `${code}\n`);
    const { status, stdout } = compiled(folder);
    rmSync(file);
    expect(status).not.toBe(0);
    expect(stdout).toMatch(new RegExp(`planted\\.ts.*(${refusal}|TS2591|TS2580)`));
  });

  test("and lets the house through as it stands", () => {
    expect(compiled("sheets").stdout).toBe("");
  });
});

/** The floors within a folder, the lowest first: a room knows only of those below it. */
const floors = {
  mechanics: ["quantity", "tables", "threads", "silhouette", "service", "fluid", "cure", "joint", "remedies"],
  sheets: ["words", "drawings", "caseForm", "sums", "answer", "journal"],
} as const;

test.each(Object.entries(floors))("within %s imports go down only", (folder, rooms) => {
  const home = join(root, "src", folder);
  expect(
    readdirSync(home)
      .filter((it) => statSync(join(home, it)).isDirectory())
      .sort(),
  ).toEqual([...rooms].sort());
  const upward = rooms.flatMap((room, floor) =>
    sources(join(home, room)).flatMap((file) =>
      [...readFileSync(file, "utf8").matchAll(/from "(\.[^"]*)"/g)]
        .map(([, path = ""]) => relative(home, join(dirname(file), path)).split("/")[0] ?? "")
        .filter((other) => (rooms as readonly string[]).indexOf(other) > floor)
        .map((other) => `${room} imports ${other}: ${file}`),
    ),
  );
  expect(upward).toEqual([]);
});

test("no file of the source is longer than 250 lines", () => {
  const long = sources(join(root, "src")).filter(
    (file) => readFileSync(file, "utf8").trimEnd().split("\n").length > 250,
  );
  expect(long).toEqual([]);
});

test("every package is pinned to one version, runs on Node 20, and the lock file holds no addresses", () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  for (const version of Object.values({ ...dependencies, ...devDependencies }))
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  const lock = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8"));
  const packages = Object.entries(lock.packages) as [string, { resolved?: string; engines?: { node?: string } }][];
  expect(packages.filter(([, it]) => it.resolved)).toEqual([]);
  const excludes20 = packages.filter(([, { engines }]) => /^\s*(>=|\^)\s*(2[1-9]|[3-9]\d)/.test(engines?.node ?? ""));
  expect(excludes20.map(([name]) => name)).toEqual([]);
});

function compiled(folder: string) {
  const compiler = join(root, "node_modules/typescript/bin/tsc");
  return spawnSync(process.execPath, [compiler, "-b", join(copy, "src", folder)], { encoding: "utf8" });
}

function sources(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return sources(path);
    return /\.tsx?$/.test(name) ? [path] : [];
  });
}
