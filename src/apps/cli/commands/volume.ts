import type { Command } from "commander";
import { type VolumeEvidence, volumeEvidence, volumeReading } from "../../../mechanics/fluid/levelReadings.ts";
import { fluidUsed, residueShare, type VolumeBalance, volumeBalance } from "../../../mechanics/fluid/volumeBalance.ts";
import { type Quantity, standardUncertainty, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { L, ml } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { commonPractice, sourceText } from "../../../mechanics/tables/source.ts";
import { mustStop, volumeLines } from "../../../sheets/words/volumeWords.ts";
import { mistaken } from "../mistake.ts";
import { positiveOption, quantityOption } from "../options.ts";
import { decimals, digits, print, workingLines } from "../print.ts";

type Options = {
  readonly out: string;
  readonly expected: string;
  readonly flushIn?: string;
  readonly flushOut?: string;
  readonly fill?: string;
  readonly working?: boolean;
  readonly json?: boolean;
};

type Flush = { readonly poured: Quantity; readonly caught: Quantity };

export function volumeCommand(program: Command): void {
  program
    .command("volume")
    .description("what came out against what should have: wrong unit or overfilled is said before any refill")
    .requiredOption("--out <volume>", 'what came out, the flush apart, as "4.05 L"')
    .requiredOption("--expected <volume>", 'what should have, as "4.3 L"')
    .option("--flush-in <volume>", 'what was poured through to wash chips out, as "0.3 L"')
    .option("--flush-out <volume>", 'how much of that was caught, as "0.28 L"')
    .option("--fill <volume>", 'what will be filled, for the bill, as "4.3 L"')
    .option("--working", "print how every figure was got")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      '\nExample:\n  turnsleft volume --out "2.2 L" --expected "4.3 L" --flush-in "0.3 L" --flush-out "0.28 L"',
    )
    .action(answer);
}

function answer(options: Options): void {
  const out = jug("--out", "2.2 L", options.out);
  const expected = positiveOption("--expected", "V_exp", "volume", "4.3 L", options.expected);
  const flush = flushOf(options);
  const read = volumeBalance({ out, expected, residue: residueShare, flush });
  if (!read.ok) throw mistaken("--expected", options.expected, "more than a drop");
  const { balance } = read;
  const fill = options.fill === undefined ? null : jug("--fill", "4.3 L", options.fill);
  const used = fill && flush ? fluidUsed(fill, flush.poured) : fill;
  const steps = working(balance.ratio, balance.before, ...[balance.flushLeft, used].filter((it) => it !== null));
  const lines = volumeLines({
    balance,
    outUnit: out.unit.symbol,
    expectedUnit: expected.unit.symbol,
    flushPoured: flush?.poured ?? null,
    used,
  });
  print(options.json ?? false, document(balance, flush, used, steps), [
    ...lines,
    ...(options.working ? workingLines(steps) : []),
  ]);
}

/** A volume read off a jug. Nothing at all is a volume here: a case that ran dry gives it. */
function jug(name: string, example: string, text: string): Quantity {
  const given = quantityOption(name, "V", "volume", example, text);
  if (given.value < 0) throw mistaken(name, text, `nothing below zero, as "${example}"`);
  return given.value === 0 ? given : volumeReading(valueIn(given.unit, given), given.unit, how, name);
}

const how: VolumeEvidence = "jug";

function flushOf({ flushIn, flushOut }: Options): Flush | null {
  if (flushIn === undefined && flushOut === undefined) return null;
  const both = "--flush-in and --flush-out together";
  if (flushIn === undefined) throw mistaken("--flush-in", null, both);
  if (flushOut === undefined) throw mistaken("--flush-out", null, both);
  return { poured: jug("--flush-in", "0.3 L", flushIn), caught: jug("--flush-out", "0.28 L", flushOut) };
}

function document(
  balance: VolumeBalance,
  flush: Flush | null,
  used: Quantity | null,
  steps: ReturnType<typeof working>,
) {
  const { ratio, band, odds, before, fitsAsRead, unitPairs, flushLeft } = balance;
  const inLitres = (it: Quantity): number => digits(valueIn(L, it), 3);
  return {
    ratio: digits(ratio.value, 3),
    band,
    stop: mustStop(balance),
    odds: Object.fromEntries(Object.entries(odds).map(([key, p]) => [key, decimals(p, 3)])),
    before_L: inLitres(before),
    fitsAsRead,
    unitPairs: fitsAsRead
      ? []
      : unitPairs.map((it) => ({
          writtenAs: it.writtenAs,
          meant: it.meant,
          ratio: digits(it.ratio, 4),
          asWritten: it.asWritten,
        })),
    flushLeft_ml: flushLeft && digits(valueIn(ml, flushLeft), 2),
    flushLeftUncertainty_ml: flushLeft && digits(standardUncertainty(flushLeft) / ml.inSI, 2),
    flushUsed_L: flush && inLitres(flush.poured),
    fluidUsed_L: used && inLitres(used),
    assumed: [
      { reading: "jug", value: "± 3 %", source: sourceText(volumeEvidence[how].source) },
      { reading: "stays in the case", value: "2 to 5 %", source: sourceText(commonPractice) },
    ],
    working: steps,
  };
}
