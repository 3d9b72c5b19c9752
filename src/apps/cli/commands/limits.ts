import type { Command } from "commander";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { inches, mm, mm2 } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { decimals, digits, print, workingLines } from "../print.ts";
import { type Classes, type ThreadSizes, threadSizes } from "../threadSizes.ts";

type Options = Classes & { readonly json?: boolean };

export function limitsCommand(program: Command): void {
  program
    .command("limits")
    .description(
      "limits of size of a thread, plug and hole, and its stress area (ISO 965-1, ASME B1.1, ISO 228-1, ISO 7-1)",
    )
    .argument(
      "<thread>",
      'as M20x1.5, "1/4-20 UNC", "G 1/2", "R 1/2", "1/2-14 NPT", or "STI M20x1.5" for the hole of a wire coil',
    )
    .option("--plug <class>", "tolerance class of the plug, as 6g or 5g6g; 2A; A or B")
    .option("--hole <class>", "tolerance class of the hole, as 6H or 4H5H; 2B")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft limits M20x1.5 --plug 6g --hole 6H")
    .action((text: string, options: Options) => {
      const sizes = threadSizes(text, options);
      const inchThread = /\d\s*-\s*\d/.test(text) || /UN|NPT/i.test(text);
      print(options.json ?? false, document(sizes, inchThread ? 4 : 3), lines(text.trim(), sizes, inchThread));
    });
}

const known = (sizes: ThreadSizes): readonly Quantity[] => Object.values(sizes).filter((it) => it !== null);

/** Limits as the standards print them: metric to the micrometre, inch threads to a ten-thousandth of an inch. */
function document(sizes: ThreadSizes, places: number) {
  const size = (it: Quantity | null): number | null => it && decimals(valueIn(mm, it), places);
  return {
    dMax_mm: size(sizes.d_max),
    dMin_mm: size(sizes.d_min),
    d2Max_mm: size(sizes.d2_max),
    d2Min_mm: size(sizes.d2_min),
    D1Min_mm: size(sizes.D1_min),
    D1Max_mm: size(sizes.D1_max),
    D2Min_mm: size(sizes.D2_min),
    D2Max_mm: size(sizes.D2_max),
    stressArea_mm2: sizes.A_s && digits(valueIn(mm2, sizes.A_s), 6),
    working: working(...known(sizes)),
  };
}

function lines(name: string, sizes: ThreadSizes, inchThread: boolean): readonly string[] {
  const figure = (it: Quantity): string =>
    inchThread ? `${valueIn(mm, it).toFixed(3)} (${valueIn(inches, it).toFixed(4)} in)` : valueIn(mm, it).toFixed(3);
  const row = (label: string, least: Quantity | null, most: Quantity | null): string[] => {
    const ends = [least, most].filter((it) => it !== null).map(figure);
    return ends.length > 0
      ? [`  ${label.padEnd(24)}${ends.join(" to ")} mm${ends.length === 1 ? ", at the gauge plane" : ""}`]
      : [];
  };
  return [
    name,
    ...row("plug, outside", sizes.d_min, sizes.d_max),
    ...row("plug, pitch diameter", sizes.d2_min, sizes.d2_max),
    ...row("hole, bore", sizes.D1_min, sizes.D1_max),
    ...row("hole, pitch diameter", sizes.D2_min, sizes.D2_max),
    ...(sizes.A_s ? [`  stress area             ${valueIn(mm2, sizes.A_s).toPrecision(4)} mm²`] : []),
    ...workingLines(working(...known(sizes))),
  ];
}
