import type { Command } from "commander";
import {
  type Hold,
  type HoldVerdict,
  holdVerdict,
  plugForce,
  thermalDrift,
  waterTest,
} from "../../../mechanics/fluid/pressureHold.ts";
import { as, exact, type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { bar, degC, deltaK, N } from "../../../mechanics/quantity/unit.ts";
import { type Step, working } from "../../../mechanics/quantity/working.ts";
import { type HoldFound, pressureLines } from "../../../sheets/words/pressureWords.ts";
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
  readonly vacuumStart?: string;
  readonly vacuumEnd?: string;
  readonly vacuumMinutes?: string;
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
    .option("--vacuum-start <pressure>", 'of a vacuum held besides, as "-0.50 bar": both together are the water test')
    .option("--vacuum-end <pressure>", 'of that vacuum at its end, as "-0.49 bar"')
    .option("--vacuum-minutes <minutes>", "how long it stood, as 5")
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      [
        "\nExamples:",
        '  turnsleft pressure --start "0.70 bar" --end "0.52 bar" --minutes 5',
        '  turnsleft pressure --start "0.70 bar" --end "0.68 bar" --minutes 10 --start-temperature "22 °C" --end-temperature "19 °C" --diameter "20 mm"',
        '  turnsleft pressure --start "0.70 bar" --end "0.70 bar" --minutes 5 --vacuum-start "-0.50 bar" --vacuum-end "-0.49 bar" --vacuum-minutes 5',
      ].join("\n"),
    )
    .action(answer);
}

function answer(options: Options): void {
  const hold = holdOf(options);
  const allowed = positiveOption("--allowed", "Dp_a", "pressure", "0.05 bar", options.allowed);
  const verdict = holdVerdict(hold, allowed);
  const vacuum = vacuumOf(options, hold, allowed);
  const found: HoldFound = {
    hold: verdict,
    byTemperature: thermalDrift(hold.p_1, hold.p_0, hold.T_1, hold.T_2),
    force: options.diameter ? forceOn(hold.p_1, options.diameter) : null,
    temperaturesKnown: temperaturesKnown(options),
    vacuum,
    waterTest: vacuum && waterTest(verdict.verdict, vacuum.verdict),
  };
  const asked = [verdict.perMinute, found.byTemperature, found.force, vacuum?.perMinute];
  const steps = working(...asked.filter((it) => it != null));
  print(options.json ?? false, document(found, steps), [
    ...pressureLines(found),
    ...(options.working ? workingLines(steps) : []),
  ]);
}

/** The vacuum that was held besides, with the gauge, the air and the temperatures of the pressure. @throws InputMistake */
function vacuumOf(options: Options, hold: Hold, allowed: Quantity): HoldVerdict | null {
  const { vacuumStart, vacuumEnd, vacuumMinutes } = options;
  const given = Object.entries({ vacuumStart, vacuumEnd, vacuumMinutes }).filter(([, text]) => text !== undefined);
  if (given.length === 0) return null;
  if (vacuumStart === undefined) throw mistaken("--vacuum-start", null, 'the vacuum at its start, as "-0.50 bar"');
  if (vacuumEnd === undefined) throw mistaken("--vacuum-end", null, 'the vacuum at its end, as "-0.49 bar"');
  if (vacuumMinutes === undefined) throw mistaken("--vacuum-minutes", null, "how long it stood, as 5");
  if (hold.p_1.value <= 0)
    throw mistaken("--vacuum-start", vacuumStart, "a pressure at --start with it: the two together");
  const gauge = positiveOption("--gauge", "u", "pressure", "0.01 bar", options.gauge);
  const read = (name: string, symbol: string, text: string): Quantity =>
    readingOption(name, symbol, "pressure", "-0.50 bar", text, gauge);
  const p_1 = read("--vacuum-start", "p_1", vacuumStart);
  if (p_1.value >= 0) throw mistaken("--vacuum-start", vacuumStart, 'a vacuum, which is negative, as "-0.50 bar"');
  const p_2 = read("--vacuum-end", "p_2", vacuumEnd);
  // Its temperature is not asked for again: a vacuum is held right after, and one reading would be counted twice.
  const T = exact("T_1", valueIn(degC, hold.T_2), degC, "taken: the same at both ends of the vacuum");
  const time = minutesOf("--vacuum-minutes", vacuumMinutes);
  return holdVerdict({ p_1, p_2, T_1: T, T_2: as("T_2", T), p_0: hold.p_0, time }, allowed);
}

const temperaturesKnown = ({ startTemperature, endTemperature }: Options): boolean =>
  startTemperature !== undefined && endTemperature !== undefined;

function holdOf(options: Options): Hold {
  const gauge = positiveOption("--gauge", "u", "pressure", "0.01 bar", options.gauge);
  const pressure = (name: string, symbol: string, text: string): Quantity =>
    readingOption(name, symbol, "pressure", "0.70 bar", text, gauge);
  oneTemperature(options);
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
    time: minutesOf("--minutes", options.minutes),
  };
}

const minutesOf = (name: string, text: string): Quantity =>
  positiveOption(name, "t", "time", "10 min", /[a-z]/i.test(text) ? text : `${text} min`);

/** One temperature says nothing of what changed. */
function oneTemperature({ startTemperature, endTemperature }: Options): void {
  if (startTemperature !== undefined && endTemperature === undefined)
    throw mistaken(
      "--end-temperature",
      null,
      'the temperature of the case at the end, as "18 °C", with --start-temperature',
    );
  if (endTemperature !== undefined && startTemperature === undefined)
    throw mistaken(
      "--start-temperature",
      null,
      'the temperature of the case at the start, as "20 °C", with --end-temperature',
    );
}

const forceOn = (p: Quantity, diameter: string): Quantity =>
  plugForce(p, positiveOption("--diameter", "D", "length", "20 mm", diameter));

function document({ hold, byTemperature, force, vacuum, waterTest: passed }: HoldFound, steps: readonly Step[]) {
  const inBar = (it: Quantity): number => decimals(valueIn(bar, it), 4);
  return {
    verdict: hold.verdict,
    loss_bar: inBar(hold.loss),
    byTemperature_bar: inBar(byTemperature),
    atFirstTemperature_bar: inBar(hold.atFirstTemperature),
    lossPerMinute_bar: perMinute(hold),
    plugForce_N: force && digits(valueIn(N, force), 4),
    vacuum: vacuum && { verdict: vacuum.verdict, loss_bar: inBar(vacuum.loss), lossPerMinute_bar: perMinute(vacuum) },
    waterTest: passed,
    working: steps,
  };
}

const perMinute = ({ perMinute: v }: HoldVerdict): number => digits(v.value / v.unit.inSI, 3);
