import { describe, expect, test } from "vitest";
import type { PortId } from "../../../src/journal/facts/ids.ts";
import { project } from "../../../src/journal/projection.ts";
import { torqueEvidence } from "../../../src/journal/shop/instruments.ts";
import { portIn } from "../../../src/journal/shop/machines.ts";
import { shop } from "../../../src/journal/shop/shop.ts";
import { levelsWith } from "../../../src/mechanics/tables/levels.ts";
import { gearCase, type PlainFact, written } from "../written.ts";

const workshop = (...facts: PlainFact[]) => project(shop, written(facts.map((fact) => [fact, { job: null }] as const)));

const wrench = (instrument: string, least: string, most: string): PlainFact => ({
  type: "InstrumentBought",
  instrument,
  is: { kind: "wrench", works: "click", least, most, step: "1 N·m" },
});
const calibrated = (instrument: string, on: string): PlainFact => ({ type: "InstrumentCalibrated", instrument, on });

describe("a torque as evidence", () => {
  const { instruments } = workshop(wrench("TW-2", "20 N·m", "120 N·m"), calibrated("TW-2", "2025-12-13"), {
    type: "InstrumentBought",
    instrument: "C-1",
    is: { kind: "length", called: "caliper" },
  });
  const worth = (set: string, instrument: string | null, day: string | null, on: string) =>
    torqueEvidence(
      { set, wrench: instrument === null ? null : ({ instrument, calibrated: day } as never) },
      on,
      instruments,
      levelsWith({}),
    );

  test.each([
    ["48 N·m", "TW-2", "2025-12-13", "2026-11-25", "in range and in date"],
    ["35 lbf·ft", "TW-2", "2025-12-13", "2026-11-25", "in range and in date"],
    ["18 N·m", "TW-2", "2025-12-13", "2026-11-25", "out of range"],
    ["23 N·m", "TW-2", "2025-12-13", "2026-11-25", "out of range"],
    ["48 N·m", "TW-2", "2025-12-13", "2026-12-14", "out of date"],
    ["48 N·m", "TW-2", null, "2026-11-25", "date not known"],
    ["48 N·m", "TW-2", "2026-10-01", "2026-11-25", "date not known"],
    ["48 N·m", "C-1", null, "2026-11-25", "not a wrench known here"],
    ["48 N·m", "TW-9", "2025-12-13", "2026-11-25", "not a wrench known here"],
    ["48 N·m", null, null, "2026-11-25", "no wrench named"],
  ])("%s by %s, calibrated %s, pulled %s: %s", (set, instrument, day, on, expected) => {
    expect(worth(set, instrument, day, on)).toBe(expected);
  });
});

describe("the workshop", () => {
  test("knows its machines' units and ports, and the one noted later", () => {
    const { machines } = workshop(
      { type: "MachineMet", machine: "chipper", called: "Wood chipper", owner: "o-1", units: [] },
      { type: "UnitNoted", machine: "chipper", is: gearCase["is"] },
    );
    expect(portIn(machines, "drain" as PortId)).toMatchObject({
      machine: { called: "Wood chipper" },
      unit: { expected: "2.4 L" },
    });
    expect(portIn(machines, "nowhere" as PortId)).toBeNull();
  });

  test("two figures that disagree both stand in the book, until one is struck", () => {
    const noted = (figure: string, torque: string, seal: string): PlainFact => ({
      type: "BookFigureNoted",
      is: { figure, port: "fill", source: "sheet", torque, seal },
    });
    const both = [noted("f1", "35 N·m", "fibre"), noted("f2", "48 N·m", "aluminium")];
    expect(workshop(...both).book).toMatchObject({ fill: [{ torque: "35 N·m" }, { torque: "48 N·m" }] });
    expect(workshop(...both, { type: "BookFigureStruck", figure: "f1", why: "another model" }).book).toMatchObject({
      fill: [{ torque: "48 N·m" }],
    });
  });

  test("an owner who was erased leaves his machine and its ports", () => {
    const { people, machines } = workshop(
      { type: "MachineMet", machine: "chipper", called: "Wood chipper", owner: "o-1", units: [gearCase["is"]] },
      { type: "OwnerErased", owner: "o-1", why: "he asked" },
    );
    expect(people.erasedOwners).toEqual(["o-1"]);
    expect(portIn(machines, "drain" as PortId)).not.toBeNull();
  });
});
