import { cpus } from "node:os";
import { type Accuracy, windowAccuracy } from "./accuracy.ts";
import { type AnswerSpeed, answerSpeed } from "./answerSpeed.ts";
import { pageLines } from "./page/pageLines.ts";
import { pageSpeed } from "./page/pageSpeed.ts";
import { type Speed, windowSpeed } from "./speed.ts";
import { table } from "./table.ts";

/**
 * Times, ratios and accuracy of the torque window and the answer, and what a tap costs the bench in a browser, each with the
 * machine it ran on. `--json` prints one document, `--page` is the browser alone, `--quick` runs less of everything.
 */
const json = process.argv.includes("--json");
const quick = process.argv.includes("--quick");
const pageOnly = process.argv.includes("--page");

const answerHead = ["case", "windows", "remedies", "next measurement", "whole answer", "drawing", "ratio"];
const accuracyHead = ["case", "figure", "window", "drawn", "ratio", "allowed"];

const machine = { node: process.version, processor: cpus()[0]?.model ?? "unknown", cores: cpus().length };
const inNode = pageOnly
  ? null
  : { accuracy: windowAccuracy(quick ? 400_000 : 4_000_000), speed: windowSpeed(), answers: answerSpeed() };
const page = await pageSpeed(quick ? 1 : 4);

if (json) process.stdout.write(`${JSON.stringify({ machine, ...inNode, page }, null, 2)}\n`);
else {
  const { node, processor, cores } = machine;
  const lines = [
    `node ${node}, ${processor}, ${cores} cores`,
    "",
    ...(inNode ? nodeLines(inNode) : []),
    ...pageLines(page),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
}

type InNode = {
  readonly accuracy: readonly Accuracy[];
  readonly speed: readonly Speed[];
  readonly answers: readonly AnswerSpeed[];
};

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
