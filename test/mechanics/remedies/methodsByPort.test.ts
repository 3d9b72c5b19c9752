import { describe, expect, test } from "vitest";
import type { RemedyId } from "../../../src/mechanics/remedies/method.ts";
import type { Weighed } from "../../../src/mechanics/remedies/weigh.ts";
import { jointKinds } from "../../../src/mechanics/tables/jointKinds.ts";
import { methodNumbers } from "../../../src/mechanics/tables/methodEstimates.ts";
import { portCell } from "../../../src/mechanics/tables/methodsByPort.ts";
import { type Changes, sound, weighed } from "./changedCase.ts";

const ports = [
  "engine sump",
  "motorcycle sump",
  "gear case level",
  "gear case drain",
  "hub reduction",
  "coolant drain",
  "spark plug",
  "outboard lower unit",
  "pressure port",
  "brake, steering, suspension, wheel or restraint",
  "clamp bolt in a casting",
] as const;

// Common practice, no source: f fits, c with conditions, t for a time, x refused, - does not apply. The first row of each
// is the trade's; the second, where there is one, what the list of refusals leaves of it: it comes first, and it lets no
// thread of a clamp bolt be cut but by the maker's procedure.
const table = [
  ["R1", "new plug", "f f f f f f f f f c f", null],
  ["R2", "first thread cleaned", "f f f f f f c f c x c", null],
  ["R3", "longer plug", "f f f f f f x f c x f", "f f f f f f x f c x x"],
  ["R4", "other seal: bonded seal", "f f f f f c x c x x -", "f f f f f c x c x x x"],
  ["R5", "sealant, no washer", "c x c c c x x x x x x", null],
  ["R6", "self-cutting plug", "t x t t x x x x x x x", null],
  ["R7", "next size", "f f f f f f x c c x c", "f f f f f f x c c x x"],
  ["R8", "wire coil", "f c f c f c c c x x f", "f c f c f c c c x x x"],
  ["R9", "solid bushing", "f f f f f f f c c c f", "f f f f f f f c c x x"],
  ["R11", "cast thread", "t x t t x x x x x x x", null],
  ["R12", "expanding bung", "t t t t t t x t x x -", "t t t t t t x t x x x"],
  ["R13", "closed for good", "c c c c x c - x - x -", "c c c c x c x x x x x"],
  ["R14", "welded and re-cut", "c c c c c c c c c x c", "c c c c c c c c c x x"],
  ["R17", "new part", "f f f f f f f f f f f", null],
  // Decided here: a sound thread is resealed anywhere; a bonded bush wants the bench and no pressure; a plate wants a flat
  // and no pressure; a stud closes no opening; only a weep above the level is left.
  ["R0", null, "f f f f f f f f f c -", null],
  ["R10", "bonded bush", "c c c c c c x c x x c", "c c c c c c x c x x x"],
  ["R15", "adaptor plate", "c x c c c c x c x x -", "c x c c c c x c x x x"],
  ["R16", "stud and nut", "- - - - - - - - - x c", "- - - - - - - - - x x"],
  ["R18", "left and watched", "x x c x x x x x x x -", "x x c x x x x x x x x"],
] as const;

const letters = {
  fit: "f",
  "with conditions": "c",
  temporary: "t",
  refused: "x",
  "not applicable": "-",
} as const;

/** A hurt port of which every question is harmlessly answered, tested where it can be, with room to cut. */
const harmless: Changes = {
  asked: { waterTest: "passed", alloyTested: "yes" },
  case: { threadDepth: "26 mm", thinnestWall: "14 mm", roomBehind: "20 mm" },
};

/** What brings each method into question: a hurt thread with enough turns, thin steel, a foreign seal on a sound thread. */
const wanting: Readonly<Partial<Record<RemedyId, Changes>>> = {
  "longer plug": { left: { ...sound, turns: "5" } },
  "other seal: bonded seal": { left: sound, seal: { original: false } },
  "new plug": { left: sound, plug: { original: false } },
  "first thread cleaned": { left: { turns: "7.5", catch: "gritty", condition: "doubtful" } },
  "self-cutting plug": { case: { ...(harmless["case"] as Changes), material: "pressed steel" }, left: { turns: "6" } },
};

const caseOf = (id: RemedyId, kind: string): Changes => ({
  ...harmless,
  left: { turns: "6" },
  ...wanting[id],
  joint: { kind },
});

function found(id: RemedyId, { remedies, repairs }: Weighed) {
  const it = [...remedies, ...repairs].find((one) => one.id === id);
  if (!it) throw new Error(`${id} was not weighed`);
  return it;
}

describe("methods by ports", () => {
  test("every method has a row of every port, and a kind not said has none", () => {
    expect(table.map(([number]) => number).toSorted()).toEqual([...methodNumbers].toSorted());
    for (const number of methodNumbers)
      for (const kind of jointKinds) expect(portCell(number, kind) === null).toBe(kind === "other");
  });

  test("filling is as checking", () => {
    for (const number of methodNumbers)
      expect(portCell(number, "gear case fill")).toBe(portCell(number, "gear case level"));
  });

  describe.each(table)("%s %s", (number, id, trade, underRefusals) => {
    const cells = trade.split(" ");
    const after = (underRefusals ?? trade).split(" ");

    test.each(ports.map((port, i) => [port, cells[i], after[i]] as const))("%s: %s, then %s", (port, as, then) => {
      const cell = portCell(number, port);
      expect(letters[cell?.fit ?? "refused"]).toBe(as);
      if (cell?.fit === "with conditions" || cell?.fit === "temporary")
        expect(cell.conditions.length).toBeGreaterThan(0);
      if (id === null) return;
      const it = found(id, weighed(caseOf(id, port)));
      expect(it.refused !== null).toBe(then === "x");
      if (then !== "x" || as === "x") return;
      expect(["1 structure", "2 pressure", "3 combustion", "5 water side"]).toContain(it.refused?.rule);
    });
  });

  test("what the list forbids is refused by its own rule, before the table", () => {
    const rule = (id: RemedyId, kind: string) => found(id, weighed(caseOf(id, kind))).refused?.rule;
    expect(rule("wire coil", "clamp bolt in a casting")).toBe("1 structure");
    expect(rule("cast thread", "pressure port")).toBe("2 pressure");
    expect(rule("self-cutting plug", "motorcycle sump")).toBe("4 reach");
    expect(rule("wire coil", "pressure port")).toBe("not for this port");
    expect(rule("next size", "spark plug")).toBe("not for this port");
  });

  test("a gear case under working pressure is a pressure port", () => {
    const pressurised = { ...caseOf("wire coil", "gear case level"), asked: { pressure: "3 bar", alloyTested: "yes" } };
    const it = found("wire coil", weighed(pressurised));
    expect(it.refused?.rule).toBe("not for this port");
    expect(found("solid bushing", weighed(pressurised))).toMatchObject({
      refused: null,
      closed: null,
      conditions: ["rated for the pressure"],
    });
  });

  test("light alloy that nobody tested is not welded; iron is asked nothing", () => {
    const asked = { alloyTested: undefined };
    expect(found("welded and re-cut", weighed({ asked })).refused).toMatchObject({
      rule: "9 alloy",
      override: "never",
    });
    expect(found("welded and re-cut", weighed({ asked, case: { material: "EN-GJL-250" } })).refused).toBeNull();
  });

  test("a crack refuses every thread in the metal and leaves welding, a plate and a new part", () => {
    const { repairs, ranking } = weighed({ ...harmless, asked: { crack: "yes", alloyTested: "yes" } });
    const left = repairs.filter(({ refused }) => refused === null).map(({ id }) => id);
    expect(left).toEqual(["welded and re-cut", "adaptor plate", "new part"]);
    expect(ranking.map(({ line }) => line)).toEqual([3, 3, 3]);
  });

  test("where nobody says what joint it is, only a new part is left", () => {
    const { repairs } = weighed({ joint: { kind: "other" } });
    expect(repairs.filter(({ refused }) => refused === null).map(({ id }) => id)).toEqual(["new part"]);
  });

  test("people, tyres and too few turns refuse the make-dos and let a new thread pass", () => {
    for (const changes of [
      { asked: { people: "yes" } },
      { asked: { reaches: ["tyre"] } },
      { left: { turns: "1" } },
      { left: { condition: "gone" } },
    ]) {
      const all = weighed({ ...harmless, ...changes });
      expect(found("cast thread", all).refused).not.toBeNull();
      expect(found("left and watched", all).refused).not.toBeNull();
      expect(found("solid bushing", all).refused).toBeNull();
    }
  });
});
