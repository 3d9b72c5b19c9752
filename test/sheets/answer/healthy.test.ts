import { describe, expect, test } from "vitest";
import { type Changes, documentOf, sound, textOf, weighed } from "../../mechanics/remedies/changedCase.ts";

const healthy = { left: sound };
const book = (...figures: Changes[]): Changes => ({
  ...healthy,
  bookFigures: figures.map((it, i) => ({ source: `sheet ${i + 1}`, ...it })),
});

describe("a healthy port", () => {
  test("gets the book figure and nothing special: no remedies, nothing to measure, a handful of lines", () => {
    const { healthy: isHealthy, asFound, remedies, measureNext } = documentOf(healthy);
    expect(isHealthy).toBe(true);
    expect(asFound.refused).toBeNull();
    expect(asFound.window?.advice_Nm).toBe(46);
    expect(asFound.because).toEqual(["8 of 8 turns: nothing special, the book figure."]);
    expect({ remedies, measureNext }).toEqual({ remedies: [], measureNext: [] });
    const lines = textOf(healthy)
      .split("\n")
      .filter((it) => it.trim() !== "");
    expect(lines[0]).toBe("Healthy, 8 of 8 turns. Nothing special: the book figure, 46 N·m (34 lbf·ft)");
    expect(lines.length).toBeLessThanOrEqual(6);
  });

  test("80 % of its turns is enough, less is not; counts with and without the ring are made alike", () => {
    const of = (left: Changes, more: Changes = {}) => weighed({ left: { ...sound, ...left }, ...more }).health;
    expect(of({ turns: "6.4" }).healthy).toBe(true);
    expect(of({ turns: "6.3" }).healthy).toBe(false);
    // 6.6667 turns on a ring of 2 mm are 8 without it.
    expect(of({ turns: String(8 - 2 / 1.5), withWasher: true }).share?.value).toBeCloseTo(1, 9);
    expect(of({ turns: "6.4" }, { healthyWithWasher: true }).share?.value).toBeCloseTo((6.4 - 2 / 1.5) / 8, 9);
  });

  test.each([
    ["doubtful turns", { left: { ...sound, condition: "doubtful" } }],
    ["a gritty catch", { left: { ...sound, catch: "gritty" } }],
    ["a low thread", { left: { ...sound, height: "0.7" } }],
    ["a foreign plug", { ...healthy, plug: { original: false } }],
    ["a foreign seal", { ...healthy, seal: { original: false } }],
    ["no twin to compare with", { ...healthy, healthyTurns: undefined }],
    ["a crack", { ...healthy, asked: { crack: "yes" } }],
    ["a crack nobody looked for", { ...healthy, asked: { crack: undefined } }],
  ])("is not one with %s", (_, changes) => {
    expect(documentOf(changes).healthy).toBe(false);
  });

  test.each(["brake, steering, suspension, wheel or restraint", "spark plug", "pressure port", "motorcycle sump"])(
    "takes its book figure whatever the joint: %s, with no window of ours",
    (kind) => {
      const { healthy: isHealthy, asFound } = documentOf({ ...healthy, joint: { kind } });
      expect(isHealthy).toBe(true);
      expect(asFound).toMatchObject({ window: null, refused: null });
      expect(textOf({ ...healthy, joint: { kind } })).toContain("the book figure, 46 N·m");
    },
  );

  test("on a taper plug too", () => {
    const taper = { ...healthy, seal: { kind: "taper", material: undefined, thickness: undefined, original: true } };
    expect(documentOf(taper)).toMatchObject({ healthy: true, asFound: { window: null, refused: null } });
  });

  test("waits for no question but the crack, and says that a blocked breather is freed", () => {
    const asked = { people: undefined, repairedBefore: undefined, breather: undefined };
    expect(documentOf({ ...healthy, asked }).asFound.because).toEqual(documentOf(healthy).asFound.because);
    expect(textOf({ ...healthy, asked: { breather: "blocked" } })).toContain("The breather is blocked: free it");
  });

  test("without a book figure is told so, with the window", () => {
    const { asFound } = documentOf(book());
    expect(asFound.because[0]).toBe("8 of 8 turns: healthy, and no book figure was given.");
    expect(asFound.window?.advice_Nm).toBe(12);
  });
});

describe("a book figure that looks wrong on a healthy port is remarked", () => {
  const { window } = documentOf(healthy).asFound;
  const [need, limit] = [Math.ceil(window?.need_Nm ?? 0), Math.floor(window?.limit_Nm ?? 0)];

  test("over the careful limit", () => {
    expect(documentOf(book({ torque: "90 N·m" })).asFound.because[1]).toContain(`over the careful limit of ${limit}`);
  });
  test("under what the seal needs", () => {
    expect(documentOf(book({ torque: "8 N·m" })).asFound.because[1]).toContain(
      `under the ${need} that this closure needs`,
    );
  });
  test("for another seal", () => {
    expect(documentOf(book({ torque: "46 N·m", seal: "copper" })).asFound.because[1]).toContain(
      "another seal (copper)",
    );
  });
  test("and it is still the book's figure that is named", () => {
    expect(documentOf(book({ torque: "90 N·m" })).asFound.window?.advice_Nm).toBe(90);
  });
});

describe("figures that disagree", () => {
  const verdict = (...figures: Changes[]) => documentOf(book(...figures)).asFound;

  test("4 % apart they are the same for the wrench: set between", () => {
    const { window, because } = verdict({ torque: "54 N·m" }, { torque: "56 N·m" });
    expect(window?.advice_Nm).toBe(55);
    expect(because.join()).toContain("same for your wrench: between them lies 55 N·m");
  });
  test("34 lbf·ft and 46 N·m are one figure in two units", () => {
    const { window, because } = verdict({ torque: "34 lbf·ft" }, { torque: "46 N·m" });
    expect(window?.advice_Nm).toBeCloseTo(46, 0);
    expect(because.join()).toContain("one figure in two units (lbf·ft and N·m)");
  });
  test("35 beside fibre and 48 beside aluminium belong to different joints", () => {
    const figures = [
      { torque: "35 N·m", seal: "fibre" },
      { torque: "48 N·m", seal: "aluminium" },
    ];
    expect(verdict(...figures).window?.advice_Nm).toBe(35);
    expect(verdict(...figures).because.join()).toContain("different joints");
    const aluminium = { ...book(...figures), seal: { material: "aluminium" } };
    expect(documentOf(aluminium).asFound.window?.advice_Nm).toBe(48);
  });
  test("unresolved in a light alloy: the lower one that still reaches the seal's need", () => {
    expect(verdict({ torque: "35 N·m" }, { torque: "48 N·m" }).window?.advice_Nm).toBe(35);
    expect(verdict({ torque: "8 N·m" }, { torque: "48 N·m" }).window?.advice_Nm).toBe(48);
    const iron = { ...book({ torque: "35 N·m" }, { torque: "48 N·m" }), case: { material: "EN-GJL-250" } };
    expect(documentOf(iron).asFound.window?.advice_Nm).toBe(48);
  });
  test("on a hurt joint a book figure never raises the advice", () => {
    const advice = (bookFigures: Changes[]) => documentOf({ bookFigures }).asFound.window?.advice_Nm;
    const without = advice([]);
    for (const torque of ["5 N·m", "46 N·m", "200 N·m"]) expect(advice([{ torque, source: "sheet" }])).toBe(without);
  });
});
