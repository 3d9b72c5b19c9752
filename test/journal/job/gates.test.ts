import { describe, expect, test } from "vitest";
import {
  drained,
  filled,
  gearCase,
  loose,
  opened,
  out,
  overridden,
  type PlainFact,
  service,
  torqued,
  washers,
} from "../written.ts";
import { sheetOf, shut } from "./sheetOf.ts";

describe("drained only after the fill was broken loose", () => {
  const drain = drained("2.3 L");

  test("before it, no; after it, yes", () => {
    expect(shut(sheetOf(opened, gearCase), drain)).toEqual(["fill first"]);
    expect(shut(sheetOf(opened, gearCase, loose("drain")), drain)).toEqual(["fill first"]);
    expect(shut(sheetOf(opened, gearCase, loose("fill")), drain)).toEqual([]);
  });

  test("a fill that would not open is no fill", () => {
    const stuck: PlainFact = { type: "PortWouldNotOpen", port: "fill", words: "hexagon rounds off" };
    expect(shut(sheetOf(opened, gearCase, stuck), drain)).toEqual(["fill first"]);
  });

  test("a name and a reason open it, for this gate alone", () => {
    expect(shut(sheetOf(opened, gearCase, overridden("fill first")), drain)).toEqual([]);
    expect(shut(sheetOf(opened, gearCase, overridden("curing")), drain)).toEqual(["fill first"]);
  });

  test("a cap that opens every day needs no breaking loose", () => {
    const [fill, ...rest] = gearCase["is"].ports;
    const capped = { ...gearCase, is: { ...gearCase["is"], ports: [{ ...fill, closedBy: "cap" }, ...rest] } };
    expect(shut(sheetOf(opened, capped), drain)).toEqual([]);
  });

  test("nobody said which unit it is: that first", () => {
    expect(shut(sheetOf(opened), drain)).toEqual(["unit not named"]);
  });
});

describe("what came out against what should have, before anything is filled", () => {
  const after = (volume?: string) => sheetOf(opened, gearCase, loose("fill"), drained(volume));

  test.each([
    ["2.3 L", []],
    ["1.9 L", []],
    ["1.0 L", ["volume stop"]],
    ["2.9 L", ["volume stop"]],
    ["0 L", ["volume stop"]],
    ["2.2 US qt", []],
    [undefined, ["volume not measured"]],
  ])("%s of 2.4 L", (volume, expected) => {
    expect(shut(after(volume), filled)).toEqual(expected);
  });

  test("a unit that was never drained may be topped up", () => {
    expect(shut(sheetOf(opened, gearCase), filled)).toEqual([]);
  });
});

describe("torqued", () => {
  const ready = (...facts: PlainFact[]) => sheetOf(opened, gearCase, loose("drain"), out("drain"), ...facts);

  test("washers out against washers in: two out and one in, none out and one in", () => {
    expect(shut(ready(...washers("drain", 1, 1)), torqued("drain"))).toEqual([]);
    expect(shut(ready(...washers("drain", 2, 1)), torqued("drain"))).toEqual(["washers differ"]);
    expect(shut(ready(...washers("drain", 0, 1)), torqued("drain"))).toEqual(["washers differ"]);
    expect(shut(ready(washers("drain", 1, 1)[0]!), torqued("drain"))).toEqual(["washers not counted"]);
    expect(shut(ready(...washers("drain", 1, 0, "sealant, no washer")), torqued("drain"))).toEqual([]);
  });

  test("only the one who pulled sets it; another enters it with a reason, or checks", () => {
    const sheet = ready(...washers("drain", 1, 1));
    expect(shut(sheet, torqued("drain"), "sefa")).toEqual(["pulled by another"]);
    expect(shut(sheet, torqued("drain", { enteredBecause: "his gloves are off" }), "sefa")).toEqual([]);
    expect(shut(sheet, { type: "TorqueChecked", port: "drain" }, "sefa")).toEqual([]);
  });

  test("a click is checked again at most once, and nobody can override that", () => {
    const once = ready(...washers("drain", 1, 1), torqued("drain"), torqued("drain", { checkedAgain: true }));
    const again = torqued("drain", { checkedAgain: true });
    expect(once.ports).toMatchObject({ drain: { checkedAgain: 1 } });
    expect(shut(once, again)).toEqual(["checked twice"]);
    expect(shut(sheetOf(...service.slice(0, 11), again, overridden("checked twice")), again)).toEqual([
      "checked twice",
    ]);
  });

  test("after it let go, not a bit more: the turns are counted again first", () => {
    const letGo: PlainFact = { type: "PortLetGo", port: "drain", at: "31 N·m", turned: "40 °" };
    const count: PlainFact = {
      type: "ReadingTaken",
      port: "drain",
      reading: "left.turns",
      value: "2.5",
      how: "with a dot",
    };
    const sheet = ready(...washers("drain", 1, 1), letGo);
    expect(sheet.ports).toMatchObject({ drain: { state: "let go" } });
    expect(shut(sheet, torqued("drain"))).toEqual(["let go, not counted again"]);
    expect(shut(ready(...washers("drain", 1, 1), letGo, count), torqued("drain"))).toEqual([]);
  });
});

describe("a method that was refused when it was weighed", () => {
  const weighed = (override: string): PlainFact => ({
    type: "OptionsWeighed",
    port: "drain",
    engine: "0.1.0",
    case: {},
    asFound: null,
    options: [{ id: "sealant, no washer", window: null, refused: { rule: "7 too little", override }, lasting: false }],
    working: [],
    ranges: {},
    levels: {},
  });
  const made: PlainFact = { type: "RepairMade", port: "drain", method: "sealant, no washer", lasting: false };

  test("stays refused, unless its rule lets a name and a reason through", () => {
    expect(shut(sheetOf(opened, weighed("never"), overridden("7 too little")), made)).toEqual(["method refused"]);
    expect(shut(sheetOf(opened, weighed("name and reason")), made)).toEqual(["method refused"]);
    expect(shut(sheetOf(opened, weighed("name and reason"), overridden("7 too little")), made)).toEqual([]);
    expect(shut(sheetOf(opened, weighed("never")), { ...made, method: "solid bushing" })).toEqual([]);
  });
});
