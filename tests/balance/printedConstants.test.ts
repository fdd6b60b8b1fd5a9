import { airDensity } from "../../src/balance/airDensity";
import { blankCorrected } from "../../src/balance/blankCorrected";
import { buoyancy, USUAL_AIR, USUAL_REFERENCE } from "../../src/balance/buoyancy";
import { COMPRESSIBILITY, DRY_AIR, ENHANCEMENT, GAS_CONSTANT, SATURATION, WATER, zeroCelsius } from "../../src/balance/cipmAirDensity";
import { CRUCIBLE_RATE, hotWeighing } from "../../src/balance/hotWeighing";
import { OIML } from "../../src/balance/oimlAirDensity";
import { shareOfSpan, zeroDrift } from "../../src/balance/zeroDrift";

// Read as printed: Picard, Davis, Glaeser, Fujii, Metrologia 45 (2008) 149, appendix A1; each figure was compared with three
// public transcriptions of the paper, which agree.
test("every constant of CIPM-2007 is the printed one", () => {
  const printed = (text: Readonly<Record<string, string>>): object =>
    Object.fromEntries(Object.entries(text).map(([name, figure]) => [name, Number(figure)]));
  expect(SATURATION).toEqual(printed({ A: "1.2378847e-5", B: "-1.9121316e-2", C: "33.93711047", D: "-6.3431645e3" }));
  expect(ENHANCEMENT).toEqual(printed({ alpha: "1.00062", beta: "3.14e-8", gamma: "5.6e-7" }));
  expect(COMPRESSIBILITY).toEqual(
    printed({
      a0: "1.58123e-6",
      a1: "-2.9331e-8",
      a2: "1.1043e-10",
      b0: "5.707e-6",
      b1: "-2.051e-8",
      c0: "1.9898e-4",
      c1: "-2.376e-6",
      d: "1.83e-11",
      e: "-0.765e-8",
    }),
  );
  expect([GAS_CONSTANT, 1000 * DRY_AIR, 1000 * WATER]).toEqual([8.314472, 28.96546, 18.01528]);
});

// The Celsius scale, by definition; OIML R 111-1, E.3-1, from memory; OIML D 28, read; Blade, Analytical Chemistry, read.
test("the constants of one line each are the printed ones", () => {
  expect(zeroCelsius).toBe(273.15);
  expect(OIML).toEqual({ pressure: 0.34848, humidity: 0.009, exponent: 0.061 });
  expect([USUAL_AIR, USUAL_REFERENCE]).toEqual([1.2, 8000]);
  expect(1000 * CRUCIBLE_RATE).toBe(0.19);
});

// Calculated outside: airDensity.py beside this file, decimal arithmetic. The corners of the range make each term count.
test.each([
  [15, 60_000, 0, "0.7255769905583"],
  [15, 110_000, 1, "1.3227220632931"],
  [27, 60_000, 1, "0.6809245357686"],
  [27, 110_000, 0.5, "1.2693277566414"],
  [21.3, 87_000, 0.62, "1.0226202500688"],
])("CIPM-2007 at %s degC, %s Pa, humidity %s is %s kg/m3", (temperature, pressure, humidity, calculated) => {
  expect(airDensity(temperature, pressure, humidity)).toBeCloseTo(Number(calculated), 12);
});

test.each([
  [10, 90_000, 0.8, "1.1029732982267"],
  [30, 110_000, 0.8, "1.2496770628595"],
  [30, 90_000, 0, "1.0345769421079"],
  [23, 95_000, 0.4, "1.1129216336990"],
])("OIML at %s degC, %s Pa, humidity %s is %s kg/m3", (temperature, pressure, humidity, calculated) => {
  expect(airDensity(temperature, pressure, humidity, "OIML")).toBeCloseTo(Number(calculated), 12);
});

// CIPM-2007: 600 to 1100 hPa and 15 to 27 degC, read; OIML: 900 to 1100 hPa, 10 to 30 degC, humidity to 80 %, from memory.
const USUAL = [20, 100_000, 0.5] as const;
test.each([
  ["CIPM-2007", 0, 15, 27],
  ["CIPM-2007", 1, 60_000, 110_000],
  ["CIPM-2007", 2, 0, 1],
  ["OIML", 0, 10, 30],
  ["OIML", 1, 90_000, 110_000],
  ["OIML", 2, 0, 0.8],
] as const)("%s, argument %s holds from %s to %s, both ends counted", (formula, index, least, most) => {
  const at = (value: number): number => {
    const [t, p, h] = USUAL.map((usual, place) => (place === index ? value : usual)) as [number, number, number];
    return airDensity(t, p, h, formula);
  };
  for (const end of [least, most]) expect(at(end)).toBeGreaterThan(0.6);
  for (const beyond of [least - 1e-6, most + 1e-6]) expect(() => at(beyond)).toThrow(/temperature|pressure|humidity/);
});

describe("zero drift", () => {
  test("without times the weighing stands midway, as in an A-B-A weighing (worked by hand: 0.5)", () => {
    expect(shareOfSpan()).toBe(0.5);
    expect(zeroDrift(100, 2, 6)).toBe(96);
  });

  // Worked by hand: 3 of 12 minutes is a quarter; of the drift from 2 to 6, that is 1.
  test("a weighing 3 of 12 minutes after the first zero stands at a quarter", () => {
    expect(shareOfSpan({ before: 1, at: 4, after: 13 })).toBe(0.25);
    expect(zeroDrift(100, 2, 6, { before: 1, at: 4, after: 13 })).toBe(97);
  });

  // A tenth of the reading: common practice, no source.
  test("zeros a tenth of the reading apart pass, either way round, and further apart do not", () => {
    expect(zeroDrift(100, 0, 10)).toBe(95);
    expect(zeroDrift(100, 10, 0)).toBe(95);
    expect(() => zeroDrift(100, 0, 10.001)).toThrow(/^zero/);
    expect(() => zeroDrift(100, 10.001, 0)).toThrow(/^zero/);
  });

  test("a start of 0 is minutes while the end lies from 1 to a week of them, 10080", () => {
    expect(shareOfSpan({ before: 0, at: 0.5, after: 1 })).toBe(0.5);
    expect(shareOfSpan({ before: 0, at: 5040, after: 10_080 })).toBe(0.5);
    expect(() => shareOfSpan({ before: 0, at: 0.4, after: 0.99 })).toThrow(/timeBefore/);
    expect(() => shareOfSpan({ before: 0, at: 1, after: 10_081 })).toThrow(/timeBefore/);
    expect(shareOfSpan({ before: 0.2, at: 0.3, after: 0.4 })).toBeCloseTo(0.5, 14);
    expect(shareOfSpan({ before: 45_000, at: 45_001, after: 45_004 })).toBe(0.25);
  });

  test("the weighing may fall together with either zero, but not outside them", () => {
    expect(shareOfSpan({ before: 1, at: 1, after: 3 })).toBe(0);
    expect(shareOfSpan({ before: 1, at: 3, after: 3 })).toBe(1);
    for (const times of [
      { before: 2, at: 1, after: 3 },
      { before: 1, at: 4, after: 3 },
      { before: 2, at: 2, after: 2 },
    ])
      expect(() => shareOfSpan(times)).toThrow(/time/);
  });
});

test("a blank as large as the loss leaves nothing, and one beyond it is refused, of either sign", () => {
  expect(blankCorrected(1, 1)).toBe(0);
  expect(blankCorrected(1, -1)).toBe(2);
  expect(() => blankCorrected(1, 1.001)).toThrow(/blank/);
  expect(() => blankCorrected(1, -1.001)).toThrow(/blank/);
});

// Worked by hand: four weighings of 0.5 mg each scatter by 2 x 0.5 mg, twice that is 2 mg.
describe("a blank near a loss of nothing", () => {
  test.each([
    ["a small gain within the scatter", 0.0004, 0.0006, -0.0002],
    ["a gain at the edge of the scatter", 0.001, 0.003, -0.002],
    ["a small loss beside a larger gain of the vessel", 0.0005, -0.0008, 0.0013],
    ["a gain of both within the scatter", -0.0004, 0.0003, -0.0007],
  ])("%s passes with u = 0.5 mg and is refused without", (_title, loss, blank, net) => {
    expect(blankCorrected(loss, blank, 0.000_500_000_1)).toBeCloseTo(net, 12);
    expect(() => blankCorrected(loss, blank)).toThrow(/u where/);
    expect(() => blankCorrected(loss, blank, 0.000_01)).toThrow(/u where/);
  });

  test("a vessel that gained more than both together leaves a loss, up to ten times as much", () => {
    expect(blankCorrected(-0.03, -0.05)).toBeCloseTo(0.02, 12);
    expect(blankCorrected(-0.005, -0.05)).toBeCloseTo(0.045, 12);
    expect(() => blankCorrected(-0.005, -0.0501)).toThrow(/larger change than loss/);
    expect(blankCorrected(-0.05, -0.05)).toBe(0);
  });
});

// Worked by hand: 7 (1 - 1 / 7000) / (1 - 1 / 700) = 6.999 x 700 / 699; 10 degC at 0.19 mg each.
test("buoyancy with other air and weights, and a vessel 10 degC too warm", () => {
  expect(buoyancy(7, 700, 1, 7000)).toBeCloseTo((6.999 * 700) / 699, 12);
  expect(hotWeighing(10)).toBeCloseTo(0.0019, 12);
});
