import { fuzzRounds } from "./fuzzRounds.ts";
import { type KillReport, killRounds } from "./killRounds.ts";
import { serverRounds } from "./serverRounds.ts";

/**
 * The long form of what `npm test` does briefly: 50 kills in the middle of writes, into the file and over HTTP; with `--fuzz`
 * 100 000 random requests instead. A number says how many.
 */
const fuzz = process.argv.includes("--fuzz");
const count = process.argv.slice(2).map(Number).find(Number.isInteger) ?? (fuzz ? 100_000 : 50);

if (fuzz) await fuzzed();
else {
  told("SQLite", await killRounds(count, Math.random));
  told("the served workshop over HTTP", await serverRounds(count, Math.random));
}

function told(what: string, report: KillReport): void {
  process.stdout.write(
    `kill -9 in the middle of writes, ${what}: ${report.rounds} rounds, ${report.acknowledged} entries acknowledged, ` +
      `${report.lost} lost, ${report.keptUnacknowledged} kept but not acknowledged, ${report.torn} torn writes, ` +
      `${report.faults.length} faults in the file${report.faults.length > 0 ? `: ${report.faults.join("; ")}` : ""}\n`,
  );
  if (report.lost + report.torn + report.faults.length > 0) process.exitCode = 1;
}

async function fuzzed(): Promise<void> {
  const { requests, statuses, faults, held_MB, rss_MB } = await fuzzRounds(count, Math.random);
  const grown = ([first, last]: readonly [number, number]): string =>
    `${first.toFixed(1)} MB at a tenth, ${last.toFixed(1)} MB at the end, ratio ${(last / first).toFixed(2)}`;
  process.stdout.write(
    `${requests} random requests: ${faults.length} faults; answered ${JSON.stringify(statuses)}\n` +
      `memory held after collecting: ${grown(held_MB)}; resident: ${grown(rss_MB)} (allowed 1.20)\n${faults.slice(0, 20).join("\n")}`,
  );
  if (faults.length > 0 || held_MB[1] > 1.2 * held_MB[0] || rss_MB[1] > 1.2 * rss_MB[0]) process.exitCode = 1;
}
