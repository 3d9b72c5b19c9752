import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const published = (file: string, name: string): string[] =>
  readFileSync(new URL(`../../published/${file}`, import.meta.url), "utf8")
    .split(/\r?\n/)
    .find((line) => line.startsWith(`${name},`))
    ?.split(",")
    .slice(1) ?? [];

describe("limits", () => {
  /** Published tables of ISO 965-2 type, 6g/6H, in the order of their columns (test/published/iso965_6g6H.csv). */
  const columns = ["dMax_mm", "dMin_mm", "d2Max_mm", "d2Min_mm", "D1Min_mm", "D1Max_mm", "D2Min_mm", "D2Max_mm"];

  test.each(["M20x1.5", "M12x1.5", "M8x1.25", "M24x2"])("%s is printed as its table prints it", (thread) => {
    const answer = documentOf(["limits", thread, "--plug", "6g", "--hole", "6H"]);
    const printed = published("iso965_6g6H.csv", thread);
    expect(printed).toHaveLength(columns.length);
    columns.forEach((column, i) => void agrees(answer[column], printed[i] ?? ""));
  });

  test("6g and 6H are meant where no class is named", () => {
    expect(documentOf(["limits", "M20x1.5"])).toEqual(documentOf(typed("limits M20x1.5 --plug 6g --hole 6H")));
  });

  // ISO 898-1:2013, tables 4 and 6: A_s,nom 245 for M20 and 272 for M20x1.5.
  test.each([
    ["M20", "245"],
    ["M20x1.5", "272"],
    ["M24x2", "384"],
    ["M8", "36.6"],
  ])("%s has a stress area of %s mm²", (thread, printed) => {
    agrees(documentOf(["limits", thread]).stressArea_mm2, printed);
  });

  test("the hole of a wire coil has no plug of its own", () => {
    const answer = documentOf(["limits", "STI M20x1.5"]);
    const none = { dMax_mm: null, dMin_mm: null, d2Max_mm: null, d2Min_mm: null, stressArea_mm2: null };
    expect(answer).toMatchObject(none);
    // The tap for a coil is larger than its thread by 3 H / 4, 1.299 P: 20 + 1.949 at the major diameter.
    expect(answer.D2Min_mm).toBeGreaterThan(20);
    expect(answer.D1Min_mm).toBeGreaterThanOrEqual(20);
  });
});

describe("strip", () => {
  // Bickford, 4th ed. (test/published/strip_areas.csv): engagement of one diameter, 6H/6g; met to 0.06 % (its limits are rounded).
  test.each([
    ["M20x2.5", "20 mm"],
    ["M8x1.25", "8 mm"],
    ["M24x3", "24 mm"],
  ])("%s over %s", (thread, length) => {
    const { externalArea_mm2, internalArea_mm2, basis } = documentOf(["strip", thread, "--length", length]);
    const [, external, internal] = published("strip_areas.csv", thread);
    expect(Math.abs(externalArea_mm2 / Number(external) - 1)).toBeLessThan(6e-4);
    expect(Math.abs(internalArea_mm2 / Number(internal) - 1)).toBeLessThan(6e-4);
    expect(basis).toBe("least");
  });

  test("goes with the length, by whatever unit it is given in", () => {
    const area = (length: string): number => documentOf(["strip", "M20x1.5", "--length", length]).internalArea_mm2;
    expect(area("20 mm") / area("10 mm")).toBeCloseTo(2, 6);
    expect(area("1/2 in")).toBeCloseTo(area("12.7 mm"), 4);
  });

  test("basic sizes shear more of the hole's metal than least material, and of the plug's", () => {
    const of = (basis: string) => documentOf(["strip", "M20x1.5", "--length", "20 mm", "--basis", basis]);
    expect(of("basic").internalArea_mm2).toBeGreaterThan(of("least").internalArea_mm2);
    expect(of("basic").externalArea_mm2).toBeGreaterThan(of("least").externalArea_mm2);
    expect(of("basic").basis).toBe("basic");
  });

  test("a material gives the force of the bare model", () => {
    const options = ["strip", "M20x1.5", "--length", "10 mm", "--material", "cast aluminium"];
    const { internalArea_mm2, internalForce_kN } = documentOf(options);
    expect(internalForce_kN / internalArea_mm2).toBeGreaterThan(0.1);
    expect(internalForce_kN / internalArea_mm2).toBeLessThan(0.13);
  });
});

describe("torque", () => {
  // VDI 2230:2001, fine threads, class 8.8, friction 0.12 (test/published/vdi_preload.csv); hexagon face 28.19/22 mm of ISO 4014
  // and ISO 273 (from memory). Met within 1 %.
  const [, F = "", , , T = ""] = published("vdi_preload.csv", "M20x1.5");
  const path = ["torque", "--thread", "M20x1.5", "--friction", "0.12", "--bearing", "25.095 mm"];

  test(`${F} kN takes ${T} N·m on M20x1.5, and back`, () => {
    const { torque_Nm } = documentOf([...path, "--force", `${F} kN`]);
    expect(Math.abs(torque_Nm / Number(T) - 1)).toBeLessThan(0.01);
    expect(documentOf([...path, "--torque", `${torque_Nm} N·m`]).force_kN).toBeCloseTo(Number(F), 4);
  });

  test("the working leads from the thread to the torque, each line with its source", () => {
    const { working } = documentOf([...path, "--force", "20 kN"]);
    expect(working.at(-1).source).toContain("ISO 16047");
    for (const step of working)
      expect(Object.keys(step).toSorted()).toEqual(["formula", "result", "source", "substituted"]);
  });
});

describe("convert", () => {
  // NIST SP 811 (2008), appendix B.8, each factor as printed; values that are exact there are exact here.
  test.each([
    ["1 lbf·ft", "N·m", "1.355818"],
    ["1 lbf·in", "N·m", "0.1129848"],
    ["1 kgf·m", "N·m", "9.80665"],
    ["1 US pt", "mL", "473.1765"],
    ["1 US qt", "L", "0.9463529"],
    ["1 US gal", "L", "3.785412"],
    ["1 imp gal", "L", "4.54609"],
    ["1 psi", "kPa", "6.894757"],
    ["1 in", "mm", "25.4"],
    ["1 lbf", "N", "4.448222"],
    ["1 ft", "m", "0.3048"],
    ["1 bar", "kPa", "100"],
  ])("%s is %s %s", (quantity, unit, printed) => {
    agrees(documentOf(["convert", quantity, unit]).value, printed);
  });

  test.each([
    ["46 N·m", "lbf·ft", "33.93 lbf·ft"],
    ["34 lbf·ft", "N·m", "46.1 N·m"],
    ["470 kgf·cm", "N·m", "46.09 N·m"],
    ["2.5 US qt", "L", "2.366 L"],
    ["-40 °C", "°F", "-40 °F"],
    ["212 °F", "°C", "100 °C"],
    ["1/2 in", "mm", "12.7 mm"],
    ["65 %", "%", "65 %"],
  ])("%s is %s: %s", (quantity, unit, text) => {
    const { status, stdout } = turnsleft(["convert", quantity, unit]);
    expect(status).toBe(0);
    expect(stdout.trim().endsWith(`= ${text}`), stdout).toBe(true);
  });

  test("there and back is where it began", () => {
    const { value } = documentOf(["convert", "46 N·m", "lbf·ft"]);
    expect(documentOf(["convert", `${value} lbf·ft`, "N·m"]).value).toBeCloseTo(46, 9);
  });
});
