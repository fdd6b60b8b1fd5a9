import fc from "fast-check";
import { between, grams } from "./draws";
import { law, numberBy, type Law } from "./Law";

const AIR = 1.2;
const WEIGHTS = 8000;

export const balance: readonly Law[] = [
  law("BUOYANCY")("leaves the balance in equilibrium: what the air carries of body and weights is accounted for (Archimedes)", (call) => {
    fc.assert(
      fc.property(between(0.01, 1000), between(200, 20_000), between(0.9, 1.5), between(5000, 20_000), (reading, density, air, weights) => {
        const mass = numberBy(call)("BUOYANCY", reading, density, air, weights);
        expect((mass * (1 - air / density)) / (reading * (1 - air / weights))).toBeCloseTo(1, 12);
        const usual = numberBy(call)("BUOYANCY", reading, density);
        expect((usual * (1 - AIR / density)) / (reading * (1 - AIR / WEIGHTS))).toBeCloseTo(1, 12);
      }),
    );
  }),

  // Dry air is an ideal gas to 4 parts in 10 000: p M / (R T).
  law("AIRDENSITY")("of dry air is that of an ideal gas of 28.965 g/mol within 1e-3, by both formulas", (call) => {
    fc.assert(
      fc.property(between(15, 27), between(90_000, 110_000), fc.constantFrom("CIPM-2007", "OIML"), (t, p, formula) => {
        const ideal = (p * 0.028965) / (8.314463 * (t + 273.15));
        expect(Math.abs(numberBy(call)("AIRDENSITY", t, p, 0, formula) / ideal - 1)).toBeLessThan(1e-3);
      }),
    );
  }),

  law("ZERODRIFT")("recovers a true weight from a zero that drifts on a straight line, halfway where no times are given", (call) => {
    fc.assert(
      fc.property(
        between(1, 100),
        between(-0.005, 0.005),
        between(-0.0001, 0.0001),
        between(1, 50),
        between(1, 50),
        (weight, zero, rate, gap, rest) => {
          const zeroAt = (minute: number): number => zero + rate * minute;
          const [before, at, after] = [1, 1 + gap, 1 + gap + rest];
          expect(numberBy(call)("ZERODRIFT", weight + zeroAt(at), zeroAt(before), zeroAt(after), before, at, after)).toBeCloseTo(weight, 9);
          expect(numberBy(call)("ZERODRIFT", weight + (zeroAt(before) + zeroAt(after)) / 2, zeroAt(before), zeroAt(after))).toBeCloseTo(weight, 9);
        },
      ),
    );
  }),

  law("BLANKCORRECTED")("and the blank add up to the loss", (call) => {
    fc.assert(
      fc.property(grams(100, 10_000), between(-0.09, 0.09), (loss, blank) => {
        expect(numberBy(call)("BLANKCORRECTED", loss, blank) + blank).toBeCloseTo(loss, 12);
      }),
    );
  }),

  law("HOTWEIGHING")("is the rate for each degree, 0.19 mg where none is given", (call) => {
    fc.assert(
      fc.property(between(0.1, 50), between(0.00001, 0.001), (difference, rate) => {
        expect(numberBy(call)("HOTWEIGHING", difference, rate) / (difference * rate)).toBeCloseTo(1, 12);
        expect(numberBy(call)("HOTWEIGHING", difference) / (difference * 0.00019)).toBeCloseTo(1, 12);
      }),
    );
  }),
];
