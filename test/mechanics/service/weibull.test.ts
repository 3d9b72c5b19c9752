import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { failed, type Watched } from "../../../src/mechanics/service/heldCases.ts";
import { type WeibullFit, weibull, weibullQuantile } from "../../../src/mechanics/service/weibull.ts";
import { weibullLikelihood } from "../../../src/mechanics/service/weibullLikelihood.ts";
import {
  greatestScaleOfShape,
  leastScaleOfShape,
  weibullOfShape,
} from "../../../src/mechanics/service/weibullOfShape.ts";
import { scaledBy } from "../../../src/mechanics/service/weibullTimes.ts";
import { agrees } from "../../published.ts";
import {
  at,
  between,
  eightRepairs,
  fans,
  maintained,
  mixedSets,
  nonmaintained,
  shuffled,
  tenAtChecks,
  until,
} from "./heldSets.ts";

describe("published", () => {
  // R 4.2.2 with survival 3.5-3, survreg: shape = 1/scale, scale = exp(intercept).
  test.each([
    ["70 fans", fans, "1.05844584995", "26296.8451742", "-135.152719943"],
    ["maintained remissions", maintained, "1.0318542417", "60.3228897753", "-35.7039563147"],
    ["nonmaintained remissions", nonmaintained, "1.57362854769", "25.0832378877", "-44.14421212"],
    ["eight repairs", eightRepairs, ".728939328408", "13448.5433226", "-30.5143434139"],
    ["ten repairs seen at checks", tenAtChecks, ".440188", "857.799", "-11.0838489"],
  ])("%s have the shape, scale and likelihood that R finds", (_, set, shape, scale, ll) => {
    const fit = fitted(set);
    // R stops its iterations at a relative 1e-9, which leaves the last of its printed digits open.
    agrees(fit.shape, shortened(shape));
    agrees(fit.scale, shortened(scale));
    agrees(fit.logLikelihood, ll);
  });

  // weibullInformation.py beside this file: the same likelihood with 40 digits, its second derivatives numerical.
  test("the fans' covariance is that of their likelihood worked with 40 digits", () => {
    const { shape, scale, covariance } = fitted(fans);
    agrees(shape, "1.0584458499438");
    agrees(scale, "26296.84517482");
    agrees(covariance.intercept, "0.217053176266");
    agrees(covariance.both, "0.0957276112286");
    agrees(covariance.logOfReciprocalShape, "0.0642310910635");
  });

  // R prints .21705317625, .09572761122, .06423109106 where its iterations stopped: nine digits are common ground.
  test("the fans' covariance is R's to nine digits", () => {
    const { covariance } = fitted(fans);
    agrees(covariance.intercept, ".217053176");
    agrees(covariance.both, ".095727611");
    agrees(covariance.logOfReciprocalShape, ".064231091");
  });

  test("a tenth of the fans have failed by 3137 hours, 1686 to 5837", () => {
    const { t, low, high } = weibullQuantile(fitted(fans), 0.1, 0.95);
    agrees(t, "3137.24");
    agrees(low, "1686.2");
    agrees(high, "5836.9");
  });

  test("with shape 1 the fans' mean life is their 344 440 hours by 12", () => {
    const mean = weibullOfShape(fans, 1);
    agrees(mean?.scale ?? Number.NaN, "28703.33");
    expect(mean?.scale).toBeCloseTo(344_440 / 12, 8);
    agrees(mean?.logLikelihood ?? Number.NaN, "-135.177222");
    agrees((leastScaleOfShape(fans, 1, 0.975) ?? Number.NaN) / 1000, "16.432");
    agrees((greatestScaleOfShape(fans, 1, 0.975) ?? Number.NaN) / 1000, "55.550");
  });

  test("with shape 1 ten repairs seen at checks hold 389.979 days in the mean", () => {
    agrees(weibullOfShape(tenAtChecks, 1)?.scale ?? Number.NaN, "389.979");
  });

  // Worked with R 4.2.2 for the reference: five repairs without a failure, in kilometres.
  test("five repairs without a failure bound the scale from below", () => {
    const held = [10_000, 12_000, 8000, 15_000, 9000].map(until);
    agrees((leastScaleOfShape(held, 2, 0.95) ?? Number.NaN) / 1000, "14.316");
    agrees((leastScaleOfShape(held, 1, 0.95) ?? Number.NaN) / 1000, "18.026");
    expect(greatestScaleOfShape(held, 2, 0.95)).toBeNull();
  });
});

describe("laws", () => {
  const lines = fc.record({
    beta: fc.double({ min: 0.2, max: 3, noNaN: true }),
    delta: fc.double({ min: -2, max: 6, noNaN: true }),
  });
  const fits = mixedSets.map((set) => ({ set, fit: weibull(set) }));

  test("the slopes and curvatures are those of the likelihood", () => {
    fc.assert(
      fc.property(mixedSets, lines, (set, line) => {
        const { slope, curvature } = weibullLikelihood(set, line);
        const h = 1e-5;
        const moved = (beta: number, delta: number) =>
          weibullLikelihood(set, { beta: line.beta + beta, delta: line.delta + delta });
        const near = (actual: number, difference: number, scale: number) =>
          expect(Math.abs(actual - difference)).toBeLessThan(1e-5 * (scale + Math.abs(actual)));
        const [up, down, right, left] = [moved(h, 0), moved(-h, 0), moved(0, h), moved(0, -h)];
        fc.pre([up, down, right, left].every(({ value }) => Number.isFinite(value)));
        const size = Math.abs(up.value) + set.length;
        const sharp = Math.abs(curvature[0]) + Math.abs(curvature[2]) + size;
        near(slope[0], (up.value - down.value) / (2 * h), sharp);
        near(slope[1], (right.value - left.value) / (2 * h), sharp);
        near(curvature[0], (up.slope[0] - down.slope[0]) / (2 * h), sharp * 10);
        near(curvature[1], (up.slope[1] - down.slope[1]) / (2 * h), sharp * 10);
        near(curvature[2], (right.slope[1] - left.slope[1]) / (2 * h), sharp * 10);
      }),
    );
  });

  test("the likelihood is concave in the line on Weibull paper", () => {
    fc.assert(
      fc.property(mixedSets, lines, (set, line) => {
        const { curvature } = weibullLikelihood(set, line);
        expect(curvature[0]).toBeLessThanOrEqual(1e-9);
        expect(curvature[2]).toBeLessThanOrEqual(1e-9);
      }),
    );
  });

  test("at the estimate the likelihood has no slope, and none beside it is greater", () => {
    fc.assert(
      fc.property(fits, ({ set, fit }) => {
        if (fit.type === "not fitted") return;
        const line = { beta: fit.shape, delta: fit.shape * Math.log(fit.scale) };
        const here = weibullLikelihood(set, line);
        expect(here.value).toBeCloseTo(fit.logLikelihood, 7);
        for (const [beta, delta] of [
          [1.01, 1],
          [0.99, 1],
          [1, 1.01],
          [1, 0.99],
        ] as const)
          expect(
            weibullLikelihood(set, { beta: line.beta * beta, delta: line.delta * delta }).value,
          ).toBeLessThanOrEqual(fit.logLikelihood + 1e-8);
      }),
    );
  });

  test("what is not refused is fitted: nothing else stops it", () => {
    fc.assert(
      fc.property(fits, ({ set, fit }) => {
        const failures = set.filter(failed);
        const begins = Math.max(...set.map((it) => (it.type === "failed between" ? it.from : it.t)));
        const ends = Math.min(...failures.map((it) => (it.type === "failed between" ? it.to : it.t)));
        if (failures.length < 2 || begins <= ends) return;
        if (failures.some((it) => it.type === "failed at" || it.from > 0)) expect(fit.type).toBe("fitted");
      }),
      { numRuns: 300 },
    );
  });

  test("in another unit of time only the scale is another", () => {
    fc.assert(
      fc.property(mixedSets, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (set, factor) => {
        const [a, b] = [weibull(set), weibull(set.map((it) => scaledBy(factor, it)))];
        expect(b.type).toBe(a.type);
        if (a.type === "not fitted" || b.type === "not fitted") return;
        const dated = set.filter(({ type }) => type === "failed at").length;
        expect(b.shape / a.shape).toBeCloseTo(1, 7);
        expect(b.scale / a.scale / factor).toBeCloseTo(1, 7);
        expect(b.logLikelihood + dated * Math.log(factor)).toBeCloseTo(a.logLikelihood, 7);
      }),
    );
  });

  test("with all times to a power the shape is divided by it", () => {
    const power = (it: Watched, k: number): Watched =>
      it.type === "failed between" ? between(it.from ** k, it.to ** k) : { ...it, t: it.t ** k };
    const [a, b] = [fitted(eightRepairs), fitted(eightRepairs.map((it) => power(it, 2)))];
    expect(b.shape).toBeCloseTo(a.shape / 2, 9);
    expect(b.scale / a.scale ** 2).toBeCloseTo(1, 8);
  });

  test("an ever narrower interval comes to the failure known to the day", () => {
    const [exact, narrow] = [
      fitted(eightRepairs),
      fitted(eightRepairs.map((it) => (it.type === "failed at" ? between(it.t * (1 - 1e-5), it.t * (1 + 1e-5)) : it))),
    ];
    expect(narrow.shape).toBeCloseTo(exact.shape, 6);
    expect(narrow.scale / exact.scale).toBeCloseTo(1, 6);
  });

  test("the order of the cases changes nothing", () => {
    fc.assert(
      fc.property(shuffled(mixedSets), ([a, b]) => {
        expect(weibull(b)).toEqual(weibull(a));
      }),
    );
  });

  test("with the fitted shape stated the scale is the fitted one", () => {
    for (const set of [fans, maintained, eightRepairs, tenAtChecks]) {
      const { shape, scale, logLikelihood } = fitted(set);
      const stated = weibullOfShape(set, shape);
      expect((stated?.scale ?? 0) / scale).toBeCloseTo(1, 10);
      expect(stated?.logLikelihood).toBeCloseTo(logLikelihood, 9);
    }
  });

  test("a scale without a failure, or without anything that held or was still whole, is not fitted", () => {
    expect(weibullOfShape([until(5)], 2)).toBeNull();
    expect(weibullOfShape([between(0, 7), between(0, 9)], 2)).toBeNull();
    expect(leastScaleOfShape([], 2, 0.95)).toBeNull();
    expect(leastScaleOfShape([at(0), until(8)], 1, 0.95)).toBeCloseTo(
      leastScaleOfShape([at(1e-9), until(8)], 1, 0.95) ?? 0,
    );
  });

  test("the quantile of 1 - 1/e is the scale", () => {
    const fit = fitted(fans);
    expect(weibullQuantile(fit, 1 - Math.exp(-1), 0.95).t / fit.scale).toBeCloseTo(1, 12);
  });
});

function fitted(set: readonly Watched[]): WeibullFit {
  const fit = weibull(set);
  if (fit.type === "not fitted") throw new Error(fit.reason);
  return fit;
}

/** Rounded to ten digits where more are printed. */
function shortened(printed: string): string {
  return printed.replace(/\D/g, "").length > 10 ? Number(printed).toPrecision(10) : printed;
}
