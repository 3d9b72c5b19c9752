import { describe, expect, test } from "vitest";
import { withThreadNamed } from "../../../src/apps/cli/measuredThread.ts";
import { exampleCase } from "../../../src/sheets/caseForm/exampleCase.ts";

const measured = (thread: unknown) => withThreadNamed({ ...exampleCase, thread });
const mistake = (thread: unknown): string => {
  try {
    return JSON.stringify(measured(thread));
  } catch (it) {
    return (it as Error).message;
  }
};

describe("a case whose thread was measured and not named", () => {
  test("is weighed as the one thread that fits, and says whence the name comes", () => {
    const { written, named } = measured({ outside: "19.9 mm", gaps: "8 in 12.1 mm" });
    expect(written).toEqual({ ...exampleCase, thread: "M20x1.5" });
    expect(named).toMatchObject({ reading: "thread", value: "M20x1.5" });
    expect(named?.source).toMatchObject({ firmness: "judgement" });
    // A blank of the template is no reading.
    expect(measured({ outside: "19.9 mm", gaps: "8 in 12.1 mm", bore: "" }).written).toEqual(written);
  });

  test("is left as it is where somebody named the thread, or nothing", () => {
    expect(withThreadNamed(exampleCase)).toEqual({ written: exampleCase, named: null });
    for (const document of [null, 3, [], { thread: "" }, { thread: null }])
      expect(withThreadNamed(document)).toEqual({ written: document, named: null });
  });

  test("is not weighed while two threads fit: the next measurement is asked for", () => {
    const told = mistake({ outside: "21 mm" });
    expect(told).toMatch(/^thread: given \{"outside":"21 mm"\}: .* or .*the odds do not say which yet/);
    expect(told).toMatch(/accepted: one thread, by its name or by one more measurement\. .*tells .* from/);
    expect(mistake({ outside: "21.85 mm", gaps: "8 in 10.5 mm" })).toMatch(/one more measurement/);
  });

  test("is weighed as a pipe thread where it is one", () => {
    const readings = { outside: "20.85 mm", worn: true, gaps: "10 in 18.2 mm", taper: "0.0 mm in 10 mm" };
    expect(measured(readings).written).toEqual({ ...exampleCase, thread: "G 1/2" });
  });

  test.each([
    [{ outsid: "19.9 mm" }, 'thread.outsid: given a key that is not known here; accepted: "outside"'],
    [{ outside: 19.9 }, 'thread.outside: given 19.9; accepted: over the middle threads of the plug, as "19.9 mm"'],
    [{ outside: "19.9" }, 'thread.outside: given "19.9"; accepted: a number with its unit'],
    [{ gaps: "8 gaps" }, 'thread.gaps: given "8 gaps"; accepted: "8 in 12.1 mm"'],
    [{ worn: true, gaps: "8 in 12.1 mm" }, "accepted: thread.outside with it"],
    [{}, "thread.outside: given nothing"],
    [[], "thread: given []; accepted: a thread such as"],
  ])("%j is a mistake of its field", (thread, told) => {
    expect(mistake(thread)).toContain(told);
  });
});
