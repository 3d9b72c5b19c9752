import type { Command } from "commander";
import { type Air, humidityFelt, humidityRead } from "../../../mechanics/cure/air.ts";
import { type CureClocks, cureClocks } from "../../../mechanics/cure/clocks.ts";
import { type CureTime, ordinaryFront } from "../../../mechanics/cure/front.ts";
import { cureInThread } from "../../../mechanics/cure/inThread.ts";
import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { h, min, mm, percent } from "../../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../../mechanics/quantity/working.ts";
import { metricThread } from "../../../mechanics/threads/metricThread.ts";
import { cureClockSvg } from "../../../sheets/answer/cureClockSvg.tsx";
import { cureLines } from "../../../sheets/words/cureWords.ts";
import { writeSvg } from "../files.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = {
  readonly bead: string;
  readonly temperature: string;
  readonly humidity: string;
  readonly open: string;
  readonly label?: string;
  readonly closed?: string;
  readonly svg?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

export function cureCommand(program: Command): void {
  program
    .command("cure")
    .description("when a joint sealed with silicone may be splashed, and when it is cured through")
    .requiredOption("--bead <width>", 'width of the seat, or of the bead where it is wider, as "3 mm"')
    .requiredOption("--temperature <temperature>", 'of the bay and the case, as "12 °C"')
    .requiredOption("--humidity <share>", 'of the air, as "65 %", or dry, normal, damp')
    .option("--open <edges>", "one or both edges of the bead are open to air", "one")
    .option("--label <time>", 'what the label says must pass, as "24 h"')
    .option("--closed <time>", "when the joint was closed, as 2026-11-25T11:40")
    .option("--svg <file>", "write the clock as a picture")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft cure --bead "3 mm" --temperature "12 °C" --humidity "65 %"')
    .action(answer);
}

function answer(options: Options): void {
  const width = positiveOption("--bead", "w", "length", "3 mm", options.bead);
  const air = airOf(options);
  const label = options.label
    ? ({ time: positiveOption("--label", "t_0", "time", "24 h", options.label), saidFor: "this air" } as const)
    : null;
  const open = edgesOf(options.open);
  const clocks = cureClocks({ width, open, air, front: ordinaryFront, label });
  const closed = closedAt(options.closed);
  const inside = cureInThread(portThread, insideDepth, "straight gap", air, ordinaryFront);
  const steps = working(clocks.slowness, clocks.mayBeSplashed.time, clocks.curedThrough.likely);
  if (options.svg) writeSvg(options.svg, cureClockSvg(clocks, closed));
  print(options.json ?? false, document(clocks, closed, inside.time, steps), [
    ...cureLines(clocks, closed, inside.time),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

/** The plain truth is told for 10 mm inside an ordinary port thread: a straight gap is the best case there is. */
const portThread = metricThread(20, 1.5);
const insideDepth = exact("l", 10, mm, "10 mm inside the thread");

function airOf({ temperature, humidity }: Options): Air {
  const T = quantityOption("--temperature", "T", "temperature", "12 °C", temperature);
  if (humidity === "dry" || humidity === "normal" || humidity === "damp")
    return { T, RH: humidityFelt(humidity, "--humidity") };
  const RH = positiveOption("--humidity", "RH", "plain number", "65 %", humidity);
  if (RH.value > 1 || RH.unit.symbol !== "%")
    throw mistaken("--humidity", humidity, 'a share up to 100 %, as "65 %", or dry, normal, damp');
  return { T, RH: humidityRead(valueIn(percent, RH), "--humidity") };
}

function edgesOf(text: string): "one edge" | "both edges" {
  if (text !== "one" && text !== "both") throw mistaken("--open", text, "one or both");
  return `${text} edge${text === "both" ? "s" : ""}` as "one edge" | "both edges";
}

/** The joint was closed at a clock time of the place; it is reckoned with as if it were one without a zone. */
function closedAt(text: string | undefined): Date | null {
  if (text === undefined) return null;
  const at = new Date(`${text}Z`);
  if (!/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/.test(text) || Number.isNaN(at.getTime()))
    throw mistaken("--closed", text, "a day and a time as 2026-11-25T11:40");
  return at;
}

function document(clocks: CureClocks, closed: Date | null, inside: CureTime, steps: readonly Step[]) {
  const { mayBeSplashed, curedThrough, slowness, notes } = clocks;
  const hours = (time: Quantity): number => digits(valueIn(h, time), 4);
  const clockTime = (time: Quantity): string | null =>
    closed && new Date(closed.getTime() + 60_000 * Math.ceil(valueIn(min, time))).toISOString().slice(0, 16);
  return {
    mayBeSplashed_h: hours(mayBeSplashed.time),
    mayBeSplashedAt: clockTime(mayBeSplashed.time),
    because: mayBeSplashed.because,
    curedThrough_h: hours(curedThrough.likely),
    curedThroughLeast_h: hours(curedThrough.least),
    curedThroughMost_h: hours(curedThrough.most),
    curedThroughAt: clockTime(curedThrough.likely),
    slowness: digits(slowness.value, 3),
    insideThread10mm_h: hours(inside.likely),
    notes,
    asked: ["does the label name this fluid?", "is the sealant in date?"],
    working: steps,
  };
}
