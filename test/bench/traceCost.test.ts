import { describe, expect, test } from "vitest";
import { changeCosts, type TraceEvent, total } from "../../bench/page/traceCost.ts";

/** Times in µs, as a trace has them. */
const event = (name: string, ts: number, dur: number, more: Partial<TraceEvent> = {}): TraceEvent => ({
  name,
  ph: "X",
  ts,
  dur,
  pid: 1,
  tid: 7,
  ...more,
});
const press = (ts: number, dur: number) => event("EventDispatch", ts, dur, { args: { data: { type: "pointerdown" } } });
const nothing = { script: 0, style: 0, layout: 0, paint: 0, commit: 0 };

describe("what a press cost the main thread", () => {
  test("nested work counts once, for the innermost", () => {
    const [cost] = changeCosts([
      press(0, 10_000),
      event("FunctionCall", 1000, 8000),
      event("Layout", 2000, 3000),
      event("UpdateLayoutTree", 2000, 1000),
    ]);
    expect(cost).toEqual({ ...nothing, script: 7, style: 1, layout: 2 });
  });

  test("work goes to the press before it, and what comes before the first to none", () => {
    const costs = changeCosts([
      event("Paint", 0, 9000),
      press(10_000, 1000),
      event("Paint", 20_000, 2000),
      press(30_000, 1000),
      event("Paint", 40_000, 4000),
    ]);
    expect(costs.map(total)).toEqual([3, 5]);
    expect(costs.map(({ paint }) => paint)).toEqual([2, 4]);
  });

  test("time spent waiting for a core does not count, nor other threads, nor names that are no work", () => {
    const costs = changeCosts([
      press(0, 1000),
      event("Paint", 2000, 9000, { tdur: 500 }),
      event("Paint", 3000, 5000, { tid: 8 }),
      event("Paint", 3000, 5000, { pid: 2 }),
      event("RunTask", 12_000, 5000),
    ]);
    expect(costs).toEqual([{ ...nothing, script: 1, paint: 0.5 }]);
  });

  test("a limit leaves out what comes later, and handing over is no part of the sum", () => {
    const events = [press(0, 1000), event("Commit", 2000, 4000), event("Paint", 200_000, 3000)];
    expect(changeCosts(events, 100).map(total)).toEqual([1]);
    expect(changeCosts(events)).toEqual([{ ...nothing, script: 1, paint: 3, commit: 4 }]);
  });

  test("no press, no cost", () => expect(changeCosts([event("Paint", 0, 1000)])).toEqual([]));
});
