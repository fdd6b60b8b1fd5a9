"""DRYING.FIT by the law of Newton, worked without the program: sample = final + (first - final) exp(-k t), k by a search over
the sum of squares with the final mass solved at each k. The standard errors come from moving every reading a little, the
first and the dry one included, and fitting again: all readings are equally uncertain, by as much as explains the residuals.

Run: python3 tests/drying/model/fitByHand.py
The printed values stand in fitByHand.test.ts.
"""

from math import exp, sqrt

TIMES = [0, 20, 40, 60, 80, 110, 150]
GRAMS = [10.0, 9.2012, 8.6609, 8.3014, 8.0583, 7.8302, 7.6721]
DRY = 7.5605


def residuals(grams, dry, k):
    ratios = [exp(-k * t) for t in TIMES]
    if dry is None:
        above = sum((1 - r) * (g - grams[0] * r) for r, g in zip(ratios, grams))
        final = above / sum((1 - r) ** 2 for r in ratios)
    else:
        final = dry
    return final, [g - final - (grams[0] - final) * r for r, g in zip(ratios, grams)]


def fit(grams, dry):
    """k where the slope of the sum of squares is 0, by halving: the squares themselves settle to half the digits only."""

    def slope(k, by=1e-7):
        # A difference of squares as a sum of products, which keeps its digits.
        up, down = residuals(grams, dry, k + by)[1], residuals(grams, dry, k - by)[1]
        return sum((u - d) * (u + d) for u, d in zip(up, down))

    low, high = 0.005, 0.1
    for _ in range(200):
        middle = (low + high) / 2
        if slope(middle) < 0:
            low = middle
        else:
            high = middle
    final, rest = residuals(grams, dry, low)
    return low, final, rest


def report(name, dry):
    k, final, rest = fit(GRAMS, dry)
    squares = sum(r * r for r in rest)
    gains, expected, by = [], 0.0, 1e-4
    for reading in range(len(GRAMS) + (0 if dry is None else 1)):
        moved = []
        for sign in (1, -1):
            grams, d = list(GRAMS), dry
            if reading < len(GRAMS):
                grams[reading] += sign * by
            else:
                d += sign * by
            moved.append(fit(grams, d))
        (ku, fu, ru), (kd, fd, rd) = moved
        gains.append(((ku - kd) / (2 * by), (fu - fd) / (2 * by)))
        expected += sum(((u - d) / (2 * by)) ** 2 for u, d in zip(ru, rd))
    variance = squares / expected
    degrees = len(GRAMS) - 1 - (2 if dry is None else 1)
    print(name, "k", f"{k:.8g}", "final", f"{final:.8g}", "scatter", f"{sqrt(squares / degrees):.6g}", "degrees", degrees)
    print("  u of k", f"{sqrt(variance * sum(a * a for a, _ in gains)):.4g}", "of final", f"{sqrt(variance * sum(b * b for _, b in gains)):.4g}")


report("end fitted", None)
report("dry weighed", DRY)
