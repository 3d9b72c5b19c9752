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
      "limits of size of a thread, plug and hole, and its stress area (ISO 965-1, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1)",
    )
    .argument(
      "<thread>",
      'as M20x1.5, "1/4-20 UNC", "G 1/2", "R 1/2", "Rp 1/2", "1/2-14 NPT", or "STI M20x1.5" for the hole of a wire coil',
    )
    .option("--plug <class>", "tolerance class of the plug, as 6g or 5g6g; 2A; A or B")
    .option("--hole <class>", "tolerance class of the hole, as 6H or 4H5H; 2B")
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      '\nExample:\n  turnsleft limits M20x1.5 --plug 6g --hole 6H\n  turnsleft limits "1/4-20 UNC" --plug 2A --hole 2B',
    )
    .action((text: string, options: Options) => {
      const sizes = threadSizes(text, options);
      print(options.json ?? false, document(sizes), lines(sizes));
    });
}

const known = ({ limits, A_s, gaugePlane }: ThreadSizes): readonly Quantity[] =>
  [...Object.values(limits), A_s, gaugePlane?.length_min, gaugePlane?.length_max].filter((it) => it != null);

/** Limits as the standards print them: metric to the micrometre, inch threads to a ten-thousandth of an inch. */
function document(sizes: ThreadSizes) {
  const { limits, A_s, gaugePlane } = sizes;
  const size = (it: Quantity | null): number | null =>
    it && decimals(valueIn(mm, it), sizes.printedIn === "in" ? 4 : 3);
  return {
    dMax_mm: size(limits.d_max),
    dMin_mm: size(limits.d_min),
    d2Max_mm: size(limits.d2_max),
    d2Min_mm: size(limits.d2_min),
    D1Min_mm: size(limits.D1_min),
    D1Max_mm: size(limits.D1_max),
    D2Min_mm: size(limits.D2_min),
    D2Max_mm: size(limits.D2_max),
    stressArea_mm2: A_s && digits(valueIn(mm2, A_s), 6),
    gaugeLength_mm: size(gaugePlane?.length ?? null),
    gaugeLengthMin_mm: size(gaugePlane?.length_min ?? null),
    gaugeLengthMax_mm: size(gaugePlane?.length_max ?? null),
    working: working(...known(sizes)),
  };
}

function lines(sizes: ThreadSizes): readonly string[] {
  const { name, printedIn, limits, A_s, gaugePlane } = sizes;
  const row = (label: string, least: Quantity | null | undefined, most: Quantity | null | undefined): string[] => {
    const ends = [least, most].filter((it) => it != null);
    if (ends.length === 0) return [];
    const range = (unit: typeof mm, places: number): string =>
      `${ends.map((it) => valueIn(unit, it).toFixed(places)).join(" to ")} ${unit.symbol}`;
    const beside = printedIn === "in" ? `${range(mm, 3).padEnd(column)}${range(inches, 4)}` : range(mm, 3);
    return [`  ${label.padEnd(column)}${beside}`];
  };
  return [
    gaugePlane ? `${name}, at the gauge plane` : name,
    // No crest of an American taper thread stands above its pipe.
    ...row(gaugePlane && printedIn === "in" ? "pipe, outside" : "plug, outside", limits.d_min, limits.d_max),
    ...row("plug, pitch diameter", limits.d2_min, limits.d2_max),
    ...row("hole, bore", limits.D1_min, limits.D1_max),
    ...row("hole, pitch diameter", limits.D2_min, limits.D2_max),
    ...row("plane from small end", gaugePlane?.length_min, gaugePlane?.length_max),
    ...(A_s ? [`  ${"stress area".padEnd(column)}${valueIn(mm2, A_s).toPrecision(4)} mm²`] : []),
    ...workingLines(working(...known(sizes))),
  ];
}

const column = 24;
