import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Heads } from "../../src/journal/store.ts";
import { journalIn, openToWrite } from "../../src/stores/dataFolder.ts";
import { inspected } from "../../src/stores/journalFile.ts";

/** What came of killing a writer again and again in one data folder. */
export type KillReport = {
  readonly rounds: number;
  readonly acknowledged: number;
  /** Acknowledged and not there afterwards: the number that has to be 0. */
  readonly lost: number;
  /** There although nobody was told: its writer will write it again, and that changes nothing. */
  readonly keptUnacknowledged: number;
  /** Writes of several entries of which only some are there. */
  readonly torn: number;
  readonly faults: readonly string[];
};

/** Kills a process in the middle of its writes, `rounds` times, and reads the journal through after each. */
export async function killRounds(rounds: number, random: () => number): Promise<KillReport> {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-kill-"));
  let report: KillReport = { rounds: 0, acknowledged: 0, lost: 0, keptUnacknowledged: 0, torn: 0, faults: [] };
  let before = 0;
  for (let round = 0; round < rounds; round++) {
    const last = await killedAfter(folder, 30 + 220 * random());
    const { faults } = inspected(journalIn(folder));
    const work = openToWrite(folder);
    const kept = (await work.store.heads())[work.device] ?? 0;
    const entries = await work.store.since({ [work.device]: before } as Heads);
    await work.close();
    const [, done = 1, of = 1] =
      /^(\d) of (\d)/.exec((entries.at(-1)?.fact as { words?: string } | undefined)?.words ?? "") ?? [];
    report = {
      rounds: round + 1,
      acknowledged: report.acknowledged + Math.max(0, last - before),
      lost: report.lost + Math.max(0, last - kept),
      keptUnacknowledged: report.keptUnacknowledged + Math.max(0, kept - Math.max(last, before)),
      torn: report.torn + (Number(done) === Number(of) ? 0 : 1),
      faults: [...report.faults, ...faults.map(({ type, place }) => `${type} at ${place}`)],
    };
    before = kept;
  }
  rmSync(folder, { recursive: true });
  return report;
}

/** A built program. Sources lie two folders deep, what is built from them three: either way it is the built one. */
export const built = (path: string): string =>
  fileURLToPath(new URL(`../../dist/${path}`, import.meta.url.replace(/\/dist\/test\//, "/test/")));

/** Writes that were acknowledged before a kill is thought of. */
const WRITES_BEFORE = 8;

const writer = built("test/torture/killWriter.js");

/** The number of the last entry that a writer acknowledged before it was killed; 0 for none. */
function killedAfter(folder: string, wait_ms: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [writer, folder], { stdio: ["ignore", "pipe", "pipe"] });
    let said = "";
    let complaint = "";
    child.stderr.on("data", (text) => {
      complaint += text;
    });
    let waits = false;
    child.stdout.on("data", (text) => {
      said += text;
      // However slow the machine is today, it is in the middle of writing.
      if (!waits && said.split("\n").length > WRITES_BEFORE) {
        waits = true;
        setTimeout(() => child.kill("SIGKILL"), wait_ms);
      }
    });
    child.on("close", (_, signal) => {
      if (signal !== "SIGKILL") return reject(new Error(`the writer ended by itself: ${complaint}`));
      // The last line may have been cut off by the kill.
      const numbers = said
        .split("\n")
        .slice(0, -1)
        .map((line) => Number(line.split("/")[1] ?? 0));
      resolve(Math.max(0, ...numbers));
    });
  });
}
