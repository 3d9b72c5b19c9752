import { expect, test } from "vitest";
import { fuzzRounds } from "../../torture/fuzzRounds.ts";

test("three thousand random requests meet no fault of ours, and nothing of the inside in any answer", async () => {
  let seed = 5;
  const random = (): number => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  const { faults, statuses } = await fuzzRounds(3000, random);
  expect(faults).toEqual([]);
  // They went deep enough: entries were taken, refused in every way, and kept out.
  for (const status of [200, 201, 204, 400, 401, 403, 404, 405, 409, 413, 415])
    expect(statuses).toHaveProperty(`${status}`);
});
