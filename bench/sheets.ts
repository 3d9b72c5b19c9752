import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { DeviceId, JobId, PersonId, WorkshopId } from "../src/journal/facts/ids.ts";
import { jobSheet } from "../src/journal/job/jobProjection.ts";
import { pen } from "../src/journal/pen.ts";
import { project } from "../src/journal/projection.ts";
import { journalReader } from "../src/journal/reader.ts";
import { standing } from "../src/journal/views/standing.ts";
import { sqliteJournal } from "../src/stores/sqliteJournal.ts";
import { entriesOfJob, jobName, longJournal } from "./longJournal.ts";

/** How long a picture takes on a long journal. */
export type SheetSpeed = {
  readonly name: string;
  readonly entries: number;
  readonly median_ms: number;
  readonly p95_ms: number;
};

const workshop = "bench" as WorkshopId;

/** The standing sheet and a job's sheet on a journal of `count` entries in a file of SQLite. */
export async function sheetSpeed(count: number, rounds: number): Promise<readonly SheetSpeed[]> {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-bench-"));
  const { store } = sqliteJournal(join(folder, "journal.db"), workshop, "write");
  await store.add(longJournal(workshop, count));
  const jobs = Math.floor(count / entriesOfJob);
  const open = jobName(jobs - 1) as JobId;
  const writer = pen(store, workshop, "bench" as DeviceId);
  const write = () =>
    writer.write(
      { by: "jory" as PersonId, job: open, at: "2026-11-25T10:00:00Z" },
      { type: "NoteWritten", words: "one more" },
    );

  const cold: number[] = [];
  for (let i = 0; i < 3; i++) cold.push(await timed(() => journalReader(store).refresh()));

  const reader = journalReader(store);
  await reader.refresh();
  const wall: number[] = [];
  const sheet: number[] = [];
  const alone: number[] = [];
  let seen = 0;
  for (let i = 0; i < rounds; i++) {
    await write();
    wall.push(
      await timed(async () => {
        await reader.refresh();
        seen += standing(reader.sheets(), "2026-11-25T10:40:00Z").length;
      }),
    );
    await write();
    sheet.push(
      await timed(async () => {
        await reader.refresh();
        seen += reader.sheet(open).log.length;
      }),
    );
    const job = jobName((i * 37) % jobs) as JobId;
    alone.push(
      await timed(async () => {
        seen += project(jobSheet, await store.ofJob(job)).log.length;
      }),
    );
  }
  if (seen < rounds * 3) throw new Error("the sheets were empty");
  await store.close();
  rmSync(folder, { recursive: true });
  const entries = jobs * entriesOfJob;
  return [
    { name: "standing sheet after one more entry", entries, ...spread(wall) },
    { name: "job sheet after one more entry", entries, ...spread(sheet) },
    { name: "job sheet read from the file alone", entries, ...spread(alone) },
    { name: "the whole journal read once", entries, ...spread(cold) },
  ];
}

async function timed(work: () => Promise<void>): Promise<number> {
  const from = performance.now();
  await work();
  return performance.now() - from;
}

function spread(times: readonly number[]) {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  return { median_ms: at(0.5), p95_ms: at(0.95) };
}
