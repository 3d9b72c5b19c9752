import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DatabaseSync } from "@photostructure/sqlite";
import { afterAll, describe, expect, test } from "vitest";
import type { Run } from "./turnsleft.ts";
import { typed } from "./turnsleft.ts";

const root = new URL("../../..", import.meta.url).pathname;
const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
const file = (name: string): string => join(scratch, name);

/** The program, run where its examples may write. */
function turnsleft(...options: string[]): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, [`${root}dist/src/apps/cli/main.js`, ...options], {
    cwd: scratch,
    encoding: "utf8",
  });
  return { status, stdout, stderr };
}
const answer = (...options: string[]) => {
  const { status, stdout, stderr } = turnsleft(...options, "--json");
  if (status !== 0 || stderr !== "") throw new Error(`${options.join(" ")}: ${status} ${stderr}`);
  return JSON.parse(stdout);
};

describe("the journal's commands", () => {
  // In the order in which each finds what the one before it left.
  test.each(["demo", "standing", "check", "backup", "restore", "export", "import"])(
    "%s --help shows an example that runs",
    (command) => {
      const { status, stdout } = turnsleft(command, "--help");
      expect(status).toBe(0);
      const line = /Example:\n {2}turnsleft (.+)\n/.exec(stdout)?.[1] ?? "";
      expect(line).toMatch(new RegExp(`^${command} `));
      const plain = turnsleft(...typed(line));
      expect([plain.status, plain.stderr]).toEqual([0, ""]);
      expect(plain.stdout.trim()).not.toBe("");
      expect(turnsleft("--help").stdout).toMatch(new RegExp(`^  ${command} `, "m"));
    },
  );

  test("a backup and an export hold the same journal, and importing again adds nothing", () => {
    const { entries, owners } = answer("check", "--data", "hollin-reach");
    expect(answer("check", "--data", "hollin-reach-again")).toMatchObject({ whole: true, entries, owners });
    expect(answer("check", "--data", "hollin-reach-copy")).toMatchObject({ whole: true, entries, owners });
    expect(answer("import", "hollin-reach.jsonl", "--data", "hollin-reach-copy")).toMatchObject({ entries, added: 0 });
    expect(turnsleft("export", "-", "--data", "hollin-reach-copy").stdout).toBe(
      readFileSync(file("hollin-reach.jsonl"), "utf8"),
    );
  });

  test("standing says the same to a program as to a person", () => {
    const now = ["--now", "2026-11-25T10:40Z"];
    turnsleft("demo", "--data", "that-day", ...now);
    const { standing } = answer("standing", "--data", "that-day", ...now);
    expect(standing.map((it: { job: string }) => it.job)).toEqual(["0405", "0412", "0413"]);
    const { stdout } = turnsleft("standing", "--data", "that-day", ...now);
    expect(stdout).toContain("DO NOT START  0413  Family car, bay 2");
    expect(stdout).toContain("Sump drain: BY HAND, 12 min, Sefa Oyelund");
  });
});

describe("a mistake names the field, what was given and what is accepted", () => {
  const refused = (status: number, ...options: string[]) => {
    const run = turnsleft(...options);
    expect([run.status, run.stdout]).toEqual([status, ""]);
    expect(run.stderr.trim().split("\n")).toHaveLength(1);
    return run.stderr;
  };

  test("no file, no folder, no moment", () => {
    expect(refused(2, "backup")).toContain("file: given nothing; accepted: the file to write");
    expect(refused(2, "demo")).toContain("--data: given nothing; accepted: a folder that holds no journal yet");
    expect(refused(2, "standing", "--now", "10:40")).toContain('--now: given "10:40"; accepted: a moment in UTC');
    expect(refused(2, "export", "-", "--json")).toContain("--json");
  });

  test("what is not there, and what is there already", () => {
    expect(refused(3, "standing", "--data", "nowhere")).toContain("nowhere: there is no journal");
    expect(refused(3, "backup", "hollin-reach.backup", "--data", "hollin-reach")).toContain("nothing is overwritten");
    expect(refused(3, "export", "hollin-reach.jsonl", "--data", "hollin-reach")).toContain("nothing is overwritten");
    expect(refused(3, "restore", "hollin-reach.backup", "--data", "hollin-reach")).toContain("nothing is overwritten");
    expect(refused(3, "demo", "--data", "hollin-reach")).toContain("nothing is overwritten");
    expect(existsSync(file("nowhere"))).toBe(false);
    mkdirSync(file("odd.part"));
    for (const command of ["backup", "export"])
      expect(refused(3, command, "odd", "--data", "hollin-reach")).toContain("odd: it cannot be reached");
  });

  test("an export that was cut off, changed or forked adds nothing", () => {
    const lines = readFileSync(file("hollin-reach.jsonl"), "utf8").trimEnd().split("\n");
    const variant = (name: string, changed: readonly string[]) => {
      writeFileSync(file(name), `${changed.join("\n")}\n`);
      return name;
    };
    const tried = (name: string) => refused(2, "import", name, "--data", "hollin-reach-copy");
    const before = answer("check", "--data", "hollin-reach-copy").entries;
    expect(tried(variant("cut.jsonl", lines.slice(0, 20)))).toContain("cut.jsonl, line 20: ");
    expect(tried(variant("short.jsonl", lines.toSpliced(30, 1)))).toMatch(
      /accepted: \d+ entries and 12 owners before it/,
    );
    expect(tried(variant("odd.jsonl", lines.with(40, '{"entry":{"number":0}}')))).toContain("odd.jsonl, line 41: ");
    expect(tried(variant("no.jsonl", lines.with(40, "{")))).toContain("one JSON object a line");
    const forked = lines.map((line) => line.replace('"words":"called away"', '"words":"called in"'));
    expect(tried(variant("fork.jsonl", forked))).toContain("a different entry phone-sefa/");
    expect(answer("check", "--data", "hollin-reach-copy").entries).toBe(before);
  });

  test("another workshop's export", () => {
    const lines = readFileSync(file("hollin-reach.jsonl"), "utf8").replaceAll('"hollin-reach"', '"elsewhere"');
    writeFileSync(file("elsewhere.jsonl"), lines);
    expect(refused(3, "import", "elsewhere.jsonl", "--data", "hollin-reach")).toContain("of another workshop");
  });

  test("a second process on the same data", async () => {
    const writer = spawn(process.execPath, [`${root}dist/test/torture/killWriter.js`, file("busy")]);
    await new Promise((resume) => writer.stdout.once("data", resume));
    const busy = refused(3, "import", "hollin-reach.jsonl", "--data", "busy");
    expect(busy).toContain("another Turnsleft is working with these data");
    expect(answer("backup", "busy.backup", "--data", "busy").readBack).toBe(true);
    const ended = new Promise((resume) => writer.once("close", resume));
    writer.kill("SIGKILL");
    await ended;
  });

  test("a journal that was tampered with: the faults are told, and the exit says so", () => {
    const tampered = new DatabaseSync(join(file("that-day"), "journal.db"));
    tampered.exec("drop trigger entry_is_kept; delete from entry where device = 'bench' and number = 7");
    tampered.close();
    const { status, stdout } = turnsleft("check", "--data", "that-day");
    expect(status).toBe(3);
    expect(stdout).toContain("NOT WHOLE: 2 faults");
    expect(stdout).toContain("bench/8: the entry before it is missing");
    expect(refused(3, "backup", "bad.backup", "--data", "that-day")).toContain("it is damaged");
    expect(existsSync(file("bad.backup"))).toBe(false);
  });
});
