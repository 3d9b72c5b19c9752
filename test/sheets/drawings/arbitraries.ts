import fc from "fast-check";
import { conditions, sealKinds, surfaces } from "../../../src/mechanics/joint/port.ts";
import type { SectionInput } from "../../../src/mechanics/joint/sectionInput.ts";
import type { WindowProps } from "../../../src/sheets/drawings/window/windowProps.ts";
import { sizesOf, threadNamed } from "./exampleSections.ts";

const length = (min: number, max: number) => fc.option(fc.double({ min, max, noNaN: true }));
const words = fc.string({ unit: fc.constantFrom(..."abcdeilmnoprstuwM W,·0123456789 ".split("")), maxLength: 60 });

/** Ports from M8 to M33 with any seal and any lengths that may be met at a lift. */
export const anySection: fc.Arbitrary<SectionInput> = fc
  .record({
    thread: fc.constantFrom<[number, number]>([8, 1.25], [10, 1], [14, 1.5], [20, 1.5], [20, 2.5], [24, 1.5], [33, 2]),
    threadDepth_mm: length(2, 40),
    thinnestWall_mm: length(1, 60),
    roomBehind_mm: length(0.2, 80),
    underHead_mm: length(4, 50),
    chamfer_mm: length(0, 4),
    head: length(1.2, 1.8),
    kind: fc.constantFrom(...sealKinds),
    thickness: fc.double({ min: 0.8, max: 3, noNaN: true }),
    turnsCarrying: fc.double({ min: 0, max: 14, noNaN: true }),
    turnsHealthy: length(4, 14),
    condition: fc.constantFrom(...conditions),
    heightLeft: fc.double({ min: 0, max: 1, noNaN: true }),
    goodFrom_mm: length(0, 12),
    goodTo_mm: length(0, 30),
    surface: fc.constantFrom(...surfaces),
    taper: fc.option(fc.constantFrom("R 1/4", "Rc 1/2", "Rp 3/4", "1/2-14 NPT", "1-11.5 NPT")),
  })
  .map(({ thread: [metric_mm, pitch_mm], head, kind, thickness, taper, ...rest }) => {
    const sizes = kind === "taper" && taper !== null ? threadNamed(taper) : sizesOf(metric_mm, pitch_mm);
    const { d_mm } = sizes;
    const inChamfer = kind === "O-ring" && thickness < 2;
    const flat = inChamfer || kind === "sealant, metal to metal" || kind === "none" || kind === "taper";
    const seal = {
      kind,
      outside_mm: 1.35 * d_mm,
      inside_mm: 1.02 * d_mm,
      thickness_mm: flat ? 0 : thickness,
      chamfer_mm: inChamfer ? 0.2 * d_mm : null,
    };
    return { ...sizes, ...rest, seal, headDiameter_mm: head === null ? null : head * d_mm };
  });

/** A port and the same after a remedy, which may make the thread up to half as large again. */
export const anyPair: fc.Arbitrary<readonly [SectionInput, SectionInput]> = fc
  .tuple(anySection, anySection, fc.constantFrom(1, 1.25, 1.5))
  .map(([before, after, larger]) => [
    before,
    { ...after, ...metricLike(before.d_mm * larger, before.P_mm), seal: before.seal },
  ]);

/** A metric thread of about that size, whose name is no longer than names are. */
const metricLike = (d_mm: number, P_mm: number) => ({
  ...sizesOf(Math.round(2 * d_mm) / 2, Math.round(4 * P_mm) / 4),
  taper: null,
});

export const anyCaption: fc.Arbitrary<string> = words;

const torque = (max: number) => fc.double({ min: 0, max, noNaN: true });

/** Windows open, narrow and empty, with up to four book figures anywhere. */
export const anyWindow: fc.Arbitrary<WindowProps> = fc
  .record({
    need_Nm: torque(120),
    limit_Nm: torque(200),
    third: fc.double({ min: 0.5, max: 2, noNaN: true }),
    median: fc.double({ min: 1.5, max: 3, noNaN: true }),
    floor_Nm: fc.constantFrom(null, 3, 6, 10),
    advised: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    bookFigures: fc.array(fc.record({ torque_Nm: torque(250), label: words }), { maxLength: 4 }),
    wrench: fc.option(
      fc.record({ name: fc.constantFrom("W-1", "the long click wrench"), least_Nm: torque(60), span: torque(300) }),
    ),
    caption: words,
  })
  .map(({ third, median, advised, wrench, ...rest }) => {
    const low = Math.max(rest.need_Nm, rest.floor_Nm ?? 0);
    const open = low <= rest.limit_Nm && advised !== null;
    return {
      ...rest,
      cautiousRule_Nm: third * rest.limit_Nm,
      medianStrip_Nm: median * rest.limit_Nm,
      advice_Nm: open ? Math.round(low + advised * (rest.limit_Nm - low)) : null,
      wrench: wrench && { name: wrench.name, least_Nm: wrench.least_Nm, most_Nm: wrench.least_Nm + wrench.span },
    };
  });
