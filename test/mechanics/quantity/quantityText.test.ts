import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantityFromText } from "../../../src/mechanics/quantity/quantityText.ts";
import { inSI, type Kind } from "../../../src/mechanics/quantity/unit.ts";

/** Every kind that somebody may be asked for, with a unit of it. */
const symbols = {
  angle: "°",
  length: "mm",
  area: "mm²",
  volume: "L",
  mass: "kg",
  density: "kg/m³",
  force: "kN",
  "line load": "N/mm",
  torque: "N·m",
  pressure: "MPa",
  time: "d",
  temperature: "°C",
  "kinematic viscosity": "mm²/s",
  "dynamic viscosity": "mPa·s",
  flow: "ml/d",
  "surface tension": "N/m",
  "volume per length": "ml/mm",
  speed: "km/h",
} as const satisfies { readonly [K in Kind]?: string };
const kinds = Object.keys(symbols) as (keyof typeof symbols)[];

// The texts of the command line's contract; values in SI by the exact factors of NIST SP 811.
describe("what the contract promises to read", () => {
  test.each([
    ["19.9 mm", "length", 19.9e-3],
    ["46 N·m", "torque", 46],
    ["46 Nm", "torque", 46],
    ["34 lbf·ft", "torque", 46.0978102432676],
    ["34 ft-lbs", "torque", 46.0978102432676],
    ["470 kgf·cm", "torque", 46.091255],
    ["2.5 US qt", "volume", 2.365882365e-3],
    ["4 imp pt", "volume", 2.273045e-3],
    ["12 °C", "temperature", 285.15],
    ["65 %", "plain number", 0.65],
    ["65%", "plain number", 0.65],
    ["7/16 in", "length", 11.1125e-3],
    ["1 1/2 in", "length", 38.1e-3],
    ['1 1/2"', "length", 38.1e-3],
    ["80,5 N·m", "torque", 80.5],
    ["80,5", "plain number", 80.5],
    ["3 1/2", "turns", 3.5],
    ["3½ turns", "turns", 3.5],
    ["3.5", "turns", 3.5],
    ["-40 °F", "temperature", 233.15],
    ["46nm", "torque", 46],
  ] as const)("%j is %s: %d", (text, kind, value) => {
    const read = quantityFromText(text, kind);
    expect(read.ok).toBe(true);
    if (read.ok) expect(inSI(read.written.value, read.written.unit) / value).toBeCloseTo(1, 14);
    // And the same where any kind will do, unless the number stands bare.
    if (/[^\d\s.,/½-]/u.test(text)) expect(quantityFromText(text, null)).toEqual(read);
  });
});

describe("what it promises to refuse", () => {
  test.each([
    ["1,234.5", "length", "several separators"],
    ["1,234.5 mm", "length", "several separators"],
    ["1 000 mm", "length", "several separators"],
    ["1'000", "length", "several separators"],
    ["1'000 mm", "length", "several separators"],
    ["1e3 mm", "length", "not a number"],
    ["4 pint", "volume", "ambiguous unit"],
    ["4 pints", "volume", "ambiguous unit"],
    ["2 quarts", "volume", "ambiguous unit"],
    ["1 gallon", "volume", "ambiguous unit"],
    ["pint", "volume", "not a number"],
    ["5 kgm", "torque", "ambiguous unit"],
    ["7/16 mm", "length", "fraction not accepted"],
    ["1/2 N·m", "torque", "fraction not accepted"],
    ["½ L", "volume", "fraction not accepted"],
    ["1/2", "plain number", "fraction not accepted"],
    ["", "length", "empty"],
    ["12", "length", "unit is missing"],
    ["12", null, "unit is missing"],
    ["Infinity", "length", "not a number"],
    ["Infinity mm", "length", "not a number"],
    ["NaN", "plain number", "not a number"],
    ["0x10", "plain number", "unknown unit"],
    ["0x10 mm", "length", "unknown unit"],
    ["--3", "plain number", "not a number"],
    ["--3 mm", "length", "not a number"],
    ["12 mm 5", "length", "unknown unit"],
    ["12 mm 5", null, "unknown unit"],
    ["12 mm 2", null, "unknown unit"],
    // Found when this suite was written: read as 1/21 in and 1/26 in.
    ["½1 in", "length", "unknown unit"],
    ["1½6 in", "length", "unknown unit"],
    ["12 mm -", "length", "unknown unit"],
    ["5 ft 3 in", "length", "unknown unit"],
    ["5'3\"", "length", "several separators"],
    ["12 - 14 mm", "length", "unknown unit"],
    ["12-14 mm", "length", "unknown unit"],
    ["12 ± 1 mm", "length", "unknown unit"],
    ["12 furlongs", "length", "unknown unit"],
    ["46 N·m", "force", "another kind"],
    ["65 %", "length", "another kind"],
    ["3 turns", "plain number", "another kind"],
    [`${"9".repeat(400)} mm`, "length", "not a number"],
  ] as const)("%j as %s: %s", (text, kind, type) => {
    const read = quantityFromText(text, kind);
    expect(read.ok ? read.written : read.problem.type).toBe(type);
  });

  test("a refusal names what is accepted", () => {
    expect(quantityFromText("4 pint", "volume")).toMatchObject({
      problem: { given: "pint", accepted: ["US pt", "imp pt"] },
    });
    expect(quantityFromText("12", "torque")).toMatchObject({
      problem: { accepted: expect.arrayContaining(["N·m", "lbf·ft", "kgf·cm"]) },
    });
    expect(quantityFromText("12 mm", "torque")).toMatchObject({
      problem: { given: "mm", accepted: expect.arrayContaining(["N·m"]) },
    });
  });
});

describe("kinds are kept apart", () => {
  test.each(kinds)("%s is read as itself only", (kind) => {
    expect(quantityFromText(`2 ${symbols[kind]}`, kind)).toMatchObject({ ok: true });
    for (const other of kinds.filter((it) => it !== kind)) {
      const read = quantityFromText(`2 ${symbols[kind]}`, other);
      expect(read.ok ? read.written : read.problem.type, `${kind} as ${other}`).toBe("another kind");
    }
  });
});

describe("laws", () => {
  const units = Object.values(symbols);
  const unit = fc.constantFrom(...units);
  const number = fc.tuple(fc.nat(9999), fc.nat(999)).map(([whole, part]) => `${whole}.${part}`);

  test("a comma and a point read the same in every unit, with or without a blank", () => {
    fc.assert(
      fc.property(number, unit, (text, symbol) => {
        const read = quantityFromText(`${text} ${symbol}`, null);
        expect(read).toMatchObject({ ok: true, written: { value: Number(text), unit: { symbol } } });
        expect(quantityFromText(`${text.replace(".", ",")} ${symbol}`, null)).toEqual(read);
        expect(quantityFromText(`${text}${symbol}`, null)).toEqual(read);
      }),
    );
  });

  test("whatever is added to a quantity, it is not read as if it were not there", () => {
    const more = fc.constantFrom("5", "x", "mm", "-", "*", "·", "..", ",", "/", "1/2", "(", "±1", "?", "0", "²", "and");
    fc.assert(
      fc.property(number, unit, more, fc.constantFrom("", " "), (text, symbol, added, blank) => {
        const alone = quantityFromText(`${text} ${symbol}`, null);
        expect(quantityFromText(`${text} ${symbol}${blank}${added}`, null)).not.toEqual(alone);
        expect(quantityFromText(`${added} ${text} ${symbol}`, null)).not.toEqual(alone);
      }),
      { numRuns: 2000 },
    );
  });

  test("what is read keeps every digit that was written", () => {
    const bits = fc.constantFrom(
      "1",
      "2",
      "20",
      ".",
      ",",
      " ",
      "-",
      "/",
      "mm",
      "in",
      "lbf·ft",
      "%",
      "turns",
      "½",
      "°C",
      "US qt",
      "·",
      "*",
    );
    fc.assert(
      fc.property(
        fc.array(bits, { maxLength: 8 }).map((it) => it.join("")),
        (text) => {
          const read = quantityFromText(text, null);
          if (!read.ok) return;
          const grammar =
            /^\s*-?(\d+[.,]?\d*|[.,]\d+|(\d+(\s+|-))?\d+\s*\/\s*\d+|\d*\s*½)\s*(mm|in|lbf·ft|%|turns|°C|US qt)(2|\s|\.)*$/u;
          expect(text).toMatch(grammar);
          if (/2\s*$/.test(text)) expect(read.written.unit.kind).toBe("area");
        },
      ),
      { numRuns: 20_000 },
    );
  });

  test("no text makes it throw", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "binary" }),
        fc.constantFrom(null, "turns" as const, "plain number" as const, ...kinds),
        (text, kind) => {
          const read = quantityFromText(text, kind);
          if (read.ok) expect(Number.isFinite(read.written.value)).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
