import { cpus } from "node:os";
import { type Accuracy, windowAccuracy } from "./accuracy.ts";
import { type AnswerSpeed, answerSpeed } from "./answerSpeed.ts";
import { type Speed, windowSpeed } from "./speed.ts";

/** Times, ratios and accuracy of the torque window and the answer, each with the machine it ran on. `--json` prints one document. */
const json = process.argv.includes("--json");
const quick = process.argv.includes("--quick");

const accuracyHead = ["case", "figure", "window", "drawn", "ratio", "allowed"];

const machine = { node: process.version, processor: cpus()[0]?.model ?? "unknown", cores: cpus().length };
const accuracy = windowAccuracy(quick ? 400_000 : 4_000_000);
const speed = windowSpeed();
const answers = answerSpeed();

if (json) process.stdout.write(`${JSON.stringify({ machine, accuracy, speed, answers }, null, 2)}\n`);
else
  process.stdout.write(
    [
      `node ${machine.node}, ${machine.processor}, ${machine.cores} cores`,
      "",
      "Torque window against plain drawing of the same formulas (ratio window : drawn, +- one standard error of the drawing)",
      table(accuracyHead, accuracy.map(accuracyRow)),
      "",
      "Time of one closure, and as a ratio to plain drawing of 100 000 joints run beside it",
      table(["case", "median ms", "least ms", "drawing ms", "ratio"], speed.map(speedRow)),
      "",
      "Time of an answer, median ms, beside the same drawing (wanted: remedies with windows 15, next measurement 60)",
      table(
        ["case", "windows", "remedies", "next measurement", "whole answer", "drawing", "ratio"],
        answers.map(answerRow),
      ),
      "",
    ].join("\n"),
  );

function accuracyRow({ name, figure, window, drawn, standardError, allowed }: Accuracy): string[] {
  const ratio = `${(window / drawn).toFixed(4)} +- ${(standardError / drawn).toFixed(4)}`;
  return [name, figure, window.toPrecision(4), drawn.toPrecision(4), ratio, allowed.toString()];
}

function speedRow({ name, median_ms, least_ms, drawing_ms }: Speed): string[] {
  return [name, median_ms.toFixed(2), least_ms.toFixed(2), drawing_ms.toFixed(0), (median_ms / drawing_ms).toFixed(4)];
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

/** Columns as wide as their widest cell. */
function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [head, ...rows];
  const widths = head.map((_, i) => Math.max(...all.map((row) => (row[i] ?? "").length)));
  return all
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
