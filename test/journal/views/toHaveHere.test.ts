import { expect, test } from "vitest";
import { project } from "../../../src/journal/projection.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { toHaveHere } from "../../../src/journal/views/toHaveHere.ts";
import { shelfSentence } from "../../../src/sheets/words/bookedWords.ts";
import { sheetOf } from "../job/sheetOf.ts";
import { at, type PlainFact, written } from "../written.ts";

const drain = (machine: string, thread?: string) => ({
  port: `${machine}.drain`,
  called: "Drain",
  roles: ["drain"],
  closedBy: "plug",
  joint: "engine sump",
  ...(thread ? { thread } : {}),
});
const cap = (machine: string) => ({ ...drain(machine), port: `${machine}.cap`, called: "Cap", closedBy: "cap" });
const met = (machine: string, thread?: string): PlainFact => ({
  type: "MachineMet",
  machine,
  called: machine,
  units: [
    { unit: `${machine}.unit`, called: "Engine", holdsFluid: true, ports: [cap(machine), drain(machine, thread)] },
  ],
});
const machines = project(
  shop,
  written(
    [met("van"), met("car", "M14x1.5"), met("hatch", "M14x1.5"), met("digger", "M18x1.5")].map(
      (it) => [it, { job: null }] as const,
    ),
  ),
).machines;
const visit = (machine: string, day: string, ...facts: readonly PlainFact[]) =>
  sheetOf(
    ...[{ type: "JobOpened", machine, cameFor: "oil change" } as const, ...facts].map(
      (fact) => [fact, { at: at("09:00", day), job: `${machine}-${day}` }] as const,
    ),
  );
const turns = (machine: string, value: number): PlainFact => ({
  type: "ReadingTaken",
  port: `${machine}.drain`,
  reading: "left.turns",
  value: String(value),
  how: "with a dot",
});
const closed = (machine: string): PlainFact => ({
  type: "PortTorqued",
  port: `${machine}.drain`,
  set: "34 N·m",
  wrench: null,
  clicked: true,
  checkedAgain: false,
  pulledBy: "jory",
  fitted: { plug: "its own", seal: "flat washer", material: "copper" },
});

test("of a plug that was here before: its thread, its seal and how its turns went; of a cap nothing", () => {
  const sheets = [
    visit("car", "2024-11-25", turns("car", 8)),
    visit("car", "2025-11-25", turns("car", 7)),
    visit("car", "2026-05-25", turns("car", 6), closed("car")),
  ];
  const all = toHaveHere("car" as never, machines, sheets);
  expect(all.map(({ port }) => port.called)).toEqual(["Drain"]);
  expect(all.map(shelfSentence)).toEqual([
    "Drain: M14x1.5; closed with flat washer, copper; turns 8, 7, 6, they fall: have a longer plug and an insert kit, too.",
  ]);
});

test("of one whose thread nobody noted: what the others of its kind had, and how many of them were repaired", () => {
  const repaired: PlainFact = {
    type: "RepairMade",
    port: "hatch.drain",
    method: "next size",
    lasting: true,
  };
  const [first] = toHaveHere("van" as never, machines, [visit("hatch", "2026-01-25", repaired)]);
  expect(first?.alike).toEqual({
    ports: 3,
    repaired: 1,
    threads: [
      { thread: "M14x1.5", ports: 2 },
      { thread: "M18x1.5", ports: 1 },
    ],
  });
  expect(first && shelfSentence(first)).toBe(
    "Drain: thread not known; 2 of 3 others here (engine sump) had M14x1.5; repaired here: 1 of 3 others of its kind.",
  );
});

test("a machine that the journal does not know has nothing to be laid out", () => {
  expect(toHaveHere("stranger" as never, machines, [])).toEqual([]);
});
