import fc from "fast-check";
import { surfaces } from "../../../src/mechanics/joint/port.ts";
import type { WeighedClosure } from "../../../src/mechanics/remedies/weighedClosure.ts";
import { materials } from "../../../src/mechanics/tables/materials.ts";
import type { Changes } from "./changedCase.ts";

const tenths = (from: number, to: number) => fc.integer({ min: 10 * from, max: 10 * to }).map((it) => it / 10);
const mm = (from: number, to: number) => tenths(from, to).map((it) => `${it} mm`);

const threads = {
  ...{ "M12x1.5": 12, "M14x1.5": 14, "M16x1.5": 16, "M20x1.5": 20, "M24x1.5": 24, M27x2: 27 },
  ...{ "G 1/2": 21, "3/4-16 UNF": 19.1 },
} as const;

/** Seals with sizes that suit the thread; a sealant lies under the head with no thickness. */
const seals = fc.oneof(
  fc.constantFrom("aluminium", "copper", "fibre").map((material) => ({ kind: "flat washer", material })),
  fc.constantFrom("crush ring", "bonded seal", "O-ring", "sealant, metal to metal").map((kind) => ({ kind })),
);

/** Hurt ports that no rule refuses: whatever is caught is weighed. */
export const hurtCases: fc.Arbitrary<Changes> = fc
  .record({
    thread: fc.constantFrom(...(Object.keys(threads) as (keyof typeof threads)[])),
    material: fc.constantFrom(...materials),
    seal: seals,
    wide: tenths(2, 9),
    thickness: mm(0.5, 3),
    turns: tenths(1, 10),
    counted: fc.constantFrom("with a dot", "by eye", "felt"),
    condition: fc.constantFrom("good", "doubtful", "poor"),
    withWasher: fc.boolean(),
    surface: fc.constantFrom(...surfaces),
    propertyClass: fc.constantFrom("4.8", "5.8", "8.8", "10.9"),
    lengths: fc.option(fc.record({ underHead: mm(8, 24), threadDepth: mm(10, 26), roomBehind: mm(0, 20) }), {
      nil: undefined,
    }),
  })
  .map(({ thread, material, seal, wide, thickness, lengths, propertyClass, surface, ...left }) => ({
    thread,
    case: { material, threadDepth: lengths?.threadDepth, roomBehind: lengths?.roomBehind, thinnestWall: undefined },
    plug: { propertyClass, underHead: lengths?.underHead, headDiameter: undefined },
    seal: {
      material: undefined,
      ...seal,
      inside: `${threads[thread] + 0.4} mm`,
      outside: `${threads[thread] + 0.4 + wide} mm`,
      thickness: "kind" in seal && /sealant|O-ring/.test(seal.kind) ? undefined : thickness,
    },
    left: { ...left, turns: String(left.turns), catch: "snug" },
    healthyTurns: undefined,
    surface,
    levels: { leastTurns: 0.01 },
  }));

/** The same case with one of its groups changed further. */
export const varied = (changes: Changes, group: string, more: Changes): Changes => ({
  ...changes,
  [group]: { ...(changes[group] as Changes), ...more },
});

export const limit = ({ window }: WeighedClosure): number => window?.limit_Nm ?? 0;
