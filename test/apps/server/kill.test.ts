import { expect, test } from "vitest";
import { serverRounds } from "../../torture/serverRounds.ts";

test("a server killed in the middle of writes over HTTP loses nothing that it acknowledged, and takes up again where it was", async () => {
  let seed = 11;
  const random = (): number => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  const report = await serverRounds(3, random);
  expect(report.acknowledged).toBeGreaterThan(20);
  expect(report).toMatchObject({ rounds: 3, lost: 0, torn: 0, faults: [] });
});
