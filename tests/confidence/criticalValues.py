"""Critical values behind tests/confidence/criticalValues.test.ts, worked out apart from the program.

Needs SciPy. Run it from anywhere: python3 criticalValues.py. It prints the rows that the test holds.
Grubbs' G from SciPy's Student t; f(n) from SciPy's studentized range at infinite degrees of freedom; Dixon's r10 by adaptive
double quadrature of the joint density of the smallest and the largest, with SciPy's normal distribution and Brent's root: none of
these shares a series, a sum or a root finder with the program.
"""
from math import inf, sqrt

from scipy import integrate, optimize, stats
from scipy.special import ndtr


def grubbs(n, tail):
    t = stats.t.isf(tail / n, n - 2)
    return (n - 1) / sqrt(n) * sqrt(t * t / (n - 2 + t * t))


def critical_range_factor(n):
    return stats.studentized_range.ppf(0.95, n, inf)


def gap_ratio(ratio, n):
    """P(gap of the largest / range > ratio): smallest a, range v, all others below a + v (1 - ratio)."""

    def over_range(v):
        def over_smallest(a):
            others = ndtr(a + v * (1 - ratio)) - ndtr(a)
            return stats.norm._pdf(a) * stats.norm._pdf(a + v) * others ** (n - 2)

        return integrate.quad(over_smallest, -v / 2 - 8, -v / 2 + 8, epsabs=1e-13, epsrel=1e-11, limit=200)[0]

    return n * (n - 1) * integrate.quad(over_range, 0, 14, epsabs=1e-11, epsrel=1e-10, limit=200)[0]


def dixon(n, tail):
    return optimize.brentq(lambda ratio: gap_ratio(ratio, n) - tail, 1e-3, 0.9999, xtol=1e-11)


if __name__ == "__main__":
    print("f(n):")
    for n in (2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15, 20, 30, 50):
        print(f'  [{n}, "{critical_range_factor(n):.7f}"],')
    print("G, tails 0.05, 0.025, 0.01, 0.005:")
    for n in [*range(3, 21), 30, 50, 100]:
        print(f"  [{n}, " + ", ".join(f'"{grubbs(n, tail):.6f}"' for tail in (0.05, 0.025, 0.01, 0.005)) + "],")
    print("r10, tails 0.05, 0.025, 0.005:")
    for n in range(3, 31):
        print(f"  [{n}, " + ", ".join(f'"{dixon(n, tail):.6f}"' for tail in (0.05, 0.025, 0.005)) + "],", flush=True)
