import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type CaseName, casesOfDemo } from "../../src/demo/cases.ts";
import { calendarOf } from "../../src/demo/script.ts";
import { caseOfDemo } from "../../src/demo/weighing.ts";
import type { RemedyId } from "../../src/mechanics/remedies/method.ts";
import { weigh } from "../../src/mechanics/remedies/weigh.ts";
import { threadCandidates } from "../../src/mechanics/threads/threadName.ts";
import { type AnswerDocument, answerDocument } from "../../src/sheets/answer/answerDocument.ts";
import { readCase } from "../../src/sheets/caseForm/caseDocument.ts";
import { gaps, outside, taper } from "../mechanics/threads/namingReadings.ts";

/**
 * The invented workshop's fourteen jobs with count and condition, as their stories tell them: the expectations come from
 * the stories and from the check runs of the method, never from what this program said. Where its figures moved a story,
 * the line above the job says so.
 */
const answerTo = (name: CaseName, day: number, changes: object = {}): AnswerDocument => {
  const written = { ...caseOfDemo(name, day, calendarOf("2026-11-25T10:40:00Z")), ...changes };
  const read = readCase(written, null);
  if (!read.ok) throw new Error(read.problems.map(({ field, accepted }) => `${field}: ${accepted}`).join("; "));
  return answerDocument(weigh(read.given), read.ordinary, written, [], "0.0.0");
};

const remedy = ({ remedies }: AnswerDocument, id: RemedyId) => {
  const found = remedies.find((it) => it.id === id);
  if (!found) throw new Error(`${id} was not weighed`);
  return found;
};

const offered = ({ ranking }: AnswerDocument): readonly string[] => ranking.map(({ id }) => id);
const windowOf = (answer: AnswerDocument, id: RemedyId) => {
  const { window } = remedy(answer, id);
  if (!window) throw new Error(`${id} has no window`);
  return window;
};

/** Within a share of what the story or the check run has. */
const about = (actual: number | undefined, told: number, share: number): void => {
  expect(actual).toBeGreaterThan(told * (1 - share));
  expect(actual).toBeLessThan(told * (1 + share));
};

describe("the healthy jobs take their book figure", () => {
  // 0231: 35 stood beside a fibre ring, 48 beside flat aluminium 28/22. The check run needs 49.7, so the 48 is remarked on.
  test("0231, a gearbox fill: 48 for its aluminium ring, not the 35 of another joint", () => {
    const found = answerTo("van", -352);
    expect([found.healthy, found.asFound.window?.advice_Nm, found.asFound.window?.pull?.wrench]).toEqual([
      true,
      48,
      "TW-2",
    ]);
    about(found.asFound.window?.need_Nm, 49.7, 0.01);
    expect(found.asFound.because.join(" ")).toMatch(/different joints/);
    expect(offered(found)).toEqual(["ordinary reseal"]);
  });

  test("0299, a hub of ductile iron: 70, its copper ring needs about 60", () => {
    const found = answerTo("combine", -181);
    expect([found.healthy, found.asFound.window?.advice_Nm]).toEqual([true, 70]);
    about(found.asFound.window?.need_Nm, 60, 0.05);
  });

  test("0413, an ordinary sump: 34, its ring needs 33", () => {
    const found = answerTo("familyCar", 0);
    expect([found.healthy, found.asFound.window?.advice_Nm]).toEqual([true, 34]);
    about(found.asFound.window?.need_Nm, 33.4, 0.01);
  });
});

describe("the hurt jobs that are weighed", () => {
  // 0244: the check run of three good turns in EN AC-46000. The story set 20; the least that closes the bonded seal is 8.
  test("0244, three turns of seven in a sump: copper is empty, a longer plug with a bonded seal is open and comes first", () => {
    const found = answerTo("hatchback", -331);
    expect(found.asFound.window).toMatchObject({ open: false, advice_Nm: null });
    about(found.asFound.window?.need_Nm, 33.4, 0.01);
    about(found.asFound.window?.limit_Nm, 16.1, 0.01);
    const longer = windowOf(found, "longer plug, bonded seal");
    expect(longer.open && !longer.narrow).toBe(true);
    about(longer.need_Nm, 7, 0.2);
    about(longer.limit_Nm, 38, 0.1);
    expect(longer.pull?.wrench).toBe("TW-1");
    expect(20 >= longer.need_Nm && 20 <= longer.limit_Nm).toBe(true);
    expect(offered(found)[0]).toBe("longer plug, bonded seal");
    expect(offered(found)).toContain("solid bushing");
    // The 34 for the original plug would strip about half of what is left of its own thread.
    about(found.asFound.window?.medianStrip_Nm, 34, 0.05);
  });

  // 0315: the story had 41 to 48 and set 44; the ranges of the method leave less room, still narrow.
  test("0315, a coolant drain in grey iron: copper is narrow between about 41 and 48, and the cap's test follows", () => {
    const found = answerTo("deliveryVan", -149);
    const { window } = found.asFound;
    expect(window).toMatchObject({ open: true, narrow: true });
    about(window?.need_Nm, 41, 0.05);
    about(window?.limit_Nm, 48, 0.1);
    about(window?.medianStrip_Nm, 95, 0.05);
    expect(window?.pull?.wrench).toBe("TW-2");
    expect(remedy(found, "lower torque").checks.join(" ")).toMatch(/pressure on the cap/);
    expect(remedy(found, "sealant, no washer").refused?.rule).toBe("2 pressure");
  });

  // 0412: the story's 13 mm plug could not have had nine turns, so it is 16. It set 28; the bonded seal closes at 14.
  test("0412, a torn gear-box drain: copper empty, longer plug with a bonded seal first, a bushing fits, sealant waits days", () => {
    const found = answerTo("chipper", 0);
    expect(found.asFound.refused).toBeNull();
    expect(found.asFound.window?.open).toBe(false);
    const longer = windowOf(found, "longer plug, bonded seal");
    expect(longer.open && !longer.narrow && 28 >= longer.need_Nm && 28 <= longer.limit_Nm).toBe(true);
    expect(offered(found)[0]).toBe("longer plug, bonded seal");
    expect(remedy(found, "longer plug, bonded seal").checks.join(" ")).toMatch(/nearest thing is 11 mm behind/);
    const bush = remedy(found, "solid bushing");
    expect([bush.stands, bush.window?.open, bush.lasting]).toEqual(["fits", true, true]);
    expect(bush.sums.some(({ result }) => /^4\.10? ±/.test(result))).toBe(true);
    const sealant = remedy(found, "sealant, no washer");
    expect(sealant.window?.open).toBe(true);
    expect(sealant.readyAfter_h).toBeGreaterThan(44);
    expect(sealant.until).toBe("2027-11-25");
    // The machine wanted today: the bushing is on the shelf, the sealant stands for days.
    const today = answerTo("chipper", 0, { wish: { today: true } });
    expect(today.ranking.find(({ id }) => id === "sealant, no washer")?.objections).toEqual(["not ready today"]);
    expect(today.ranking.find(({ id }) => id === "solid bushing")?.objections).toEqual([]);
  });

  // 0340: the ring of the story takes a turn, so it is refused as found; the sealant has no ring and is weighed again.
  test("0340, a loader's level port again: sealant may be repeated because another cause is named, and a bushing is better", () => {
    const found = answerTo("loaderAgain", -91);
    expect(found.asFound.refused?.rule).toBe("7 too little");
    const sealant = windowOf(found, "sealant, no washer");
    expect(sealant.open).toBe(true);
    about(sealant.need_Nm, 4, 0.2);
    about(sealant.limit_Nm, 19, 0.15);
    const ids = offered(found);
    expect(ids.indexOf("solid bushing")).toBeLessThan(ids.indexOf("sealant, no washer"));
    // Fifty-five minutes were no cure: the story's 50 h for 3 mm, more for its seat of 3.5.
    expect(remedy(found, "sealant, no washer").readyAfter_h).toBeGreaterThan(50);
    const sameCause = { asked: { ...(found.case as { asked: object }).asked, repairedBefore: { method: "sealant" } } };
    expect(remedy(answerTo("loaderAgain", -91, sameCause), "sealant, no washer").refused?.rule).toBe("8 again");
  });
});

describe("the refused jobs show no torque, and what is allowed instead", () => {
  const silent = (found: AnswerDocument): void => {
    expect(found.asFound.window).toBeNull();
    expect(found.remedies.every(({ window }) => window === null)).toBe(true);
    expect(found.working).toEqual([]);
  };

  test("0260, an outboard's lower unit: refused for the water, a bushing with both tests", () => {
    const found = answerTo("outboard", -286);
    silent(found);
    expect(found.asFound.refused).toMatchObject({ rule: "5 water side", override: "never" });
    expect(offered(found)[0]).toBe("solid bushing");
    expect(remedy(found, "solid bushing").conditions.join(" ")).toMatch(/pressure and vacuum test/);
    for (const id of ["sealant, no washer", "cast thread"] as const) expect(remedy(found, id).refused).not.toBeNull();
  });

  test("0271, a camper's final drive: 1.7 turns are too few; overridden by name, and still no number of ours", () => {
    const found = answerTo("camper", -244);
    silent(found);
    const { refused } = remedy(found, "sealant, no washer");
    expect(refused).toMatchObject({ rule: "7 too little", override: "name and reason", overridden: { by: "M.T." } });
    expect(offered(found)[0]).toBe("solid bushing");
  });

  test("0301, it comes back: a shouldered bushing leaves 3.1 mm of wall and stands 45", () => {
    const found = answerTo("camperAgain", -173);
    expect(offered(found)[0]).toBe("solid bushing");
    const bush = remedy(found, "solid bushing");
    expect(bush.sums.some(({ result }) => /^3\.10? ±/.test(result))).toBe(true);
    const window = windowOf(found, "solid bushing");
    expect(window.open && 45 >= window.need_Nm && 45 <= window.limit_Nm).toBe(true);
    silent(answerTo("camperAgain", -173, { wish: undefined }));
  });

  test("0288, a spark plug hole: no glue, a bushing, the maker's figure", () => {
    const found = answerTo("estate", -208);
    silent(found);
    expect(found.asFound.refused).toMatchObject({ rule: "3 combustion", override: "never" });
    expect(remedy(found, "sealant, no washer").refused?.rule).toBe("3 combustion");
    expect(offered(found)[0]).toBe("solid bushing");
    expect(remedy(found, "solid bushing").checks.join(" ")).toMatch(/maker's figure/);
  });

  // 0377: the order of the trade has a bushing before the coil of the story, for a port under oil.
  test("0377, a motorcycle's magnesium sump: sealant refused for the tyre, a coil of 1.5 d with lockwire offered", () => {
    const found = answerTo("motorcycle", -44);
    silent(found);
    expect(found.asFound.refused).toMatchObject({ rule: "4 reach", override: "never" });
    expect(offered(found).slice(0, 2)).toEqual(["solid bushing", "wire coil"]);
    const coil = remedy(found, "wire coil");
    expect(coil.checks.join(" ")).toMatch(/1\.5 diameters, 18 mm/);
    expect(coil.conditions).toContain("Lockwire through the head.");
    expect(remedy(found, "welded and re-cut").conditions.join(" ")).toMatch(/specialist/);
    const repaired = answerTo("motorcycle", -44, { wish: { afterRepair: true } });
    const window = windowOf(repaired, "wire coil");
    about(window.need_Nm, 14, 0.1);
    expect(window.open && 20 <= window.limit_Nm).toBe(true);
  });
});

describe("0405, a wrong plug forced into a tractor's level port", () => {
  test("20.85 mm, worn, with ten gaps in 18.2 mm and both ends equal is G 1/2", () => {
    const { candidates } = threadCandidates([outside(20.85, 0.1), gaps(10, 18.2), taper(0, 10)]);
    expect(candidates[0]?.designation).toBe("G 1/2");
  });

  // The story had no figures, for want of the thread. The right plug reaches 14 - 2.5 - 1 = 10.5 mm, so 4.1 of its turns lie
  // below the 3 mm that the forced plug tore. Its bonded seal wants at most 60 N/mm on 78.7 mm, times an arm of at most
  // 0.29 + 0.17 (19.8 / 1.77 + 12.5) = 4.2 mm: 20 N·m; grey iron strips at several times that.
  test("the right plug on its bonded seal has a wide window, and a bung holds the port locked until it comes", () => {
    const found = answerTo("tractor", -6);
    expect(found.turns?.caught).toBeCloseTo(7.5 / (25.4 / 14), 2);
    const { window, refused } = found.asFound;
    expect(refused).toBeNull();
    expect(window).toMatchObject({ open: true, narrow: false });
    expect(window?.need_Nm).toBeLessThan(20);
    expect(window?.limit_Nm).toBeGreaterThan(3 * 20);
    expect(window?.pull?.wrench).toBe("TW-1");
    const bung = remedy(found, "expanding bung");
    expect([bung.lasting, bung.conditions.join(" ")]).toEqual([false, expect.stringMatching(/yard only/)]);
    expect(remedy(found, "wire coil").because.join(" ")).toMatch(/maker's table only/);
    expect(remedy(found, "next size").checks.join(" ")).toMatch(/Or G 3\/4.*A new plug, M24x1\.5/);
    expect(remedy(found, "solid bushing").checks.join(" ")).toMatch(/outside, G 1\/2 inside/);
  });
});

test.each([
  ["chipper-gear-drain", "chipper"],
  ["motorcycle-sump", "motorcycle"],
  ["spark-plug-hole", "estate"],
] as const)("examples/%s.json is the case of its job", (file, name) => {
  const { wrenches, today, ...port } = JSON.parse(
    readFileSync(new URL(`../../examples/${file}.json`, import.meta.url), "utf8"),
  );
  expect(wrenches.length).toBeGreaterThan(0);
  expect(today).toMatch(/^20\d\d-/);
  expect(port).toEqual(casesOfDemo[name]);
});
