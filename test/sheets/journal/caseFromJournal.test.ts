import { describe, expect, test } from "vitest";
import { casesOfDemo } from "../../../src/demo/cases.ts";
import { demoJournal } from "../../../src/demo/demoJournal.ts";
import { jobSheet } from "../../../src/journal/job/jobProjection.ts";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { caseFromJournal } from "../../../src/sheets/journal/caseFromJournal.ts";
import { aroundJob } from "./aroundJob.ts";

const port = "chipper-drain";
const now = "2026-11-25T10:40:00Z";
const { entries } = demoJournal(now, "test");
const workshop = project(
  shop,
  entries.filter(({ job }) => job === null),
);
const job0412 = entries.filter(({ job }) => job === "0412");
const beforeWeighing = job0412.slice(
  0,
  job0412.findIndex(({ fact }) => fact.type === "OptionsWeighed"),
);
const told = (facts: readonly object[]) =>
  caseFromJournal(port, aroundJob({ type: "port", port }, facts).sheet, shop.empty);

describe("what the journal knows of a port is a case as far as it goes", () => {
  test("a port that was asked about, counted and measured comes with all of that, the book and the wrenches, and no more", () => {
    const { case: housing, left, plug, asked: answers, joint, thread } = casesOfDemo.chipper;
    const known = caseFromJournal(port, project(jobSheet, beforeWeighing), workshop);
    expect(known).toMatchObject({ joint, thread, left, asked: { crack: "no", breather: answers.breather } });
    expect(known.case?.threadDepth).toEqual(housing.threadDepth);
    expect(known.case?.thinnestWall).toEqual({ value: housing.thinnestWall, how: "caliper" });
    expect(known.plug).toEqual({ underHead: { value: plug.underHead, how: "caliper" } });
    // Nobody wrote down what the box is cast of, which washer lay under it, nor how many turns the sound hole has.
    expect([known.case?.material, known.seal ?? {}, known.healthyTurns]).toEqual([undefined, {}, undefined]);
    expect(known.wrenches?.map(({ name }) => name)).toEqual(["TW-1", "TW-2", "TW-3"]);
    expect(known.wrenches?.every(({ calibrated }) => (calibrated ?? "") < now)).toBe(true);
  });

  test("what was weighed comes back whole, and what was counted after it stands in its place", () => {
    const sheet = project(jobSheet, job0412);
    const weighed = sheet.ports[port as never]?.weighed?.case ?? {};
    const { today: _, ...then } = weighed;
    expect(caseFromJournal(port, sheet, workshop)).toEqual(then);
    const last = job0412.at(-1);
    const recount = { type: "ReadingTaken", port, reading: "left.turns", value: "2.5", how: "by eye" };
    const later = { ...last, number: 9999, clock: 9999, at: now, fact: recount } as (typeof job0412)[number];
    const again = caseFromJournal(port, project(jobSheet, [...job0412, later]), workshop);
    expect(again.left).toMatchObject({ turns: "2.5", counted: "by eye", condition: "doubtful" });
    expect(again.seal).toEqual(casesOfDemo.chipper.seal);
  });

  test("what a repair changed is asked anew: the old seal and the old turns are gone, what went in stands there", () => {
    const turns = { type: "ReadingTaken", port, reading: "left.turns", value: "9", how: "with a dot" };
    const leaves = { plug: "a longer plug", seal: "bonded seal", underHead: "22 mm" };
    const repaired = { type: "RepairMade", port, method: "longer plug, bonded seal", lasting: true, leaves };
    const entry = (fact: object, i: number) => ({
      ...job0412.at(-1),
      number: 9000 + i,
      clock: 9000 + i,
      at: now,
      fact,
    });
    const all = [...job0412, ...[repaired, turns].map(entry)] as typeof job0412;
    const again = caseFromJournal(port, project(jobSheet, all), workshop);
    expect([again.plug, again.seal]).toEqual([{ underHead: "22 mm" }, { kind: "bonded seal" }]);
    expect(again.left).toEqual({ turns: "9", counted: "with a dot" });
    expect(again.thread).toBe(casesOfDemo.chipper.thread);
  });

  test("the chamfer of an O-ring comes with the other readings of its seal", () => {
    const taken = (reading: string, value: string, how: string) => ({
      type: "ReadingTaken",
      port,
      reading,
      value,
      how,
    });
    const known = told([taken("seal.outside", "25 mm", "caliper"), taken("seal.chamfer", "3.2 mm", "depth rod")]);
    expect(known.seal).toEqual({
      outside: { value: "25 mm", how: "caliper" },
      chamfer: { value: "3.2 mm", how: "depth rod" },
    });
  });

  test("a word for how a reading is known that no case has is left out, and the reading stands", () => {
    const taken = { type: "ReadingTaken", port, reading: "case.threadDepth", value: "18 mm", how: "somebody said" };
    expect(told([taken]).case).toEqual({ threadDepth: "18 mm" });
  });
});
