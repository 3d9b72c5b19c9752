"""Prints the covariance of the Weibull fits of weibull.test.ts by mpmath 1.3, with 40 digits, from the likelihood alone.

The likelihood is written in ln(scale) and ln(1/shape); its root and second derivatives are numerical.
"""
from pathlib import Path

from mpmath import diff, exp, findroot, log, matrix, mp, mpf, nstr

mp.dps = 40

lines = (Path(__file__).parents[2] / "published" / "diesel_fans.csv").read_text().split("\n")[2:]
FANS = [(mpf(h), failed == "1") for h, failed in (line.split(",") for line in lines if line)]


def log_likelihood(mu, log_sigma):
    total = mpf(0)
    for t, failed in FANS:
        z = (log(t) - mu) / exp(log_sigma)
        total += -exp(z) + ((z - log_sigma - log(t)) if failed else 0)
    return total


at = findroot(
    [lambda a, b: diff(log_likelihood, (a, b), (1, 0)), lambda a, b: diff(log_likelihood, (a, b), (0, 1))],
    (mpf("10.177"), mpf("-0.057")),
)
H = matrix(2, 2)
H[0, 0] = diff(log_likelihood, tuple(at), (2, 0))
H[0, 1] = H[1, 0] = diff(log_likelihood, tuple(at), (1, 1))
H[1, 1] = diff(log_likelihood, tuple(at), (0, 2))
V = -(H**-1)
print("shape, scale, log-likelihood:", *(nstr(x, 15) for x in (exp(-at[1]), exp(at[0]), log_likelihood(*at))))
print("covariance:", *(nstr(x, 15) for x in (V[0, 0], V[0, 1], V[1, 1])))
