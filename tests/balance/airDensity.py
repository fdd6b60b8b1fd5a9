"""Air densities behind tests/balance/printedConstants.test.ts, worked out apart from the program.

Nothing but Python is needed: python3 airDensity.py. It prints the rows that the test holds. Constants as Picard, Davis, Glaeser
and Fujii print them, Metrologia 45 (2008) 149, in decimal arithmetic of 40 digits; OIML R 111-1, E.3-1, from memory.
"""
from decimal import Decimal as D
from decimal import getcontext

getcontext().prec = 40


def cipm(t, p, h):
    kelvin = t + D("273.15")
    saturation = (D("1.2378847e-5") * kelvin**2 - D("1.9121316e-2") * kelvin + D("33.93711047") - D("6.3431645e3") / kelvin).exp()
    enhancement = D("1.00062") + D("3.14e-8") * p + D("5.6e-7") * t**2
    x = h * enhancement * saturation / p
    first = (
        D("1.58123e-6") - D("2.9331e-8") * t + D("1.1043e-10") * t**2
        + (D("5.707e-6") - D("2.051e-8") * t) * x
        + (D("1.9898e-4") - D("2.376e-6") * t) * x**2
    )
    z = 1 - p / kelvin * first + (p / kelvin) ** 2 * (D("1.83e-11") - D("0.765e-8") * x**2)
    dry, water = D("28.96546e-3"), D("18.01528e-3")
    return p * dry / (z * D("8.314472") * kelvin) * (1 - x * (1 - water / dry))


def oiml(t, p, h):
    return (D("0.34848") * p / 100 - D("0.009") * 100 * h * (D("0.061") * t).exp()) / (D("273.15") + t)


if __name__ == "__main__":
    for t, p, h in (("15", "60000", "0"), ("15", "110000", "1"), ("27", "60000", "1"), ("27", "110000", "0.5"), ("21.3", "87000", "0.62")):
        print(f'  [{t}, {p}, {h}, "{cipm(D(t), D(p), D(h)):.13f}"],')
    for t, p, h in (("10", "90000", "0.8"), ("30", "110000", "0.8"), ("30", "90000", "0"), ("23", "95000", "0.4")):
        print(f'  [{t}, {p}, {h}, "{oiml(D(t), D(p), D(h)):.13f}"],')
