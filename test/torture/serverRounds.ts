import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import type { Entry } from "../../src/journal/entry.ts";
import { StoreTrouble } from "../../src/journal/storeTrouble.ts";
import { journalIn, openToRead } from "../../src/stores/dataFolder.ts";
import { inspected } from "../../src/stores/journalFile.ts";
import { remoteStore } from "../../src/stores/remote.ts";
import { type Started, started } from "../browser/startedTurnsleft.ts";
import { built, type KillReport } from "./killRounds.ts";

/** Devices that write at the same time: their writes share commits. */
const WRITERS = 6;

/** A device as it goes through the rounds: what it was told is kept, and what it sends again because it was not. */
type Writer = { readonly token: string; readonly device: string; acknowledged: number; unanswered: readonly Entry[] };

/**
 * Kills a served workshop in the middle of writes over HTTP, `rounds` times: the real program, a file of SQLite, several devices
 * at once. After each kill the file is read through; then the server is started anew, and each device sends again what it was not
 * answered.
 */
export async function serverRounds(rounds: number, random: () => number): Promise<KillReport> {
  const folder = mkdtempSync(join(tmpdir(), "turnsleft-served-kill-"));
  const writers: Writer[] = [];
  let report: KillReport = { rounds: 0, acknowledged: 0, lost: 0, keptUnacknowledged: 0, torn: 0, faults: [] };
  for (let round = 0; round < rounds; round++) {
    const server = await serverOn(folder);
    const { address, workshop } = JSON.parse(server.printed);
    while (writers.length < WRITERS) writers.push(await letIn(address, folder));
    const acknowledged = (): number => writers.reduce((sum, it) => sum + it.acknowledged, 0);
    const before = acknowledged();
    const writing = Promise.all(writers.map((it, i) => writesUntilCut(it, address, workshop, round + i)));
    // However slow the machine is today, it is in the middle of writing.
    while (acknowledged() < before + 10) await pause(5);
    await pause(260 * random());
    server.process.kill("SIGKILL");
    await server.ended;
    await writing;
    const found = await heldAfter(folder, writers);
    report = {
      rounds: round + 1,
      acknowledged: report.acknowledged + acknowledged() - before,
      lost: report.lost + found.lost,
      keptUnacknowledged: report.keptUnacknowledged + found.keptUnacknowledged,
      torn: report.torn + found.torn,
      faults: [...report.faults, ...found.faults],
    };
  }
  rmSync(folder, { recursive: true });
  return report;
}

const program = built("src/apps/cli/main.js");

const serverOn = (folder: string): Promise<Started> =>
  started(process.execPath, [program, "start", "--port", "0", "--json", "--data", folder], /\}\n$/);

/** Lets a device in by a code, as a person would: the code of `pair` on the workshop's screen. */
async function letIn(address: string, folder: string): Promise<Writer> {
  const { printed, ended } = await started(process.execPath, [program, "pair", "--json", "--data", folder], /\}\n$/);
  await ended;
  const body = JSON.stringify({ code: JSON.parse(printed).code, name: "writer" });
  const answer = await fetch(`${address}api/devices`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body,
  });
  return { ...((await answer.json()) as { token: string; device: string }), acknowledged: 0, unanswered: [] };
}

/** Writes pieces of one to five entries, one after the other, until the line is cut; what was not answered goes first. */
async function writesUntilCut(it: Writer, address: string, workshop: string, from: number): Promise<void> {
  const store = remoteStore({ address, token: it.token });
  for (let burst = from; ; burst++) {
    if (it.unanswered.length === 0) it.unanswered = piece(it, workshop, 1 + (burst % 5));
    try {
      await store.add(it.unanswered);
    } catch (fault) {
      if (fault instanceof StoreTrouble && fault.trouble === "not reachable") return;
      throw fault;
    }
    it.acknowledged = it.unanswered.at(-1)?.number ?? 0;
    it.unanswered = [];
  }
}

const piece = ({ device, acknowledged }: Writer, workshop: string, size: number): readonly Entry[] =>
  Array.from({ length: size }, (_, k) => {
    const number = acknowledged + 1 + k;
    const fact = { type: "NoteWritten", words: `${k + 1} of ${size} ${"x".repeat(600)}` };
    return { workshop, device, number, clock: number, at: "2026-11-25T08:00:00Z", by: "jory", job: "0412", fact };
  }) as unknown as readonly Entry[];

/** What of all that lies in the file. */
async function heldAfter(folder: string, writers: readonly Writer[]) {
  const faults = inspected(journalIn(folder)).faults.map(({ type, place }) => `${type} at ${place}`);
  const work = openToRead(folder);
  const heads: Readonly<Record<string, number>> = await work.store.heads();
  await work.close();
  let [lost, keptUnacknowledged, torn] = [0, 0, 0];
  for (const { device, acknowledged, unanswered } of writers) {
    const kept = heads[device] ?? 0;
    lost += Math.max(0, acknowledged - kept);
    const more = Math.max(0, kept - acknowledged);
    keptUnacknowledged += more;
    if (more !== 0 && more !== unanswered.length) torn++;
  }
  return { faults, lost, keptUnacknowledged, torn };
}
