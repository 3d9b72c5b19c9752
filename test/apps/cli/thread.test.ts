import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

type Answer = {
  readonly candidates: readonly { readonly designation: string; readonly probability: number }[];
  readonly separateBy: string;
  readonly rivals: readonly string[];
  readonly showTwo: boolean;
  readonly warnings: readonly string[];
};

const answer = (line: string) => documentOf(typed(`thread ${line}`));
const lines = (line: string): string[] => turnsleft(typed(`thread ${line}`)).stdout.split("\n");
const probability = ({ candidates }: Answer, designation: string): number =>
  candidates.find((it) => it.designation === designation)?.probability ?? 0;
const scratch = mkdtempSync(join(tmpdir(), "turnsleft-"));
afterAll(() => rmSync(scratch, { recursive: true }));

// Common practice, no source: what a mechanic asks of two readings, and the answer he would believe.
describe("21.85 mm and 8 gaps", () => {
  const twelve = '--outside "21.85 mm" --gaps "8 in 12.1 mm"';
  const ten = '--outside "21.85 mm" --gaps "8 in 10.5 mm"';

  test("in 12.1 mm are M22x1.5, named first, with the rival, its eighth crest and the test that separates them", () => {
    const [name, ...more] = lines(twelve);
    expect(name).toMatch(/^M22x1\.5 /);
    const text = more.join("\n");
    expect(text).toMatch(/pitch read: 1\.51 ± 0\.07 mm/);
    expect(text).toMatch(/M22x1\.5 +8 gaps reach 12\.0 mm/);
    expect(text).toMatch(/7\/8-14 UNF +8 gaps reach 14\.5 mm/);
    expect(text).toMatch(/Spin a known M22x1\.5 .*4 easy turns.*M22x1\.5 from 7\/8-14 UNF/);
    const it: Answer = answer(twelve);
    expect(it.candidates[0]?.designation).toBe("M22x1.5");
    expect(it.rivals[0]).toBe("7/8-14 UNF");
    expect(it.showTwo).toBe(false);
    expect(it.warnings).toEqual([]);
  });

  test("in 10.5 mm are M22x1.5 too, with crests counted for gaps: 7 gaps, a pitch of 1.50", () => {
    const it: Answer = answer(ten);
    expect(it.candidates[0]?.designation).toBe("M22x1.5");
    expect(it.warnings).toEqual([expect.stringMatching(/crests instead of gaps\? .* 7 in 10\.5 mm, a pitch of 1\.50/)]);
    expect(lines(ten)[0]).toMatch(/^M22x1\.5 /);
    expect(lines(ten)[1]).toBe(it.warnings[0]);
  });

  test("leave their picture: three candidates on a rule with the reading", () => {
    const file = join(scratch, "rule.svg");
    answer(`${twelve} --svg ${file}`);
    const svg = readFileSync(file, "utf8");
    expect(svg).toContain('xmlns="http://www.w3.org/2000/svg"');
    for (const words of ["M22x1.5", "7/8-14 UNF", "crest 8 at 12.0 mm", "crest 8 at 14.5 mm", "8 gaps read at 12.1"])
      expect(svg).toContain(words);
  });
});

test("19.9 mm and 8 gaps in 12.1 mm are M20x1.5 with hardly a doubt", () => {
  const it: Answer = answer('--outside "19.9 mm" --gaps "8 in 12.1 mm"');
  expect(it.candidates[0]?.designation).toBe("M20x1.5");
  expect(it.candidates[0]?.probability).toBeGreaterThan(0.95);
  expect(it.candidates.length).toBeGreaterThanOrEqual(2);
  expect(it.separateBy).toMatch(/^[A-Z].*\.$/);
});

test("an outside diameter alone names two, says that the odds do not decide, and asks for gaps", () => {
  const it: Answer = answer('--outside "19.9 mm"');
  expect(it.showTwo).toBe(true);
  const [first, second] = it.candidates;
  expect(lines('--outside "19.9 mm"')[0]).toMatch(
    new RegExp(`^${first?.designation} or ${second?.designation}: the odds do not say which yet`),
  );
  expect(it.separateBy).toMatch(/along a rule .* at least \d+ gaps/);
});

describe("the document", () => {
  const it = answer('--outside "21.85 mm" --gaps "8 in 12.1 mm" --gauge "1.5 mm" --hexagon "27 mm" --sister "27 mm"');

  test("gives every candidate its readings, what was read beside what that thread would read", () => {
    const [first] = it.candidates;
    expect(first.readings.map(({ type }: { type: string }) => type)).toEqual([
      "outside diameter",
      "gaps",
      "pitch gauge",
      "hexagon",
    ]);
    expect(first.readings[1]).toMatchObject({ read_mm: 12.1, expected_mm: [12, 12], explainedBy: "thread" });
    expect(first.readings[3]).toMatchObject({ read_mm: null, expected_mm: null });
    expect(first.pitch_mm).toBe(1.5);
  });

  test("works out the pitch, the places on the rule and the odds, each with its source", () => {
    const formulas = it.working.map(({ formula }: { formula: string }) => formula.slice(0, 1));
    expect(new Set(formulas)).toEqual(new Set(["P", "L", "O"]));
    for (const step of it.working)
      expect(Object.keys(step).toSorted()).toEqual(["formula", "result", "source", "substituted"]);
    const [first, second] = it.candidates;
    const odds = Number(it.working.at(-1).result);
    // The second is printed to four digits, and so are the odds.
    expect((odds * second.probability) / first.probability).toBeCloseTo(1, 2);
    expect(lines('--outside "21.85 mm" --gaps "8 in 12.1 mm" --working').join("\n")).toContain("P = L / N");
  });

  test("tells none but the first two and the rivals below one in a thousand", () => {
    for (const { designation, probability } of it.candidates.slice(2))
      expect(probability >= 0.001 || it.rivals.includes(designation)).toBe(true);
  });
});

describe("each reading speaks", () => {
  const odds = (line: string, a: string, b: string): number => {
    const it: Answer = answer(line);
    return probability(it, a) / probability(it, b);
  };

  test("a leaf that seats for its pitch, one that does not against it", () => {
    const alone = odds('--outside "15.8 mm"', "M16x1.5", "5/8-18 UNF");
    expect(odds('--outside "15.8 mm" --gauge "1.5 mm"', "M16x1.5", "5/8-18 UNF")).toBeGreaterThan(2 * alone);
    expect(odds('--outside "15.8 mm" --gauge "not 18/in"', "M16x1.5", "5/8-18 UNF")).toBeGreaterThan(2 * alone);
    expect(odds('--outside "15.8 mm" --gauge 18/in', "M16x1.5", "5/8-18 UNF")).toBeLessThan(alone / 2);
  });

  test("a hole by its bore and what the plug travels: M20x1.5", () => {
    const it: Answer = answer('--bore "18.4 mm" --travel "5 turns in 7.6 mm"');
    expect(it.candidates[0]?.designation).toBe("M20x1.5");
  });

  test("a plug worn by half a millimetre may be one that a sound plug is not", () => {
    const [sound, worn] = ['--outside "21.3 mm"', '--outside "21.3 mm" --worn "0.8 mm"'].map((line) =>
      answer(`${line} --gaps "10 in 15.0 mm"`),
    ) as [Answer, Answer];
    expect(sound.warnings.join()).toContain("No thread fits all of these readings");
    expect(worn.warnings).toEqual([]);
    expect(worn.candidates[0]?.designation).toBe("M22x1.5");
  });

  test("a hole that is the same deeper in is parallel, Rp for an R plug; one that narrows is taper", () => {
    const hole = '--outside "20.7 mm" --gaps "8 in 14.5 mm" --taper "0.6 mm in 10 mm" --bore "18.6 mm"';
    expect(answer(`${hole} --narrows "0.0 mm in 10 mm"`).candidates[0].designation).toBe("Rp 1/2");
    expect(answer(`${hole} --narrows "0.6 mm in 10 mm"`).candidates[0].designation).toBe("R 1/2");
    expect(answer(hole).separateBy).toMatch(/^Inside jaws past the first turn of the hole and 10 mm deeper/);
  });

  test("both ends the same, G 1/2; 0.6 mm more in 10 mm, a taper thread", () => {
    const plug = '--outside "20.85 mm" --worn --gaps "10 in 18.2 mm"';
    expect(answer(`${plug} --taper "0.0 mm in 10 mm"`).candidates[0].designation).toBe("G 1/2");
    expect(answer(`${plug} --taper "0.62 mm in 10 mm"`).candidates[0].designation).toMatch(/NPT|^R /);
  });

  test("a known plug that binds in the hole speaks against its thread, one that runs free for it", () => {
    const [bare, tight, free] = [
      "",
      '--meshes "tight after 2 turns with M22x1.5"',
      '--meshes "4 turns, free with M22x1.5"',
    ];
    const of = (felt: string | undefined): number => probability(answer(`--outside "21.9 mm" ${felt}`), "M22x1.5");
    expect(of(tight)).toBeLessThan(of(bare));
    expect(of(free)).toBeGreaterThan(of(bare));
  });
});

describe("cautions", () => {
  test("tight after two turns: stop turning, right under the name", () => {
    const line = '--outside "15.8 mm" --gaps "8 in 11.6 mm" --meshes "two turns, then tight in M16x1.5"';
    expect(lines(line)[1]).toMatch(/^Tight after 2 turns: stop turning\./);
    expect(answer(line).candidates[0].designation).toBe("5/8-18 UNF");
  });

  test("another hexagon than its sister's may be another machine's plug", () => {
    const line = '--outside "15.8 mm" --hexagon "27 mm" --sister "24 mm"';
    expect(answer(line).warnings).toEqual([
      expect.stringMatching(/hexagon is not its sister's \(27\.0 and 24\.0 mm\)/),
    ]);
    expect(answer(line.replace("27", "24")).warnings).toEqual([]);
  });
});

// Derived: 25.4 / 18 and so on; where the tenth crest lies on a rule where nobody counted.
test("without a count it says where ten gaps would reach", () => {
  const text = lines('--outside "15.8 mm"').join("\n");
  const reach = /M16x1\.5 +10 gaps reach ([\d.]+) mm/.exec(text)?.[1] ?? "";
  agrees(Number(reach), "15.0");
  agrees(Number(/5\/8-18 UNF +10 gaps reach ([\d.]+) mm/.exec(text)?.[1] ?? ""), "14.1");
});
