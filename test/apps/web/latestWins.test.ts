import fc from "fast-check";
import { expect, test } from "vitest";
import { latestWins } from "../../../src/apps/web/kit/latestWins.ts";

test("what was overtaken is never begun, and the last is always done", () => {
  // true offers the next piece of work, false finishes the one that is being done.
  fc.assert(
    fc.property(fc.array(fc.boolean(), { maxLength: 60 }), (moves) => {
      const begun: number[] = [];
      const queue = latestWins<number>((work) => begun.push(work));
      let [offered, finished] = [0, 0];
      for (const offers of moves) {
        if (offers) queue.offer(++offered);
        else if (finished < begun.length) {
          finished++;
          queue.done();
        }
        expect(begun.length - finished).toBeLessThanOrEqual(1);
      }
      while (finished < begun.length) {
        finished++;
        queue.done();
      }
      expect(begun).toEqual([...new Set(begun)].toSorted((a, b) => a - b));
      if (offered > 0) expect(begun.at(-1)).toBe(offered);
    }),
  );
});

test("a held stepper does not queue: of a hundred offers while one is done, one more is done", () => {
  const begun: number[] = [];
  const queue = latestWins<number>((work) => begun.push(work));
  for (let i = 0; i < 100; i++) queue.offer(i);
  queue.done();
  queue.done();
  expect(begun).toEqual([0, 99]);
});
