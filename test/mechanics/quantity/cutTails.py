"""Prints the reference values of cutNormal.test.ts: cut distributions in 60 digits (needs the mpmath package).

Means and deviations are integrals of the density itself, quantiles are bisected, so no closed form is repeated here.
"""
from mpmath import erfc, exp, log, mp, mpf, nstr, quad, sqrt

mp.dps = 60


def row(kind, place, spread, low, high):
    place, spread = mpf(place), mpf(spread)
    if kind == "normal":
        deviate, value = (lambda x: (x - place) / spread), (lambda z: place + spread * z)
    else:
        deviate, value = (lambda x: log(x / place) / spread), (lambda z: place * exp(spread * z))
    start = mpf(-45) if low is None else deviate(mpf(low))
    end = mpf(45) if high is None else deviate(mpf(high))
    peak = max(start, min(end, mpf(0)))

    def integral(f, a, b):
        marks = sorted({a, b, *(m for m in (peak + mpf(k) / 4 for k in range(-80, 81)) if a < m < b)})
        return quad(lambda z: f(value(z)) * exp((peak * peak - z * z) / 2), marks)

    whole = integral(lambda x: 1, start, end)
    mean = integral(lambda x: x, start, end) / whole
    sd = sqrt(integral(lambda x: (x - mean) ** 2, start, end) / whole)
    figures = [nstr(mean, 18), nstr(sd, 18)]
    for p in ("0.001", "0.25", "0.999"):
        a, b = start, end
        mp.dps = 30
        while b - a > mpf(10) ** -24:
            middle = (a + b) / 2
            a, b = (middle, b) if integral(lambda x: 1, start, middle) < mpf(float(p)) * whole else (a, middle)
        mp.dps = 60
        figures.append(nstr(value(a), 18))
    print("  [" + ", ".join(f'"{f}"' for f in figures) + f"], // {kind} {nstr(place, 6)} {nstr(spread, 6)} {low} {high}")


for of in (
    ("normal", 0.63, 0.04, 0.52, 0.74),
    ("normal", 100, 15, 80, None),
    ("normal", 0, 1, 5, None),
    ("normal", 0, 1, None, -29.5),
    ("normal", 0, 1, 10, 10.01),
    ("normal", 2, 1, 1.5, 2.75),
    ("lognormal", 223.5, 0.12, 140, None),
    ("lognormal", 1, 0.2, None, 0.3),
    ("lognormal", 1, 0.001, None, 1.0005),
    ("lognormal", 1, 1, 20, 22),
    ("lognormal", 2, 1.5, 0.5, 100),
):
    row(*of)

# For distribution.test.ts: the share above 3.0625 of the whole lognormal of median 3 and sigma 2^-10.
print(nstr(erfc(log(mpf(49) / 48) * 1024 / sqrt(2)) / 2, 18))
