import { type Command, Option } from "commander";
import { stripForce } from "../../../mechanics/joint/stripForce.ts";
import { externalStripArea, internalStripArea } from "../../../mechanics/joint/stripping.ts";
import { type Quantity, taken, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { kN, mm2 } from "../../../mechanics/quantity/unit.ts";
import { working, written } from "../../../mechanics/quantity/working.ts";
import { materialRows } from "../../../mechanics/tables/materialRows.ts";
import { type Material, materials } from "../../../mechanics/tables/materials.ts";
import { type ReferenceRange, referenceRanges } from "../../../mechanics/tables/referenceRanges.ts";
import { sourceText } from "../../../mechanics/tables/source.ts";
import type { Thread } from "../../../mechanics/threads/thread.ts";
import { standardLimits } from "../../../mechanics/threads/threadLimits.ts";
import { parallelThreadOption, positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Basis = "least" | "basic";
type Options = {
  readonly length: string;
  readonly basis: Basis;
  readonly material?: Material;
  readonly json?: boolean;
};

export function stripCommand(program: Command): void {
  program
    .command("strip")
    .description("shear areas of hole and plug over an engaged length (FED-STD-H28/2B, ASME B1.1)")
    .argument("<thread>", "a parallel thread, as M20x1.5, 1/2-20 UNF or G 1/2")
    .requiredOption("--length <length>", 'engaged length of full thread, as "20 mm"')
    .addOption(
      new Option("--basis <basis>", "least material of the ordinary classes (6g/6H, 2A/2B, A), or basic sizes")
        .choices(["least", "basic"])
        .default("least"),
    )
    .addOption(new Option("--material <material>", "also the force at which the hole strips").choices([...materials]))
    .option("--json", "one JSON document")
    .addHelpText("after", '\nExample:\n  turnsleft strip M20x1.5 --length "10 mm" --material "cast aluminium"')
    .action((text: string, options: Options) => {
      const thread = parallelThreadOption("thread", text);
      const L = positiveOption("--length", "L", "length", "20 mm", options.length);
      const { internal, external } = areas(thread, L, options.basis);
      const force = options.material ? bareForce(internal, options.material) : null;
      const steps = working(internal, external, ...(force ? [force] : []));
      const answer = {
        internalArea_mm2: digits(valueIn(mm2, internal), 8),
        externalArea_mm2: digits(valueIn(mm2, external), 8),
        basis: options.basis,
        ...(force ? { internalForce_kN: digits(valueIn(kN, force), 4) } : {}),
        working: steps,
      };
      print(options.json ?? false, answer, [
        `hole ${written(internal)}, plug ${written(external)} (${options.basis === "least" ? "least material" : "basic sizes"})`,
        ...(force ? [`the hole strips at ${written(force)} of the bare shear model; castings hold less`] : []),
        ...workingLines(steps),
      ]);
    });
}

function areas(thread: Thread, L: Quantity, basis: Basis): { internal: Quantity; external: Quantity } {
  const { P, alpha, d, d_2, D_1 } = thread;
  if (basis === "basic")
    return {
      internal: internalStripArea({ d, D_2: d_2, L, P, alpha }),
      external: externalStripArea({ D_1, d_2, L, P, alpha }),
    };
  const { d_min, d2_min, D1_max, D2_max } = standardLimits(thread);
  return {
    internal: internalStripArea({ d: d_min, D_2: D2_max, L, P, alpha }),
    external: externalStripArea({ D_1: D1_max, d_2: d2_min, L, P, alpha }),
  };
}

function bareForce(A: Quantity, material: Material): Quantity {
  const row = materialRows[material];
  const range = (symbol: string, { distribution, unit, source }: ReferenceRange): Quantity =>
    taken(symbol, distribution, unit, sourceText(source));
  return stripForce({
    A,
    R_m: range("R_m", referenceRanges[row.strength]),
    k: range("k", referenceRanges[row.shearRatio]),
  });
}
