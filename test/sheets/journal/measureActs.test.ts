import { expect, test } from "vitest";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed } from "../../../src/sheets/journal/acts.ts";
import type { ActName } from "../../../src/sheets/words/actWords.ts";
import { aroundJob } from "./aroundJob.ts";
import { expectReadsBack } from "./readsBack.ts";

const port = "chipper-drain";
const unit = "chipper-box";
const atPort = aroundJob({ type: "port", port });
const atUnit = aroundJob({ type: "unit", unit });
const atMachine = aroundJob({ type: "machine" });
const photo = "a".repeat(64);

test.each([
  [
    "measured",
    { reading: "plug.underHead", value: "16", how: "caliper", photos: photo },
    atPort,
    { type: "ReadingTaken", port, reading: "plug.underHead", value: "16 mm", how: "caliper", photos: [photo] },
  ],
  [
    "measured",
    { reading: "length over gaps", value: "0.5 in", over: "8", how: "rule" },
    atPort,
    { type: "ReadingTaken", port, reading: "length over gaps", value: "0.5 in", over: 8, how: "rule" },
  ],
  [
    "named",
    { thread: "M20x1.5", how: "gauge" },
    atPort,
    { type: "ThreadNamed", port, thread: "M20x1.5", how: "gauge" },
  ],
  [
    "material",
    { material: "EN-GJL-250", how: "magnet" },
    atPort,
    { type: "MaterialJudged", port, material: "EN-GJL-250", how: "magnet" },
  ],
  ["judged", { belongs: "no", photos: photo }, atPort, { type: "PlugJudged", port, belongs: false, photos: [photo] }],
  ["watched", { watched: "10", wetness: "damp" }, atPort, { type: "WetnessWatched", port, minutes: 10, found: "damp" }],
  [
    "pressed",
    { from: "0.7", to: "-0,1", minutes: "15", verdict: "leaks" },
    atPort,
    { type: "PressureHeld", port, from: "0.7 bar", to: "-0,1 bar", minutes: 15, verdict: "leaks" },
  ],
  [
    "levelFound",
    { belowLip: "-2", read: "mirror", oil: "cold", standsLevel: "no" },
    atUnit,
    { type: "LevelFound", unit, belowLip: "-2 mm", how: "mirror", oil: "cold", standsLevel: false },
  ],
  [
    "flushed",
    { poured: "0.3", caught: "0.3" },
    atUnit,
    { type: "UnitFlushed", unit, poured: "0.3 L", caught: "0.3 L" },
  ],
  [
    "agreed",
    { agreed: "whatever it needs", upTo: "250", keysTaken: "yes" },
    atMachine,
    { type: "ScopeAgreed", words: "whatever it needs", upTo: 250, keysTaken: true },
  ],
  ["meter", { hours: "640" }, atMachine, { type: "MeterRead", meter: { hours: "640 h" } }],
  [
    "ordered",
    { ordered: "longer plug", arrives: "2026-11-26" },
    atMachine,
    { type: "PartsOrdered", words: "longer plug", arrives: "2026-11-26" },
  ],
] as const)(
  "%s %j is the fact that the journal keeps, and is put right from its own texts",
  (act, texts, around, fact) => {
    expectReadsBack(act, texts, around, fact);
  },
);

test.each([
  ["measured", { reading: "length over gaps", value: "12.1", how: "rule" }, ["over"]],
  ["measured", { reading: "plug.underHead", value: "16 N·m", how: "caliper" }, ["value"]],
  ["measured", {}, ["reading", "value", "how"]],
  ["pressed", { from: "a lot", to: "0", minutes: "15", verdict: "holds" }, ["from"]],
  ["watched", { watched: "1.5", wetness: "dry" }, ["watched"]],
  ["meter", {}, ["distance"]],
] as const)("%s %j says what is wanted or cannot be read: %j", (act, texts, fields) => {
  const read = readAct(actNamed(act as ActName), texts, atPort);
  expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(fields);
});
