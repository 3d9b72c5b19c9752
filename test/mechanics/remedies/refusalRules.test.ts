import { describe, expect, test } from "vitest";
import type { Refusal } from "../../../src/mechanics/remedies/refusalRules.ts";
import { allowedInstead } from "../../../src/sheets/words/insteadWords.ts";
import { refusalSentence } from "../../../src/sheets/words/refusalWords.ts";
import { type Changes, remedy, weighed } from "./changedCase.ts";

/** The refusal of the port as found. */
function refusal(changes: Changes): Refusal {
  const { refused } = weighed(changes).asFound;
  if (!refused) throw new Error("not refused");
  return refused;
}

const sealed = { seal: { kind: "sealant, metal to metal", material: undefined, thickness: undefined } };
const outboard = { joint: { kind: "outboard lower unit" }, left: { turns: "6" } };

type Case = readonly [
  claim: string,
  changes: Changes,
  rule: string,
  override: string,
  sentence: RegExp,
  instead: RegExp,
];

/** The list of refusals, as far as a case can trigger it. */
const cases: readonly Case[] = [
  [
    "brakes, steering, suspension, wheels and restraints",
    { joint: { kind: "brake, steering, suspension, wheel or restraint" } },
    "1 structure",
    "never",
    /maker's repair only/,
    /maker's procedure/,
  ],
  ["clamp bolts", { joint: { kind: "clamp bolt in a casting" } }, "1 structure", "never", /clamp bolts/, /new part/],
  ["pressure ports", { joint: { kind: "pressure port" } }, "2 pressure", "never", /working pressure/, /rated/],
  ["a pressure given", { asked: { pressure: "1.2 bar" } }, "2 pressure", "never", /working pressure/, /rated/],
  [
    "the water side of an engine by sealant alone",
    { joint: { kind: "coolant drain" }, ...sealed, left: { turns: "6" } },
    "2 pressure",
    "never",
    /not closed by sealant alone/,
    /another seal, with a pressure test/,
  ],
  ["spark plugs", { joint: { kind: "spark plug" } }, "3 combustion", "never", /Combustion/, /bushing/],
  ["motorcycle sumps", { joint: { kind: "motorcycle sump" } }, "4 reach", "never", /rear tyre/, /lockwire/],
  ["oil on a tyre", { asked: { reaches: ["tyre"] } }, "4 reach", "never", /can reach a tyre/, /bushing/],
  ["oil on a brake", { asked: { reaches: ["brake"] } }, "4 reach", "never", /can reach a brake/, /bushing/],
  ["oil on an exhaust", { asked: { reaches: ["exhaust"] } }, "4 reach", "never", /can reach an exhaust/, /bushing/],
  ["oil on a belt", { asked: { reaches: ["water", "belt"] } }, "4 reach", "never", /can reach a belt/, /bushing/],
  [
    "water on the other side",
    { asked: { reaches: ["water"] } },
    "5 water side",
    "never",
    /Water stands/,
    /vacuum test/,
  ],
  ["lower units", outboard, "5 water side", "never", /Water stands/, /ashore/],
  ["a failed test", { ...outboard, asked: { waterTest: "failed" } }, "5 water side", "never", /passed/, /test first/],
  [
    "a test not done",
    { ...outboard, asked: { waterTest: "not done" } },
    "5 water side",
    "never",
    /passed/,
    /test first/,
  ],
  [
    "a crack or missing metal",
    { asked: { crack: "yes" } },
    "6 crack",
    "never",
    /cracked or metal is missing/,
    /welding/,
  ],
  ["people for hire", { asked: { people: "yes" } }, "10 people", "never", /strand or endanger/, /bushing/],
  ["a kind that is not said", { joint: { kind: "other" } }, "13 not asked", "answer them", /"other"/, /name the kind/],
  ["a blocked breather", { asked: { breather: "blocked" } }, "14 breather", "free it", /blocked/, /free the breather/],
  ["nobody counted", { left: { turns: undefined } }, "7 too little", "never", /counted the turns/, /paint dot/],
  ["slides over", { left: { catch: "slides over" } }, "7 too little", "never", /slides over/, /bung/],
  ["gone", { left: { condition: "gone" } }, "7 too little", "never", /gone/, /insert/],
  ["height under a quarter", { left: { height: "24 %" } }, "7 too little", "never", /quarter/, /insert/],
  ["under two turns", { left: { turns: "3.3" } }, "7 too little", "name and reason", /^1¾ turns caught/, /longer plug/],
];

describe("refused, with its reason, what is allowed instead, and who may override", () => {
  test.each(cases)("%s", (_, changes, rule, override, sentence, instead) => {
    const refused = refusal(changes);
    expect(refused.rule).toBe(rule);
    expect(refused.override).toBe(override);
    expect(refusalSentence(refused.reason)).toMatch(sentence);
    expect(allowedInstead(refused).join("; ")).toMatch(instead);
  });

  test.each(cases)("%s: the reason is one sentence and names no torque", (_, changes) => {
    const refused = refusal(changes);
    const words = [refusalSentence(refused.reason), ...allowedInstead(refused)];
    expect(words[0]).toMatch(/^[^.?!]+[.?!]$/);
    expect(words.length).toBeGreaterThan(1);
    expect(words.join()).not.toMatch(/N·m|lbf/);
  });
});

describe("a question that nobody answered is not a no", () => {
  const questions = ["crack", "pressure", "reaches", "people", "repairedBefore", "breather"] as const;
  test.each(questions)("%s", (question) => {
    const refused = refusal({ asked: { [question]: undefined } });
    expect(refused.rule).toBe("13 not asked");
    expect(refused.reason).toEqual({ type: "question open", question });
    expect(refused.override).toBe("answer them");
    expect(refusalSentence(refused.reason)).toMatch(/^Not answered yet: .*\?$/);
    for (const { refused: other } of weighed({ asked: { [question]: undefined } }).remedies)
      expect(other?.reason).toEqual(refused.reason);
  });

  test("they are asked one after the other, in their order", () => {
    const left = [...questions];
    while (left.length > 0) {
      const asked = Object.fromEntries(left.map((it) => [it, undefined]));
      expect(refusal({ asked }).reason).toEqual({ type: "question open", question: left[0] });
      left.shift();
    }
  });
});

describe("what is caught", () => {
  test("a port always under oil needs three turns", () => {
    const underOil = { joint: { kind: "engine sump" }, left: { turns: "4.2" } };
    expect(refusalSentence(refusal(underOil).reason)).toBe(
      "2¾ turns caught; a port always under oil takes at least 3 turns.",
    );
    expect(weighed({ ...underOil, left: { turns: "4.4" } }).asFound.refused).toBeNull();
    expect(weighed({ left: { turns: "4.2" } }).asFound.refused).toBeNull();
  });

  test("a quarter of the height is enough to be weighed", () => {
    expect(weighed({ left: { height: "25 %" } }).asFound.refused).toBeNull();
  });

  test("a ring thicker than the turns leaves none, not fewer than none", () => {
    const { reason } = refusal({ left: { turns: "0.5" } });
    expect(reason).toMatchObject({ type: "too few turns", caught: 0 });
    expect(refusalSentence(reason)).toMatch(/^0 turns caught/);
  });

  test("each closure is refused by its own turns: without the ring there may be enough", () => {
    const found = weighed({ left: { turns: "2.5" } });
    expect(found.asFound.refused?.rule).toBe("7 too little");
    expect(remedy(found, "other seal: copper").refused?.rule).toBe("7 too little");
    expect(remedy(found, "sealant, no washer").refused).toBeNull();
    expect(remedy(found, "longer plug").refused).toBeNull();
  });
});

describe("the order of the rules", () => {
  const everything = {
    joint: { kind: "motorcycle sump" },
    asked: {
      pressure: "1 bar",
      reaches: ["water", "tyre"],
      crack: "yes",
      people: "yes",
      breather: "blocked",
      repairedBefore: { method: "lower torque" },
    },
    left: { turns: "1.5" },
  };
  const next: readonly (readonly [rule: string, settled: Changes])[] = [
    ["2 pressure", {}],
    ["4 reach", { asked: { ...everything.asked, pressure: "none" } }],
    [
      "5 water side",
      { joint: { kind: "gear case level" }, asked: { ...everything.asked, pressure: "none", reaches: ["water"] } },
    ],
    ["6 crack", { joint: { kind: "gear case level" }, asked: { ...everything.asked, pressure: "0 bar", reaches: [] } }],
  ];
  test.each(next)("%s comes next", (rule, settled) => {
    expect(refusal({ ...everything, ...settled }).rule).toBe(rule);
  });

  test("people, the questions, the breather, the turns and the method come after, in this order", () => {
    const asked = { people: "yes", breather: "blocked", repairedBefore: undefined as unknown };
    const left = { turns: "1.5" };
    expect(refusal({ asked, left }).rule).toBe("10 people");
    expect(refusal({ asked: { ...asked, people: "no" }, left }).rule).toBe("13 not asked");
    const before = { ...asked, people: "no", repairedBefore: { method: "lower torque" } };
    expect(refusal({ asked: before, left }).rule).toBe("14 breather");
    expect(refusal({ asked: { ...before, breather: "free" }, left }).rule).toBe("7 too little");
    expect(refusal({ asked: { ...before, breather: "free" } }).rule).toBe("8 again");
  });
});
