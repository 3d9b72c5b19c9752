import { killRounds } from "./killRounds.ts";

/** The long form of what `npm test` does briefly: 50 kills in the middle of writes. */
const rounds = Number(process.argv[2] ?? 50);
const report = await killRounds(rounds, Math.random);
process.stdout.write(
  `kill -9 in the middle of writes, SQLite: ${report.rounds} rounds, ${report.acknowledged} entries acknowledged, ` +
    `${report.lost} lost, ${report.keptUnacknowledged} kept but not acknowledged, ${report.torn} torn writes, ` +
    `${report.faults.length} faults in the file${report.faults.length > 0 ? `: ${report.faults.join("; ")}` : ""}\n`,
);
if (report.lost + report.torn + report.faults.length > 0) process.exitCode = 1;
