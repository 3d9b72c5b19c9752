import type { Command } from "commander";
import { clampForce, tighteningTorque } from "../../../mechanics/joint/torque.ts";
import { type Quantity, valueIn } from "../../../mechanics/quantity/quantity.ts";
import { kN, Nm } from "../../../mechanics/quantity/unit.ts";
import { working, written } from "../../../mechanics/quantity/working.ts";
import { mistaken } from "../mistake.ts";
import { parallelThreadOption, positiveOption } from "../options.ts";
import { digits, print, workingLines } from "../print.ts";

type Options = {
  readonly thread: string;
  readonly force?: string;
  readonly torque?: string;
  readonly friction: string;
  readonly bearing: string;
  readonly json?: boolean;
};

export function torqueCommand(program: Command): void {
  program
    .command("torque")
    .description("torque from clamp force, or clamp force from torque (ISO 16047)")
    .requiredOption("--thread <thread>", "a parallel thread, as M20x1.5, 1/2-20 UNF or G 1/2")
    .option("--force <force>", 'the clamp force, as "20 kN"')
    .option("--torque <torque>", 'the torque, as "46 N·m"')
    .requiredOption("--friction <number>", "friction of thread and head, as 0.12")
    .requiredOption("--bearing <diameter>", 'mean diameter of the face under the head, as "23 mm"')
    .option("--json", "one JSON document")
    .addHelpText(
      "after",
      '\nExample:\n  turnsleft torque --thread M20x1.5 --force "20 kN" --friction 0.12 --bearing "23 mm"',
    )
    .action(answer);
}

function answer({ thread, force, torque, friction, bearing, json = false }: Options): void {
  if ((force === undefined) === (torque === undefined))
    throw mistaken("--force", force ?? null, "either --force or --torque, one of them");
  const mu = (symbol: string): Quantity => positiveOption("--friction", symbol, "plain number", "0.12", friction);
  const path = {
    thread: parallelThreadOption("--thread", thread),
    D_b: positiveOption("--bearing", "D_b", "length", "23 mm", bearing),
    mu_th: mu("mu_th"),
    mu_b: mu("mu_b"),
  };
  if (force !== undefined) {
    const T = tighteningTorque(path, positiveOption("--force", "F", "force", "20 kN", force));
    const steps = working(T);
    print(json, { torque_Nm: digits(valueIn(Nm, T), 8), working: steps }, [written(T), ...workingLines(steps)]);
    return;
  }
  const F = clampForce(path, positiveOption("--torque", "T", "torque", "46 N·m", torque ?? ""));
  const steps = working(F);
  print(json, { force_kN: digits(valueIn(kN, F), 8), working: steps }, [written(F), ...workingLines(steps)]);
}
