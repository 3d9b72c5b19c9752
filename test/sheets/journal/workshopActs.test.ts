import { expect, test } from "vitest";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { jobSheet } from "../../../src/journal/job/jobProjection.ts";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { gearCase, opened } from "../../journal/written.ts";
import { aroundJob, written } from "./aroundJob.ts";
import { expectReadsBack } from "./readsBack.ts";

const known = [
  { type: "WorkshopNamed", called: "Hollin Reach Workshop", place: "3 Ferry Bank", currency: "cr" },
  { type: "PersonJoined", person: "jory", called: "Jory Anselm" },
  { type: "PersonJoined", person: "sefa", called: "Sefa Oyelund" },
];
const atWorkshop = aroundJob({ type: "workshop" }, [], known);
const onJob = aroundJob({ type: "machine" }, [opened, gearCase], known);

test.each([
  ["personLeft", { leaves: "sefa" }, { type: "PersonLeft", person: "sefa" }],
  [
    "workshopNamed",
    { workshop: "Hollin Reach", currency: "cr" },
    { type: "WorkshopNamed", called: "Hollin Reach", currency: "cr" },
  ],
] as const)("%s %j is the fact that the journal keeps, and is put right from its own texts", (act, texts, fact) => {
  expectReadsBack(act, texts, atWorkshop, fact);
});

test("a name that was taken off is not asked for again, and what the workshop is called stands in its form", () => {
  const leaves = actNamed("personLeft").form(
    aroundJob({ type: "workshop" }, [], [...known, { type: "PersonLeft", person: "sefa" }]),
  );
  expect(leaves.fields["leaves"]).toEqual({ type: "choice", choices: ["jory"] });
  expect(leaves.choiceWords).toEqual({ jory: "Jory Anselm" });
  expect(actNamed("workshopNamed").form(atWorkshop).given).toEqual({
    workshop: "Hollin Reach Workshop",
    place: "3 Ferry Bank",
    currency: "cr",
  });
});

test("a further unit of the machine is noted, stands on its job, and its ports are no port that was there", () => {
  const texts = { unit: "gear case: fill and level plug, drain plug", expected: "1,8", drainThread: "M18x1.5" };
  const read = readAct(actNamed("unitNoted"), texts, onJob);
  const facts = read.ok ? read.facts : [];
  expect(facts.map(({ type }) => type)).toEqual(["UnitNoted", "UnitIdentified"]);
  for (const fact of facts) factSchema.parse(fact);
  const [noted, identified] = facts;
  const machines = project(shop, written([...known, noted as object], null)).machines;
  expect(Object.keys(machines["chipper" as never]?.units ?? {})).toHaveLength(1);
  const sheet = project(jobSheet, written([opened, gearCase, identified as object], "0412"));
  const ports = Object.values(sheet.units).flatMap(({ is }) => is?.ports.map(({ port }) => port) ?? []);
  expect(new Set(ports).size).toBe(4);
  const twice = readAct(actNamed("unitNoted"), texts, { ...onJob, fresh: "m5q2" });
  expect(JSON.stringify(twice.ok && twice.facts)).not.toContain("k3f7");
});

test("a job follows an earlier one, and never itself", () => {
  expectReadsBack("follows", { earlier: "0271", words: "one step up" }, onJob, {
    type: "JobFollows",
    earlier: "0271",
    words: "one step up",
  });
  const problems = (earlier: string) => {
    const read = readAct(actNamed("follows"), { earlier }, onJob);
    return read.ok ? [] : read.problems.map(({ field }) => field);
  };
  expect(["", "0412", "the last one"].map(problems)).toEqual([["earlier"], ["earlier"], ["earlier"]]);
});
