import { describe, expect, test } from "vitest";
import { type Fact, factSchema } from "../../../src/journal/facts/fact.ts";
import { gates } from "../../../src/journal/job/gates.ts";
import { methodOf, remedyIds } from "../../../src/mechanics/remedies/method.ts";
import { methodEstimates } from "../../../src/mechanics/tables/methodEstimates.ts";
import { readAct } from "../../../src/sheets/journal/act.ts";
import { actNamed, actOf, offered } from "../../../src/sheets/journal/acts.ts";
import { isAsked, isMakeDo } from "../../../src/sheets/journal/asked.ts";
import { type ActName, actTitles } from "../../../src/sheets/words/actWords.ts";
import { aroundJob } from "./aroundJob.ts";

const port = "chipper-drain";
const about = { type: "port", port } as const;
const at = (...facts: readonly object[]) => aroundJob(about, facts);

/** A port that was weighed: one way open with its price, one refused for good, one refused unless somebody takes it on himself. */
const option = (id: string, refused: object | null, price?: object) => ({
  id,
  window: null,
  refused,
  lasting: id !== "sealant, no washer",
  ...(price ? { price } : {}),
});
const weighed = {
  type: "OptionsWeighed",
  port,
  engine: "test",
  case: {},
  asFound: null,
  options: [
    option("wire coil", null, { low: 120, high: 160 }),
    option("sealant, no washer", { rule: "4 reach", override: "never" }),
    option("new plug", null),
  ],
  working: [],
  ranges: {},
  levels: {},
};

function facts(act: ActName, texts: Readonly<Record<string, string>>, around = at()): readonly Fact[] {
  const read = readAct(actNamed(act), texts, around);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  for (const fact of read.facts) factSchema.parse(fact);
  return read.facts;
}
const problems = (act: ActName, texts: Readonly<Record<string, string>>, around = at()): readonly string[] => {
  const read = readAct(actNamed(act), texts, around);
  return read.ok ? [] : read.problems.map(({ field }) => field);
};
const asked = (act: ActName, texts: Readonly<Record<string, string>>, around = at()): readonly string[] => {
  const { fields } = actNamed(act).form(around);
  return Object.keys(fields).filter((it) => isAsked(it, fields, (name) => texts[name] ?? "", "jory"));
};

describe("ways that are offered", () => {
  test("are those that were weighed and not refused, with the price of the day where none is typed", () => {
    expect(actNamed("offered").form(at(weighed)).fields["way1"]).toMatchObject({ choices: ["wire coil", "new plug"] });
    expect(actNamed("offered").form(at()).fields["way1"]).toMatchObject({ choices: remedyIds });
    expect(
      facts(
        "offered",
        { way1: "wire coil", way2: "new plug", low2: "15", ready2: "today", recommended: "first" },
        at(weighed),
      ),
    ).toEqual([
      {
        type: "OptionsOffered",
        port,
        rows: [
          {
            id: "wire coil",
            inHisWords: "A thread of steel in your housing, made to be opened often.",
            price: { low: 120, high: 160 },
          },
          {
            id: "new plug",
            inHisWords: "The bolt was worn, the housing is fine.",
            price: { low: 15, high: 15 },
            ready: "today",
          },
        ],
        recommended: "wire coil",
      },
    ]);
  });

  test("a second is asked for once there is a first; none twice, none that ends below where it begins", () => {
    expect(asked("offered", {})).toEqual(["way1"]);
    expect(asked("offered", { way1: "new plug" })).toEqual(["way1", "low1", "high1", "ready1", "told1", "way2"]);
    expect(problems("offered", {})).toEqual(["way1"]);
    expect(problems("offered", { way1: "new plug", way2: "new plug" })).toEqual(["ready2"]);
    expect(problems("offered", { way1: "new plug", low1: "90", high1: "70" })).toEqual(["high1"]);
    expect(problems("offered", { way1: "new plug", way2: "wire coil", recommended: "third" })).toEqual(["way3"]);
  });
});

test("what an answer led on to is not written once the answer is another", () => {
  const [offer] = facts("offered", { way1: "new plug", way3: "wire coil", low3: "90" });
  expect(offer).toMatchObject({ rows: [{ id: "new plug" }] });
  const gaps = { reading: "length over gaps", value: "12", over: "8", how: "rule" };
  expect(facts("measured", gaps)).toMatchObject([{ over: 8 }]);
  expect("over" in (facts("measured", { ...gaps, reading: "plug.underHead" })[0] ?? {})).toBe(false);
  const put = { decision: "put off", option: "wire coil", upTo: "x", said: "later", by: "message" };
  expect(facts("decided", put)).toMatchObject([{ decision: { is: "put off" } }]);
});

describe("what the owner decided", () => {
  const said = { said: "yes, do it", by: "telephone" };
  const offer = { type: "OptionsOffered", port, rows: [{ id: "wire coil", inHisWords: "x" }] };

  test.each([
    [
      { decision: "chosen", option: "wire coil" },
      { is: "chosen", option: "wire coil" },
    ],
    [
      { decision: "refused", option: "wire coil", instead: "new plug" },
      { is: "refused", option: "wire coil", instead: "new plug" },
    ],
    [
      { decision: "put off", putOffUntil: "2026-12-02" },
      { is: "put off", until: "2026-12-02" },
    ],
    [{ decision: "put off" }, { is: "put off" }],
    [
      { decision: "left to the workshop", upTo: "200" },
      { is: "left to the workshop", upTo: 200, notBeyond: [] },
    ],
  ])("%j", (texts, decision) => {
    expect(facts("decided", { ...texts, ...said })).toEqual([
      { type: "OwnerDecided", port, decision, words: "yes, do it", by: "telephone" },
    ]);
  });

  test("is chosen of what was offered, and asks what its kind of answer wants and no more", () => {
    expect(actNamed("decided").form(at(offer)).fields["option"]).toMatchObject({ choices: ["wire coil"] });
    expect(asked("decided", { decision: "chosen" })).toEqual(["decision", "option", "said", "by"]);
    expect(asked("decided", { decision: "left to the workshop" })).toEqual([
      "decision",
      "upTo",
      "notBeyond",
      "said",
      "by",
    ]);
    expect(problems("decided", { decision: "left to the workshop", ...said })).toEqual(["upTo"]);
    expect(problems("decided", {})).toEqual(["decision", "said", "by"]);
  });
});

describe("a repair that was made", () => {
  test("stands on what was decided, and says what went in, and where the chips went", () => {
    const decided = {
      type: "OwnerDecided",
      port,
      decision: { is: "refused", option: "solid bushing", instead: "wire coil" },
      words: "too dear",
      by: "telephone",
    };
    const form = actNamed("repaired").form(at(decided));
    expect(form.given).toEqual({ method: "wire coil" });
    const texts = {
      ...form.given,
      lasts: "to last",
      chips: "flushed out",
      plug: "the same plug",
      seal: "flat washer",
      material: "copper",
      wallLeft: "3,6",
    };
    expect(facts("repaired", texts)).toEqual([
      {
        type: "RepairMade",
        port,
        method: "wire coil",
        lasting: true,
        chips: { caught: true, how: "flushed out" },
        wallLeft: "3,6 mm",
        leaves: { plug: "the same plug", seal: "flat washer", material: "copper" },
      },
    ]);
  });

  test("a make-do is one whatever is said, and has its day; nothing lasting asks for one", () => {
    expect(asked("repaired", { method: "sealant, no washer" })).toContain("until");
    expect(asked("repaired", { method: "sealant, no washer" })).not.toContain("lasts");
    expect(asked("repaired", { method: "wire coil" })).not.toContain("until");
    expect(asked("repaired", { method: "wire coil", lasts: "make-do" })).toContain("until");
    expect(problems("repaired", { method: "sealant, no washer", lasts: "to last", chips: "none made" })).toEqual([
      "until",
    ]);
    const [made] = facts("repaired", {
      method: "expanding bung",
      lasts: "to last",
      until: "2026-12-09",
      chips: "none made",
    });
    expect(made).toMatchObject({ lasting: false, until: "2026-12-09" });
    expect(problems("repaired", { method: "wire coil", chips: "none made", plug: "a new plug" })).toEqual([
      "lasts",
      "seal",
    ]);
  });

  test("what was refused when it was weighed is shut by its gate", () => {
    const around = at(weighed);
    expect(actNamed("repaired").form(around).fields["method"]).toMatchObject({ choices: ["wire coil", "new plug"] });
    const [made] = facts("repaired", { method: "sealant, no washer", until: "2026-12-09", chips: "none made" }, around);
    expect(gates(around.sheet, made as Fact, { by: "jory" as never, at: around.now })).toMatchObject([
      { gate: "method refused", override: "never" },
    ]);
  });
});

describe("a tag", () => {
  const known = [
    { type: "ThreadNamed", port, thread: "M20x1.5", how: "caliper" },
    {
      type: "PortTorqued",
      port,
      set: "43 N·m",
      wrench: null,
      clicked: true,
      checkedAgain: false,
      pulledBy: "jory",
      fitted: { plug: "longer plug", seal: "bonded seal" },
    },
  ];

  test("begins with what is known, in letters that every printer has", () => {
    const { given } = actNamed("tagged").form(at(...known));
    expect(given).toEqual({
      line1: "REPAIRED PORT - READ",
      line2: "M20x1.5, longer plug",
      line3: "SET 43 Nm, bonded seal",
      line4: "0412",
    });
    expect(facts("tagged", given, at(...known))).toEqual([{ type: "PortTagged", port, lines: Object.values(given) }]);
  });

  test("a line that is too long, or cannot be read everywhere, is named", () => {
    expect(problems("tagged", { line1: "x".repeat(29), line2: "43 N·m" })).toEqual(["line1", "line2"]);
    expect(problems("tagged", {})).toEqual(["line1"]);
  });
});

test("made dry, and a word for the next hand", () => {
  expect(facts("prepared", { dry: "yes", degreased: "no", levelBelow: "12" })).toEqual([
    { type: "PortPrepared", port, dry: true, degreased: false, levelBelow: "12 mm" },
  ]);
  expect(facts("warned", { warning: "keep this plug" })).toEqual([
    { type: "NextHandWarned", port, words: "keep this plug" },
  ]);
});

test("what these forms write can be put right by them: it reads back as the very fact that it was", () => {
  const written = [
    ...facts("offered", {
      way1: "wire coil",
      low1: "80",
      high1: "110",
      ready1: "tomorrow",
      told1: "steel in your housing",
      way2: "new plug",
      recommended: "first",
    }),
    ...facts("decided", { decision: "put off", putOffUntil: "2026-12-02", said: "later", by: "message" }),
    ...facts("repaired", {
      method: "cast thread",
      until: "2026-12-09",
      chips: "not all caught",
      plug: "a new plug",
      seal: "none",
    }),
    ...facts("tagged", { line1: "READ", line2: "SET 8 Nm" }),
    ...facts("prepared", { dry: "yes", degreased: "yes", words: "twice" }),
    ...facts("warned", { warning: "no thick washer", plate: "on the case" }),
  ];
  for (const fact of written) {
    const found = actOf(fact);
    expect(found, fact.type).not.toBe(null);
    expect(facts(found?.act as ActName, found?.texts ?? {}), fact.type).toEqual([fact]);
  }
});

test("everything that can be written has its tap, once", () => {
  const places = [
    ["port", "out"],
    ["unit", "drained"],
    ["machine", null],
    ["workshop", null],
  ] as const;
  const taps = places.flatMap(([about, state]) => {
    const { first, more } = offered(about, state);
    return [...first, ...more.flatMap(({ acts }) => acts)];
  });
  // What is found belongs to a port and to the machine.
  expect(taps.filter((it, i) => taps.indexOf(it) !== i)).toEqual(["found"]);
  expect([...new Set(taps)].sort()).toEqual(Object.keys(actTitles).sort());
});

test.each(remedyIds)("%s never lasts where its estimate ends on a day, and only there", (id) => {
  const { until_days } = methodEstimates[id === "lower torque" ? id : methodOf[id]];
  expect(isMakeDo(id)).toBe(until_days !== null);
});
