import { expect, test } from "vitest";
import { killRounds } from "../torture/killRounds.ts";

test("a writer killed in the middle of its writes loses nothing that it acknowledged, and leaves nothing half-written", async () => {
  let seed = 7;
  const random = (): number => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  const report = await killRounds(4, random);
  expect(report.acknowledged).toBeGreaterThan(20);
  expect(report).toMatchObject({ rounds: 4, lost: 0, torn: 0, faults: [] });
});
