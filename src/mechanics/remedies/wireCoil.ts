import { exact, valueIn } from "../quantity/quantity.ts";
import { mm } from "../quantity/unit.ts";
import type { Thread } from "../threads/thread.ts";
import { unifiedCoilHole, type WireCoilHole, wireCoilHole } from "../threads/wireCoilHole.ts";
import { rangeOf } from "./fitChips.ts";
import { coilDrill, longestCoil } from "./fitCoil.ts";
import { need } from "./fitNeed.ts";
import { fullTurns } from "./fullTurns.ts";
import { handCut } from "./handCut.ts";
import { cutNew, weighedInsert } from "./newThread.ts";
import type { PortCase } from "./portCase.ts";
import { newThreadRules, type Repair, repairOf, type WhyNot } from "./repair.ts";
import { taperWhyNot } from "./taperPort.ts";

/**
 * What the length tables of the trade stand below the bare shear of the hole's thread by, 1.7 to 2.9, usually this (common
 * practice, no source). It covers what our model of a hurt thread covers, and so takes its place.
 */
const tableFactor = 2.1;

/** Coils are sold for threads up to this diameter, mm (from memory). */
const largest_mm = 39;

/** A wire coil in a larger thread: the original plug, in a steel thread that may be opened often. */
export function wireCoil(portCase: PortCase): Repair {
  const { port } = portCase;
  const { thread } = port;
  const hole = holeFor(thread);
  if (!("D_STI" in hole))
    return repairOf(portCase, "wire coil", { bound: newThreadRules, lasting: true, whyNot: hole.whyNot });
  const { D_STI, D_2STI, D1_min, D1_max } = hole;
  const cut = handCut(portCase, { type: thread.type, d: D_STI, d_2: D_2STI, P: thread.P }, coilDrill(D1_min));
  const { depth } = cut;
  const coil = longestCoil(thread, depth);
  const inside = { from: coil.setDown, to: endOf(coil.setDown.value, coil.installed.value) };
  const repaired = { ...portCase, port: { ...port, left: cutNew(inside.from, inside.to) } };
  const outer = { ...thread, d: D_STI, d_2: D_2STI, D_1: hole.D_1STI };
  const { low, high } = rangeOf(coil.setDown);
  return repairOf(portCase, "wire coil", {
    bound: newThreadRules,
    lasting: true,
    needs: [need("depth", depth, coil.plate), ...cut.needs, ...fullTurns(portCase, repaired)],
    said: cut.said,
    checks: [
      ...cut.drilling,
      {
        type: "coil",
        diameters: coil.diameters,
        length_mm: valueIn(mm, coil.L),
        installed_mm: valueIn(mm, coil.installed),
      },
      { type: "set down", from_mm: low, to_mm: high },
      ...cut.tapping,
    ],
    sums: [D_STI, D1_min, D1_max, ...cut.sums, coil.installed, coil.plate, coil.drilledBlind],
    repaired,
    insert: {
      material: "steel",
      outer_mm: valueIn(mm, hole.D_STI),
      from_mm: valueIn(mm, coil.setDown),
      to_mm: valueIn(mm, coil.setDown) + valueIn(mm, coil.installed),
    },
    closed: () =>
      depth &&
      weighedInsert(portCase, inside, {
        thread: outer,
        limits: { ...hole, d_max: hole.D_STI, d_min: hole.D_STI, d2_max: hole.D_2STI, d2_min: hole.D_2STI },
        from: exact("z_1", 0, mm, "cut from the face"),
        to: coil.bearing,
        tableFactor,
      }),
  });
}

/** The hole of a coil that is sold for this thread, or why there is none. */
function holeFor(thread: Thread): WireCoilHole | { readonly whyNot: WhyNot } {
  const tooLarge = valueIn(mm, thread.d) > largest_mm;
  if (thread.type === "metric") return tooLarge ? { whyNot: "no coil of this size" } : wireCoilHole(thread, "5H");
  if (thread.type === "unified") {
    const sold = thread.series === "UNC" || thread.series === "UNF";
    return tooLarge || !sold ? { whyNot: "no coil of this size" } : unifiedCoilHole(thread);
  }
  // Coils for G are sold, to holes that stand in their makers' tables only.
  return { whyNot: taperWhyNot({ thread }) ?? "no table of its coil holes" };
}

const endOf = (from_m: number, length_m: number) => exact("z_2", 1e3 * (from_m + length_m), mm, "end of the coil");
