import { describe, expect, test } from "vitest";
import type { Step } from "../../../src/mechanics/quantity/working.ts";
import { documentOf, turnsleft, typed } from "./turnsleft.ts";

const commands = [
  "level",
  "leak",
  "expand",
  "viscosity",
  "cure",
  "sealant",
  "pressure",
  "due",
  "held",
  "volume",
  "blend",
] as const;

const examplesOf = (command: string): readonly string[] =>
  [...turnsleft([command, "--help"]).stdout.matchAll(/^ {2}turnsleft (.+)$/gm)].map((it) => it[1] ?? "");

/** The steps of a document; those of `held` lie with each method. */
const stepsOf = (document: {
  readonly working?: Step[];
  readonly methods?: readonly { working: Step[] }[];
}): readonly Step[] => document.working ?? document.methods?.flatMap(({ working }) => working) ?? [];

describe("--working prints what the document has, and only when it is asked for", () => {
  test.each(commands.map((it) => [it] as const))("%s", (command) => {
    const examples = examplesOf(command);
    expect(examples.length).toBeGreaterThan(0);
    let steps = 0;
    for (const line of examples) {
      const [plain, opened] = [turnsleft(typed(line)).stdout, turnsleft([...typed(line), "--working"]).stdout];
      const all = stepsOf(documentOf(typed(line)));
      steps += all.length;
      for (const { formula, substituted, result, source } of all) {
        expect(opened).toContain(`  ${formula}\n      = ${substituted} = ${result}\n      ${source}\n`);
        expect(plain).not.toContain(formula);
        expect(source.length).toBeGreaterThan(3);
      }
    }
    expect(steps).toBeGreaterThan(0);
  });
});

/** The number that a step ends at, and half of its last digit. */
function ends({ result }: Step): { readonly value: number; readonly half: number } {
  const [figure = ""] = /^-?\d+(\.\d+)?(e-?\d+)?/.exec(result) ?? [];
  return { value: Number(figure), half: 0.5 * 10 ** -(figure.split(".")[1]?.length ?? 0) };
}

const oil = '--oil "90 °C" --kv40 100 --kv100 15';
const level = 'level --drawn "60 ml" --fallen "2.7 mm" --below "8 mm" --target "3 mm" --pour "200 ml"';
const drip = 'leak --drops 7 --in "10 min" --to-limit "8 mm" --per-mm "22 ml/mm" --breather free --signs none';
const cure = 'cure --bead "3 mm" --temperature "12 °C" --humidity "65 %"';
const due = 'due --last 2026-01-10 --at "84210 km" --now "87960 km" --today 2026-04-20 --every "20000 km" --months 12';

/** A figure of the document by its path, such as "limits.0.left". */
const at = (document: unknown, path: string): number =>
  Number(path.split(".").reduce<unknown>((it, key) => (it as Record<string, unknown>)[key], document));

describe("each figure opens to the equation that gives it", () => {
  test.each([
    [level, "perMillimetre_ml", "k = V / Dh", 1],
    [level, "shortOfLip_ml", "V = k * (h_1 - h_2)", -1],
    [level, "toTarget_ml", "V = k * (h_1 - h_2)", -1],
    [level, "overflow.volume_ml", "V_o = V_f - k * (h_lip - h)", 1],
    ['level --shape cylinder --length "110 mm" --width "160 mm" --depth "70 mm"', "contents_ml", "V =", 1],
    [`${drip}`, "perDay_ml", "Q = lambda * V_d", 1],
    [`${drip}`, "bySize_mm.0", "Dh = V / k", 1],
    [`${drip}`, "parked_days.0", "t = V / Q", 1],
    [`${drip}`, "driven_days.0", "t = t_p * f", 1],
    ['leak --fallen "12 mm" --per-mm "18 ml/mm" --over "5000 km"', "lost_ml", "V = k * (h_1 - h_2)", 1],
    ["leak --readings examples/levels.csv", "at_km", "x = x_m + d", 1],
    ["leak --readings examples/levels.csv", "earliest_km", "x_1 =", 1],
    [`leak --through M20x1.5 --engaged "10 mm" --head "10 mm" ${oil}`, "perDay_ml", "Q = Q_1 + Q_2", 1],
    [`leak --through M20x1.5 --engaged "10 mm" --head "10 mm" ${oil}`, "holdsBack_mm", "h = p / (rho * g)", 1],
    ['leak --closed-at "20 °C" --oil "90 °C" --fill "1.2 L" --air "1 L"', "closed_kPa", "p_g =", 1],
    ['leak --spot "75 mm" --in "5 min"', "perDay_ml.1", "Q = V / t", 1],
    ['expand --volume "1.2 L" --from "20 °C" --to "90 °C" --case aluminium --per-mm "18 ml/mm"', "grown_ml", "dV =", 1],
    [
      'expand --volume "1.2 L" --from "20 °C" --to "90 °C" --case aluminium --per-mm "18 ml/mm"',
      "net_ml",
      "V_net =",
      1,
    ],
    [
      'expand --volume "1.2 L" --from "20 °C" --to "90 °C" --case aluminium --per-mm "18 ml/mm"',
      "levelRise_mm",
      "Dh =",
      1,
    ],
    ['viscosity --kv40 100 --kv100 15 --temperature "20 °C"', "kv_mm2s", "nu =", 1],
    ['viscosity --kv40 100 --kv100 15 --temperature "20 °C"', "index", "VI =", 1],
    ['viscosity --kv40 100 --kv100 15 --temperature "20 °C"', "timesHot", "f = nu / nu_hot", 1],
    [cure, "curedThrough_h", "t = (z / k)^2 * f", 1],
    [cure, "mayBeSplashed_h", "t = (z / k)^2 * f", 1],
    [cure, "slowness", "f = p_ref / p", 1],
    [`${cure} --bead-diameter "2 mm" --bead-length "75 mm"`, "bead_ml", "V_b =", 1],
    ['sealant --state worn --gap "0.2 mm" --metals steel --temperature "12 °C"', "means.0.full_h", "t = t_0 * f", 1],
    ['pressure --start "0.70 bar" --end "0.52 bar" --minutes 5 --diameter "20 mm"', "loss_bar", "Dp = p_1 - p_c", 1],
    ['pressure --start "0.70 bar" --end "0.52 bar" --minutes 5 --diameter "20 mm"', "plugForce_N", "F =", 1],
    ['pressure --start "0.70 bar" --end "0.52 bar" --minutes 5', "lossPerMinute_bar", "v = Dp / t", 1],
    [due, "limits.0.left", "D_left = x_0", 1],
    [due, "limits.0.likely_days", "t = D / r", 1],
    ["held examples/held.csv", "methods.1.wilson95.0", "p_z = (p", 1],
    ["held examples/held.csv", "methods.1.kaplanMeier.0.standardError", "s_S =", 1],
    ['volume --out "2.2 L" --expected "4.3 L"', "ratio", "r = V_out", 0.01],
    ['volume --out "2.2 L" --expected "4.3 L"', "before_L", "V_was =", 1],
    ['blend --has "1.5 L" --has-kv100 15 --add "0.5 L" --add-kv100 8', "kv100_mm2s", "nu = Z", 1],
    ['blend --has "1.5 L" --has-kv100 15 --add "0.5 L" --add-kv100 8', "crossCheck_mm2s", "nu = exp", 1],
  ] as const)("%s: %s by %s", (line, path, begins, scale) => {
    const document = documentOf(typed(line));
    const figure = at(document, path);
    const lines = stepsOf(document).filter(({ formula }) => formula.startsWith(begins));
    expect(lines.map(({ formula }) => formula)).not.toEqual([]);
    // Both are rounded: the step to its uncertainty, the figure to two digits at the least.
    const near = lines.some((step) => {
      const { value, half } = ends(step);
      return Math.abs(scale * value - figure) <= Math.abs(scale) * half + 0.05 * Math.abs(figure);
    });
    expect(near, `${figure} in ${lines.map(({ result }) => result).join("; ")}`).toBe(true);
  });
});
