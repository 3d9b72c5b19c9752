import { describe, expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { inches, mm } from "../../../src/mechanics/quantity/unit.ts";
import { nptSizes } from "../../../src/mechanics/tables/nptSizes.ts";
import { nptThread } from "../../../src/mechanics/threads/nptThread.ts";
import { gaugePlane, pipeLimits } from "../../../src/mechanics/threads/pipeLimits.ts";
import { agrees } from "../../published.ts";

const threadOf = (size: string) => {
  const row = nptSizes.find((it) => it.size === size);
  if (!row) throw new Error(size);
  return nptThread(row);
};

// ASME B1.20.1, table 2: outside diameter, pitch, pitch diameter E_1 (mm), L_1 (inch), its turns, L_2 (inch).
describe("NPT threads have the sizes printed", () => {
  test.each([
    ["1/8", "10.287 0.941 9.489 .162 4.36 .2639"],
    ["1/4", "13.716 1.411 12.487 .228 4.10 .4018"],
    ["3/8", "17.145 1.411 15.926 .240 4.32 .4078"],
    ["1/2", "21.336 1.814 19.772 .320 4.48 .5337"],
    ["3/4", "26.670 1.814 25.117 .339 4.75 .5457"],
    ["1", "33.401 2.209 31.461 .400 4.60 .6828"],
  ])("%s", (size, row) => {
    const thread = threadOf(size);
    const [D = "", P = "", E_1 = "", L_1 = "", turns = "", L_2 = ""] = row.split(" ");
    agrees(valueIn(mm, thread.d), D);
    agrees(valueIn(mm, thread.P), P);
    agrees(valueIn(mm, thread.d_2), E_1);
    agrees(valueIn(inches, thread.L_1), L_1);
    agrees(thread.L_1.value / thread.P.value, turns);
    agrees(valueIn(inches, thread.L_2), L_2);
  });
});

// ASME B1.20.1, table 2, from memory: E_0 and E_1, inch.
test.each([
  ["1/16", ".27118 .28118"],
  ["1/8", ".36351 .37360"],
  ["1/4", ".47739 .49163"],
  ["3/8", ".61201 .62701"],
  ["1/2", ".75843 .77843"],
  ["3/4", ".96768 .98887"],
  ["1", "1.21363 1.23863"],
  ["1 1/4", "1.55713 1.58338"],
  ["1 1/2", "1.79609 1.82234"],
  ["2", "2.26902 2.29627"],
])("%s NPT has E_0 and E_1 of %s inch", (size, row) => {
  const thread = threadOf(size);
  const [E_0 = "", E_1 = ""] = row.split(" ");
  agrees(valueIn(inches, thread.E_0), E_0);
  agrees(valueIn(inches, thread.d_2), E_1);
});

test("NPT has sizes at the gauge plane, no tolerance of diameter, and a gauge plane within one turn", () => {
  const thread = threadOf("1/2");
  const limits = pipeLimits(thread, "A");
  expect([limits.d_min, limits.d2_min, limits.D1_max, limits.D2_max]).toEqual([null, null, null, null]);
  expect(limits.d2_max).toBe(thread.d_2);
  const plane = gaugePlane(thread);
  if (!plane) throw new Error("no gauge plane");
  expect((plane.length_max.value - plane.length_min.value) / thread.P.value).toBeCloseTo(2, 9);
});

test("NPT grows by a sixteenth from its small end to the gauge plane, and its thread stands within the pipe there", () => {
  for (const size of nptSizes) {
    const { d, d_2, D_1, E_0, h, L_1 } = nptThread(size);
    expect((d_2.value - E_0.value) / L_1.value).toBeCloseTo(1 / 16, 3);
    expect(d_2.value + h.value).toBeLessThan(d.value);
    expect(D_1.value + h.value).toBeCloseTo(d_2.value, 12);
  }
});
