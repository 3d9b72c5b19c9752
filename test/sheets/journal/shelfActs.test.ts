import { expect, test } from "vitest";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { aroundJob, written } from "./aroundJob.ts";
import { expectReadsBack } from "./readsBack.ts";

const wrench = { kind: "wrench", works: "click", least: "20 N·m", most: "120 N·m", step: "1 N·m" };
const known = [
  { type: "InstrumentBought", instrument: "TW-4", is: wrench },
  { type: "InstrumentBought", instrument: "TW-9", is: wrench },
  { type: "InstrumentRetired", instrument: "TW-9", why: "broken" },
  { type: "InstrumentBought", instrument: "D-1", is: { kind: "length", called: "depth rod" } },
  { type: "SealantStocked", sealant: "S-C", called: "Silicone, grey", batch: "71" },
  { type: "FluidStocked", fluid: "F-G", called: "Gear oil" },
];
const around = aroundJob({ type: "workshop" }, [], known);

test.each([
  [
    "tube",
    { name: "Silicone, black", batch: "B-7", shelfDate: "2027-03-01", labelHours: "24", mostGap: "0,5" },
    {
      type: "SealantStocked",
      sealant: "silicone-black-k3f7",
      called: "Silicone, black",
      batch: "B-7",
      shelfDate: "2027-03-01",
      labelHours: "24 h",
      mostGap: "0,5 mm",
    },
  ],
  ["tube", { name: "Silicone" }, { type: "SealantStocked", sealant: "silicone-k3f7", called: "Silicone" }],
  [
    "drum",
    { name: "Gear oil 75W-90", batch: "G-200" },
    { type: "FluidStocked", fluid: "gear-oil-75w-90-k3f7", called: "Gear oil 75W-90", batch: "G-200" },
  ],
] as const)("%s %j stands on the shelf from then on", (act, texts, fact) => {
  expect(factSchema.parse(fact)).toEqual(fact);
  expect(readAct(actNamed(act), texts, around)).toEqual({ ok: true, facts: [fact], card: null });
});

test.each([
  ["usedUp", { stock: "S-C" }, { type: "StockUsedUp", stock: "S-C" }],
  [
    "calibrated",
    { instrument: "TW-4", on: "2026-11-20", certificate: "C-118" },
    { type: "InstrumentCalibrated", instrument: "TW-4", on: "2026-11-20", certificate: "C-118" },
  ],
  ["retired", { instrument: "D-1", why: "lost" }, { type: "InstrumentRetired", instrument: "D-1", why: "lost" }],
  ["finger", { tipToCrease: "24" }, { type: "FingerMeasured", person: "jory", tipToCrease: "24 mm" }],
] as const)("%s %j is the fact that the journal keeps, and is put right from its own texts", (act, texts, fact) => {
  expectReadsBack(act, texts, around, fact);
});

test("what may be used up, calibrated and put away is what is here", () => {
  const choices = (act: "usedUp" | "calibrated" | "retired", field: string) => {
    const form = actNamed(act).form(around);
    const asked = form.fields[field];
    return asked?.type === "choice" ? asked.choices.map((it) => form.choiceWords[it] ?? it) : [];
  };
  expect(choices("usedUp", "stock")).toEqual(["Silicone, grey, batch 71", "Gear oil"]);
  expect(choices("calibrated", "instrument")).toEqual(["TW-4"]);
  expect(choices("retired", "instrument")).toEqual(["TW-4", "D-1"]);
});

test("a tube that was bought is offered where sealant is closed, until it is used up", () => {
  const bought = readAct(actNamed("tube"), { name: "Silicone, black" }, around);
  const offeredAfter = (facts: readonly object[]) => {
    const field = actNamed("cure").form({ ...around, shop: project(shop, written(facts, null)) }).fields["sealant"];
    return field?.type === "choice" ? field.choices : [];
  };
  const facts = bought.ok ? bought.facts : [];
  expect(offeredAfter(facts)).toEqual(["silicone-black-k3f7"]);
  expect(offeredAfter([...facts, { type: "StockUsedUp", stock: "silicone-black-k3f7" }])).toEqual([]);
});

test.each([
  ["tube", { shelfDate: "spring" }, ["name", "shelfDate"]],
  ["tube", { name: "Silicone", labelHours: "a day" }, ["labelHours"]],
  ["calibrated", { instrument: "TW-4", on: "2026-12-24" }, ["on"]],
  ["retired", {}, ["instrument", "why"]],
  ["finger", { tipToCrease: "0" }, ["tipToCrease"]],
] as const)("%s %j says what is wanted or cannot be read: %j", (act, texts, fields) => {
  const read = readAct(actNamed(act), texts, around);
  expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(fields);
});
