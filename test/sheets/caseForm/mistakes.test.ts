import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCase } from "../../../src/sheets/caseForm/caseDocument.ts";
import { problemLine } from "../../../src/sheets/words/problemWords.ts";
import { type Changes, changedCase } from "../../mechanics/remedies/changedCase.ts";

/** The first mistake that is told, as one line; none where the case reads. */
function mistake(changes: Changes): string {
  const read = readCase(changedCase(changes), null);
  return read.ok ? "" : problemLine(read.problems[0]);
}

type Mistake = readonly [name: string, changes: Changes, line: RegExp];
const wrench = { name: "W", least: "5 N·m", most: "25 N·m" };
const book = (torque: unknown) => ({ bookFigures: [{ torque, source: "sheet" }] });

const oRing = { kind: "O-ring", material: undefined, outside: undefined, inside: undefined, thickness: undefined };

const mistakes: readonly Mistake[] = [
  ["an unknown key names the nearest", { jiont: {} }, /^jiont: given a key that is not known here; accepted: "joint"$/],
  ["within a group", { left: { trns: "3" } }, /^left\.trns: .*; accepted: "turns"$/],
  ["within a list", { wrenches: [{ ...wrench, lest: "1 N·m" }] }, /^wrenches\[0\]\.lest: .*; accepted: "least"$/],
  [
    "within a quantity",
    { case: { threadDepth: { value: "16 mm", haw: "rule" } } },
    /^case\.threadDepth\.haw: .*"how"$/,
  ],
  ["nothing near: all that are known", { plug: { zzzzzzzzzzzz: 1 } }, /accepted: "propertyClass", "tolerance", /],
  ["a range", { ranges: { "strengh A380": { value: 200 } } }, /^ranges\.strengh A380: .*; accepted: "strength A380"$/],
  ["a level", { levels: { stripOds: 0.01 } }, /^levels\.stripOds: .*; accepted: "stripOdds"$/],
  ["a method of one's own figures", { estimates: { "longer plg": {} } }, /^estimates\.longer plg: .*"longer plug"$/],
  [
    "a share above 1",
    { estimates: { "wire coil": { comesBack: { low: 0, high: 2 } } } },
    /^estimates\.wire coil\.comesBack: .*shares from 0 to 1$/,
  ],
  ["a span out of order", { shop: { comeback: { low: 9, high: 5 } } }, /^shop\.comeback: .*in this order$/],
  ["a rate below nothing", { shop: { rate: -1 } }, /^shop\.rate: given -1; accepted: a number from 0$/],
  ["a humidity that is none", { air: { humidity: "130 %" } }, /^air\.humidity: given "130 %"; accepted: a share up to/],
  ["no joint", { joint: undefined }, /^joint: given nothing; accepted: \{ "kind"/],
  ["no kind of joint", { joint: { kind: undefined } }, /^joint\.kind: given nothing; accepted: "engine sump", /],
  [
    "no thread",
    { thread: undefined },
    /^thread: given nothing; accepted: a thread such as "M20x1\.5", or what was measured of it: /,
  ],
  ["no material", { case: { material: undefined } }, /^case\.material: given nothing; accepted: "EN AC-46000"/],
  ["no count at all", { left: undefined }, /^left: given nothing; accepted: \{ "turns"/],
  ["an unknown material", { case: { material: "cheese" } }, /^case\.material: given "cheese"; accepted: .*"A380"/],
  ["an unknown pitch", { thread: "M20x1.7" }, /^thread: given "M20x1\.7"; accepted: a pitch of M20: 2\.5, 2, 1\.5/],
  [
    "no thread we know",
    { thread: "Tr 20x4" },
    /^thread: given "Tr 20x4"; accepted: a metric thread such as M20x1\.5, or "1\/2-20 UNF", "G 1\/2"/,
  ],
  ["no size of pipe", { thread: "G 5/16" }, /^thread: given "G 5\/16"; accepted: G 1\/16, .*1\/2/],
  ["a metric class on a pipe thread", { thread: "G 1/2", plug: { tolerance: "6g" } }, /^plug\.tolerance: .*: A or B$/],
  [
    "a class that a hole of pipe thread does not have",
    { thread: "G 1/2", case: { tolerance: "6H" } },
    /^case\.tolerance: given "6H"; accepted: none: G 1\/2 has one class only$/,
  ],
  [
    "a metric class on a unified thread",
    { thread: "3/4-16 UNF", plug: { tolerance: "6g" } },
    /^plug\.tolerance: .*3A$/,
  ],
  [
    "a washer under a taper plug",
    { thread: "1/2-14 NPT", seal: { kind: "flat washer" } },
    /^seal\.kind: given "flat washer"; accepted: "taper" or left out: 1\/2-14 NPT seals on its own thread/,
  ],
  [
    "an unknown class of plug",
    { plug: { tolerance: "6z" } },
    /^plug\.tolerance: given "6z"; accepted: pitch grade 3 4/,
  ],
  ["a hole's class on a plug", { plug: { tolerance: "6H" } }, /^plug\.tolerance: given "6H"/],
  ["an unknown class of hole", { case: { tolerance: "6g" } }, /^case\.tolerance: given "6g"/],
  [
    "an unknown strength class",
    { plug: { propertyClass: "7.7" } },
    /^plug\.propertyClass: given "7\.7"; accepted: "4\.6"/,
  ],
  [
    "a bare length",
    { case: { threadDepth: "16" } },
    /^case\.threadDepth: given "16"; accepted: a number with its unit, as/,
  ],
  ["a bare number", { seal: { outside: 26 } }, /^seal\.outside: given 26; accepted: a number with its unit/],
  ["a bare torque", book("46"), /^bookFigures\[0\]\.torque: given "46"; accepted: a number with its unit, as "46 N·m"/],
  ["a length in newton metres", { plug: { underHead: "13 N·m" } }, /^plug\.underHead: given "13 N·m"; accepted: mm, /],
  ["turns in millimetres", { left: { turns: "3 mm" } }, /^left\.turns: given "3 mm"; accepted: turns, as "3\.5"/],
  ["turns in words", { left: { turns: "three" } }, /^left\.turns: given "three"; accepted: a number, as "3\.5"$/],
  ["a torque in kgm", book("4.7 kgm"), /^bookFigures\[0\]\.torque: given "4\.7 kgm"; accepted: .*kgf·m/],
  [
    "two separators",
    { plug: { underHead: "1,013.5 mm" } },
    /^plug\.underHead: .*one decimal mark and no group separators/,
  ],
  [
    "a fraction of a millimetre",
    { plug: { underHead: "1/2 mm" } },
    /^plug\.underHead: .*fractions are read for inches/,
  ],
  ["a pressure in words", { asked: { pressure: "some" } }, /^asked\.pressure: given "some"; accepted: .*"1\.2 bar"/],
  [
    "a negative length",
    { case: { threadDepth: "-16 mm" } },
    /^case\.threadDepth: given "-16 mm"; accepted: nothing below/,
  ],
  ["a negative count", { left: { turns: "-3" } }, /^left\.turns: given "-3"; accepted: nothing below zero/],
  ["a negative torque", book("-46 N·m"), /^bookFigures\[0\]\.torque: given "-46 N·m"; accepted: nothing below zero/],
  ["a torque of nothing", book("0 N·m"), /^bookFigures\[0\]\.torque: given 0 N·m; accepted: more than nothing/],
  [
    "low above likely",
    { case: { threadDepth: { low: "12 mm", likely: "11 mm", high: "13 mm" } } },
    /^case\.threadDepth: given \{"low":"12 mm".*; accepted: low, likely and high in this order$/,
  ],
  [
    "likely above high, in two units",
    { case: { threadDepth: { low: "1 mm", likely: "2 cm", high: "13 mm" } } },
    /low, likely and high in this order/,
  ],
  [
    "a bare end of a range",
    { left: { goodTo: { low: "1 mm", likely: "2", high: "3 mm" } } },
    /^left\.goodTo\.likely: given "2"/,
  ],
  [
    "how nobody knows",
    { plug: { underHead: { value: "13 mm", how: "guess" } } },
    /^plug\.underHead\.how: .*; accepted: caliper, /,
  ],
  ["a month too many", { today: "2026-13-01" }, /^today: given "2026-13-01"; accepted: a day as "2026-11-25"$/],
  ["a day that the month has not", { today: "2026-02-30" }, /^today: given "2026-02-30"/],
  ["a day in another order", { today: "25.11.2026" }, /^today: given "25\.11\.2026"/],
  ["a bad day of calibration", { wrenches: [{ ...wrench, calibrated: "2026-06-31" }] }, /^wrenches\[0\]\.calibrated: /],
  ["a wrench from more to less", { wrenches: [{ ...wrench, least: "30 N·m" }] }, /^wrenches\[0\]\.most: given 25 N·m/],
  [
    "a wrench without steps",
    { wrenches: [{ ...wrench, step: "0 N·m" }] },
    /^wrenches\[0\]\.step: given 0 N·m; accepted: more/,
  ],
  [
    "a ring wider inside than outside",
    { seal: { inside: "27 mm" } },
    /^seal\.inside: given 27 mm; accepted: less than the/,
  ],
  [
    "a ring narrower than the usual hole in it",
    { seal: { inside: undefined, outside: "19 mm" } },
    /^seal\.outside: given 19 mm; accepted: more than the inside, 20 mm$/,
  ],
  [
    "a chamfer above the face",
    { seal: { ...oRing, chamfer: "-3 mm" } },
    /^seal\.chamfer: given "-3 mm"; accepted: nothing below zero/,
  ],
  [
    "no chamfer at all",
    { seal: { ...oRing, chamfer: "0 mm" } },
    /^seal\.chamfer: given 0 mm; accepted: more than nothing/,
  ],
  [
    "a chamfer deeper than the hole",
    { plug: { underHead: "20 mm" }, seal: { ...oRing, chamfer: "16 mm" } },
    /^seal\.chamfer: given 16 mm; accepted: more than nothing and less than the thread is deep/,
  ],
  [
    "a chamfer below the good thread",
    { left: { goodTo: "5 mm" }, seal: { ...oRing, chamfer: "6 mm" } },
    /^seal\.chamfer: .*less than the thread is deep/,
  ],
  [
    "a chamfer that the plug does not reach through",
    { seal: { ...oRing, chamfer: "13.5 mm" } },
    /^seal\.chamfer: .*less than the thread is deep/,
  ],
  [
    "a chamfer deeper than its hole is wide, where nobody measured how deep that is",
    { case: { threadDepth: undefined }, plug: { underHead: undefined }, seal: { ...oRing, chamfer: "1 in" } },
    /^seal\.chamfer: given 1 in; accepted: more than nothing and less than the thread is deep/,
  ],
  [
    "a chamfer under a washer",
    { seal: { chamfer: "3 mm" } },
    /^seal\.chamfer: .*for an O-ring whose head and face meet$/,
  ],
  [
    "a chamfer for a ring between two faces",
    { seal: { ...oRing, thickness: "2 mm", chamfer: "3 mm" } },
    /^seal\.chamfer: .*for an O-ring whose head and face meet$/,
  ],
  [
    "a head narrower than its thread",
    { plug: { headDiameter: "19 mm" } },
    /^plug\.headDiameter: .*more than the thread, 20 mm/,
  ],
  [
    "good thread that ends before it begins",
    { left: { goodFrom: "9 mm", goodTo: "5 mm" } },
    /^left\.goodTo: .*deeper than/,
  ],
  ["more height than there is", { left: { height: "1.2" } }, /^left\.height: .*a share from 0 to 1/],
  ["no turns in the sound hole", { healthyTurns: "0" }, /^healthyTurns: given 0.*; accepted: more than no turns/],
  [
    "reached, not as a list",
    { asked: { reaches: "tyre" } },
    /^asked\.reaches: given "tyre"; accepted: a list of tyre, brake/,
  ],
  ["reached by another name", { asked: { reaches: ["tire"] } }, /^asked\.reaches\[0\]: given "tire"; accepted: "tyre"/],
  [
    "repaired, by nobody knows what",
    { asked: { repairedBefore: "yes" } },
    /^asked\.repairedBefore: .*"no", or \{ "method"/,
  ],
  [
    "an override of no rule",
    { asked: { overrides: [{ rule: "7 to litle", by: "M", reason: "r" }] } },
    /"7 too little"$/,
  ],
  [
    "an override without a name",
    { asked: { overrides: [{ rule: "7" }] } },
    /^asked\.overrides\[0\]\.by: given nothing/,
  ],
];

describe("a mistake names the field, what was given and what is accepted, on one line", () => {
  test.each(mistakes)("%s", (_, changes, line) => {
    expect(mistake(changes)).toMatch(line);
    expect(mistake(changes)).toMatch(/^\S.*: given .+; accepted: .+$/);
    expect(mistake(changes)).not.toContain("\n");
  });

  test("all mistakes are told, not only the first", () => {
    const read = readCase(changedCase({ thread: "M21", plug: { underHead: "13" }, today: "soon" }), null);
    expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual(["thread", "plug.underHead", "today"]);
  });

  test.each([null, 7, "text", [], true])("%j is not a case", (document) => {
    const read = readCase(document, null);
    expect(read.ok ? "" : problemLine(read.problems[0])).toMatch(/^case: given .*; accepted: a case: one JSON object$/);
  });
});

test("whatever is put in place of a field, reading never throws: it is read or told", () => {
  const fields = [
    "thread",
    "today",
    "surface",
    "healthyTurns",
    "bookFigures",
    "wrenches",
    "ranges",
    "levels",
    "prevailing",
  ];
  const groups = ["joint", "asked", "case", "plug", "seal", "left"];
  fc.assert(
    fc.property(fc.constantFrom(...fields, ...groups), fc.jsonValue(), (field, value) => {
      const read = readCase({ ...changedCase({}), [field]: value }, null);
      if (!read.ok) expect(problemLine(read.problems[0])).toMatch(/: given .+; accepted: ./s);
    }),
    { numRuns: 400 },
  );
});
