import { describe, expect, test } from "vitest";
import { stopSigns } from "../../../src/mechanics/fluid/stopSigns.ts";
import { dripSum } from "../../../src/sheets/sums/dripSum.tsx";
import { answerOf, problemsOf } from "./read.ts";

const counted = { drops: "7", minutes: "10" };
const asked = { signs: "none", breather: "free" };

// 7 drops in 10 min are 1008 a day; of 0.02 to 0.05 ml each 20 to 50 ml.
test("7 drops in 10 min are 20 to 50 ml a day", () => {
  const it = answerOf(dripSum({ ...counted, ...asked }));
  expect(it.figure).toEqual({ value: "20 to 50", unit: "ml a day", also: "" });
  expect(it.because).toBe("7 drops in 10 min; a drop is 0.02 to 0.05 ml.");
  expect(it.next?.field).toBe("toLimit");
  expect(it.picture).toBeNull();
});

// 8 mm of 22 ml are 176 ml; at 20 to 50 ml a day 3.5 to 8.7 days parked.
test("with a margin days stand there, drawn, and in the message", () => {
  const it = answerOf(dripSum({ ...counted, ...asked, toLimit: "8", perMm: "22" }));
  expect(it.sentences.join(" ")).toMatch(/To the limit 3 to 8\.5 days parked/);
  expect(it.picture).toContain("Days to the low limit");
  expect(it.message).toMatch(/loses 20 to 50 millilitres a day standing.*not an approval to drive/s);
});

describe("what ends the talk comes before every figure", () => {
  test.each(stopSigns)("%s: do not drive, counted or not", (sign) => {
    for (const texts of [{ signs: sign }, { ...counted, ...asked, signs: sign }]) {
      const it = answerOf(dripSum(texts));
      expect([it.sign, it.stop]).toEqual(["Do not drive", true]);
      expect(it.sentences[0]).toContain(sign);
      expect(it.message).toContain("Please do not drive it");
    }
  });

  test("a stream ends it as well", () => {
    expect(answerOf(dripSum({ look: "stream" })).sign).toBe("Do not drive");
  });

  test("a blocked breather is freed first", () => {
    const it = answerOf(dripSum({ ...counted, signs: "none", breather: "blocked" }));
    expect([it.sign, it.stop]).toEqual(["Free the breather", true]);
  });

  test("unanswered is not no: it asks first", () => {
    const it = answerOf(dripSum({ ...counted, toLimit: "8", perMm: "22" }));
    expect(it.sign).toBe("Ask first");
    expect(it.next?.field).toBe("signs");
    expect(it.next?.sentence).toMatch(/^Is oil on a tyre.*new noise\?$/);
    expect(it.sentences.join(" ")).not.toContain("new noise");
  });
});

test("what is seen has its class without a count", () => {
  const it = answerOf(dripSum({ look: "weep" }));
  expect(it.because).toContain("class I by the checks of the US Army");
});

describe("what is missing or mistyped is named", () => {
  test("a count wants its time, and an empty bench both", () => {
    expect(problemsOf(dripSum({}))).toEqual({ drops: "", minutes: "" });
    expect(problemsOf(dripSum({ drops: "7" }))).toEqual({ minutes: "" });
  });

  test("half a drop is none, and a lip as wide as a plate is no lip", () => {
    expect(problemsOf(dripSum({ ...counted, drops: "7.5" }))["drops"]).toBe("a whole number from 0 to 999999");
    expect(problemsOf(dripSum({ ...counted, lip: "40" }))["lip"]).toContain("0.5 to 6 mm");
  });
});
