import { describe, expect, test } from "vitest";
import type { Override } from "../../../src/mechanics/remedies/portCase.ts";
import { namesRule } from "../../../src/mechanics/remedies/refusalRules.ts";
import { documentOf, given, remedy, sound, textOf, weighed } from "./changedCase.ts";

const override = (rule: string): Override => ({ rule, by: "M.T.", reason: "owner refused the bushing" });
const overrides = [override("7 too little"), override("8 again")];
const tooFew = { turns: "3.3" };

describe("a refusal is taken on by name and reason", () => {
  test.each(["7 too little", "7", "too little", " 7 Too Little "])("the rule may be named as %j", (rule) => {
    expect(namesRule(rule, "7 too little")).toBe(true);
    const { refused } = weighed({ left: tooFew, asked: { overrides: [override(rule)] } }).asFound;
    expect(refused?.overridden).toEqual(override(rule));
  });

  test("it stays a refusal: no window, no torque, no odds of ours", () => {
    const { asFound, remedies } = documentOf({ left: tooFew, asked: { overrides } });
    expect(asFound.window).toBeNull();
    expect(asFound.refused?.overridden).toEqual({ by: "M.T.", reason: "owner refused the bushing" });
    expect(remedies[0]?.window).toBeNull();
    const lines = textOf({ left: tooFew, asked: { overrides }, plug: { underHead: undefined } });
    expect(lines).toContain("Taken on by M.T.: owner refused the bushing.");
  });

  test("the second time by the same method", () => {
    const asked = { repairedBefore: { method: "silicone" }, overrides };
    const { refused } = remedy(weighed({ asked }), "sealant, no washer");
    expect(refused).toMatchObject({ rule: "8 again", override: "name and reason", overridden: { by: "M.T." } });
  });

  test("where two rules stand, taking one on leaves the other", () => {
    const asked = { repairedBefore: { method: "lower torque" }, overrides: [override("7")] };
    expect(weighed({ left: tooFew, asked }).asFound.refused).toMatchObject({ rule: "8 again", overridden: null });
    const both = weighed({ left: tooFew, asked: { ...asked, overrides } }).asFound.refused;
    expect(both).toMatchObject({ rule: "7 too little", overridden: { by: "M.T." } });
  });

  test.each([
    ["water side", { joint: { kind: "outboard lower unit" }, asked: { waterTest: "passed" } }],
    ["water reached", { asked: { reaches: ["water"], waterTest: "passed" } }],
  ])("too few turns at the %s are nobody's to take on", (_, changes) => {
    const { refused } = weighed({ ...changes, left: tooFew, asked: { ...changes.asked, overrides } }).asFound;
    expect(refused).toMatchObject({ rule: "7 too little", override: "never", overridden: null });
  });

  test.each([{ catch: "slides over" }, { condition: "gone" }, { height: "0.1" }, { turns: undefined }])(
    "nor is a thread with %j",
    (left) => {
      const { refused } = weighed({ left, asked: { overrides } }).asFound;
      expect(refused).toMatchObject({ rule: "7 too little", override: "never", overridden: null });
    },
  );

  test("a rule that knows no override keeps none", () => {
    const asked = { crack: "yes", overrides: [override("6 crack")] };
    expect(weighed({ asked }).asFound.refused).toMatchObject({ rule: "6 crack", overridden: null });
  });
});

describe("the same method again", () => {
  test("is refused without a named cause, and weighed with one", () => {
    const without = weighed({ asked: { repairedBefore: { method: "sealant" } } });
    expect(remedy(without, "sealant, no washer").refused?.rule).toBe("8 again");
    expect(remedy(without, "longer plug").refused).toBeNull();
    const named = weighed({ asked: { repairedBefore: { method: "sealant", cause: "released after an hour" } } });
    expect(remedy(named, "sealant, no washer").refused).toBeNull();
  });

  test("a joint that sealant closes is refused as the same again", () => {
    const seal = { kind: "sealant, metal to metal", material: undefined, thickness: undefined };
    const asked = { repairedBefore: { method: "silicone" } };
    expect(weighed({ seal, asked }).asFound.refused?.rule).toBe("8 again");
  });
});

describe("what a wrench may claim", () => {
  const advised = (wrench: object, today = "2026-11-25") =>
    weighed({ wrenches: [{ name: "W", least: "5 N·m", most: "25 N·m", ...wrench }], today }).asFound.advice;

  test.each([
    ["in date", { calibrated: "2026-06-01" }, "in range and in date"],
    ["a year and a day old", { calibrated: "2025-11-24" }, "out of date"],
    ["a year old", { calibrated: "2025-11-25" }, "in range and in date"],
    ["of no known date", {}, "date not known"],
  ])("%s", (_, wrench, evidence) => {
    expect(advised(wrench)).toMatchObject({ type: "pull", evidence });
  });

  test("a wrench in date comes before a smaller one out of date", () => {
    const wrenches = [
      { name: "old", least: "2 N·m", most: "20 N·m", calibrated: "2020-01-01" },
      { name: "new", least: "5 N·m", most: "50 N·m", calibrated: "2026-06-01" },
    ];
    expect(weighed({ wrenches }).asFound.advice).toMatchObject({ wrench: { name: "new" } });
  });

  test("a figure below a fifth of full scale is not advised", () => {
    expect(advised({ most: "100 N·m", calibrated: "2026-06-01" })).toEqual({ type: "no wrench sets this" });
  });

  test("a book figure that no wrench has on its scale names none and claims nothing", () => {
    const wrenches = [{ name: "W-1", least: "5 N·m", most: "25 N·m" }];
    const { asFound } = weighed({ left: sound, wrenches });
    expect(asFound.advice).toMatchObject({ torque_Nm: 46, wrench: null, evidence: "out of range" });
    expect(textOf({ left: sound, wrenches })).toContain("no wrench here sets it");
    expect(given({ wrenches }).wrenches).toHaveLength(1);
  });

  test("a book figure under a fifth of the scale is pulled, and not claimed", () => {
    const wrenches = [{ name: "W-4", least: "40 N·m", most: "340 N·m", calibrated: "2026-06-01" }];
    expect(weighed({ left: sound, wrenches }).asFound.advice).toMatchObject({
      wrench: { name: "W-4" },
      evidence: "out of range",
    });
    expect(textOf({ left: sound, wrenches })).toContain("it may tighten, it may not claim");
  });

  test("where the deviation of a small wrench closes its window, another wrench is looked for", () => {
    const wrench = { name: "large", least: "2 N·m", most: "25 N·m", step: "0.01 N·m", calibrated: "2026-06-01" };
    const small = { ...wrench, name: "small", least: "0.1 N·m", most: "10 N·m" };
    const advised = (...wrenches: object[]) =>
      weighed({
        thread: "M12x1.5",
        seal: { outside: "18 mm", inside: "12.2 mm", thickness: "0.5 mm" },
        plug: undefined,
        left: { turns: "2.906" },
        wrenches,
      }).asFound.advice;
    expect(advised(small)).toEqual({ type: "window empty" });
    expect(advised(wrench)).toMatchObject({ type: "pull" });
    expect(advised(small, wrench)).toMatchObject({ type: "pull", wrench: { name: "large" } });
  });
});
