"""Quantiles of the gamma distribution by bisection in 40-digit arithmetic (mpmath): shape, share, below, above."""

from mpmath import exp, gammainc, inf, log, mp, mpf, nstr, sqrt

mp.dps = 40


def tail(shape, x, side):
    ends = (0, x) if side == "below" else (x, inf)
    return gammainc(shape, *ends, regularized=True)


def bisected(shape, share, side):
    low, high = log(shape) - max(100 / shape, 1), log(shape + 10 * sqrt(shape) + 30)
    for _ in range(75):
        middle = (low + high) / 2
        too_much = (tail(shape, exp(middle), side) > share) == (side == "below")
        low, high = (low, middle) if too_much else (middle, high)
    return exp(low)


for shape in ["0.5", "2", "7", "8", "20", "21", "100", "1000", "100000"]:
    for share in ["1e-10", "0.025", "0.3"]:
        low, high = (bisected(mpf(shape), mpf(share), side) for side in ("below", "above"))
        print(f"    [{shape}, {share}, {nstr(low, 15)}, {nstr(high, 15)}],")
