import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agrees } from "../../published.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const answer = (line: string) => documentOf(typed(`level ${line}`));
const text = (line: string): string => turnsleft(typed(`level ${line}`)).stdout;

/** Exit 2, nothing on standard output, one line: the option, what was given, what is accepted. */
function mistake(line: string): string {
  const { status, stdout, stderr } = turnsleft(typed(`level ${line}`));
  expect([status, stdout]).toEqual([2, ""]);
  expect(stderr).toMatch(/^turnsleft: [^\n]+: given [^\n]+; accepted: [^\n]+\n$/);
  return stderr.slice("turnsleft: ".length, -1);
}

describe("published", () => {
  // Worked apart with R from the plain geometry of each shape; net of nothing.
  test.each([
    ["box --length 150mm --width 120mm --depth 70mm", "18.0", "1260"],
    ["cylinder --length 110mm --width 160mm --depth 70mm", "17.5", "930"],
    ["cylinder --length 110mm --width 160mm --depth 80mm", "17.6", "1110"],
    ["ellipse --length 120mm --width 180mm --height 140mm --depth 60mm", "21.4", "972"],
    ["ball --width 160mm --depth 70mm", "19.8", "872"],
  ])("%s holds %s ml in a millimetre and %s ml in all", (shape, perMillimetre, contents) => {
    const it = answer(`--shape ${shape}`);
    agrees(it.perMillimetre_ml, perMillimetre);
    expect(it.contents_ml).toBe(Number(contents));
  });

  // First-order propagation by hand: two levels to 0.5 mm each are 0.71 mm apart; 2 ml for each syringe stroke.
  test.each([
    ["60 ml", "2.7 mm", "22.2", "weak", 0.264],
    ["120 ml", "6 mm", "20.0", "weak", 0.1202],
    ["180 ml", "9 mm", "20.0", "firm", 0.0809],
  ])("%s over %s is %s ml a millimetre", (drawn, fallen, printed, _strength, relative) => {
    const it = answer(`--drawn "${drawn}" --fallen "${fallen}"`);
    agrees(it.perMillimetre_ml, printed);
    expect(it.perMillimetreUncertainty_ml / it.perMillimetre_ml).toBeCloseTo(relative, 2);
  });

  // 0.87 mm a degree at 50 mm, 1.40 at 80, 2.62 at 150, 4.36 at 250: x tan(1°).
  test.each([
    ["50 mm", "0.87"],
    ["80 mm", "1.40"],
    ["150 mm", "2.62"],
    ["250 mm", "4.36"],
  ])("a degree at %s moves the reading by %s mm", (offset, printed) => {
    const it = answer(`--per-mm "18 ml/mm" --below "8 mm" --tilt "1 °" --offset "${offset}"`);
    agrees(it.tiltShift_mm, printed);
    expect(it.level_mm).toBeCloseTo(-8 - it.tiltShift_mm, 1);
  });

  // 3 and 5 mm at 18 ml/mm are 54 and 90 ml; 12 mm are 216 ml short of the lip.
  test.each([
    ["3 mm", -54],
    ["5 mm", -90],
  ])("from the lip down to %s it is %i ml", (target, ml) => {
    expect(answer(`--per-mm "18 ml/mm" --below "0 mm" --target "${target}"`).toTarget_ml).toBe(ml);
    expect(answer('--per-mm "18 ml/mm" --below "12 mm"').shortOfLip_ml).toBe(216);
  });

  // API MPMS 11.1 for 1.2 L of 880 kg/m³ from 20 to 90 °C in aluminium at 18 ml/mm, worked apart: 3.24 mm.
  test("1.2 L in aluminium stand 3.2 mm higher at 90 °C than at 20 °C", () => {
    const it = answer(
      '--per-mm "18 ml/mm" --below "8 mm" --oil "90 °C" --at "20 °C" --fill "1.2 L" --case aluminium --settled',
    );
    agrees(it.warmRise_mm, "3.2");
    agrees(it.cold_mm, "-11.2");
  });
});

describe("the answer", () => {
  const line = '--drawn "60 ml" --fallen "2.7 mm" --below "8 mm" --allowed "8 mm" --target "0 mm"';

  test("60 ml drawn, 2.7 mm fallen, 8 mm down is about 180 ml short and at the edge", () => {
    expect(text(line).split("\n")[0]).toBe(
      "8 mm below the lip: 180 ml (give or take 110) short of the lip. At the edge of what is allowed (lowest allowed 8 mm below the lip).",
    );
    expect(text(line)).toContain("3 full strokes, then read again.");
    expect(text(line)).toContain("That is weak: draw 110 ml or more");
    expect(answer(line)).toMatchObject({ strength: "weak", plausibility: "as expected", verdict: "at the edge" });
  });

  test("draws back what stands too high", () => {
    expect(text('--per-mm "18 ml/mm" --below "-2 mm" --target "3 mm"')).toContain("Draw out 90 ml");
    expect(answer('--per-mm "18 ml/mm" --below "-2 mm" --target "3 mm" --syringe "50 ml"')).toMatchObject({
      toTarget_ml: -90,
      strokes: { full: 1, last_ml: 40 },
    });
  });

  test("tells before it is poured whether it runs over", () => {
    const poured = (volume: string) => answer(`--per-mm "18 ml/mm" --below "5 mm" --pour "${volume}"`).overflow.verdict;
    expect(poured("20 ml")).toBe("none");
    expect(poured("90 ml")).toBe("possible");
    expect(poured("200 ml")).toBe("runs out");
    expect(text('--per-mm "18 ml/mm" --below "5 mm" --pour "200 ml"')).toContain("Stop before you pour 200 ml: 110 ml");
  });

  test("a tilt whose hole is not placed gives no level, or a bound where the case is known", () => {
    const open = answer('--per-mm "18 ml/mm" --below "8 mm" --tilt "1 °"');
    expect(open).toMatchObject({ tilt: "offset not known", level_mm: null, verdict: null, shortOfLip_ml: null });
    const bounded = answer(
      '--shape box --length "300 mm" --width "120 mm" --depth "70 mm" --below "8 mm" --tilt "1 °" --tilt-across "1 °"',
    );
    expect(bounded.tilt).toBe("bounded");
    // (150 + 60) mm times the tangent of 1° and twice its 0.3°.
    agrees(bounded.tiltBound_mm, "5.9");
  });

  test("too steep is not reckoned with", () => {
    expect(text('--per-mm "18 ml/mm" --below "8 mm" --tilt "8 °" --offset "80 mm"')).toMatch(/^Stand it level first\./);
  });

  test("fills a doubtful seal as low as is allowed, or lower than it rises", () => {
    const fill = (more: string) => answer(`--per-mm "60 ml/mm" ${more}`);
    expect(fill("--doubtful")).toMatchObject({ fillTo_mm: -5, fillToBecause: "rise not known" });
    const low = fill('--doubtful "60 °C" --at "20 °C" --fill "2.4 L" --case aluminium --below "8 mm"');
    expect(low.fillToBecause).toBe("stays under the lip when hot");
    expect(low.fillTo_mm).toBeLessThan(-0.9);
    expect(low.fillTo_mm).toBeGreaterThan(-1.3);
    expect(low.toTarget_ml / (60 * (8 + low.fillTo_mm))).toBeCloseTo(1, 1);
    expect(fill('--doubtful "150 °C" --at "0 °C" --fill "5 L"')).toMatchObject({
      fillTo_mm: -5,
      fillToBecause: "as low as allowed, reaches the lip when hot",
    });
  });

  test("what nobody gave is listed as assumed", () => {
    const warm = '--per-mm "22 ml/mm" --below "8 mm" --oil "55 °C" --at "20 °C" --fill "1.2 L"';
    const readings = (line: string) => answer(line).assumed.map((it: { reading: string }) => it.reading);
    expect(readings(warm)).toEqual(["lowest allowed", "density", "case"]);
    expect(readings(`${warm} --case iron --allowed "5 mm"`)).toEqual(["density"]);
    expect(answer(warm).coldReading).toBe("widened");
    expect(answer(warm).coldUncertainty_mm).toBeGreaterThan(answer(`${warm} --settled`).coldUncertainty_mm);
  });
});

test("deeper below the lip is shorter of it, and what is drawn is never more than it is short", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 8, max: 35 }), (down, k) => {
      const short = (mm: number): number => answer(`--per-mm "${k} ml/mm" --below "${mm} mm"`).shortOfLip_ml;
      expect(short(down)).toBe(Number((k * down).toPrecision(3)));
      expect(short(down + 1)).toBeGreaterThan(short(down));
    }),
    { numRuns: 4 },
  );
});

// Oil wets metal with a contact angle of 10 to 30°: with 0.031 N/m and 877 kg/m³ it stands 0.33 to 0.98 mm high (de Gennes,
// Brochard-Wyart, Quéré, ch. 2).
test("filled until it ran out is two thirds of a millimetre above the lip, and that is assumed", () => {
  const it = answer('--per-mm "22 ml/mm" --ran-out --target "5 mm"');
  expect(it.read_mm).toBeGreaterThan(0.33);
  expect(it.read_mm).toBeLessThan(0.98);
  expect(it.toTarget_ml).toBeLessThan(-22 * 5);
  expect(it.assumed[0].reading).toBe("filled until it ran out");
});

// 150 mm at 1.6° and 60 mm at 1.1°, the angles as far as an inclinometer may be off: 4.19 + 1.15 mm; plain geometry.
test("two tilts without a place of the hole are bounded by half of the case", () => {
  const askew = '--per-mm "22 ml/mm" --below "8 mm" --tilt "1 °" --tilt-across "0.5 °"';
  const it = answer(`${askew} --length "300 mm" --width "120 mm"`);
  agrees(it.tiltBound_mm, "5.34");
  expect(it).toMatchObject({ tilt: "bounded", level_mm: -8 });
  expect(answer(askew)).toMatchObject({ tilt: "offset not known", level_mm: null });
});

test("oil that a tilt takes over a step in the wall is not reckoned with", () => {
  const steep = '--per-mm "22 ml/mm" --below "8 mm" --tilt "3 °" --offset "150 mm"';
  expect(answer(`${steep} --to-step "5 mm"`)).toMatchObject({ tilt: "surface reaches a step", level_mm: null });
  expect(answer(`${steep} --to-step "20 mm"`).tilt).toBe("corrected");
  expect(text(`${steep} --to-step "5 mm"`)).toMatch(/^Stand it level first\./);
});

describe("mistakes", () => {
  test.each([
    ['--per-mm "22 ml/mm" --below "8 mm" --ran-out', /^--below: given "8 mm"; accepted: nothing beside --ran-out/],
    ['--per-mm "22 ml/mm" --below "8 mm" --to-step "5 mm"', /^--tilt: given nothing; accepted: how the machine stands/],
    ['--per-mm "22 ml/mm" --below "8 mm" --tilt "1 °" --length 300', /^--length: given "300"/],
    ['--per-mm "22 ml/mm" --below "8 mm" --tilt "1 °" --to-step 5', /^--to-step: given "5"/],
    ["", /^--drawn: given nothing; accepted: --drawn and --fallen together, or --per-mm, or --shape$/],
    ['--drawn "60 ml"', /^--fallen: given nothing/],
    ['--drawn "20 ml" --fallen "0.5 mm"', /^--fallen: given "0\.5 mm"; accepted: at least 2\.2 mm: draw more$/],
    ['--drawn 60 --fallen "2.7 mm"', /^--drawn: given "60"; accepted: a number with its unit, as "60 ml"/],
    ['--per-mm "22 ml/mm" --tilt "1 °"', /^--below: given nothing; accepted: the level .* with --tilt$/],
    ['--per-mm "22 ml/mm" --below "8 mm" --oil "55 °C"', /^--at: given nothing/],
    ['--per-mm "22 ml/mm" --below "8 mm" --oil "55 °C" --at "20 °C"', /^--fill: given nothing/],
    [
      '--per-mm "22 ml/mm" --below "8 mm" --oil "300 °C" --at "20 °C" --fill "2 L"',
      /^--oil: given "300 °C"; accepted: -50 to 150 °C/,
    ],
    ['--per-mm "22 ml/mm" --drawn "60 ml"', /^--drawn: given "60 ml"; accepted: nothing beside --per-mm/],
    ['--per-mm "22 ml/mm" --target "0 mm" --doubtful --below "8 mm"', /^--target: given "0 mm"/],
    ["--shape cone", /^--shape: given "cone"; accepted: "box"/],
    ['--shape box --width "120 mm" --depth "70 mm"', /^--length: given nothing/],
    ['--shape ball --width "160 mm" --depth "170 mm"', /^--depth: given "170 mm"; accepted: less than 160 mm/],
    ['--per-mm "22 ml/mm" --svg level.svg', /^--svg: given "level\.svg"; accepted: a level to draw/],
  ])("level %s", (line, expected) => expect(mistake(line)).toMatch(expected));
});

test("each example of --help runs, plainly and as JSON with its working", () => {
  const examples = [...turnsleft(["level", "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map(
    (it) => it[1] ?? "",
  );
  expect(examples).toHaveLength(4);
  for (const line of examples) {
    expect(turnsleft(typed(line))).toMatchObject({ status: 0, stderr: "" });
    expect(documentOf(typed(line)).working.length).toBeGreaterThan(0);
  }
});
