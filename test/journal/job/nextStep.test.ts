import { describe, expect, test } from "vitest";
import { nextStep } from "../../../src/journal/job/nextStep.ts";
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
  ownersSheet,
  released,
  torqued,
  washers,
} from "../written.ts";
import { sheetOf } from "./sheetOf.ts";

const next = (...lines: readonly Line[]): string => {
  const it = nextStep(sheetOf(...lines), at("12:00"));
  return it ? [it.step, it.port ?? it.unit].filter((part) => part !== null).join(": ") : "nothing";
};

/** An ordinary service as far as it goes, one line at a time, and what is next after each: steps S6 to S23 of the job. */
const service: readonly (readonly [Line, string])[] = [
  [opened, "nothing"],
  [gearCase, "break the fill loose: fill"],
  [loose("fill"), "take the plug out: fill"],
  [out("fill"), "count washers out: fill"],
  [{ type: "WashersOut", port: "fill", count: 1 }, "nothing"],
  [loose("drain"), "take the plug out: drain"],
  [out("drain"), "count washers out: drain"],
  [drained("2.3 L"), "count washers out: drain"],
  [{ type: "WashersOut", port: "drain", count: 1 }, "count washers in: drain"],
  [{ type: "WashersIn", port: "drain", count: 1 }, "close by hand: drain"],
  [byHand("drain"), "tighten: drain"],
  [torqued("drain"), "fill: gear-case"],
  [filled, "check the level: gear-case"],
  [level, "count washers in: fill"],
  [{ type: "WashersIn", port: "fill", count: 1 }, "close by hand: fill"],
  [byHand("fill"), "tighten: fill"],
  [torqued("fill"), "look for drips: fill"],
  [dry("fill"), "look for drips: drain"],
  [dry("drain"), "make the owner's sheet"],
  [ownersSheet, "release"],
  [released, "nothing"],
];

describe("the next step of an ordinary service", () => {
  test.each(service.map(([line, step], i) => [step, line, i] as const))("%s", (step, _, i) => {
    expect(next(...service.slice(0, i + 1).map(([line]) => line))).toBe(step);
  });
});

describe("what stands half done comes first", () => {
  test("a port that let go is counted before anything is pulled", () => {
    const letGo = { type: "PortLetGo", port: "drain" } as const;
    expect(next(opened, gearCase, byHand("drain"), byHand("fill"), letGo)).toBe("count the turns: drain");
  });

  test("a plug by hand is tightened before another one is taken out", () => {
    expect(next(opened, gearCase, loose("fill"), byHand("drain"))).toBe("tighten: drain");
  });

  test("what came out is understood before anything goes in", () => {
    expect(next(opened, gearCase, loose("fill"), out("fill"), ...washers("fill", 1, 1), drained("1.0 L"))).toBe(
      "understand the volume: gear-case",
    );
  });

  test("where ways were offered, the owner's word is waited for", () => {
    const offered = { type: "OptionsOffered", port: "drain", rows: [] } as const;
    const decided = {
      type: "OwnerDecided",
      port: "drain",
      decision: { is: "chosen", option: "solid bushing" },
      words: "go on",
      by: "telephone",
    } as const;
    const before = [opened, gearCase, loose("fill"), out("fill"), loose("drain"), out("drain"), drained("2.3 L")];
    expect(next(...before, offered)).toBe("hear the owner: drain");
    expect(next(...before, offered, decided)).toBe("count washers out: fill");
  });
});

test("nothing is said of a plug that would not open: only the hand knows what to do", () => {
  expect(next(opened, gearCase, { type: "PortWouldNotOpen", port: "fill", words: "rounded off" })).toBe("nothing");
});
