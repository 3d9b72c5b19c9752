"""Prints the reference values of normal.test.ts, with nothing but the decimal arithmetic of Python's library.

Upper tail: 1/2 - phi(z) (z + z^3/3 + z^5/(3*5) + ...), which at 420 digits keeps 100 of them even where the tail is
1e-300. Quantiles: Newton's method on that tail.
"""
from decimal import Decimal, getcontext
from statistics import NormalDist

getcontext().prec = 420


def arctangent_of_reciprocal(n):
    total, power, k = Decimal(0), Decimal(1) / n, 0
    while abs(power) > Decimal(10) ** -425:
        total += (-1) ** k * power / (2 * k + 1)
        power, k = power / (n * n), k + 1
    return total


PI = 4 * (4 * arctangent_of_reciprocal(5) - arctangent_of_reciprocal(239))  # Machin


def density(z):
    return (-z * z / 2).exp() / (2 * PI).sqrt()


def tail(z):
    total, term, k = Decimal(0), z, 1
    while term > total * Decimal(10) ** -420 or k < z * z:
        total, k = total + term, k + 2
        term = term * z * z / k
    return Decimal("0.5") - density(z) * total


def quantile(q):
    z = Decimal(-NormalDist().inv_cdf(float(q)))
    for _ in range(7):
        z += (tail(z) - q) / density(z)
    return z


print("z, survival, density")
for z in (0.0625, 0.5, 0.6744, 0.675, 1, 1.75, 3, 5, 5.65, 5.66, 8, 13.25, 20, 30, 37):
    print(f'  [{z}, "{tail(Decimal(z)):.19e}", "{density(Decimal(z)):.19e}"],')
print("q as a double, z")
for q in ("1e-300", "1e-200", "1e-100", "1e-50", "1e-20", "1.3e-11", "1.5e-11", "1e-9", "1e-5", "0.01", "0.0749", "0.0751", "0.3", "0.4999"):
    print(f'  [{q}, "{quantile(Decimal(float(q))):.19e}"],')
