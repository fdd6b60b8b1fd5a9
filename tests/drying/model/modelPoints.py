"""The laws of thin-layer drying at single points, worked with 30-digit decimals and nothing of the program.

Run: python3 tests/drying/model/modelPoints.py
The printed values stand in dryingModels.test.ts.
"""

from decimal import Decimal as D, getcontext

getcontext().prec = 30


def power(base, exponent):
    return (exponent * base.ln()).exp()


LAWS = {
    # name: (law, parameters, minutes)
    "Newton": (lambda t, k: (-k * t).exp(), ["0.012"], ["25", "180"]),
    "Page": (lambda t, k, n: (-k * power(t, n)).exp(), ["0.03", "0.8"], ["25", "180"]),
    "modified Page": (lambda t, k, n: (-power(k * t, n)).exp(), ["0.012", "1.3"], ["25", "180"]),
    "Henderson-Pabis": (lambda t, a, k: a * (-k * t).exp(), ["0.96", "0.012"], ["0", "180"]),
    "logarithmic": (lambda t, a, k, c: a * (-k * t).exp() + c, ["0.9", "0.012", "0.06"], ["0", "180"]),
    "two-term": (lambda t, a, k, b, g: a * (-k * t).exp() + b * (-g * t).exp(), ["0.65", "0.03", "0.35", "0.006"], ["25", "180"]),
}

for name, (law, parameters, minutes) in LAWS.items():
    for t in minutes:
        print(name, parameters, "t =", t, "MR =", f"{law(D(t), *map(D, parameters)):.12f}")
