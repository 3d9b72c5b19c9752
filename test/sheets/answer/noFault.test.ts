import fc from "fast-check";
import { expect, test } from "vitest";
import { surfaces } from "../../../src/mechanics/joint/port.ts";
import { weigh } from "../../../src/mechanics/remedies/weigh.ts";
import { jointKinds } from "../../../src/mechanics/tables/jointKinds.ts";
import { materials } from "../../../src/mechanics/tables/materials.ts";
import { answerDocument } from "../../../src/sheets/answer/answerDocument.ts";
import { answerLines } from "../../../src/sheets/answer/answerLines.ts";
import { answerSvg } from "../../../src/sheets/answer/answerSvg.tsx";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";

const maybe = <T>(it: fc.Arbitrary<T>) => fc.option(it, { nil: undefined });
const one = <T>(...of: readonly T[]) => fc.constantFrom(...of);
const mm = (most: number) => fc.integer({ min: 0, max: 10 * most }).map((it) => `${it / 10} mm`);
const turns = fc.integer({ min: 0, max: 150 }).map((it) => String(it / 10));
const group = (fields: Record<string, fc.Arbitrary<unknown>>) =>
  fc.record(Object.fromEntries(Object.entries(fields).map(([key, it]) => [key, maybe(it)])));

/** Cases as careless hands write them: anything may be missing, and lengths need not fit each other. */
const wildCases = fc
  .record({
    joint: fc.record({ kind: fc.oneof({ weight: 3, arbitrary: one("gear case level") }, one(...jointKinds)) }),
    asked: group({ waterTest: one("passed", "failed"), reaches: one([], [], ["water"]) }).map((it) => ({
      crack: "no",
      pressure: "none",
      reaches: [],
      people: "no",
      repairedBefore: "no",
      breather: "free",
      ...JSON.parse(JSON.stringify(it)),
    })),
    thread: one("M6", "M8", "M12x1.5", "M20x1.5", "M20x2.5", "M33x2", "M64x4"),
    case: group({ threadDepth: mm(40), roomBehind: mm(40), temperature: one("-20 °C", "80 °C", "140 °C") }),
    material: one(...materials),
    plug: group({ propertyClass: one("4.6", "12.9"), underHead: mm(60), chamfer: mm(6), original: fc.boolean() }),
    seal: group({
      kind: one("flat washer", "crush ring", "bonded seal", "O-ring", "sealant, metal to metal", "taper", "none"),
      material: one("aluminium", "copper", "fibre"),
      thickness: mm(8),
      outside: mm(90),
      original: fc.boolean(),
    }),
    left: group({
      turns: fc.oneof(
        turns,
        fc.constant({ low: "2", likely: "2", high: "2" }),
        fc.constant({ low: "0", likely: "1", high: "9" }),
      ),
      counted: one("with a dot", "by eye", "felt"),
      condition: one("good", "doubtful", "poor", "gone"),
      catch: one("snug", "gritty", "slides over"),
      withWasher: fc.boolean(),
      goodFrom: fc.oneof(
        mm(10),
        mm(10).map((value) => ({ value, how: "assumed" })),
      ),
      goodTo: mm(30),
      height: one("0", "0.3", "100 %"),
    }),
    healthyTurns: maybe(turns),
    surface: maybe(one(...surfaces)),
    bookFigures: maybe(
      one(
        [],
        [{ torque: "46 N·m", source: "a" }],
        [
          { torque: "1 lbf·in", source: "a" },
          { torque: "900 N·m", source: "b" },
        ],
      ),
    ),
    wrenches: maybe(
      one(
        [],
        [{ name: "W", least: "0 N·m", most: "8 N·m" }],
        [{ name: "W", least: "1 N·m", most: "300 N·m", step: "25 N·m" }],
      ),
    ),
    prevailing: maybe(one("0 N·m", "3 N·m")),
    levels: maybe(one({ leastTurns: 0.01 })),
  })
  .map(({ material, ...form }) => JSON.parse(JSON.stringify({ ...form, case: { ...form.case, material } })) as unknown);

test("no case that reads is a fault of ours: every figure is a number, every line has its words", () => {
  let weighedCases = 0;
  fc.assert(
    fc.property(wildCases, (form) => {
      const read = readCase(form, "2026-11-25");
      if (!read.ok) return;
      const answer = weigh(read.given);
      const document = answerDocument(answer, read.ordinary, form, [0.5], "0.0.0");
      expect(answerSvg(answer)).toMatch(/^<svg [\s\S]*<\/svg>\s*$/);
      const printed = JSON.stringify(document) + answerLines(answer, document, [0.5], true).join("\n");
      expect(printed.match(/.{0,60}(NaN|Infinity|undefined|\[object).{0,20}/g)).toBeNull();
      for (const { window } of [document.asFound, ...document.remedies]) {
        if (!window) continue;
        weighedCases++;
        // Infinity is null in JSON: every figure but the advice must be there.
        for (const key of ["need_Nm", "limit_Nm", "medianStrip_Nm", "cautiousRule_Nm"] as const)
          expect(Number.isFinite(window[key])).toBe(true);
        for (const { probability } of [...window.strips, ...window.closes])
          expect(probability >= 0 && probability <= 1).toBe(true);
      }
    }),
    { numRuns: 500 },
  );
  expect(weighedCases).toBeGreaterThan(200);
});
