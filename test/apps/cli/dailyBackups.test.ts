import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { dailyBackups, KEPT } from "../../../src/apps/cli/dailyBackups.ts";
import type { JobId, PersonId } from "../../../src/journal/facts/ids.ts";
import { backupLine } from "../../../src/sheets/words/backupWords.ts";
import { backedUp } from "../../../src/stores/backup.ts";
import { openToWrite, type WorkshopAtWork } from "../../../src/stores/dataFolder.ts";
import { inspected } from "../../../src/stores/journalFile.ts";
import { backupAge, lastBackupOf } from "../../../src/stores/lastBackup.ts";
import { photosIn } from "../../../src/stores/photoCopies.ts";
import { started } from "../../browser/startedTurnsleft.ts";
import { inPieces, nameOf, plainPhoto } from "../../stores/pictures.ts";

const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));
const program = new URL("../../../dist/src/apps/cli/main.js", import.meta.url).pathname;

let places = 0;
let folder: string;
let place: string;
let clock: Date;
let told: string[];
let taken: string[];
beforeEach(() => {
  folder = join(scratch, `shop-${places}`);
  place = join(scratch, `backups-${places++}`);
  clock = new Date("2026-11-27T07:30:00Z");
  told = [];
  taken = [];
});

/** The backups of `work`, taken for real. */
const backupsOf = ({ workshop }: WorkshopAtWork, take = taking) =>
  dailyBackups({ folder, workshop, place, take, now: () => clock, tell: (it) => told.push(it) });

async function taking(file: string) {
  taken.push(file);
  await backedUp(folder, file);
  return { made: true, trouble: null };
}

const later = (hours: number): void => {
  clock = new Date(clock.getTime() + hours * 3_600_000);
};
const write = (work: WorkshopAtWork, words: string) =>
  work.pen.write(
    { by: "jory" as PersonId, job: "0412" as JobId, at: "2026-11-27T07:00:00Z" },
    { type: "NoteWritten", words },
  );
const backups = (): readonly string[] => readdirSync(place).filter((it) => it.endsWith(".backup"));

describe("a backup a day", () => {
  test("at the start, and again when a day has gone, while the journal is written", async () => {
    const work = openToWrite(folder);
    await write(work, "a");
    const daily = backupsOf(work);
    await daily.madeIfDue();
    expect(backups()).toEqual([`${work.workshop}-20261127T073000Z.backup`]);
    expect(lastBackupOf(folder)).toEqual({ at: "2026-11-27T07:30:00.000Z", file: taken[0] });
    await write(work, "b");
    later(23.9);
    await daily.madeIfDue();
    expect(taken).toHaveLength(1);
    expect(backupAge(folder, clock.toISOString())).toEqual({ at: "2026-11-27T07:30:00.000Z", age_h: 23.9 });
    later(0.1);
    await Promise.all([daily.madeIfDue(), daily.madeIfDue()]);
    expect(taken).toHaveLength(2);
    expect(taken.map((it) => inspected(it).entries)).toEqual([1, 2]);
    expect(told).toEqual([]);
    await work.close();
  });

  test("another process that starts goes on from what the one before it noted", async () => {
    const work = openToWrite(folder);
    await backupsOf(work).madeIfDue();
    later(5);
    await backupsOf(work).madeIfDue();
    expect(taken).toHaveLength(1);
    await work.close();
  });

  test("one that was carried off, and one of a clock that was set back, do not count", async () => {
    const work = openToWrite(folder);
    await backupsOf(work).madeIfDue();
    rmSync(taken[0] ?? "");
    expect(backupAge(folder, clock.toISOString())).toBeNull();
    later(0.1);
    await backupsOf(work).madeIfDue();
    expect(taken).toHaveLength(2);
    later(-48);
    await backupsOf(work).madeIfDue();
    expect(taken).toHaveLength(3);
    await work.close();
  });

  test(`the last ${KEPT} stay, and nothing of anybody else's goes`, async () => {
    const work = openToWrite(folder);
    const daily = backupsOf(work);
    await daily.madeIfDue();
    const others = ["w-other-20200101T000000Z.backup", `${work.workshop}-by-hand.backup`, "letter.txt"];
    for (const name of others) writeFileSync(join(place, name), "");
    writeFileSync(join(place, `${work.workshop}-20261127T080000Z.backup.part`), "half");
    for (let day = 0; day < KEPT + 2; day++) {
      later(24);
      await daily.madeIfDue();
    }
    const left = readdirSync(place).sort();
    expect(left.filter((it) => others.includes(it))).toHaveLength(3);
    const ours = left.filter((it) => !others.includes(it));
    expect(ours).toHaveLength(KEPT);
    expect(ours[0]).toBe(`${work.workshop}-20261130T073000Z.backup`);
    await work.close();
  });

  test("a server on which it fails works on: one sentence, not one every time, until it is well again", async () => {
    const work = openToWrite(folder);
    writeFileSync(place, "a file where the folder should be");
    const daily = backupsOf(work);
    await daily.madeIfDue();
    await daily.madeIfDue();
    expect(told).toEqual([`Daily backup: ${place}: something is there already, and nothing is overwritten.`]);
    expect(lastBackupOf(folder)).toBeNull();
    rmSync(place);
    await daily.madeIfDue();
    expect([backups().length, told.length]).toEqual([1, 1]);
    await work.close();
  });
});

describe("in a process of its own", () => {
  const apart = async () => (await import("../../../dist/src/apps/cli/takenApart.js" as string)).takenApart(folder);

  test("with the photos, read back, while this one writes; what is damaged is told", async () => {
    const work = openToWrite(folder);
    await write(work, "a");
    const [whole, damaged] = [await plainPhoto(), await plainPhoto(50, 50)];
    for (const it of [whole, damaged]) await photosIn(folder).keep(nameOf(it), inPieces(it));
    writeFileSync(photosIn(folder).at(nameOf(damaged))?.path ?? "", "spoilt");
    const daily = backupsOf(work, (await apart()).take);
    const [made] = await Promise.all([daily.madeIfDue(), write(work, "b")]);
    expect(made).toBeUndefined();
    const [name = ""] = backups();
    expect(inspected(join(place, name)).faults).toEqual([]);
    expect(readdirSync(join(place, `${work.workshop}.photos`))).toEqual([`${nameOf(whole)}.jpg`]);
    expect(told).toEqual(["Daily backup: 1 photos are damaged and not in it; npx turnsleft check names them."]);
    const { stdout } = spawnSync(process.execPath, [program, "standing", "--data", folder, "--json"], {
      encoding: "utf8",
    });
    expect(JSON.parse(stdout).backup.at).toBe("2026-11-27T07:30:00.000Z");
    await work.close();
  });

  test("a journal that is damaged is told in the words of the command, and no backup is noted", async () => {
    const work = openToWrite(folder);
    await write(work, "a");
    await work.close();
    const { DatabaseSync } = await import("@photostructure/sqlite");
    const file = new DatabaseSync(join(folder, "journal.db"));
    file.exec("drop trigger entry_stays; update entry set clock = 7");
    file.close();
    const daily = backupsOf(work, (await apart()).take);
    await daily.madeIfDue();
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/^Daily backup: .*journal\.db: it is damaged, or no journal of Turnsleft; /);
    expect([backups(), lastBackupOf(folder)]).toEqual([[], null]);
  });

  test("broken off when the server stops", async () => {
    const work = openToWrite(folder);
    await write(work, "a");
    const { take, stop } = await apart();
    const daily = backupsOf(work, take);
    const made = daily.madeIfDue();
    // It has begun by now, and in no time at all it might have ended.
    expect(existsSync(place)).toBe(true);
    stop();
    await made;
    expect(lastBackupOf(folder)).toBeNull();
    await work.close();
  });
});

describe("start", () => {
  test("backs up on its own, tells the age in /health, and the wall tells it too", async () => {
    const run = await started(
      process.execPath,
      [program, "start", "--port", "0", "--data", folder, "--backups", place, "--json"],
      /\}\n$/,
    );
    const { address, workshop } = JSON.parse(run.printed);
    const health = async () => (await (await fetch(`${address}health`)).json()) as { backup: { age_h: number } | null };
    await expect.poll(async () => (await health()).backup?.age_h, { timeout: 30_000 }).toBe(0);
    expect(backups()).toEqual([expect.stringMatching(new RegExp(`^${workshop}-\\d{8}T\\d{6}Z\\.backup$`))]);
    const { stdout } = spawnSync(process.execPath, [program, "standing", "--data", folder], { encoding: "utf8" });
    expect(stdout).toBe("Nothing stands open.\nLast backup: less than an hour ago.\n");
    run.process.kill("SIGTERM");
    expect(await run.ended).toBe(0);
  });

  test("serves on where no backup can be made, and says so", async () => {
    writeFileSync(place, "a file where the folder should be");
    const run = await started(
      process.execPath,
      [program, "start", "--port", "0", "--data", folder, "--backups", place, "--json"],
      /\}\n$/,
    );
    await expect
      .poll(run.complained, { timeout: 20_000 })
      .toContain(`turnsleft: Daily backup: ${place}: something is there already`);
    const health = await fetch(`${JSON.parse(run.printed).address}health`);
    expect(await health.json()).toMatchObject({ status: "ok", backup: null });
    run.process.kill("SIGTERM");
    expect(await run.ended).toBe(0);
  });
});

test.each([
  [null, "NO DAILY BACKUP yet; npx turnsleft start makes one a day."],
  [0.4, "Last backup: less than an hour ago."],
  [25.9, "Last backup: 25 h ago."],
  [26.1, "THE LAST BACKUP IS 26 h OLD; npx turnsleft start says why."],
  [80, "THE LAST BACKUP IS 3 d OLD; npx turnsleft start says why."],
])("a backup of %s h: %s", (age_h, line) => {
  expect(backupLine(age_h === null ? null : { age_h })).toBe(line);
});
