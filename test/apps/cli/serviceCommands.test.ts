import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(line));
const text = (line: string): string => turnsleft(typed(line)).stdout;

describe("cure", () => {
  const bead = 'cure --bead "3 mm" --temperature "12 °C" --humidity "65 %"';

  test("3 mm at 12 °C and 65 % take far longer than a skin, and the thread weeks", () => {
    const it = answer(bead);
    expect(it.mayBeSplashed_h).toBeLessThan(it.curedThroughLeast_h);
    expect(it.curedThroughLeast_h).toBeLessThan(it.curedThrough_h);
    expect(it.insideThread10mm_h).toBeGreaterThan(14 * 24);
  });

  /** Vapour pressures by Magnus: 23 °C and 50 % over 12 °C and 65 %, 14.04 / 9.11 hPa. */
  test("this air is slower by the ratio of vapour pressures", () => agrees(answer(bead).slowness, "1.54"));

  test("colder, drier and thicker is never sooner", () => {
    const hours = (width: string, t: string, rh: string): number =>
      answer(`cure --bead "${width} mm" --temperature "${t} °C" --humidity "${rh} %"`).curedThrough_h;
    expect(hours("3", "12", "65")).toBeGreaterThan(hours("2", "23", "50"));
    expect(hours("3", "12", "50")).toBeGreaterThan(hours("3", "12", "65"));
    expect(hours("3", "5", "65")).toBeGreaterThan(hours("3", "12", "65"));
  });

  test("the label's time wins where it is longer, and the clock is told where the closing is", () => {
    const it = answer(`${bead} --label "24 h" --closed 2026-11-25T11:40`);
    expect(it).toMatchObject({ because: "label", mayBeSplashed_h: 24, mayBeSplashedAt: "2026-11-26T11:40" });
    expect(text(bead)).toContain("Does it name this fluid?");
  });

  test.each([
    ['cure --bead "3 mm" --temperature "12 °C" --humidity "0.65"', "--humidity"],
    ['cure --bead "3" --temperature "12 °C" --humidity "65 %"', "--bead"],
    ['cure --bead "3 mm" --temperature "12" --humidity "65 %"', "--temperature"],
    [`${bead} --closed yesterday`, "--closed"],
  ])("%s names %s", (line, option) => {
    const { status, stderr } = turnsleft(typed(line));
    expect(status).toBe(2);
    expect(stderr).toContain(option);
    expect(stderr.trimEnd().split("\n")).toHaveLength(1);
  });
});

describe("pressure", () => {
  test("0.70 to 0.52 bar in five minutes leaks, 0.70 to 0.70 in ten holds", () => {
    expect(answer('pressure --start "0.70 bar" --end "0.52 bar" --minutes 5').verdict).toBe("leaks");
    expect(answer('pressure --start "0.70 bar" --end "0.70 bar" --minutes 10').verdict).toBe("holds");
    expect(answer('pressure --start "-0.50 bar" --end "-0.50 bar" --minutes 10').verdict).toBe("holds");
  });

  /** Gay-Lussac: 2 °C of 293 K at 2.21 bar absolute are 0.015 bar. */
  test("two degrees explain 0.015 bar of 1.20", () => {
    const it = answer(
      'pressure --start "1.20 bar" --end "1.19 bar" --minutes 15 --start-temperature "20 °C" --end-temperature "18 °C"',
    );
    agrees(it.byTemperature_bar, "-0.015");
    expect(it.verdict).toBe("holds");
  });

  /** 25.4 N for each bar on 18 mm. */
  test("a bar pushes 25.4 N on 18 mm", () => {
    agrees(answer('pressure --start "1 bar" --end "1 bar" --minutes 5 --diameter "18 mm"').plugForce_N, "25.4");
  });
});

describe("due", () => {
  const service =
    'due --last 2026-01-10 --at "84210 km" --now "87960 km" --today 2026-04-20 --every "20000 km" --months 12';

  /** 37.5 km a day: 20 000 km take 533 days, 329 to 864 (90 %), so the twelve months govern. */
  test("the date comes before the distance, which would take 433 more days", () => {
    const it = answer(service);
    expect(it).toMatchObject({ type: "due", by: "date", on: "2027-01-10" });
    const distance = it.limits.find(({ by }: { by: string }) => by === "distance");
    expect(distance.likely_days).toBe(433);
    // The published example takes 533 days, 329 to 864: the same ratios hold for the 433 that are left.
    expect(Math.abs(distance.earliest_days - (433 * 329) / 533)).toBeLessThan(2);
    expect(Math.abs(distance.latest_days - (433 * 864) / 533)).toBeLessThan(2);
  });

  test("severe duty is seen and shortens, a falling meter is told, overdue is overdue", () => {
    expect(text(`${service} --severe 0.5`)).toContain("Severe duty is set");
    expect(text(service.replace("87960 km", "80000 km"))).toContain("reads less than before");
    expect(answer("due --last 2024-01-10 --today 2026-04-20 --months 12").type).toBe("overdue");
  });

  test("asks for an interval and for days in order", () => {
    expect(turnsleft(typed("due --last 2026-01-10")).stderr).toContain("--every");
    expect(turnsleft(typed("due --last 2026-01-10 --today 2025-01-01 --months 12")).stderr).toContain("--today");
  });
});

describe("thread", () => {
  test("21.85 mm and 8 gaps in 12.1 mm is M22x1.5, its rival 7/8-14 named with what separates them", () => {
    const it = answer('thread --outside "21.85 mm" --gaps "8 in 12.1 mm"');
    expect(it.candidates[0]).toMatchObject({ designation: "M22x1.5" });
    expect(it.candidates[0].probability).toBeGreaterThan(0.95);
    expect(it.rivals).toContain("7/8-14 UNF");
    expect(it.separateBy).toContain("M22x1.5 from 7/8-14 UNF");
  });

  test("8 gaps in 10.5 mm on the same plug were crests", () => {
    const it = answer('thread --outside "21.85 mm" --gaps "8 in 10.5 mm"');
    expect(it.candidates[0].designation).toBe("M22x1.5");
    expect(it.warnings.join()).toContain("count crests instead of gaps");
  });

  test("a worn 20.85 mm with 10 gaps in 18.2 mm, both ends equal, is G 1/2", () => {
    const it = answer('thread --outside "20.85 mm" --worn --gaps "10 in 18.2 mm" --taper "0.0 mm in 10 mm"');
    expect(it.candidates[0].designation).toBe("G 1/2");
  });

  test("tight after two turns says stop", () => {
    expect(text('thread --outside "15.85 mm" --meshes "two turns, then tight"')).toContain("stop turning");
  });

  test("always tells two, and probabilities that add to no more than one", () => {
    const { candidates } = answer('thread --outside "15.85 mm"');
    expect(candidates.length).toBeGreaterThan(1);
    expect(candidates.reduce((sum: number, it: { probability: number }) => sum + it.probability, 0)).toBeLessThan(
      1.001,
    );
  });

  test.each([
    ["thread", "--outside"],
    ['thread --gaps "8 of 12.1"', "--gaps"],
    ['thread --outside "21.85"', "--outside"],
    ['thread --meshes "it binds"', "--meshes"],
    ['thread --hexagon "24 mm"', "--hexagon"],
  ])("%s names %s", (line, option) => {
    const { status, stderr } = turnsleft(typed(line));
    expect(status).toBe(2);
    expect(stderr).toContain(option);
  });
});

describe("limits of inch and pipe threads", () => {
  /** ASME B1.1 table of 2A and 2B, inches as printed. */
  test.each([
    ["1/4-20 UNC", ".2489", ".2408", ".2164", ".2127", ".2175", ".2224"],
    ["3/4-16 UNF", ".7485", ".7391", ".7079", ".7029", ".7094", ".7159"],
    ["7/8-14 UNF", ".8734", ".8631", ".8270", ".8216", ".8286", ".8356"],
  ])("%s", (name, ...printed) => {
    const it = answer(`limits "${name}" --plug 2A --hole 2B`);
    const keys = ["dMax_mm", "dMin_mm", "d2Max_mm", "d2Min_mm", "D2Min_mm", "D2Max_mm"];
    keys.forEach((key, i) => void agrees(it[key] / 25.4, printed[i] ?? ""));
  });

  /** ISO 228-1, G 1/2: major 20.955, pitch 19.793, minor 18.631, T_d 0.284, T_d2 0.142 class A. */
  test("G 1/2", () => {
    const it = answer('limits "G 1/2"');
    expect(it).toMatchObject({
      dMax_mm: 20.955,
      dMin_mm: 20.671,
      d2Max_mm: 19.793,
      d2Min_mm: 19.651,
      D1Min_mm: 18.631,
      stressArea_mm2: null,
    });
    agrees(answer('limits "G 1/2" --plug B').d2Min_mm, "19.509");
  });

  test("a taper thread has the sizes of its gauge plane and null for the rest", () => {
    expect(answer('limits "R 1/2"')).toMatchObject({
      dMax_mm: 20.955,
      dMin_mm: null,
      D1Min_mm: 18.631,
      D1Max_mm: null,
    });
    expect(turnsleft(typed('limits "R 1/2" --plug A')).status).toBe(2);
    expect(turnsleft(typed('limits "1/4-20 UNC" --plug 4A')).stderr).toContain("1A, 2A or 3A");
  });
});
