import { describe, expect, test } from "vitest";
import { weighingOf } from "../../../bench/givenPort.ts";
import { drawnWindow, quantileDrawn, shareBelow } from "../../../bench/monteCarlo.ts";
import { externalStripArea, internalStripArea } from "../../../src/mechanics/joint/stripping.ts";
import { tighteningTorque } from "../../../src/mechanics/joint/torque.ts";
import { torqueAt, torqueWindow } from "../../../src/mechanics/joint/window.ts";
import { exact, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { kN, mm, mm2, Nm, one } from "../../../src/mechanics/quantity/unit.ts";
import { ridgeOutline } from "../../../src/mechanics/threads/ridgeOutline.ts";
import { tensileStressArea } from "../../../src/mechanics/threads/tensileStressArea.ts";
import type { Thread } from "../../../src/mechanics/threads/thread.ts";
import { standardLimits } from "../../../src/mechanics/threads/threadLimits.ts";
import { threadFromText } from "../../../src/mechanics/threads/threadText.ts";
import { agrees } from "../../published.ts";

function threadOf(text: string): Thread {
  const read = threadFromText(text);
  if (!read.ok) throw new Error(`${text} is not read`);
  return read.thread;
}

/** Shear areas of hole and plug at least material over an engaged length, mm². */
function leastMaterial(text: string, length_mm: number) {
  const thread = threadOf(text);
  const { d_min, D2_max, D1_max, d2_min } = standardLimits(thread);
  const L = exact("L", length_mm, mm);
  const { P, alpha } = thread;
  return {
    internal: valueIn(mm2, internalStripArea({ d: d_min, D_2: D2_max, L, P, alpha })),
    external: valueIn(mm2, externalStripArea({ D_1: D1_max, d_2: d2_min, L, P, alpha })),
  };
}

// ASME B1.1 appendix B and FED-STD-H28/2B print the areas per inch of engagement in another form, π n d [1/(2n) + 0.57735
// (d - D_2)]; worked by hand from their printed limits 2A and 2B (1/2-20: .4906, .4731; .457, .4619).
describe("an inch of unified thread shears over what the inch form gives", () => {
  test.each([
    ["1/2-20 UNF", "1.082", "0.799"],
    ["1/2-13 UNC", "1.12", "0.779"],
    ["3/4-16 UNF", "1.659", "1.233"],
    ["5/8-18 UNF", "1.367", "0.998"],
  ])("%s: the hole over %s in², the plug over %s", (text, internal, external) => {
    const found = leastMaterial(text, 25.4);
    agrees(found.internal / 645.16, internal);
    agrees(found.external / 645.16, external);
  });
});

// Shigley, Mechanical Engineering Design, table 8-2 (from ANSI B1.1-1974).
describe("tensile stress areas of unified threads, in²", () => {
  test.each([
    ["1/4-20 UNC", "0.0318"],
    ["3/8-24 UNF", "0.0878"],
    ["1/2-13 UNC", "0.1419"],
    ["9/16-18 UNF", "0.203"],
    ["5/8-18 UNF", "0.256"],
    ["3/4-16 UNF", "0.373"],
    ["7/8-14 UNF", "0.509"],
    ["1-8 UNC", "0.606"],
  ])("%s has %s", (text, printed) => agrees(valueIn(mm2, tensileStressArea(threadOf(text))) / 645.16, printed));
});

// By hand from ISO 228-1, table 1, class A, and flanks of 27.5°: G 1/2 π · 20.671 (0.90714 + 0.736 tan 27.5°) for a turn of
// the hole, π · 19.172 (0.90714 + 0.479 tan 27.5°) for one of the plug. With 30° the hole's would read 87.
describe("a turn of a G thread shears over", () => {
  test.each([
    ["G 1/4", "37.3", "30.5"],
    ["G 1/2", "83.8", "69.7"],
    ["G 1", "169.8", "145.5"],
  ])("%s: %s mm² of the hole, %s of the plug", (text, internal, external) => {
    const found = leastMaterial(text, valueIn(mm, threadOf(text).P));
    agrees(found.internal, internal);
    agrees(found.external, external);
  });

  // The profile with its rounded crests and roots is stated apart from the areas: where the plug's crest lies at least
  // material the groove of the hole still has straight flanks, so the rounding takes nothing from the area.
  test.each(["G 1/4", "G 1/2", "G 1"])("%s: the shear cylinder cuts the straight of the flanks", (text) => {
    const thread = threadOf(text);
    const P_mm = valueIn(mm, thread.P);
    const { d_min, D2_max } = standardLimits(thread);
    const down = (valueIn(mm, thread.d) - valueIn(mm, d_min)) / 2 / P_mm;
    const points = ridgeOutline("G");
    const flank = points.findIndex((it, i) => it.down <= down && (points[i + 1]?.down ?? 0) >= down);
    const [a, b] = [points[flank], points[flank + 1]];
    if (!a || !b) throw new Error("no flank there");
    const along = a.along + ((down - a.down) / (b.down - a.down)) * (b.along - a.along);
    // What the groove of the hole leaves of a pitch, moved out by half of what its pitch diameter is too large.
    const wider = (valueIn(mm, D2_max) - valueIn(mm, thread.d_2)) / P_mm;
    const ridge = 1 - 2 * along - wider * Math.tan((27.5 * Math.PI) / 180);
    const area = leastMaterial(text, P_mm).internal;
    expect(area / (Math.PI * valueIn(mm, d_min) * P_mm) / ridge).toBeCloseTo(1, 3);
  });
});

// ISO 16047 (A.1) by hand with flanks of 27.5°: 1.8143/2π + 0.12 · 19.793 / (2 cos 27.5°) + 0.12 · 24/2 = 3.068 mm.
test("G 1/2 on a face of 24 mm at a friction of 0.12 takes 30.7 N·m for 10 kN", () => {
  const mu = (symbol: string) => exact(symbol, 0.12, one);
  const path = { thread: threadOf("G 1/2"), D_b: exact("D_b", 24, mm), mu_th: mu("mu_th"), mu_b: mu("mu_b") };
  agrees(valueIn(Nm, tighteningTorque(path, exact("F", 10, kN))), "30.68");
});

// JCGM 101: plain drawing of the same formulas, which shares nothing with the window's convolution but their text.
describe.each(["G 1/2", "3/4-16 UNF"])("the window of %s", (thread) => {
  const weighing = weighingOf({
    thread,
    material: "cast aluminium",
    turns: 4,
    counting: "with a dot",
    condition: "doubtful",
    surface: "oiled",
    seal: "bonded seal",
    washer: null,
    outside_mm: 28.6,
    inside_mm: 21.5,
  });
  const window = torqueWindow(weighing);

  test("agrees with plain drawing", () => {
    const count = 100_000;
    const drawn = drawnWindow(weighing, count, 20261127);
    for (const p of [0.01, 0.5]) {
      const share = shareBelow(drawn.strips, torqueAt(window.strips, p));
      expect(Math.abs(share - p)).toBeLessThan(5 * Math.sqrt((p * (1 - p)) / count));
    }
    expect(quantileDrawn(drawn.closes, 0.95) / window.need_Nm).toBeCloseTo(1, 2);
  });
});
