import { type KillReport, killRounds } from "./killRounds.ts";
import { serverRounds } from "./serverRounds.ts";

/** The long form of what `npm test` does briefly: 50 kills in the middle of writes, into the file and over HTTP. */
const rounds = Number(process.argv[2] ?? 50);

told("SQLite", await killRounds(rounds, Math.random));
told("the served workshop over HTTP", await serverRounds(rounds, Math.random));

function told(what: string, report: KillReport): void {
  process.stdout.write(
    `kill -9 in the middle of writes, ${what}: ${report.rounds} rounds, ${report.acknowledged} entries acknowledged, ` +
      `${report.lost} lost, ${report.keptUnacknowledged} kept but not acknowledged, ${report.torn} torn writes, ` +
      `${report.faults.length} faults in the file${report.faults.length > 0 ? `: ${report.faults.join("; ")}` : ""}\n`,
  );
  if (report.lost + report.torn + report.faults.length > 0) process.exitCode = 1;
}
