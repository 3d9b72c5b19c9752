import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(`blend ${line}`));
const text = (line: string): string => turnsleft(typed(`blend ${line}`)).stdout;
const measured = '--has "1.5 L" --has-kv100 15 --add "0.5 L" --add-kv100 8';

/** Exit 2, nothing on standard output, one line: the option, what was given, what is accepted. */
function mistake(line: string): string {
  const { status, stdout, stderr } = turnsleft(typed(line));
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  return stderr.slice("turnsleft: ".length, -1);
}

// Both rules worked apart from this code: Walther (ASTM D7152) 12.663 and 19.180, Refutas 12.669 and 19.186.
describe("worked examples", () => {
  test("a quarter of 8 in 15 mm²/s is 12.67, an 85: one grade down from 90", () => {
    const it = answer(measured);
    expect(it.kv100_mm2s).toBe(Number((12.663).toPrecision(4)));
    agrees(it.crossCheck_mm2s, "12.67");
    agrees(it.share, "0.250");
    expect(it).toMatchObject({ gradeBefore: "SAE 90", gradeAfter: "SAE 85", gradesUp: -1, edition: "2019" });
    expect(text(measured)).toMatch(/^SAE 85, one grade down from SAE 90: 12\.7 mm²\/s at 100 °C \(J306:2019\)\.\n/);
  });

  test("halves of 14.5 and 26 are 19.18, a 110: one grade up", () => {
    const it = answer('--has "600 ml" --has-kv100 14.5 --add "0.6 L" --add-kv100 26 --edition 2005');
    agrees(it.kv100_mm2s, "19.18");
    agrees(it.crossCheck_mm2s, "19.19");
    expect(it).toMatchObject({ gradeBefore: "SAE 90", gradeAfter: "SAE 110", gradesUp: 1, edition: "2005" });
  });
});

test("a little of the same grade changes nothing", () => {
  expect(answer('--has "1.5 L" --has-kv100 15 --add "50 ml" --add-kv100 14').gradesUp).toBe(0);
  expect(text('--has "1.5 L" --has-kv100 15 --add "50 ml" --add-kv100 14')).toMatch(/^Still SAE 90: 15 mm²\/s/);
});

test("an oil below every grade has none, and no count of grades", () => {
  const thin = '--has "1.5 L" --has-kv100 5 --add "50 ml" --add-kv100 5 --edition 2005';
  expect(answer(thin)).toMatchObject({ gradeBefore: null, gradeAfter: null, gradesAfter: [], gradesUp: null });
  expect(text(thin)).toContain("thinner than every gear grade");
});

describe("grades by label", () => {
  const labelled = '--has "1.5 L" --has-label 75W-90 --add "0.5 L" --add-label "SAE 80"';

  // SAE J306:2019: 90 is 13.5 to below 18.5, 80 is 8.5 to below 11.
  test("give a range between the blends of their ends, and no single grade where it spans two", () => {
    const it = answer(labelled);
    const end = (has: number, add: number): number =>
      answer(`--has "1.5 L" --has-kv100 ${has} --add "0.5 L" --add-kv100 ${add}`).kv100_mm2s;
    agrees(it.kv100Range_mm2s[0], end(13.5, 8.5).toPrecision(3));
    agrees(it.kv100Range_mm2s[1], end(18.5, 11).toPrecision(3));
    expect(it).toMatchObject({
      gradeBefore: "SAE 90",
      gradeAfter: null,
      gradesAfter: ["SAE 85", "SAE 90"],
      gradesUp: null,
    });
    expect(text(labelled)).toMatch(/^Somewhere in SAE 85 or SAE 90: 11 to 17 mm²\/s/);
  });

  test("that agree leave the grade as it was", () => {
    expect(answer('--has "1 L" --has-label "SAE 90" --add "0.2 L" --add-label 75W-90')).toMatchObject({
      gradeAfter: "SAE 90",
      gradesUp: 0,
    });
  });

  test("stand beside a viscosity", () => {
    const [least, most] = answer('--has "1.5 L" --has-kv100 15 --add "0.5 L" --add-label "SAE 80"').kv100Range_mm2s;
    expect(least).toBeLessThan(most);
    expect(most).toBeLessThan(15);
  });

  test("of an industrial grade list the index that is supposed", () => {
    const { assumed } = answer('--has "1.5 L" --has-label "ISO VG 220" --base mineral --add "0.5 L" --add-kv100 15');
    expect(assumed).toEqual([
      expect.objectContaining({ reading: "viscosity index of ISO VG 220", value: "95 to 105" }),
    ]);
    expect(answer(labelled).assumed).toEqual([]);
  });
});

test("the keys are there whatever is known, and viscosity is said to be all it speaks of", () => {
  const keys = [
    "share",
    "kv100_mm2s",
    "kv100Range_mm2s",
    "crossCheck_mm2s",
    "gradeBefore",
    "gradeAfter",
    "gradesAfter",
  ];
  const rest = ["gradesUp", "edition", "assumed", "working"];
  expect(Object.keys(answer(measured))).toEqual([...keys, ...rest]);
  expect(answer(measured).kv100Range_mm2s).toBeNull();
  expect(text(measured)).toContain("Viscosity alone");
  expect(text(`${measured} --working`)).toMatch(/ASTM D7152-11[\s\S]*Refutas[^\n]*\n$/);
});

describe("service classes", () => {
  const fluid = (line: string) => documentOf(typed(`fluid ${line}`));
  const said = (line: string): string[] =>
    fluid(line).findings.map(({ level, reason }: { level: string; reason: string }) => `${level}: ${reason}`);

  // API 1560 as quoted; the blocks are judgement on it.
  test.each([
    ["GL-5 --yellow-metal yes --hypoid no --limited-slip no", "blocked", ["block: GL-5 on yellow metal"]],
    [
      "GL-5 --yellow-metal yes --hypoid no --limited-slip no --maker-allows GL-5",
      "look first",
      ["warn: GL-5 on yellow metal, allowed by the maker"],
    ],
    [
      "GL-4 --yellow-metal no --hypoid yes --limited-slip no",
      "blocked",
      ["block: less than GL-5 on a hypoid", "note: class no longer verifiable"],
    ],
    ["GL-5 --yellow-metal no --hypoid yes --limited-slip no", "nothing stands against it", []],
    [
      "GL-4/GL-5 --yellow-metal no --hypoid no --limited-slip no",
      "look first",
      ["warn: both GL-4 and GL-5 claimed", "note: class no longer verifiable"],
    ],
    [
      "GL-5 --yellow-metal no --hypoid yes --limited-slip yes --in-case unknown",
      "look first",
      ["warn: other class in the case", "warn: limited-slip additive is the axle maker's"],
    ],
  ])("fluid --class %s: %s", (line, verdict, findings) => {
    expect(said(`--class ${line}`)).toEqual(findings);
    expect(fluid(`--class ${line}`).verdict).toBe(verdict);
  });

  test("what is not said is unknown, never no", () => {
    expect(said("--class GL-5")).toEqual(["warn: yellow metal not known", "note: limited slip not known"]);
    expect(fluid("--class none").findings[0]).toMatchObject({ level: "warn", reason: "no class on the label" });
  });

  test("each finding has its sentence and source; a block is said first", () => {
    const line = "--class GL-4/GL-5 --yellow-metal yes --hypoid yes --in-case GL-3";
    const { findings } = fluid(line);
    expect(findings.length).toBeGreaterThan(3);
    for (const it of findings) {
      expect(it.sentence).toMatch(/^[A-Z].*\.$/);
      expect(it.source).not.toBe("");
    }
    const printed = turnsleft(typed(`fluid ${line}`)).stdout;
    expect(printed).toMatch(/^Do not fill it\.[^\n]*\n {2}block /);
    expect(printed.lastIndexOf("  block")).toBeLessThan(printed.indexOf("  warn"));
    expect(turnsleft(typed(`fluid ${line} --working`)).stdout).toContain("(judgement)");
  });
});

describe("mistakes", () => {
  test.each([
    [
      'blend --has "1.5 L" --has-kv100 15 --add "0.5 L"',
      /^--add-kv100: given nothing; accepted: either --add-kv100 or/,
    ],
    [
      `blend ${measured} --has-label 75W-90`,
      /^--has-label: given "75W-90"; accepted: either --has-kv100 or --has-label/,
    ],
    [
      "blend --has 1.5 --has-kv100 15 --add 0.5 --add-kv100 8",
      /^--has: given "1\.5"; accepted: a number with its unit/,
    ],
    [
      'blend --has "1.5 L" --has-kv100 15 --add "0 L" --add-kv100 8',
      /^--add: given "0 L"; accepted: more than nothing/,
    ],
    [
      'blend --has "1.5 L" --has-kv100 0.1 --add "1 L" --add-kv100 8',
      /^--has-kv100: given "0\.1"; accepted: nu from 0\.21/,
    ],
    [
      'blend --has "1.5 L" --has-label 80W --add "1 L" --add-kv100 8',
      /^--has-label: given "80W"; accepted: a grade with an/,
    ],
    ['blend --has "1.5 L" --has-label 90 --add "1 L" --add-kv100 8', /^--has-label: given "90"; accepted: SAE 90;/],
    [`blend ${measured} --edition 1991`, /^--edition: given "1991"; accepted: 2019 or 2005$/],
    ["fluid", /^--class: given nothing; accepted: what the can claims/],
    ["fluid --class GL-4+", /^--class: given "GL-4\+"; accepted: GL-1, GL-2, .*MT-1 or none$/],
    ["fluid --class GL-5 --hypoid maybe", /^--hypoid: given "maybe"; accepted: "yes", "no" or "unknown"$/],
    ["fluid --class GL-5 --maker-allows none", /^--maker-allows: given "none"; accepted: GL-1/],
    ["fluid --class GL-5 --in-case GL-9", /^--in-case: given "GL-9"; accepted: GL-1, .* or unknown$/],
  ])("%s", (line, expected) => expect(mistake(line)).toMatch(expected));
});

test.each(["blend", "fluid"])("each example of %s --help runs, plainly and as JSON", (command) => {
  const examples = [...turnsleft([command, "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map(
    (it) => it[1] ?? "",
  );
  expect(examples.length).toBeGreaterThan(0);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line))).toBeTypeOf("object");
  }
});
