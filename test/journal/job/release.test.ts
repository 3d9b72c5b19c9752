import { describe, expect, test } from "vitest";
import { leavingRefusals, startingRefusals } from "../../../src/journal/job/gates.ts";
import {
  at,
  byHand,
  drained,
  dry,
  filled,
  gearCase,
  type Line,
  level,
  loose,
  opened,
  out,
  overridden,
  ownersSheet,
  type PlainFact,
  released,
  service,
  torqued,
  washers,
} from "../written.ts";
import { sheetOf, shut } from "./sheetOf.ts";

const breaches = (...lines: Line[]) => sheetOf(...lines).breaches.map(({ gate }) => gate);

describe("release", () => {
  const done = [...service, dry("drain"), dry("fill"), ownersSheet];

  test("an ordinary service that was finished may go", () => {
    const sheet = sheetOf(...done);
    expect(startingRefusals(sheet)).toEqual([]);
    expect(shut(sheet, released)).toEqual([]);
    expect(sheetOf(...done, released)).toMatchObject({ stage: "released", breaches: [] });
  });

  test.each([
    ["a port by hand", done.filter((it) => !(it.type === "PortTorqued" && it["port"] === "fill")), ["port not tight"]],
    ["a level unchecked", done.filter((it) => it !== level), ["level unchecked"]],
    [
      "a level that is not right",
      done.map((it) => (it === level ? { ...level, right: false } : it)),
      ["level unchecked"],
    ],
    ["filled again after the level", [...done, filled], ["level unchecked"]],
    [
      "a port that nobody saw dry",
      done.filter((it) => it.type !== "PortDryChecked" || it["port"] !== "fill"),
      ["not seen dry"],
    ],
    ["no paper", done.filter((it) => it !== ownersSheet), ["no owner's sheet"]],
    ["a port opened again", [...done, loose("drain")], ["port not tight"]],
    [
      "a bung in the hole",
      [...done, { type: "PortHeldForNow", port: "drain", by: "bung", until: "2026-11-26" } as const],
      ["held for now"],
    ],
  ])("not with %s", (_, facts, expected) => {
    expect(shut(sheetOf(...facts), released)).toEqual(expected);
  });

  test("hand-tight, unlevelled or held for now: no name and no reason let it go; it may leave not running", () => {
    const byHandStill = [...service.slice(0, -1), dry("drain"), ownersSheet];
    const taken = ["port not tight", "level unchecked", "held for now"].map((rule) => overridden(rule));
    expect(shut(sheetOf(...byHandStill, ...taken), released)).toEqual(["port not tight"]);
    const carried: PlainFact = { type: "MachineLeftNotRunning", carriedBy: "trailer", signedFor: true };
    expect(shut(sheetOf(...byHandStill), carried)).toEqual([]);
    expect(sheetOf(...byHandStill, carried).stage).toBe("left not running");
  });

  test("a bead holds it until its clock is over, or somebody takes it on himself", () => {
    const cure: PlainFact = {
      type: "CureBegan",
      port: "drain",
      sealant: "S-A",
      bead: "3 mm",
      temperature: "12 °C",
      humidity: "65 %",
      closedAt: at("09:00"),
      earliest: at("17:00"),
      curedThrough_h: 44,
    };
    const sheet = sheetOf(...done, cure);
    expect(shut(sheet, released, "jory", at("16:59"))).toEqual(["curing"]);
    expect(shut(sheet, released, "jory", at("17:00"))).toEqual([]);
    expect(shut(sheetOf(...done, cure, overridden("curing")), released, "jory", at("16:59"))).toEqual([]);
    expect(leavingRefusals(sheet, at("12:00")).map(({ gate }) => gate)).toEqual(["curing"]);
  });

  test("a make-do goes with its tag", () => {
    const makeDo: PlainFact = { type: "RepairMade", port: "fill", method: "sealant, no washer", lasting: false };
    expect(shut(sheetOf(...done, makeDo), released)).toEqual(["no tag"]);
    const tag: PlainFact = { type: "PortTagged", port: "fill", lines: ["REPAIRED PORT - READ"] };
    expect(shut(sheetOf(...done, makeDo, tag), released)).toEqual([]);
  });

  test("a unit without fluid, as a spark-plug hole, has no level and no drip", () => {
    const [hole] = gearCase["is"].ports;
    const head = {
      ...gearCase,
      is: { unit: "head", called: "Head", holdsFluid: false, ports: [{ ...hole, port: "hole-3", roles: ["hole"] }] },
    };
    const facts = [
      opened,
      head,
      loose("hole-3"),
      out("hole-3"),
      ...washers("hole-3", 1, 1),
      torqued("hole-3"),
      ownersSheet,
    ];
    expect(shut(sheetOf(...facts), released)).toEqual([]);
  });
});

describe("two devices that were apart", () => {
  test("one drains, the other never broke the fill loose: both entries stand and the breach is shown", () => {
    const sheet = sheetOf(
      opened,
      gearCase,
      [drained("2.3 L"), { device: "phone", by: "sefa" }],
      [torqued("drain"), { device: "tablet" }],
    );
    expect(sheet.breaches.map(({ gate, by }) => [gate, by])).toEqual([["fill first", "sefa"]]);
    expect(sheet).toMatchObject({
      units: { "gear-case": { fluid: "drained" } },
      ports: { drain: { state: "torqued" } },
    });
  });

  test("released on one while the other opened a port: a breach, and it must not start", () => {
    const done = [...service, dry("drain"), dry("fill"), ownersSheet];
    const sheet = sheetOf(...done, [loose("fill"), { device: "phone" }], [released, { device: "tablet" }]);
    expect(sheet.breaches.map(({ gate }) => gate)).toEqual(["port not tight"]);
    expect(startingRefusals(sheet).map(({ gate, port }) => [gate, port])).toEqual([["port not tight", "fill"]]);
  });

  test("what was overridden is no breach", () => {
    expect(breaches(opened, gearCase, overridden("fill first"), drained("2.3 L"))).toEqual([]);
  });

  test("a plug closed by hand again starts its time anew", () => {
    const sheet = sheetOf(opened, gearCase, byHand("fill"), [byHand("fill"), { at: at("09:30"), by: "sefa" }]);
    expect(sheet.ports).toMatchObject({ fill: { state: "by hand", since: at("09:30"), by: "sefa" } });
  });
});
