import { carryingTurns } from "../src/mechanics/joint/carryingTurns.ts";
import type {
  Closure,
  Condition,
  Counting,
  Port,
  SealKind,
  Surface,
  WasherMaterial,
} from "../src/mechanics/joint/port.ts";
import { sealNeed } from "../src/mechanics/joint/sealTorque.ts";
import type { Weighing } from "../src/mechanics/joint/window.ts";
import { wrenchDeviation } from "../src/mechanics/joint/wrench.ts";
import { exactly } from "../src/mechanics/quantity/distribution.ts";
import { exact, reading } from "../src/mechanics/quantity/quantity.ts";
import { mm, turn } from "../src/mechanics/quantity/unit.ts";
import { levelsWith } from "../src/mechanics/tables/levels.ts";
import type { Material } from "../src/mechanics/tables/materials.ts";
import { rangesWith } from "../src/mechanics/tables/referenceRanges.ts";
import { standardLimits } from "../src/mechanics/threads/threadLimits.ts";
import { threadFromText } from "../src/mechanics/threads/threadText.ts";

/** A port and its closure in a few words, as the tables of the method print them. */
export type GivenPort = {
  readonly thread: string;
  readonly material: Material;
  readonly turns: number;
  readonly counting: Counting;
  readonly condition: Condition;
  readonly surface: Surface;
  readonly seal: SealKind;
  readonly washer: WasherMaterial | null;
  readonly outside_mm: number;
  readonly inside_mm: number;
};

/** The same, ready for the torque window. The count was made with the closure as it is. */
export function weighingOf(given: GivenPort): Weighing {
  const read = threadFromText(given.thread);
  if (!read.ok) throw new Error(given.thread);
  const { thread } = read;
  const port: Port = {
    thread,
    limits: standardLimits(thread),
    material: given.material,
    threadDepth: null,
    thinnestWall: null,
    roomBehind: null,
    temperature: null,
    healthy: null,
    left: {
      turns: reading("n_0", exactly(given.turns), turn, "left.turns", given.counting),
      counting: given.counting,
      withWasher: true,
      condition: given.condition,
      catch: "snug",
      goodFrom: null,
      goodTo: null,
      height: null,
    },
  };
  const sealant = given.seal === "sealant, metal to metal";
  const closure: Closure = {
    plug: { propertyClass: "5.8", underHead: null, headDiameter: null, chamfer: null, original: true },
    seal: {
      kind: given.seal,
      material: given.washer,
      outside: exact("D_o", given.outside_mm, mm),
      inside: exact("D_i", given.inside_mm, mm),
      thickness: exact("t", sealant ? 0 : 1.5, mm),
      chamfer: null,
      original: true,
    },
    surface: given.surface,
    heldOtherwise: sealant,
  };
  const [ranges, levels] = [rangesWith({}), levelsWith({})];
  const turns = carryingTurns(port, closure, closure, ranges);
  const need = sealNeed(closure.seal);
  if (!turns || !need) throw new Error("nothing to weigh");
  return { port, closure, turns, need, wrench: wrenchDeviation(null, ranges), ranges, levels };
}
