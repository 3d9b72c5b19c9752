import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const limitsOf = (line: string) => documentOf(typed(`limits ${line}`));
const text = (line: string): string => turnsleft(typed(`limits ${line}`)).stdout;

const limitKeys = ["dMax_mm", "dMin_mm", "d2Max_mm", "d2Min_mm", "D1Min_mm", "D1Max_mm", "D2Min_mm", "D2Max_mm"];
const keys = [...limitKeys, "stressArea_mm2", "gaugeLength_mm", "gaugeLengthMin_mm", "gaugeLengthMax_mm", "working"];

test.each(["M20x1.5", "1/4-20 UNC", "G 1/2", "R 1/2", "Rc 1/2", "1/2-14 NPT", "STI M20x1.5"])(
  "%s has every key, a figure above nothing or null",
  (thread) => {
    const it = documentOf(["limits", thread]);
    expect(Object.keys(it)).toEqual(keys);
    for (const key of keys.slice(0, -1)) expect(it[key] === null || it[key] > 0, key).toBe(true);
    expect(it.working.length).toBeGreaterThan(0);
  },
);

// ASME B1.1, table of limits of size: 2A major max/min, pitch max/min; 2B pitch min/max, minor min/max; inch.
describe("unified threads as printed, in inches beside the millimetres and in the document's millimetres", () => {
  const columns = ["dMax_mm", "dMin_mm", "d2Max_mm", "d2Min_mm", "D2Min_mm", "D2Max_mm", "D1Min_mm", "D1Max_mm"];

  test.each([
    ["1/4-20 UNC", ".2489 .2408 .2164 .2127 .2175 .2224 .196 .207"],
    ["5/16-18 UNC", ".3113 .3026 .2752 .2712 .2764 .2817 .252 .265"],
    ["1/2-20 UNF", ".4987 .4906 .4662 .4619 .4675 .4731 .446 .457"],
    ["3/4-16 UNF", ".7485 .7391 .7079 .7029 .7094 .7159 .682 .696"],
    ["7/8-14 UNF", ".8734 .8631 .8270 .8216 .8286 .8356 .798 .813"],
    ["1-8 UNC", ".9980 .9830 .9168 .9101 .9188 .9276 .865 .890"],
  ])("%s", (name, row) => {
    const printed = row.split(" ");
    const it = limitsOf(`"${name}" --plug 2A --hole 2B`);
    columns.forEach((column, i) => void agrees(it[column] / 25.4, printed[i] ?? ""));
    expect(limitsOf(`"${name}"`)).toEqual(it);
    const [dMax, dMin, d2Max, d2Min, D2Min, D2Max, D1Min, D1Max] = printed.map((figure) => `0${figure}`.padEnd(6, "0"));
    for (const range of [`${dMin} to ${dMax}`, `${d2Min} to ${d2Max}`, `${D1Min} to ${D1Max}`, `${D2Min} to ${D2Max}`])
      expect(text(`"${name}"`)).toContain(`${range} in`);
  });

  // The same table's column of outside diameters in mm.
  test.each([
    ["5/8-18 UNF", "15.62", "15.84"],
    ["3/4-16 UNF", "18.77", "19.01"],
    ["7/8-14 UNF", "21.92", "22.18"],
  ])("%s measures %s to %s mm outside", (name, least, most) => {
    const it = limitsOf(`"${name}"`);
    agrees(it.dMin_mm, least);
    agrees(it.dMax_mm, most);
  });

  // ASME B1.1, from memory of its table: 1/4-20 UNC 3A and 3B.
  test("another class has its own limits, however it is written", () => {
    const it = limitsOf('"1/4-20 UNC" --plug 3a --hole 3B');
    agrees(it.dMax_mm / 25.4, ".2500");
    agrees(it.d2Min_mm / 25.4, ".2147");
    agrees(it.D2Max_mm / 25.4, ".2211");
  });
});

// ISO 228-1:2000, table 1: major, pitch, minor; tolerances T_d, T_d2 of class A and B, T_D1; mm.
describe("G threads as printed", () => {
  test.each([
    ["1/8", "9.728 9.147 8.566 0.214 0.107 0.214 0.282"],
    ["1/4", "13.157 12.301 11.445 0.250 0.125 0.250 0.445"],
    ["1/2", "20.955 19.793 18.631 0.284 0.142 0.284 0.541"],
    ["3/4", "26.441 25.279 24.117 0.284 0.142 0.284 0.541"],
    ["1", "33.249 31.770 30.291 0.360 0.180 0.360 0.640"],
  ])("G %s", (size, row) => {
    const [d = "", d2 = "", D1 = "", Td = "", A = "", B = "", TD1 = ""] = row.split(" ");
    const [a, b] = [limitsOf(`"G ${size}" --plug A`), limitsOf(`"G ${size}" --plug B`)];
    agrees(a.dMax_mm, d);
    agrees(a.d2Max_mm, d2);
    agrees(a.D2Min_mm, d2);
    agrees(a.D1Min_mm, D1);
    agrees(a.dMax_mm - a.dMin_mm, Td);
    agrees(a.d2Max_mm - a.d2Min_mm, A);
    agrees(b.d2Max_mm - b.d2Min_mm, B);
    agrees(a.D1Max_mm - a.D1Min_mm, TD1);
    expect([a.stressArea_mm2, a.gaugeLength_mm]).toEqual([null, null]);
  });

  test("class A is meant unless the name or --plug says B", () => {
    const [a, b] = [limitsOf('"G 1/2" --plug A'), limitsOf('"G 1/2" --plug B')];
    expect(limitsOf('"G 1/2"')).toEqual(a);
    expect(limitsOf('"G 1/2 B"')).toEqual(b);
    expect(limitsOf('"G 1/2" --plug b')).toEqual(b);
  });
});

// ISO 228-1 sizes stand for ISO 7-1 at the gauge plane; its length from memory of ISO 7-1, table 1: basic, max, min.
test.each(["R", "Rc"])("%s 1/2 has the sizes of its gauge plane, where that lies, and null for the rest", (letters) => {
  const it = limitsOf(`"${letters} 1/2"`);
  agrees(it.dMax_mm, "20.955");
  agrees(it.d2Max_mm, "19.793");
  agrees(it.D1Min_mm, "18.631");
  agrees(it.gaugeLength_mm, "8.2");
  agrees(it.gaugeLengthMax_mm, "10.0");
  agrees(it.gaugeLengthMin_mm, "6.4");
  expect([it.dMin_mm, it.d2Min_mm, it.D1Max_mm, it.D2Max_mm, it.stressArea_mm2]).toEqual([
    null,
    null,
    null,
    null,
    null,
  ]);
  expect(text(`"${letters} 1/2"`)).toMatch(/at the gauge plane/);
});

// ASME B1.20.1, table 2: outside diameter of the pipe (mm), E_1 (mm), L_1 (inch).
test.each([
  ["1/8-27", "10.287", "9.489", ".162"],
  ["1/4-18", "13.716", "12.487", ".228"],
  ["1/2-14", "21.336", "19.772", ".320"],
  ["1-11.5", "33.401", "31.461", ".400"],
])("%s NPT has the sizes printed", (name, outside, pitch, length) => {
  const it = limitsOf(`"${name} NPT"`);
  agrees(it.dMax_mm, outside);
  agrees(it.d2Max_mm, pitch);
  agrees(it.D2Min_mm, pitch);
  agrees(it.gaugeLength_mm / 25.4, length);
  expect(text(`"${name} NPT"`)).toMatch(/pipe, outside .* in\n/);
});
