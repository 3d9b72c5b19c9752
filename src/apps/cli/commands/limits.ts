import type { Command } from "commander";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { mm, mm2 } from "../../../mechanics/quantity/unit.ts";
import { working } from "../../../mechanics/quantity/working.ts";
import { limits } from "../../../mechanics/threads/metricLimits.ts";
import { stressArea } from "../../../mechanics/threads/metricThread.ts";
import {
  holeClassFromText,
  plugClassFromText,
  standardHole,
  standardPlug,
} from "../../../mechanics/threads/toleranceClass.ts";
import { wireCoilHole } from "../../../mechanics/threads/wireCoilHole.ts";
import { acceptedClass } from "../../../sheets/words/problemWords.ts";
import { mistaken } from "../mistake.ts";
import { threadOption } from "../options.ts";
import { decimals, digits, print, workingLines } from "../print.ts";

type Options = { readonly plug?: string; readonly hole?: string; readonly json?: boolean };

/** Limits of size; null where a thread has none. */
type Sizes = {
  readonly d_max: Quantity | null;
  readonly d_min: Quantity | null;
  readonly d2_max: Quantity | null;
  readonly d2_min: Quantity | null;
  readonly D1_min: Quantity | null;
  readonly D1_max: Quantity | null;
  readonly D2_min: Quantity | null;
  readonly D2_max: Quantity | null;
  readonly A_s: Quantity | null;
};

export function limitsCommand(program: Command): void {
  program
    .command("limits")
    .description("limits of size of a thread, plug and hole (ISO 965-1), and its stress area (ISO 898-1)")
    .argument("<thread>", 'a metric thread, as M20x1.5, or the hole of its wire coil, as "STI M20x1.5"')
    .option("--plug <class>", "tolerance class of the plug, as 6g or 5g6g")
    .option("--hole <class>", "tolerance class of the hole, as 6H or 4H5H")
    .option("--json", "one JSON document")
    .addHelpText("after", "\nExample:\n  turnsleft limits M20x1.5 --plug 6g --hole 6H")
    .action((text: string, options: Options) => {
      const coil = /^\s*STI\s+(.+)$/i.exec(text)?.[1];
      const sizes = coil ? coilSizes(coil, options) : metricSizes(text, options);
      print(options.json ?? false, document(sizes), lines(text.trim(), sizes));
    });
}

function metricSizes(text: string, { plug, hole }: Options): Sizes {
  const thread = threadOption("thread", text);
  const plugClass = plugClassFromText(plug ?? standardPlug.designation);
  if (!plugClass.ok) throw mistaken("--plug", plug ?? "", acceptedClass(plugClass.problem));
  const holeClass = holeClassFromText(hole ?? standardHole.designation);
  if (!holeClass.ok) throw mistaken("--hole", hole ?? "", acceptedClass(holeClass.problem));
  return { ...limits(thread, plugClass.toleranceClass, holeClass.toleranceClass), A_s: stressArea(thread) };
}

/** The hole of a wire coil has no plug of its own: the thread inside the coil is the thread it is named for. */
function coilSizes(text: string, { hole = "5H" }: Options): Sizes {
  if (hole !== "5H" && hole !== "4H5H") throw mistaken("--hole", hole, "5H or 4H5H for the hole of a wire coil");
  const { D1_min, D1_max, D2_min, D2_max } = wireCoilHole(threadOption("thread", text), hole);
  return { d_max: null, d_min: null, d2_max: null, d2_min: null, D1_min, D1_max, D2_min, D2_max, A_s: null };
}

/** Limits to the micrometre, as the standard prints them. */
function document(sizes: Sizes) {
  const size = (it: Quantity | null): number | null => it && decimals(valueIn(mm, it), 3);
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
    working: working(...Object.values(sizes).filter((it) => it !== null)),
  };
}

function lines(name: string, sizes: Sizes): readonly string[] {
  const row = (label: string, least: Quantity | null, most: Quantity | null): string[] =>
    least && most
      ? [`  ${label.padEnd(24)}${valueIn(mm, least).toFixed(3)} to ${valueIn(mm, most).toFixed(3)} mm`]
      : [];
  const steps = working(...Object.values(sizes).filter((it) => it !== null));
  return [
    name,
    ...row("plug, outside", sizes.d_min, sizes.d_max),
    ...row("plug, pitch diameter", sizes.d2_min, sizes.d2_max),
    ...row("hole, bore", sizes.D1_min, sizes.D1_max),
    ...row("hole, pitch diameter", sizes.D2_min, sizes.D2_max),
    ...(sizes.A_s ? [`  stress area             ${valueIn(mm2, sizes.A_s).toPrecision(4)} mm²`] : []),
    ...workingLines(steps),
  ];
}
