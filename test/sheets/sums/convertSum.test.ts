import { unit } from "mathjs";
import { describe, expect, test } from "vitest";
import { convertSum } from "../../../src/sheets/sums/convertSum.tsx";
import { convertedFigure } from "../../../src/sheets/words/convertedFigure.ts";
import { answerOf, problemsOf } from "./read.ts";

const shown = (quantity: string, to: string): string | undefined => {
  const it = answerOf(convertSum({ quantity }));
  return it.figure?.unit === to ? it.figure.value : it.rows.find(({ name }) => name === to)?.value;
};

// An independent library's factors: mathjs takes a torque for an energy, and has no imperial measures.
test.each([
  ["46 N·m", "lbf·ft", unit(46, "N m").toNumber("lbf ft")],
  ["34 lb-ft", "N·m", unit(34, "lbf ft").toNumber("N m")],
  ["7/16 in", "mm", unit(7 / 16, "inch").toNumber("mm")],
  ["2.5 US qt", "L", unit(2.5, "quart").toNumber("L")],
  ["30 psi", "bar", unit(30, "psi").toNumber("bar")],
  ["-40 °C", "°F", -40],
] as const)("%s in %s", (quantity, to, expected) => {
  expect(Number(shown(quantity, to))).toBeCloseTo(expected, -Math.floor(Math.log10(Math.abs(expected))) + 2);
});

// 4.54609 L are an imperial gallon (Weights and Measures Act 1985), 3.785411784 L a US one (NIST SP 811).
test("both gallons stand there, each under its own name", () => {
  expect([shown("10 L", "US gal"), shown("10 L", "imp gal")]).toEqual(["2.642", "2.2"]);
});

test("every other unit of the kind stands there once, and none of another", () => {
  const it = answerOf(convertSum({ quantity: "46 Nm" }));
  expect([it.figure?.unit, ...it.rows.map(({ name }) => name)].toSorted()).toEqual(
    ["N·cm", "kN·m", "kgf·cm", "kgf·m", "lbf·ft", "lbf·in"].toSorted(),
  );
});

describe("what cannot be read is refused with its reason", () => {
  test.each(["2 pints", "1 quart", "3 gal"])("%s: which of two", (quantity) => {
    const accepted = problemsOf(convertSum({ quantity }))["quantity"];
    expect(accepted).toMatch(/^US \w+ or imp \w+; .* alone names more than one unit, and the imperial/);
  });

  test.each(["46", "46 furlongs", "1,234.5 mm", "1e3 mm"])("%s", (quantity) => {
    expect(Object.keys(problemsOf(convertSum({ quantity })))).toEqual(["quantity"]);
  });

  test("a bare number takes the unit that was tapped, a written one keeps its own", () => {
    expect(answerOf(convertSum({ quantity: "46", unit: "N·m" })).figure).toMatchObject({ value: "33.93" });
    expect(answerOf(convertSum({ quantity: "46 bar", unit: "N·m" })).figure?.unit).toBe("psi");
  });

  test("nothing at all is wanted, not refused", () => {
    expect(problemsOf(convertSum({}))).toEqual({ quantity: "" });
  });
});

test("figures are written as people write them", () => {
  expect([0, 33.9275, -40, 4600, 0.046, 0.00004, 123456, 1.5e9, 2e-7].map(convertedFigure)).toEqual([
    "0",
    "33.93",
    "-40",
    "4600",
    "0.046",
    "0.00004",
    "123500",
    "1.5 × 10⁹",
    "2 × 10⁻⁷",
  ]);
});
