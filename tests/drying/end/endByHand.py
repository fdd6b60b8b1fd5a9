"""The falling-rate curve and its uncertainties, worked without the program: final + water exp(-k t) by a search over k with
the straight line solved at each, the covariance by inverting the normal matrix in final, water and k.

Run: python3 tests/drying/end/endByHand.py
The printed values stand in endByHand.test.ts.
"""

from math import exp, sqrt

# Student's t, two-sided 95 %, and the normal deviate: printed tables.
T95 = {1: 12.7062, 2: 4.30265, 3: 3.18245, 4: 2.77645}
NORMAL = 1.959964


def line(times, grams, k):
    xs = [exp(-k * (t - times[0])) for t in times]
    n, sx, sy = len(xs), sum(xs), sum(grams)
    sxx, sxy = sum(x * x for x in xs), sum(x * y for x, y in zip(xs, grams))
    water = (n * sxy - sx * sy) / (n * sxx - sx * sx)
    final = (sy - water * sx) / n
    return final, water, sum((y - final - water * x) ** 2 for x, y in zip(xs, grams))


def best(times, grams, low=1e-4, high=1.0):
    golden = (sqrt(5) - 1) / 2
    for _ in range(200):
        a, b = high - golden * (high - low), low + golden * (high - low)
        if line(times, grams, a)[2] < line(times, grams, b)[2]:
            high = b
        else:
            low = a
    # A golden section settles to half the digits; the rest by Newton's rule on the slope of the squares.
    k = (low + high) / 2
    for _ in range(50):
        final, water, _ = line(times, grams, k)
        es = [exp(-k * (t - times[0])) for t in times]
        normal, right = [[0.0] * 3 for _ in range(3)], [0.0] * 3
        for t, y, e in zip(times, grams, es):
            row = (1.0, e, -water * (t - times[0]) * e)
            for i in range(3):
                right[i] += row[i] * (y - final - water * e)
                for j in range(3):
                    normal[i][j] += row[i] * row[j]
        k += sum(inverse(normal)[2][j] * right[j] for j in range(3))
    return k


def inverse(m):
    (a, b, c), (d, e, f), (g, h, i) = m
    det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
    return [
        [(e * i - f * h) / det, (c * h - b * i) / det, (b * f - c * e) / det],
        [(f * g - d * i) / det, (a * i - c * g) / det, (c * d - a * f) / det],
        [(d * h - e * g) / det, (b * g - a * h) / det, (a * e - b * d) / det],
    ]


def report(name, times, grams, step, normal=NORMAL):
    k = best(times, grams)
    final, water, squares = line(times, grams, k)
    rows = [(1.0, exp(-k * t), -water * t * exp(-k * t)) for t in (t - times[0] for t in times)]
    matrix = [[sum(r[i] * r[j] for r in rows) for j in range(3)] for i in range(3)]
    unit = inverse(matrix)
    degrees = len(times) - 3
    reading = step / sqrt(6)
    scatter = sqrt(squares / degrees)
    last = times[-1] - times[0]
    left = water * exp(-k * last)
    slopes = (0.0, exp(-k * last), -water * last * exp(-k * last))
    per = {
        "final": sqrt(unit[0][0]),
        "rate": sqrt(unit[2][2]),
        "water left": sqrt(sum(slopes[i] * unit[i][j] * slopes[j] for i in range(3) for j in range(3))),
    }
    print(name)
    print("  final", f"{final:.10g}", "rate", f"{k:.10g}", "water left", f"{left:.10g}", "scatter", f"{scatter:.10g}")
    for what, gain in per.items():
        standard = gain * max(reading, scatter)
        expanded = gain * max(normal * reading, T95[degrees] * scatter)
        print("  u of", what, f"{standard:.8g}", "95 %", f"{expanded:.6g}")


# Water of 1.6 g that halves every half hour, read without error: the balance alone makes the uncertainty.
report("exact", [0, 30, 60, 90, 120], [10, 9.2, 8.8, 8.6, 8.5], 0.001)
# The same kind of run with readings that stray by several steps: the scatter makes it.
report("scattered", [0, 30, 60, 90, 120, 150, 200], [10, 9.203, 8.798, 8.603, 8.497, 8.453, 8.414], 0.001)
