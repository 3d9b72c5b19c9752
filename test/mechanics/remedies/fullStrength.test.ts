import { describe, expect, test } from "vitest";
import { isNamedBy, type Method } from "../../../src/mechanics/remedies/method.ts";
import { remedyNames } from "../../../src/sheets/words/remedyWords.ts";
import { type Changes, documentOf, remedy, sound, weighed } from "./changedCase.ts";

/** Five good turns of eight; a longer plug gives back more than seven. */
const hurt = { left: { ...sound, turns: "5" } };
const withAsked = (asked: Changes): Changes => ({ ...hurt, asked });
const withKind = (kind: string): Changes => ({ ...hurt, joint: { kind } });

describe("a longer plug that gives back 80 % of the healthy turns is a repair, not a make-do", () => {
  test("it is called lasting; what has fewer turns is not", () => {
    const found = weighed(hurt);
    expect(remedy(found, "longer plug").lasting).toBe(true);
    expect(remedy(found, "longer plug, bonded seal").lasting).toBe(true);
    expect(remedy(found, "other seal: O-ring").lasting).toBe(false);
    expect(remedy(found, "sealant, no washer").lasting).toBe(false);
    expect(remedy(found, "lower torque").lasting).toBe(false);
  });

  // Found in review: a longer plug or another seal on a hurt thread was a make-do without an end.
  test("what is no repair ends on a day; what is one has none", () => {
    const { remedies } = documentOf(hurt);
    for (const { lasting, until, refused } of remedies) if (!refused) expect(until === null).toBe(lasting);
    expect(remedies.find(({ id }) => id === "other seal: O-ring")?.until).toBe("2027-11-25");
  });

  test.each([{ condition: "doubtful" }, { catch: "gritty" }, { height: "0.7" }])("not with %j", (left) => {
    expect(remedy(weighed({ left: { ...hurt.left, ...left } }), "longer plug").lasting).toBe(false);
  });

  test.each([
    ["4 reach", withAsked({ reaches: ["tyre"] })],
    ["4 reach", withKind("motorcycle sump")],
    ["10 people", withAsked({ people: "yes" })],
    ["5 water side", withKind("outboard lower unit")],
    ["8 again", withAsked({ repairedBefore: { method: "lower torque" } })],
  ])("%s refuses the make-dos and lets it pass", (rule, changes) => {
    const found = weighed(changes);
    expect(found.asFound.refused?.rule).toBe(rule);
    expect(remedy(found, "longer plug").refused).toBeNull();
    expect(remedy(found, "longer plug").window?.open).toBe(true);
  });

  test.each([
    ["1 structure", withKind("brake, steering, suspension, wheel or restraint")],
    ["1 structure", withKind("clamp bolt in a casting")],
    ["3 combustion", withKind("spark plug")],
    ["6 crack", withAsked({ crack: "yes" })],
    ["13 not asked", withAsked({ crack: undefined })],
    ["13 not asked", withKind("other")],
    ["14 breather", withAsked({ breather: "blocked" })],
  ])("%s refuses every thread remedy of ours", (rule, changes) => {
    for (const { refused, window } of weighed(changes).remedies) {
      expect(refused?.rule).toBe(rule);
      expect(window).toBeNull();
    }
  });
});

describe("other seals", () => {
  test("a pressure port takes its own seal on a longer plug, rated and tested, and no other seal", () => {
    const found = weighed(withKind("pressure port"));
    expect(remedy(found, "longer plug").refused).toBeNull();
    expect(remedy(found, "longer plug").checks).toContainEqual({ type: "rated and pressure tested" });
    const others = found.remedies.filter(({ id }) => id !== "longer plug");
    expect(others.map(({ refused }) => refused?.rule)).toEqual(others.map(() => "2 pressure"));
  });

  test("lower units take another seal only after a passed test", () => {
    const untested = weighed(withKind("outboard lower unit"));
    expect(remedy(untested, "longer plug, bonded seal").refused?.rule).toBe("5 water side");
    expect(remedy(untested, "other seal: O-ring").refused?.rule).toBe("5 water side");
    const tested = weighed({ ...withKind("outboard lower unit"), asked: { waterTest: "passed" } });
    expect(remedy(tested, "other seal: O-ring").refused).toBeNull();
    expect(remedy(tested, "other seal: O-ring").checks).toContainEqual({ type: "pressure and vacuum test" });
  });

  test("a coolant drain under its cap's pressure takes other seals, tested, and no sealant", () => {
    const found = weighed({ ...withKind("coolant drain"), asked: { pressure: "1.2 bar" } });
    expect(found.asFound.refused).toBeNull();
    expect(remedy(found, "other seal: bonded seal").refused).toBeNull();
    expect(remedy(found, "other seal: bonded seal").checks).toContainEqual({ type: "cap pressure test" });
    expect(remedy(found, "sealant, no washer").refused?.reason.type).toBe("water jacket sealed by sealant alone");
  });

  test("a taper plug is not covered, and no other seal sits on it", () => {
    const found = weighed({ seal: { kind: "taper", material: undefined, thickness: undefined } });
    expect(found.asFound.refused).toMatchObject({ rule: "not covered", override: "never" });
    for (const { refused } of found.remedies) expect(refused?.rule).toBe("not covered");
  });

  test("a plug with no seal at all is not covered; other seals on it are weighed", () => {
    const found = weighed({ seal: { kind: "none", material: undefined, thickness: undefined } });
    expect(found.asFound.refused?.rule).toBe("not covered");
    expect(remedy(found, "other seal: fibre").window).not.toBeNull();
  });

  test("a joint that sealant already closes is not offered the same sealant again", () => {
    const { remedies } = weighed({
      seal: { kind: "sealant, metal to metal", material: undefined, thickness: undefined },
    });
    expect(remedies.map(({ id }) => id)).not.toContain("sealant, no washer");
  });
});

describe("an earlier repair is recognised in a mechanic's words", () => {
  const flat = (material: "copper" | "fibre" | "aluminium") => ({ kind: "flat washer", material }) as const;
  const methods: readonly Method[] = [
    { id: "lower torque", seal: flat("copper"), fullStrength: false },
    { id: "longer plug", seal: flat("copper"), fullStrength: false },
    { id: "other seal: bonded seal", seal: { kind: "bonded seal", material: null }, fullStrength: false },
    { id: "other seal: fibre", seal: flat("fibre"), fullStrength: false },
    { id: "sealant, no washer", seal: { kind: "sealant, metal to metal", material: null }, fullStrength: false },
  ];
  test.each([
    ["sealant", ["sealant, no washer"]],
    ["silicone, no washer", ["sealant, no washer"]],
    ["a bead of liquid gasket", ["sealant, no washer"]],
    ["Bonded seal", ["other seal: bonded seal"]],
    ["fibre washer", ["other seal: fibre"]],
    ["another seal", ["other seal: bonded seal", "other seal: fibre"]],
    ["longer plug with a bonded seal", ["longer plug"]],
    ["tightened less", ["lower torque"]],
    ["new plug", []],
    ["wire insert", []],
  ])("%s", (before, again) => {
    expect(methods.filter((it) => isNamedBy(it, before)).map(({ id }) => id)).toEqual(again);
  });

  test("every method knows its own id and its own name", () => {
    for (const method of methods) {
      expect(isNamedBy(method, method.id)).toBe(true);
      expect(isNamedBy(method, remedyNames[method.id])).toBe(true);
    }
  });
});
