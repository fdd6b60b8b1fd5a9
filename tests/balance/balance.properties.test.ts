import fc from "fast-check";
import { airDensity } from "../../src/balance/airDensity";
import { blankCorrected } from "../../src/balance/blankCorrected";
import { buoyancy } from "../../src/balance/buoyancy";
import { hotWeighing } from "../../src/balance/hotWeighing";
import { shareOfSpan, zeroDrift } from "../../src/balance/zeroDrift";

const between = (least: number, most: number): fc.Arbitrary<number> => fc.double({ min: least, max: most, noNaN: true });

test("BUOYANCY of a body as dense as the weights is the reading itself", () => {
  fc.assert(
    fc.property(between(0.001, 1000), between(100, 20_000), between(0.5, 1.6), (reading, density, air) => {
      expect(buoyancy(reading, density, air, density) / reading).toBeCloseTo(1, 12);
    }),
  );
});

test("BUOYANCY adds to a body lighter than the weights and takes from a denser one", () => {
  fc.assert(
    fc.property(between(100, 7900), between(8100, 20_000), between(0.5, 1.6), (light, dense, air) => {
      expect(buoyancy(1, light, air)).toBeGreaterThan(1);
      expect(buoyancy(1, dense, air)).toBeLessThan(1);
    }),
  );
});

test("BUOYANCY leaves a loss fraction within one material unchanged", () => {
  fc.assert(
    fc.property(between(1, 100), between(0, 0.9), between(100, 20_000), (before, loss, density) => {
      const after = before * (1 - loss);
      expect(1 - buoyancy(after, density) / buoyancy(before, density)).toBeCloseTo(loss, 12);
    }),
  );
});

// OIML R 111-1 states 2e-4 for its formula (from memory); CIPM-2007 is the better one, good to 2.2e-5 (its abstract, from memory).
test("AIRDENSITY: the two formulas agree within 2e-4 wherever both hold", () => {
  fc.assert(
    fc.property(between(15, 27), between(90_000, 110_000), between(0, 0.8), (...air) => {
      expect(Math.abs(airDensity(...air, "OIML") / airDensity(...air, "CIPM-2007") - 1)).toBeLessThan(2e-4);
    }),
    { numRuns: 2000 },
  );
});

test("they differ by more than 1e-6 somewhere, so they are two formulas", () => {
  expect(Math.abs(airDensity(15, 110_000, 0.8, "OIML") / airDensity(15, 110_000, 0.8) - 1)).toBeGreaterThan(1e-4);
});

test.each(["CIPM-2007", "OIML"] as const)("AIRDENSITY by %s falls with temperature and humidity and rises with pressure", (formula) => {
  fc.assert(
    fc.property(between(15, 26), between(90_000, 109_000), between(0, 0.7), (t, p, h) => {
      const here = airDensity(t, p, h, formula);
      expect(airDensity(t + 1, p, h, formula)).toBeLessThan(here);
      expect(airDensity(t, p + 1000, h, formula)).toBeGreaterThan(here);
      expect(airDensity(t, p, h + 0.1, formula)).toBeLessThan(here);
    }),
  );
});

// Dry air is an ideal gas to 4 parts in 10 000: p M / (R T).
test("AIRDENSITY of dry air is that of an ideal gas of 28.965 g/mol within 1e-3", () => {
  fc.assert(
    fc.property(between(15, 27), between(60_000, 110_000), (t, p) => {
      expect(Math.abs(airDensity(t, p, 0) / ((p * 0.028965) / (8.314463 * (t + 273.15))) - 1)).toBeLessThan(1e-3);
    }),
  );
});

const zeros = fc.tuple(between(-0.01, 0.01), between(-0.01, 0.01));
const moments = fc
  .tuple(between(1, 100), between(0.1, 50), between(0.1, 50))
  .map(([start, gap, rest]) => ({ before: start, at: start + gap, after: start + gap + rest }));

test("ZERODRIFT recovers a true weight from a zero that drifts on a straight line", () => {
  fc.assert(
    fc.property(between(1, 100), between(-0.005, 0.005), between(-0.0001, 0.0001), moments, (weight, offset, rate, times) => {
      const zeroAt = (minute: number): number => offset + rate * minute;
      expect(zeroDrift(weight + zeroAt(times.at), zeroAt(times.before), zeroAt(times.after), times)).toBeCloseTo(weight, 9);
    }),
  );
});

test("ZERODRIFT with the weighing midway in time is ZERODRIFT without times", () => {
  fc.assert(
    fc.property(between(1, 100), zeros, between(1, 100), between(1, 50), (reading, [first, second], start, half) => {
      const times = { before: start, at: start + half, after: start + 2 * half };
      expect(zeroDrift(reading, first, second, times)).toBeCloseTo(zeroDrift(reading, first, second), 9);
    }),
  );
});

test("ZERODRIFT takes minutes, hours and days alike: only the proportion counts", () => {
  fc.assert(
    fc.property(moments, between(0.1, 100), (times, unit) => {
      const scaled = { before: times.before * unit, at: times.at * unit, after: times.after * unit };
      expect(shareOfSpan(scaled)).toBeCloseTo(shareOfSpan(times), 9);
    }),
  );
});

test("BLANKCORRECTED and the blank add up to the loss", () => {
  fc.assert(
    fc.property(between(0.1, 10), between(-0.1, 0.1), (loss, blank) => {
      expect(blankCorrected(loss, blank) + blank).toBeCloseTo(loss, 12);
    }),
  );
});

test("HOTWEIGHING is nothing at room temperature and twice as much for twice the difference", () => {
  fc.assert(
    fc.property(between(0.1, 50), between(0.00001, 0.001), (difference, rate) => {
      expect(hotWeighing(0, rate)).toBe(0);
      expect(hotWeighing(2 * difference, rate)).toBeCloseTo(2 * hotWeighing(difference, rate), 12);
    }),
  );
});
