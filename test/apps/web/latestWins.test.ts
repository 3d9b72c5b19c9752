import fc from "fast-check";
import { expect, test } from "vitest";
import { latestWins } from "../../../src/apps/web/kit/latestWins.ts";

test("what was overtaken is never begun, and the last is always done", () => {
  // true offers the next piece of work, false finishes the one that is being done.
  fc.assert(
    fc.property(fc.array(fc.boolean(), { maxLength: 60 }), (moves) => {
      const begun: number[] = [];
      const queue = latestWins<number>(
        (work) => begun.push(work),
        () => 0,
      );
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
  const queue = latestWins<number>(
    (work) => begun.push(work),
    () => 0,
  );
  for (let i = 0; i < 100; i++) queue.offer(i);
  queue.done();
  queue.done();
  expect(begun).toEqual([0, 99]);
});

// A tap on a card took the place of the answer that waited, and the old torque stood beside the new readings.
test("work of another kind takes no answer's place, and what is offered last of each kind is done", () => {
  type Work = { readonly kind: 0 | 1; readonly number: number };
  fc.assert(
    fc.property(fc.array(fc.constantFrom("answer", "rest", "done"), { maxLength: 60 }), (moves) => {
      const begun: Work[] = [];
      const last = new Map<number, Work>();
      const queue = latestWins<Work>(
        (work) => begun.push(work),
        ({ kind }) => kind,
      );
      let finished = 0;
      moves.forEach((move, number) => {
        if (move === "done") {
          if (finished === begun.length) return;
          finished++;
          queue.done();
          return;
        }
        const work: Work = { kind: move === "answer" ? 0 : 1, number };
        last.set(work.kind, work);
        queue.offer(work);
      });
      while (finished < begun.length) {
        finished++;
        queue.done();
      }
      for (const [kind, work] of last) expect(begun.filter((it) => it.kind === kind).at(-1)).toBe(work);
    }),
  );
});
