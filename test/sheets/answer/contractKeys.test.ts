import { describe, expect, test } from "vitest";
import { levelsWith } from "../../../src/mechanics/tables/levels.ts";
import { referenceRanges } from "../../../src/mechanics/tables/referenceRanges.ts";
import type { WindowDocument } from "../../../src/sheets/answer/answerDocument.ts";
import { writtenRange } from "../../../src/sheets/caseForm/overrides.ts";
import { changedCase, documentOf } from "../../mechanics/remedies/changedCase.ts";

/** The keys of the public contract; more may be added, these stay. */
const stays = {
  document: "engine case asFound remedies ranking measureNext assumed working cautions ranges levels",
  asFound: "window because refused",
  remedy: "id name method stands lasting window refused checks because hours parts readyAfter_h",
  window: "open narrow need_Nm limit_Nm advice_Nm medianStrip_Nm cautiousRule_Nm strips closes",
  odds: "torque_Nm probability",
  refused: "rule reason instead override",
  ranking: "id name line price objections breakEven",
  measureNext: "reading how limitNow_Nm limitThen_Nm because",
  assumed: "reading value source",
  working: "formula substituted result source",
} as const;

const has = (value: object | null | undefined, keys: string) =>
  expect(Object.keys(value ?? {})).toEqual(expect.arrayContaining(keys.split(" ")));

/** A hurt port of which something is refused, empty, narrow and open, and something was assumed. */
const changes = { left: { turns: "3.4" }, surface: undefined };
const document = documentOf(changes, [7, 46.5]);
const windows = [document.asFound, ...document.remedies].flatMap(({ window }) => (window ? [window] : []));

describe("the answer has every key of the contract", () => {
  test("at the top, as found, in every remedy, window and refusal", () => {
    has(document, stays.document);
    has(document.asFound, stays.asFound);
    for (const remedy of document.remedies) has(remedy, stays.remedy);
    for (const window of windows) has(window, stays.window);
    const refusals = document.remedies.flatMap(({ refused }) => (refused ? [refused] : []));
    for (const refused of refusals) has(refused, stays.refused);
    for (const row of document.measureNext) has(row, stays.measureNext);
    for (const row of document.assumed) has(row, stays.assumed);
    for (const row of document.working) has(row, stays.working);
    for (const row of document.ranking) has(row, stays.ranking);
    expect(windows.length).toBeGreaterThan(4);
    expect(document.assumed.length).toBeGreaterThan(4);
    expect(document.working.length).toBeGreaterThan(10);
  });

  test("the case is echoed as it was given, and so are all ranges and levels", () => {
    expect(document.case).toEqual(changedCase(changes));
    expect(document.levels).toEqual(levelsWith({}));
    expect(Object.keys(document.ranges)).toEqual(Object.keys(referenceRanges));
    const { distribution } = referenceRanges["friction oiled"];
    expect(document.ranges["friction oiled"]).toMatchObject({ ...writtenRange(distribution), unit: "" });
  });

  test("every remedy of the contract is weighed", () => {
    expect(document.remedies.map(({ id }) => id)).toEqual([
      "lower torque",
      "longer plug",
      "longer plug, bonded seal",
      "other seal: bonded seal",
      "other seal: O-ring",
      "other seal: crush ring",
      "other seal: aluminium",
      "other seal: copper",
      "sealant, no washer",
      "new plug",
      "first thread cleaned",
      "self-cutting plug",
      "next size",
      "wire coil",
      "solid bushing",
      "bonded bush",
      "cast thread",
      "expanding bung",
      "closed for good",
      "welded and re-cut",
      "adaptor plate",
      "stud and nut",
      "new part",
      "left and watched",
    ]);
  });

  test("it is JSON as it stands: nothing is lost in writing it down", () => {
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
  });
});

describe("odds", () => {
  const torques = ({ strips }: WindowDocument): number[] => strips.map(({ torque_Nm }) => torque_Nm);

  test("stand at the torques asked for as well as at a fixed ladder, upwards, in every window", () => {
    const ladder = documentOf(changes).asFound.window;
    for (const window of windows) {
      expect(torques(window)).toEqual(torques(window).toSorted((a, b) => a - b));
      expect(torques(window)).toEqual(expect.arrayContaining([7, 46.5, ...(ladder ? torques(ladder) : [])]));
      expect(window.closes.map(({ torque_Nm }) => torque_Nm)).toEqual(torques(window));
    }
  });

  test("are probabilities, and never fall with the torque", () => {
    for (const { strips, closes } of windows)
      for (const rows of [strips, closes])
        rows.forEach(({ probability }, i) => {
          expect(probability).toBeGreaterThanOrEqual(rows[i - 1]?.probability ?? 0);
          expect(probability).toBeLessThanOrEqual(1);
        });
  });

  test("agree with the edges: 1 in 100 at the limit or half the median, 95 of 100 closed at the need", () => {
    const edges = documentOf(changes).asFound.window;
    const { strips, closes } = documentOf(changes, [edges?.limit_Nm ?? 0, edges?.need_Nm ?? 0]).asFound.window ?? {};
    const at = (rows: typeof strips, torque_Nm = 0) => rows?.find((it) => it.torque_Nm === torque_Nm)?.probability;
    expect(at(strips, edges?.limit_Nm)).toBeCloseTo(0.01, 5);
    expect(at(closes, edges?.need_Nm)).toBeCloseTo(0.95, 5);
  });

  test("half the median is the limit where it is the lower", () => {
    const { asFound } = documentOf({ ranges: { "strip model": { value: 0.85 } }, left: { height: "1", turns: "6" } });
    expect(asFound.window?.limit_Nm).toBeCloseTo((asFound.window?.medianStrip_Nm ?? 0) / 2, 6);
  });
});

describe("a window", () => {
  test("open, narrow and empty are what need, floor and limit say", () => {
    const more = [documentOf({ seal: { material: "aluminium" } }), documentOf({ left: { turns: "7" } })];
    const all = [...windows, ...more.flatMap(({ asFound, remedies }) => [asFound, ...remedies].map((it) => it.window))];
    const kinds = new Set<string>();
    for (const window of all) {
      if (!window) continue;
      const least = Math.max(window.need_Nm, window.floor_Nm ?? 0);
      expect(window.open).toBe(window.limit_Nm >= least);
      expect(window.narrow).toBe(window.open && window.limit_Nm < 1.3 * least);
      if (!window.open) expect(window.advice_Nm).toBeNull();
      kinds.add(window.open ? (window.narrow ? "narrow" : "open") : "empty");
    }
    expect(kinds).toEqual(new Set(["open", "narrow", "empty"]));
  });

  test("the floor against vibration goes by the thread, and a curing sealant needs none", () => {
    const floor = (thread: string) => {
      const seal = { outside: undefined, inside: undefined };
      return documentOf({ thread, seal, plug: undefined, left: { turns: "6" } }).asFound.window?.floor_Nm;
    };
    expect(["M10x1", "M12x1.5", "M14x1.5", "M16x1.5", "M24x1.5"].map(floor)).toEqual([3, 6, 6, 10, 10]);
    const sealant = document.remedies.find(({ id }) => id === "sealant, no washer");
    expect(sealant?.window?.floor_Nm).toBeNull();
  });

  test("an empty one says what would open it", () => {
    expect(documentOf({ seal: { material: "aluminium" } }).asFound.because.join(" ")).toContain(
      "another seal, a longer plug, a new thread in the hole or a better count",
    );
  });
});
