import fc from "fast-check";
import { expect, test } from "vitest";
import { valueIn } from "../../../src/mechanics/quantity/quantity.ts";
import { Nm, turn } from "../../../src/mechanics/quantity/unit.ts";
import { completed } from "../../../src/mechanics/remedies/givenCase.ts";
import { lowerTorque } from "../../../src/mechanics/remedies/lowerTorque.ts";
import type { WeighedClosure } from "../../../src/mechanics/remedies/weighedClosure.ts";
import { type Changes, documentOf, given, weighed } from "./changedCase.ts";
import { hurtCases, limit, varied } from "./generatedCases.ts";

/** What convolving on a grid may differ by, as a share. */
const grid = 1e-6;
/** A hurt port as found; `weigh` answers with this very closure, as a law below holds. */
const found = (changes: Changes): WeighedClosure => lowerTorque(completed(given(changes)).portCase);
const holds = (claim: (changes: Changes) => void, numRuns: number) =>
  fc.assert(fc.property(hurtCases, claim), { numRuns });

test("a wetter surface never raises the limit: dry, oiled, wet sealant, anti-seize", () => {
  holds((changes) => {
    const limits = ["dry", "oiled", "wet sealant", "anti-seize"].map((surface) =>
      limit(found({ ...changes, surface })),
    );
    limits.slice(1).forEach((wetter, i) => void expect(wetter).toBeLessThanOrEqual((limits[i] ?? 0) * (1 + grid)));
  }, 60);
});

test("one more turn never lowers the limit", () => {
  holds((changes) => {
    const { turns } = changes["left"] as { turns: string };
    const more = varied(changes, "left", { turns: String(Number(turns) + 1) });
    expect(limit(found(more))).toBeGreaterThanOrEqual(limit(found(changes)) * (1 - grid));
  }, 100);
});

test("a better count of the same turns never lowers the limit by more than the count was worth", () => {
  holds((changes) => {
    const counted = (counting: string) => limit(found(varied(changes, "left", { counted: counting })));
    expect(counted("with a dot")).toBeGreaterThanOrEqual(counted("felt") * (1 - 1e-3));
  }, 60);
});

test("a thicker washer never raises the carrying turns, nor the limit", () => {
  const ringed = hurtCases.filter(({ seal }) => (seal as { thickness?: string }).thickness !== undefined);
  fc.assert(
    fc.property(ringed, fc.integer({ min: 1, max: 30 }), (changes, tenths) => {
      const { thickness = "" } = changes["seal"] as { thickness?: string };
      const counted = varied(changes, "left", { withWasher: false });
      const thicker = varied(counted, "seal", { thickness: `${Number.parseFloat(thickness) + tenths / 10} mm` });
      const caught = ({ turns }: WeighedClosure): number => (turns ? valueIn(turn, turns.caught) : Number.NaN);
      const [thin, thick] = [found(counted), found(thicker)];
      expect(caught(thick)).toBeLessThanOrEqual(caught(thin) + 1e-12);
      expect(limit(thick)).toBeLessThanOrEqual(limit(thin) * (1 + grid));
    }),
    { numRuns: 100 },
  );
});

test("a plug that passes right through gains nothing by being longer still", () => {
  holds((changes) => {
    const through = varied(varied(changes, "case", { threadDepth: "14 mm" }), "plug", { underHead: "20 mm" });
    const longer = varied(through, "plug", { underHead: "40 mm" });
    expect(limit(found(longer))).toBe(limit(found(through)));
  }, 40);
});

test("a stronger case, a fuller thread and a harder plug never lower the limit", () => {
  holds((changes) => {
    const limitOf = (group: string, more: Changes): number => limit(found(varied(changes, group, more)));
    expect(limitOf("left", { height: "0.9" })).toBeGreaterThanOrEqual(limitOf("left", { height: "0.5" }) * (1 - grid));
    expect(limitOf("plug", { propertyClass: "10.9" })).toBeGreaterThanOrEqual(
      limitOf("plug", { propertyClass: "4.8" }) * (1 - grid),
    );
    expect(limitOf("case", { material: "EN-GJL-250" })).toBeGreaterThanOrEqual(
      limitOf("case", { material: "EN-GJL-200" }) * (1 - grid),
    );
  }, 40);
});

const wrenches = fc.array(
  fc.record({
    least: fc.integer({ min: 1, max: 30 }),
    span: fc.integer({ min: 5, max: 200 }),
    step: fc.constantFrom(0.5, 1, 2),
  }),
  { maxLength: 3 },
);

test("an empty window never yields advice; advice lies in the window and on a mark of the wrench", () => {
  fc.assert(
    fc.property(hurtCases, wrenches, (changes, tools) => {
      const atHand = tools.map(({ least, span, step }, i) => ({
        name: `W-${i}`,
        least: `${least} N·m`,
        most: `${least + span} N·m`,
        step: `${step} N·m`,
      }));
      const { asFound, remedies } = weighed({ ...changes, wrenches: atHand });
      for (const { window, advice } of [asFound, ...remedies]) {
        if (!window?.open) expect(advice?.type ?? "window empty").toBe("window empty");
        if (!window || advice?.type !== "pull") continue;
        const least_Nm = Math.max(window.need_Nm, window.floor_Nm ?? 0);
        expect(advice.torque_Nm).toBeGreaterThanOrEqual(least_Nm - 1e-6);
        expect(advice.torque_Nm).toBeLessThanOrEqual(window.limit_Nm + 1e-6);
        const { wrench } = advice;
        const [from, step] = wrench ? [valueIn(Nm, wrench.least), valueIn(Nm, wrench.step)] : [0, 1];
        const marks = (advice.torque_Nm - from) / step;
        expect(Math.abs(marks - Math.round(marks))).toBeLessThan(1e-6);
        if (wrench) expect(advice.torque_Nm).toBeGreaterThanOrEqual(0.2 * valueIn(Nm, wrench.most) - 1e-6);
      }
    }),
    { numRuns: 120 },
  );
});

test("the port as found is what these laws were held over", () => {
  holds((changes) => void expect(limit(weighed(changes).asFound)).toBe(limit(found(changes))), 20);
});

test("the same case gives the same bytes", () => {
  holds((changes) => {
    expect(JSON.stringify(documentOf(changes))).toBe(JSON.stringify(documentOf(changes)));
  }, 20);
});
