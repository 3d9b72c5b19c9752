import { describe, expect, test } from "vitest";
import { standing } from "../../../src/journal/views/standing.ts";
import { sheetOf } from "../job/sheetOf.ts";
import {
  at,
  byHand,
  drained,
  dry,
  filled,
  gearCase,
  type Line,
  loose,
  opened,
  ownersSheet,
  released,
  service,
  torqued,
} from "../written.ts";

const now = at("10:00");
const lines = (...facts: Line[]) => standing([sheetOf(...facts)], now);

describe("the standing sheet", () => {
  test("says what is by hand, since when and by whom, and that the machine must not start", () => {
    const [job] = lines(opened, gearCase, loose("drain"), [byHand("drain"), { at: at("09:48"), by: "sefa" }]);
    expect(job?.ports).toEqual([{ port: "drain", state: "by hand", minutes: 12, by: "sefa", until: null }]);
    expect(job?.notStarted.map(({ gate }) => gate)).toEqual(["port not tight"]);
  });

  test("says that a unit is drained, and stops before a refill where what came out cannot be right", () => {
    expect(lines(opened, gearCase, loose("fill"), drained("2.3 L"))[0]?.units).toMatchObject([
      { fluid: "drained", stop: false },
    ]);
    expect(lines(opened, gearCase, loose("fill"), drained("1.0 L"))[0]?.units).toMatchObject([
      { fluid: "drained", stop: true },
    ]);
    expect(lines(opened, gearCase, loose("fill"), drained("2.3 L"), filled)[0]?.units).toMatchObject([
      { fluid: "filled" },
    ]);
  });

  test("shows a bead that cures until its clock is over", () => {
    const cure = {
      type: "CureBegan",
      port: "drain",
      sealant: "S-A",
      bead: "3 mm",
      temperature: "12 °C",
      humidity: "65 %",
      closedAt: at("09:00"),
      earliest: at("13:00"),
      curedThrough_h: 44,
    } as const;
    const facts = [opened, gearCase, torqued("drain"), cure];
    expect(standing([sheetOf(...facts)], at("12:00"))[0]?.ports).toMatchObject([
      { state: "curing", minutes: 180, until: at("13:00") },
    ]);
    expect(standing([sheetOf(...facts)], at("13:00"))[0]?.ports).toMatchObject([{ state: "torqued" }]);
  });

  test("a machine that was rightly let go is off the wall; one that should not have been stands on top", () => {
    const done = [...service, dry("drain"), dry("fill"), ownersSheet];
    expect(lines(...done, released)).toEqual([]);
    const wrong = sheetOf(...done, [loose("fill"), { device: "phone" }], [released, { device: "tablet" }]);
    const open = sheetOf([opened, { job: "0413" }], [gearCase, { job: "0413" }], [byHand("drain"), { job: "0413" }]);
    expect(standing([open, wrong], now).map(({ job, stage }) => [job, stage])).toEqual([
      ["0412", "released"],
      ["0413", "open"],
    ]);
  });

  test("no time runs backwards when another device's clock is ahead", () => {
    const [job] = lines(opened, gearCase, [byHand("drain"), { at: at("11:30") }]);
    expect(job?.ports[0]?.minutes).toBe(0);
  });
});
