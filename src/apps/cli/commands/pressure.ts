import type { Command } from "commander";
import {
  type Hold,
  type HoldVerdict,
  holdVerdict,
  plugForce,
  thermalDrift,
} from "../../../mechanics/fluid/pressureHold.ts";
import { exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { bar, deltaK, N } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { pressureLines } from "../../../sheets/words/pressureWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";
import { decimals, digits, print, workingLines } from "../print.ts";
import { readingOption } from "../readings.ts";

type Options = {
  readonly start: string;
  readonly end: string;
  readonly minutes: string;
  readonly startTemperature?: string;
  readonly endTemperature?: string;
  readonly gauge: string;
  readonly allowed: string;
  readonly outside: string;
  readonly diameter?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

export function pressureCommand(program: Command): void {
  program
    .command("pressure")
    .description("whether a pressure or a vacuum held, temperature taken out, and the force on a plug")
    .requiredOption("--start <pressure>", 'on the gauge at the start, as "0.70 bar"; a vacuum is negative')
    .requiredOption("--end <pressure>", 'on the gauge at the end, as "0.52 bar"')
    .requiredOption("--minutes <minutes>", "how long it stood, as 10")
    .option("--start-temperature <temperature>", 'of the case at the start, as "20 °C"')
    .option("--end-temperature <temperature>", 'of the case at the end, as "18 °C"')
    .option("--gauge <pressure>", "standard uncertainty of a reading of this gauge", "0.01 bar")
    .option("--allowed <pressure>", "what may be lost (judgement; the maker goes first)", "0.05 bar")
    .option("--outside <pressure>", "the air outside, absolute", "1.013 bar")
    .option("--diameter <diameter>", 'of the plug, for the force on it, as "20 mm"')
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft pressure --start "0.70 bar" --end "0.52 bar" --minutes 5')
    .action(answer);
}

function answer(options: Options): void {
  const hold = holdOf(options);
  const allowed = positiveOption("--allowed", "Dp_a", "pressure", "0.05 bar", options.allowed);
  const verdict = holdVerdict(hold, allowed);
  const byTemperature = thermalDrift(hold.p_1, hold.p_0, hold.T_1, hold.T_2);
  const force = options.diameter ? forceOn(hold.p_1, options.diameter) : null;
  const steps = working(verdict.loss, byTemperature, ...(force ? [force] : []));
  print(options.json ?? false, document(verdict, byTemperature, force, steps), [
    ...pressureLines(verdict, byTemperature, force, temperaturesKnown(options)),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

const temperaturesKnown = ({ startTemperature, endTemperature }: Options): boolean =>
  startTemperature !== undefined && endTemperature !== undefined;

function holdOf(options: Options): Hold {
  const gauge = positiveOption("--gauge", "u", "pressure", "0.01 bar", options.gauge);
  const pressure = (name: string, symbol: string, text: string): Quantity =>
    readingOption(name, symbol, "pressure", "0.70 bar", text, gauge);
  const { startTemperature = "20 °C", endTemperature = startTemperature } = options;
  const probe = exact("u", 1, deltaK, "contact probe");
  const temperature = (name: string, symbol: string, text: string): Quantity =>
    temperaturesKnown(options)
      ? readingOption(name, symbol, "temperature", "20 °C", text, probe)
      : quantityOption(name, symbol, "temperature", "20 °C", text);
  const p_1 = pressure("--start", "p_1", options.start);
  if (p_1.value === 0) throw mistaken("--start", options.start, "a pressure or a vacuum; nought tests nothing");
  return {
    p_1,
    p_2: pressure("--end", "p_2", options.end),
    T_1: temperature("--start-temperature", "T_1", startTemperature),
    T_2: temperature("--end-temperature", "T_2", endTemperature),
    p_0: positiveOption("--outside", "p_0", "pressure", "1.013 bar", options.outside),
    time: positiveOption(
      "--minutes",
      "t",
      "time",
      "10 min",
      /[a-z]/i.test(options.minutes) ? options.minutes : `${options.minutes} min`,
    ),
  };
}

const forceOn = (p: Quantity, diameter: string): Quantity =>
  plugForce(p, positiveOption("--diameter", "D", "length", "20 mm", diameter));

function document(
  verdict: HoldVerdict,
  byTemperature: Quantity,
  force: Quantity | null,
  steps: ReturnType<typeof working>,
) {
  const inBar = (it: Quantity): number => decimals(valueIn(bar, it), 4);
  return {
    verdict: verdict.verdict,
    loss_bar: inBar(verdict.loss),
    byTemperature_bar: inBar(byTemperature),
    atFirstTemperature_bar: inBar(verdict.atFirstTemperature),
    lossPerMinute_bar: digits(verdict.perMinute.value / verdict.perMinute.unit.inSI, 3),
    plugForce_N: force && digits(valueIn(N, force), 4),
    working: steps,
  };
}
