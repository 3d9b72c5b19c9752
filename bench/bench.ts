import { cpus } from "node:os";
import { type Accuracy, windowAccuracy } from "./accuracy.ts";
import { type AnswerSpeed, answerSpeed } from "./answerSpeed.ts";
import { type AppendSpeed, appendSpeed } from "./appends.ts";
import { pageLines } from "./page/pageLines.ts";
import { pageSpeed } from "./page/pageSpeed.ts";
import { type SheetSpeed, sheetSpeed } from "./sheets.ts";
import { type Speed, windowSpeed } from "./speed.ts";
import { table } from "./table.ts";

/**
 * Times, ratios and accuracy of the torque window and the answer, the journal's pace, and what a tap costs the bench in a
 * browser, each with the machine it ran on. `--json` prints one document, `--journal` and `--page` are those alone, `--quick` runs
 * less of everything.
 */
const json = process.argv.includes("--json");
const quick = process.argv.includes("--quick");
const alone = ["--journal", "--page"].find((it) => process.argv.includes(it)) ?? null;
const runs = (part: string): boolean => alone === null || alone === part;

const answerHead = ["case", "windows", "remedies", "next measurement", "whole answer", "drawing", "ratio"];
const accuracyHead = ["case", "figure", "window", "drawn", "ratio", "allowed"];

const machine = { node: process.version, processor: cpus()[0]?.model ?? "unknown", cores: cpus().length };
const inNode = runs("")
  ? { accuracy: windowAccuracy(quick ? 400_000 : 4_000_000), speed: windowSpeed(), answers: answerSpeed() }
  : null;
const journal = runs("--journal")
  ? { appends: await appendSpeed(quick ? 3 : 15), sheets: await sheetSpeed(quick ? 10_000 : 100_000, quick ? 20 : 200) }
  : null;
const page = runs("--page") ? await pageSpeed(quick ? 1 : 4) : null;

if (json) process.stdout.write(`${JSON.stringify({ machine, ...inNode, ...journal, page }, null, 2)}\n`);
else {
  const { node, processor, cores } = machine;
  const lines = [
    `node ${node}, ${processor}, ${cores} cores`,
    "",
    ...(inNode ? nodeLines(inNode) : []),
    ...(journal ? journalLines(journal) : []),
    ...(page ? pageLines(page) : []),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
}

type InNode = {
  readonly accuracy: readonly Accuracy[];
  readonly speed: readonly Speed[];
  readonly answers: readonly AnswerSpeed[];
};

type JournalPace = { readonly appends: readonly AppendSpeed[]; readonly sheets: readonly SheetSpeed[] };

function journalLines({ appends, sheets }: JournalPace): string[] {
  return [
    "Appends to the journal, and plain inserts of the same into SQLite at the same durability beside them, both warm",
    table(["appends", "entries/s", "plain/s", "ratio"], appends.map(appendRow)),
    "",
    "Pictures on a long journal",
    table(["picture", "entries", "median ms", "p95 ms"], sheets.map(sheetRow)),
    "",
  ];
}

function nodeLines({ accuracy, speed, answers }: InNode): string[] {
  return [
    "Torque window against plain drawing of the same formulas (ratio window : drawn, +- one standard error of the drawing)",
    table(accuracyHead, accuracy.map(accuracyRow)),
    "",
    "Time of one closure, and as a ratio to plain drawing of 100 000 joints run beside it",
    table(["case", "median ms", "least ms", "drawing ms", "ratio"], speed.map(speedRow)),
    "",
    "Time of an answer, median ms, beside the same drawing (wanted: remedies with windows 15, next measurement 60)",
    table(answerHead, answers.map(answerRow)),
    "",
  ];
}

function accuracyRow({ name, figure, window, drawn, standardError, allowed }: Accuracy): string[] {
  const ratio = `${(window / drawn).toFixed(4)} +- ${(standardError / drawn).toFixed(4)}`;
  return [name, figure, window.toPrecision(4), drawn.toPrecision(4), ratio, allowed.toString()];
}

function speedRow({ name, median_ms, least_ms, drawing_ms }: Speed): string[] {
  return [name, median_ms.toFixed(2), least_ms.toFixed(2), drawing_ms.toFixed(0), (median_ms / drawing_ms).toFixed(4)];
}

function appendRow({ name, entriesPerSecond, plainPerSecond, ratio }: AppendSpeed): string[] {
  return [name, entriesPerSecond.toFixed(0), plainPerSecond.toFixed(0), ratio.toFixed(2)];
}

function sheetRow({ name, entries, median_ms, p95_ms }: SheetSpeed): string[] {
  return [name, entries.toString(), median_ms.toFixed(2), p95_ms.toFixed(2)];
}

function answerRow(it: AnswerSpeed): string[] {
  const times = [it.remedies_ms, it.nextMeasurement_ms, it.whole_ms].map((ms) => ms.toFixed(1));
  return [
    it.example,
    String(it.windows),
    ...times,
    it.drawing_ms.toFixed(0),
    (it.remedies_ms / it.drawing_ms).toFixed(3),
  ];
}
