import { expect, test } from "vitest";
import { factSchema } from "../../../src/journal/facts/fact.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import { aroundJob } from "./aroundJob.ts";
import { expectReadsBack } from "./readsBack.ts";

const atPort = aroundJob({ type: "port", port: "chipper-drain" });
const atUnit = aroundJob({ type: "unit", unit: "chipper-box" });
const atMachine = aroundJob({ type: "machine" });

test.each([
  [
    { torque: "35", source: "plate on it" },
    { torque: "35 N·m", source: "plate on it" },
  ],
  [
    { torque: "26 lbf·ft", source: "the book", surface: "dry", thread: "M20x1.5" },
    { torque: "26 lbf·ft", source: "the book", surface: "dry", thread: "M20x1.5" },
  ],
  [
    { volume: "1,8", fluid: "gear oil 75W-90", source: "the book" },
    { volume: "1,8 L", fluid: "gear oil 75W-90", source: "the book" },
  ],
])("a figure of a book is kept as it stands there, at its port, with where it stands: %j", (texts, told) => {
  const fact = { type: "BookFigureNoted", is: { figure: "figure-k3f7", port: "chipper-drain", ...told } };
  expect(factSchema.parse(fact)).toEqual(fact);
  expect(readAct(actNamed("figure"), texts, atPort)).toEqual({ ok: true, facts: [fact], card: null });
});

test("a figure that was read wrongly is struck by what it says, and is asked for no more", () => {
  const noted = {
    type: "BookFigureNoted",
    is: { figure: "f-1", port: "chipper-drain", source: "the book", torque: "350 N·m" },
  };
  const around = aroundJob({ type: "port", port: "chipper-drain" }, [], [noted]);
  const form = actNamed("struck").form(around);
  expect(form.choiceWords).toEqual({ "f-1": "350 N·m (the book)" });
  expect(form.given).toEqual({ figure: "f-1" });
  const fact = { type: "BookFigureStruck", figure: "f-1", why: "read from the wrong line" };
  expect(factSchema.parse(fact)).toEqual(fact);
  expect(readAct(actNamed("struck"), { figure: "f-1", why: "read from the wrong line" }, around)).toEqual({
    ok: true,
    facts: [fact],
    card: null,
  });
  const after = aroundJob({ type: "port", port: "chipper-drain" }, [], [noted, fact]);
  expect(actNamed("struck").form(after).choiceWords).toEqual({});
  expect(actNamed("torqued").form(after).words["set"]?.hint ?? "").not.toContain("350");
});

test.each([
  [
    "laidDown",
    { everyDistance: "20000", everyMonths: "12", source: "the book" },
    atUnit,
    { type: "ServiceLaidDown", unit: "chipper-box", every: { distance: "20000 km", months: 12 }, source: "the book" },
  ],
  [
    "laidDown",
    { everyHours: "250", source: "plate on it" },
    atUnit,
    { type: "ServiceLaidDown", unit: "chipper-box", every: { hours: "250 h" }, source: "plate on it" },
  ],
  [
    "costs",
    { amount: "182,50", borneBy: "shared", words: "shared, as agreed" },
    atMachine,
    { type: "CostsSettled", words: "shared, as agreed", amount: 182.5, borneBy: "shared" },
  ],
] as const)(
  "%s %j is the fact that the journal keeps, and is put right from its own texts",
  (act, texts, around, fact) => {
    expectReadsBack(act, texts, around, fact);
  },
);

test.each([
  ["figure", { torque: "35" }, ["source"]],
  ["figure", { source: "the book" }, ["torque"]],
  ["figure", { torque: "35 mm", source: "the book" }, ["torque"]],
  ["laidDown", { source: "the book" }, ["everyDistance"]],
  ["laidDown", { everyMonths: "0.5", source: "the book" }, ["everyMonths"]],
  ["costs", { amount: "dear", borneBy: "owner", words: "as offered" }, ["amount"]],
  ["costs", {}, ["amount", "borneBy", "words"]],
] as const)("%s %j says what is wanted or cannot be read: %j", (act, texts, fields) => {
  const read = readAct(actNamed(act), texts, atUnit);
  expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(fields);
});
