"""Prints the reference values of betaFunctions.test.ts by mpmath 1.3, with 60 digits.

Tails: the series of positive terms of NIST's Digital Library of Mathematical Functions, 8.17.8, from the nearer end.
Quantiles: the root in ln x by halving, from the p given as a double.
"""
from mpmath import beta, exp, mp, mpf, nstr

mp.dps = 60

TAILS = ((0.5, 0.5, 0.25), (0.5, 20.5, 0.1), (2.5, 1.5, 0.2), (81.5, 182.5, 0.25), (82, 182, 0.5), (9, 2, 0.999), (9, 2, 0.01),
         (3, 7, 1e-100), (1, 1, 0.3), (1000.5, 0.5, 0.99), (1e4, 2e4, 0.33), (1e5, 1e5, 0.503), (0.01, 0.01, 0.4), (30, 0.5, 0.05))
QUANTILES = ((0.025, 81.5, 182.5), (0.975, 0.5, 20.5), (1e-9, 0.5, 20.5), (1e-100, 0.5, 20.5), (0.025, 10, 1), (0.025, 2.5, 1.5),
             (0.975, 2.5, 1.5), (0.3, 1e4, 2e4), (0.5, 3, 3), (0.999999, 0.5, 1e3), (1e-3, 0.01, 0.01), (0.7, 1e3, 2))


def series(a, b, x):
    total, term, n = mpf(0), mpf(1), 0
    while term > total * mpf(10) ** -60:
        total, n = total + term, n + 1
        term *= x * (a + b + n - 1) / (a + n)
    return x**a * (1 - x) ** b * total / (a * beta(a, b))


def below_above(a, b, x):
    a, b, x = mpf(a), mpf(b), mpf(x)
    if x * (a + b) < a:
        below = series(a, b, x)
        return below, 1 - below
    above = series(b, a, 1 - x)
    return 1 - above, above


def quantile(p, a, b):
    p, a, b = mpf(p), mpf(a), mpf(b)
    least, most = mpf(-800), mpf(0)
    for _ in range(230):
        middle = (least + most) / 2
        if below_above(a, b, exp(middle))[0] < p:
            least = middle
        else:
            most = middle
    return exp((least + most) / 2)


print("a, b, x, below, above")
for a, b, x in TAILS:
    below, above = below_above(a, b, x)
    print(f'  [{a}, {b}, {x}, "{nstr(below, 20, min_fixed=1, max_fixed=0)}", "{nstr(above, 20, min_fixed=1, max_fixed=0)}"],')
print("p, a, b, x")
for p, a, b in QUANTILES:
    print(f'  [{p}, {a}, {b}, "{nstr(quantile(p, a, b), 20, min_fixed=1, max_fixed=0)}"],')
