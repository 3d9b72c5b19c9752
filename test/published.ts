import { expect } from "vitest";

/**
 * Asserts that `actual` rounds to what the source prints.
 * The tolerance is half of the last digit printed, so copy figures as they stand: "58.0", not 58.
 */
export function agrees(actual: number, printed: string): void {
  const [mantissa = "", exponent = "0"] = printed.toLowerCase().split("e");
  const decimals = (mantissa.split(".")[1]?.length ?? 0) - Number(exponent);
  const tolerance = 0.5001 * 10 ** -decimals;
  expect(Math.abs(actual - Number(printed)), `${actual} against the printed ${printed}`).toBeLessThanOrEqual(tolerance);
}
