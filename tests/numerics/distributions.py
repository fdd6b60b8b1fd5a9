"""Values of the distributions behind tests/numerics/distributionLimits.test.ts, in forty digits, apart from the program.

Needs mpmath. Run it from anywhere: python3 distributions.py. It prints the rows that the test holds.
"""
from mpmath import betainc, erfc, findroot, inf, mp, mpf, ncdf, npdf, nstr, quad, sqrt

mp.dps = 40


def t_tail(t, degrees):
    x = mpf(degrees) / (degrees + t * t)
    return betainc(mpf(degrees) / 2, mpf(1) / 2, 0, x, regularized=True) / 2


def t_quantile(tail, degrees, guess):
    return findroot(lambda t: mp.log(t_tail(t, degrees)) - mp.log(tail), guess)


def range_probability(width, n):
    points = [-12, -8, -6, -4, -3, -2, -1, 0, 1, 2, 4, 8, 12]
    return n * quad(lambda x: npdf(x) * (ncdf(x + width) - ncdf(x)) ** (n - 1), points)


if __name__ == "__main__":
    from scipy import stats

    print("normal, x and probability of at most x:")
    for x in ("-9", "-8.9", "-8", "-6", "-4", "-2.5", "-0.1", "0.1", "2.5", "4", "6", "8"):
        print(f'  [{x}, "{nstr(erfc(-mpf(x) / sqrt(2)) / 2, 20)}"],')
    print("Student t, degrees, tail, quantile:")
    for degrees in (1, 2, 3, 4, 5, 6, 7, 10, 28, 29, 98, 99, 998, 4999, 5000):
        for tail in ("0.4", "0.025", "1e-4", "1e-8"):
            t = t_quantile(mpf(tail), degrees, stats.t.isf(float(tail), degrees))
            print(f'  [{degrees}, {tail}, "{nstr(t, 15)}"],')
    print("range, n, width, probability:")
    for n in (2, 3, 10, 30, 100, 1000):
        for width in ("0.01", "1", "3", "6", "9"):
            print(f'  [{n}, {width}, "{nstr(range_probability(mpf(width), n), 18)}"],')
