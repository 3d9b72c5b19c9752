import { describe, expect, test } from "vitest";
import { type Quantity, valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { mm } from "../../../src/mechanics/quantity/unit.ts";
import { gaugePlane, pipeLimits } from "../../../src/mechanics/threads/pipeLimits.ts";
import { pipeThreadFromText } from "../../../src/mechanics/threads/pipeText.ts";
import type { PipeThread } from "../../../src/mechanics/threads/pipeThread.ts";
import { agrees } from "../../published.ts";

// ISO 228-1:2000, table 1: pitch, major, pitch and minor diameter, T_d, T_d2 of class A and B, T_D1; mm.
const rows = [
  ["1/8", "0.907 9.728 9.147 8.566 0.214 0.107 0.214 0.282"],
  ["1/4", "1.337 13.157 12.301 11.445 0.250 0.125 0.250 0.445"],
  ["3/8", "1.337 16.662 15.806 14.950 0.250 0.125 0.250 0.445"],
  ["1/2", "1.814 20.955 19.793 18.631 0.284 0.142 0.284 0.541"],
  ["5/8", "1.814 22.911 21.749 20.587 0.284 0.142 0.284 0.541"],
  ["3/4", "1.814 26.441 25.279 24.117 0.284 0.142 0.284 0.541"],
  ["7/8", "1.814 30.201 29.039 27.877 0.284 0.142 0.284 0.541"],
  ["1", "2.309 33.249 31.770 30.291 0.360 0.180 0.360 0.640"],
  // From memory of the same table.
  ["1/16", "0.907 7.723 7.142 6.561 0.214 0.107 0.214 0.282"],
  ["1 1/4", "2.309 41.910 40.431 38.952 0.360 0.180 0.360 0.640"],
  ["1 1/2", "2.309 47.803 46.324 44.845 0.360 0.180 0.360 0.640"],
  ["2", "2.309 59.614 58.135 56.656 0.360 0.180 0.360 0.640"],
] as const;

describe("G threads have the sizes and tolerances printed", () => {
  test.each(rows)("G %s", (size, row) => {
    const thread = threadOf(`G ${size}`);
    const [P, d, d2, D1, Td, Td2A, Td2B, TD1] = row.split(" ") as [string, ...string[]];
    const a = pipeLimits(thread, "A");
    const b = pipeLimits(thread, "B");
    agrees(mmOf(thread.P), P);
    agrees(mmOf(a.d_max), `${d}`);
    agrees(mmOf(a.d2_max), `${d2}`);
    agrees(mmOf(a.D1_min), `${D1}`);
    agrees(mmOf(a.D2_min), `${d2}`);
    agrees(mmOf(a.d_max) - mmOf(a.d_min), `${Td}`);
    agrees(mmOf(a.d2_max) - mmOf(a.d2_min), `${Td2A}`);
    agrees(mmOf(b.d2_max) - mmOf(b.d2_min), `${Td2B}`);
    agrees(mmOf(a.D1_max) - mmOf(a.D1_min), `${TD1}`);
    agrees(mmOf(a.D2_max) - mmOf(a.D2_min), `${Td2A}`);
  });
});

// ISO 7-1 has the same basic sizes at the gauge plane; gauge lengths from memory of its table 1: basic, max, min; mm.
describe("R and Rc threads have the sizes printed at the gauge plane", () => {
  test.each([
    ["1/8", "4.0 4.9 3.1"],
    ["1/4", "6.0 7.3 4.7"],
    ["3/8", "6.4 7.7 5.1"],
    ["1/2", "8.2 10.0 6.4"],
    ["3/4", "9.5 11.3 7.7"],
    ["1", "10.4 12.7 8.1"],
  ])("%s", (size, lengths) => {
    const [, row = ""] = rows.find(([it]) => it === size) ?? [];
    const [P = "", d = "", d2 = "", D1 = ""] = row.split(" ");
    for (const letters of ["R", "Rc"]) {
      const thread = threadOf(`${letters} ${size}`);
      const limits = pipeLimits(thread, "A");
      agrees(mmOf(thread.P), P);
      agrees(mmOf(limits.d_max), d);
      agrees(mmOf(limits.d2_max), d2);
      agrees(mmOf(limits.D2_min), d2);
      agrees(mmOf(limits.D1_min), D1);
      expect([limits.d_min, limits.d2_min, limits.D1_max, limits.D2_max]).toEqual([null, null, null, null]);
      const plane = gaugePlane(thread);
      const [basic = "", most = "", least = ""] = lengths.split(" ");
      agrees(mmOf(plane?.length ?? null), basic);
      agrees(mmOf(plane?.length_max ?? null), most);
      agrees(mmOf(plane?.length_min ?? null), least);
    }
  });
});

// ISO 7-1:1994, table 1 (from memory): parallel internal threads may be off by so much on the diameter, either way; mm.
describe("the diameters of an Rp hole lie about those of its gauge plane", () => {
  test.each([
    ["1/8", "0.071"],
    ["1/4", "0.104"],
    ["3/8", "0.104"],
    ["1/2", "0.142"],
    ["3/4", "0.142"],
    ["1", "0.180"],
    ["2", "0.180"],
  ])("Rp %s: ± %s", (size, tolerance) => {
    const [, row = ""] = rows.find(([it]) => it === size) ?? [];
    const [, d = "", d2 = "", D1 = ""] = row.split(" ");
    const limits = pipeLimits(threadOf(`Rp ${size}`), "A");
    for (const [basic, least, most] of [
      [d2, limits.D2_min, limits.D2_max],
      [D1, limits.D1_min, limits.D1_max],
    ] as const) {
      agrees((mmOf(most) - mmOf(least)) / 2, tolerance);
      agrees((mmOf(most) + mmOf(least)) / 2, basic);
    }
    // Its plug is a taper R.
    agrees(mmOf(limits.d_max), d);
    expect([limits.d_min, limits.d2_min]).toEqual([null, null]);
    expect(gaugePlane(threadOf(`Rp ${size}`))).toEqual(gaugePlane(threadOf(`R ${size}`)));
  });

  // ISO 228-1:2000, table 1: a G 1/2 plug of class A may be 19.793 over its flanks; the hole may be 19.793 - 0.142 (from memory).
  test("a G plug at its largest does not go into an Rp hole at its smallest", () => {
    const [plug, hole] = ["G 1/2", "Rp 1/2"].map((it) => pipeLimits(threadOf(it), "A"));
    agrees(mmOf(plug?.d2_max ?? null) - mmOf(hole?.D2_min ?? null), "0.142");
    // At its largest it is as wide as a G hole, so a plug that goes in bears what it bears there.
    agrees(mmOf(hole?.D2_max ?? null) - mmOf(plug?.D2_max ?? null), "0.000");
  });
});

test("a parallel thread has no gauge plane", () => expect(gaugePlane(threadOf("G 1/2"))).toBeNull());

function mmOf(q: Quantity | null): number {
  if (!q) throw new Error("a limit is missing");
  return valueIn(mm, q);
}

function threadOf(text: string): PipeThread {
  const read = pipeThreadFromText(text);
  if (!read.ok) throw new Error(`${text}: ${read.problem.type}`);
  return read.thread;
}
