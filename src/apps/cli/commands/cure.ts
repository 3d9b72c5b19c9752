import type { Command } from "commander";
import { type Air, humidityFelt, humidityOfShare } from "../../../mechanics/cure/air.ts";
import { cureClocks } from "../../../mechanics/cure/clocks.ts";
import { ordinaryFront } from "../../../mechanics/cure/front.ts";
import { cureByFit } from "../../../mechanics/cure/inThread.ts";
import { heatVerdict, reopening } from "../../../mechanics/cure/label.ts";
import { blowOut, pasteHolds } from "../../../mechanics/cure/pasteHold.ts";
import { as, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { h, kPa, min } from "../../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../../mechanics/quantity/working.ts";
import { sourceText } from "../../../mechanics/tables/source.ts";
import { cureClockSvg } from "../../../sheets/answer/cureClockSvg.tsx";
import { closedAtFromText } from "../../../sheets/sums/closedAt.ts";
import { type CureFound, cureLines } from "../../../sheets/words/cureWords.ts";
import { stillAsked } from "../../../sheets/words/labelWords.ts";
import { writeSvg } from "../files.ts";
import { type LabelOptions, labelAsked, withLabelOptions } from "../labelOptions.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption, threadOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";
import { type BeadOptions, beadDocument, beadLaid, laidOnThread } from "./cureBead.ts";

type Options = BeadOptions &
  LabelOptions & {
    readonly gap?: string;
    readonly pressure?: string;
    readonly hottest?: string;
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
  const command = program
    .command("cure")
    .description("when a joint sealed with silicone may be splashed, and when it is cured through")
    .requiredOption("--bead <width>", 'width of the seat, or of the bead where it is wider, as "3 mm"')
    .requiredOption("--temperature <temperature>", 'of the bay and the case, as "12 °C"')
    .requiredOption("--humidity <share>", 'of the air, as "65 %", or dry, normal, damp')
    .option("--open <edges>", "one or both edges of the bead are open to air", "one")
    .option("--label <time>", 'what the label says must pass, as "24 h"')
    .option("--closed <time>", "when the joint was closed, as 2026-11-25T11:40")
    .option("--bead-diameter <length>", 'how thick the bead is laid, as "2 mm": its volume')
    .option("--bead-length <length>", 'how long it is, as "75 mm"')
    .option("--bead-on <diameter>", 'or the circle it is laid on, as "24 mm": the share that goes inward')
    .option("--seat-inside <diameter>", 'of the seat, as "20.4 mm"')
    .option("--seat-outside <diameter>", 'of the seat, as "27 mm"')
    .option("--film <thickness>", 'what is left under the head, as "0.2 mm"')
    .option("--on-thread <volume>", 'sealant put on the thread itself, as "0.3 ml"')
    .option("--thread <thread>", "of the plug, as M20x1.5")
    .option("--engaged <length>", 'the length on which thread meets thread, as "10 mm"')
    .option("--gap <gap>", 'the gap that the paste stands in, as "0.1 mm": what it holds before it is cured')
    .option("--pressure <pressure>", 'in the case meanwhile, as "5 kPa"')
    .option("--hottest <temperature>", 'the joint gets in service, as "120 °C"')
    .option("--svg <file>", "write the clock as a picture")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      [
        "\nExamples:",
        '  turnsleft cure --bead "3 mm" --temperature "12 °C" --humidity "65 %"',
        '  turnsleft cure --bead "3 mm" --temperature "12 °C" --humidity damp --bead-diameter "2 mm" --bead-on "24 mm" --seat-inside "20.4 mm" --seat-outside "27 mm"',
        '  turnsleft cure --bead "3 mm" --temperature "20 °C" --humidity normal --names-fluid yes --use-by 2027-03-31 --hottest "90 °C" --gap "0.1 mm" --pressure "5 kPa"',
      ].join("\n"),
    );
  withLabelOptions(command).action(answer);
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
  const found: CureFound = {
    clocks,
    closed,
    inside: insideOf(options, air),
    bead: beadLaid(options),
    onThread: laidOnThread(options),
    paste: pasteOf(options, width),
    label: labelAsked(options),
    heat: heatOf(options),
  };
  const { bead, onThread, paste } = found;
  const asked = [bead?.volume, bead?.spread?.inward, onThread?.squeezed, onThread?.holds, paste?.holds.likely];
  const steps = working(
    clocks.slowness,
    clocks.mayBeSplashed.time,
    clocks.curedThrough.likely,
    found.inside.flankOnFlank.time.likely,
    ...asked.filter((it) => it != null),
  );
  if (options.svg) writeSvg(options.svg, cureClockSvg(clocks, closed));
  print(options.json ?? false, document(found, steps), [
    ...cureLines(found, options),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

/** The plain truth is told for the thread that is given, or for 10 mm inside an ordinary port thread. */
const insideOf = ({ thread, engaged }: Options, air: Air): CureFound["inside"] =>
  cureByFit(
    thread === undefined ? null : threadOption("--thread", thread),
    engaged === undefined ? null : positiveOption("--engaged", "l", "length", "10 mm", engaged),
    air,
    ordinaryFront,
  );

function pasteOf({ gap, pressure }: Options, width: Quantity): CureFound["paste"] {
  if (gap === undefined) {
    if (pressure !== undefined)
      throw mistaken("--gap", null, 'the gap that the paste stands in, as "0.1 mm", with --pressure');
    return null;
  }
  const holds = blowOut(positiveOption("--gap", "h", "length", "0.1 mm", gap), as("l", width));
  const p = pressure === undefined ? null : positiveOption("--pressure", "p", "pressure", "5 kPa", pressure);
  return { gap, holds, against: p && { pressure: pressure ?? "", verdict: pasteHolds(p, holds) } };
}

const heatOf = ({ hottest }: Options): CureFound["heat"] =>
  hottest === undefined
    ? null
    : { hottest, ...heatVerdict("silicone", quantityOption("--hottest", "T", "temperature", "120 °C", hottest)) };

function airOf({ temperature, humidity }: Options): Air {
  const T = quantityOption("--temperature", "T", "temperature", "12 °C", temperature);
  if (humidity === "dry" || humidity === "normal" || humidity === "damp")
    return { T, RH: humidityFelt(humidity, "--humidity") };
  const share = positiveOption("--humidity", "RH", "plain number", "65 %", humidity);
  const RH = humidityOfShare(share, "--humidity");
  if (!RH) throw mistaken("--humidity", humidity, 'a share up to 100 %, as "65 %", or dry, normal, damp');
  return { T, RH };
}

function edgesOf(text: string): "one edge" | "both edges" {
  if (text !== "one" && text !== "both") throw mistaken("--open", text, "one or both");
  return `${text} edge${text === "both" ? "s" : ""}` as "one edge" | "both edges";
}

function closedAt(text: string | undefined): Date | null {
  if (text === undefined) return null;
  const at = closedAtFromText(text, null);
  if (!at) throw mistaken("--closed", text, "a day and a time as 2026-11-25T11:40");
  return at;
}

function document({ clocks, closed, inside, bead, onThread, paste, label, heat }: CureFound, steps: readonly Step[]) {
  const { mayBeSplashed, curedThrough, slowness, notes } = clocks;
  const hours = (time: Quantity): number => digits(valueIn(h, time), 2);
  const clockTime = (time: Quantity): string | null =>
    closed && new Date(closed.getTime() + 60_000 * Math.ceil(valueIn(min, time))).toISOString().slice(0, 16);
  const { by, heatTo_degC } = reopening("silicone");
  return {
    mayBeSplashed_h: hours(mayBeSplashed.time),
    mayBeSplashedAt: clockTime(mayBeSplashed.time),
    because: mayBeSplashed.because,
    curedThrough_h: hours(curedThrough.likely),
    curedThroughLeast_h: hours(curedThrough.least),
    curedThroughMost_h: hours(curedThrough.most),
    curedThroughAt: clockTime(curedThrough.likely),
    slowness: digits(slowness.value, 3),
    insideThread10mm_h: inside.depth_mm === 10 ? hours(inside.straightGap.time.likely) : null,
    insideThread: {
      depth_mm: inside.depth_mm,
      straightGap_h: hours(inside.straightGap.time.likely),
      slack_h: hours(inside.slack.time.likely),
      flankOnFlank: inside.flankOnFlank.verdict,
    },
    ...beadDocument(bead, onThread),
    pasteHolds_kPa: paste && [paste.holds.least, paste.holds.most].map((it) => digits(valueIn(kPa, it), 2)),
    pasteVerdict: paste?.against?.verdict ?? null,
    heat: heat && { verdict: heat.verdict, room_K: digits(heat.room_K, 3), source: sourceText(heat.source) },
    undone: { by, heatTo_degC },
    label: label.map(({ id, verdict }) => ({ id, verdict })),
    notes,
    asked: stillAsked(label),
    working: steps,
  };
}
