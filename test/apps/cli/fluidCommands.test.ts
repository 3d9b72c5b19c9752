import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(line));
const text = (line: string): string => turnsleft(typed(line)).stdout;

describe("viscosity", () => {
  /** The worked examples of ASTM D2270, as a general-purpose chemical-engineering library quotes them. */
  test.each([
    ["73.30", "8.86", 92],
    ["22.83", "5.05", 156],
  ])("%s and %s mm²/s have the index %i", (kv40, kv100, index) => {
    expect(answer(`viscosity --kv40 ${kv40} --kv100 ${kv100}`).index).toBe(index);
  });

  /** ASTM D341 through 40 and 100 °C, computed with the published equation in R. */
  test.each([
    ["100", "15", "-12 °C", "2614.8"],
    ["100", "15", "20 °C", "269.89"],
    ["140", "14.5", "80 °C", "25.968"],
    ["48", "8", "120 °C", "5.4537"],
  ])("%s/%s at %3$s", (kv40, kv100, temperature, printed) => {
    const { kv_mm2s } = answer(`viscosity --kv40 ${kv40} --kv100 ${kv100} --temperature "${temperature}"`);
    expect(kv_mm2s / Number(printed)).toBeCloseTo(1, 3);
  });

  /** SAE J306:2019: 90 is 13.5 to below 18.5; 85 is 11.0 to below 13.5. */
  test.each([
    ["13.5", "SAE 90"],
    ["18.4", "SAE 90"],
    ["13.49", "SAE 85"],
  ])("%s mm²/s at 100 °C is %s", (kv100, grade) => {
    expect(answer(`viscosity --kv40 120 --kv100 ${kv100}`).grade).toBe(grade);
  });

  test("warns below 0 °C and refuses oil that grows thicker with heat", () => {
    expect(text('viscosity --kv40 100 --kv100 15 --temperature "-20 °C"')).toContain("no W grade can be told");
    const { status, stderr } = turnsleft(typed("viscosity --kv40 10 --kv100 15"));
    expect(status).toBe(2);
    expect(stderr).toContain("oil grows thinner with heat");
  });
});

describe("expand", () => {
  /** API MPMS 11.1 with K1 = 0.34878, worked for 1.2 L of 880 kg/m³ from 20 to 90 °C. */
  test("1.2 L grow by 64.3 ml, 58.5 net of aluminium, 3.24 mm at 18 ml/mm", () => {
    const it = answer(
      'expand --volume "1.2 L" --from "20 °C" --to "90 °C" --density "880 kg/m³" --case aluminium --per-mm "18 ml/mm"',
    );
    agrees(it.grown_ml, "64.3");
    agrees(it.net_ml, "58.5");
    agrees(it.levelRise_mm, "3.24");
    agrees(it.ratio, "1.053573");
    expect(text('expand --volume "1.2 L" --from "20 °C" --to "90 °C"')).toContain("Assumed: density 880");
  });
});

describe("volume", () => {
  test("2.2 L where 4.3 were expected stops before any refill and asks for the unit", () => {
    const it = answer('volume --out "2.2 L" --expected "4.3 L"');
    expect(it.stop).toBe(true);
    expect(text('volume --out "2.2 L" --expected "4.3 L"')).toMatch(/^STOP before you fill anything: wrong unit\?/);
  });

  test("94 % is as expected and says nothing more", () => {
    expect(answer('volume --out "4.05 L" --expected "4.30 L"')).toMatchObject({ band: "as expected", stop: false });
    expect(text('volume --out "4.05 L" --expected "4.30 L"').trim().split("\n")).toHaveLength(1);
  });

  test("more than 115 % stops", () => {
    expect(answer('volume --out "5.2 L" --expected "4.3 L"')).toMatchObject({ band: "too much", stop: true });
  });
});

describe("level", () => {
  /** Plain geometry: 60 ml over 2.7 mm. */
  test("60 ml drawn and 2.7 mm fallen is 22 ml a millimetre, and weak", () => {
    const it = answer('level --drawn "60 ml" --fallen "2.7 mm" --below "8 mm" --allowed "8 mm"');
    agrees(it.perMillimetre_ml, "22.2");
    expect(it).toMatchObject({ strength: "weak", verdict: "at the edge" });
    agrees(it.shortOfLip_ml / 178, "1.00");
  });

  test("predicts what runs over before it is poured", () => {
    const poured = (volume: string) =>
      answer(`level --per-mm "18 ml/mm" --below "5 mm" --pour "${volume}"`).overflow.verdict;
    expect(poured("20 ml")).toBe("none");
    expect(poured("200 ml")).toBe("runs out");
  });

  test("takes the tilt out, 2.44 mm for a degree at 140 mm", () => {
    const flat = answer('level --per-mm "22 ml/mm" --below "8 mm"').level_mm;
    const tilted = answer('level --per-mm "22 ml/mm" --below "8 mm" --tilt "1 °" --offset "140 mm"').level_mm;
    agrees(Math.abs(tilted - flat), "2.4");
  });

  test("asks for more than a fall too small to tell", () => {
    const { status, stderr } = turnsleft(typed('level --drawn "20 ml" --fallen "0.5 mm"'));
    expect(status).toBe(2);
    expect(stderr).toContain("draw more");
  });
});

describe("leak", () => {
  const drip = 'leak --drops 7 --in "10 min" --to-limit "8 mm" --per-mm "22 ml/mm" --breather free --signs none';

  /** Garwood's interval for 7, 0.28 to 1.44 a minute, times 0.020 to 0.050 ml a drop. */
  test("7 drops in 10 minutes lose 20 to 50 ml a day by the drop, 8 to 104 with the count", () => {
    const it = answer(drip);
    agrees(it.bySize_ml[0], "20");
    agrees(it.bySize_ml[1], "50");
    expect(it.honest_ml[0]).toBeCloseTo((0.2814 * 0.02 * 1440) / 1, 0);
    expect(it.honest_ml[1] / (1.4423 * 0.05 * 1440)).toBeCloseTo(1, 1);
    expect(it.driven_days[0]).toBeLessThan(it.parkedHonest_days[0]);
  });

  test("signs come before days, and so does the breather", () => {
    expect(text('leak --drops 7 --in "10 min" --signs "oil on a tyre" --breather free')).toContain(
      "Do not drive: oil on a tyre",
    );
    expect(text('leak --drops 7 --in "10 min" --signs none --breather blocked')).toContain("Free the breather first");
    expect(text('leak --drops 7 --in "10 min"')).toContain("Ask first");
  });

  test("every message carries its caution", () => {
    expect(text(drip)).toContain("not an approval to drive");
  });

  /** 12 mm at 18 ml/mm are 216 ml. */
  test("12 mm over 5000 km are 216 ml, 4.3 ml in 100 km", () => {
    const it = answer('leak --fallen "12 mm" --per-mm "18 ml/mm" --over "5000 km"');
    agrees(it.lost_ml / 10, "22");
    agrees(it.per100km_ml, "4.3");
  });

  test("readings that do not tell are not made to", () => {
    const rows = "distance_km,below_mm\n0,0\n100,1\n200,0\n";
    expect(documentOf(["leak", "--readings", "-"], rows).type).not.toBe("reached");
    const it = answer("leak --readings examples/levels.csv");
    expect(it.type).toBe("reached");
    expect(it.earliest_km).toBeLessThan(it.at_km);
    expect(it.latest_km).toBeGreaterThan(it.at_km);
  });
});
