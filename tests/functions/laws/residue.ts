import fc from "fast-check";
import { between, grams, milligrams } from "./draws";
import { figureBy, law, numberBy, type Law } from "./Law";
import { BASIS_FACTORS } from "../../residue/basisFactors";

/** Five weighings of one vessel in the order they are taken: empty, moist, dry, charred, burnt. */
const run = fc
  .record({ vessel: grams(1, 60_000), ash: grams(1, 2000), carbon: grams(1, 9000), volatile: grams(1, 20_000), water: grams(1, 20_000) })
  .map(({ vessel, ash, carbon, volatile, water }) => {
    const [burnt, char] = [vessel + ash, vessel + ash + carbon];
    return [vessel, char + volatile + water, char + volatile, char, burnt].map(milligrams) as [number, number, number, number, number];
  });

export const residue: readonly Law[] = [
  law("VOLATILEFRACTION", "CHARYIELD")("what leaves and what stays of one dry sample add up to 1", (call) => {
    fc.assert(
      fc.property(run, ([vessel, , dry, char, ash]) => {
        const stays = numberBy(call)("CHARYIELD", vessel, dry, char);
        expect(stays + numberBy(call)("VOLATILEFRACTION", vessel, dry, char)).toBeCloseTo(1, 9);
        // Without the ash on both sides of the quotient.
        expect(numberBy(call)("CHARYIELD", vessel, dry, char, ash)).toBeCloseTo((char - ash) / (dry - ash), 6);
      }),
    );
  }),

  law("LOSSONIGNITION", "ASHFRACTION")("loss and ash of one dry sample add up to 1", (call) => {
    fc.assert(
      fc.property(run, ([vessel, , dry, , ash]) => {
        expect(numberBy(call)("LOSSONIGNITION", vessel, dry, ash) + numberBy(call)("ASHFRACTION", vessel, dry, ash)).toBeCloseTo(1, 9);
      }),
    );
  }),

  law("PROXIMATE")("the four shares are those of the differences of its weighings, on both bases, and sum to 1", (call) => {
    fc.assert(
      fc.property(run, ([vessel, moist, dry, char, ash]) => {
        const [asReceived, onDry] = [1, 2].map(
          (column) => (label: string) => figureBy(call)(label, column, "PROXIMATE", vessel, moist, dry, char, ash),
        );
        const [sample, drySample] = [moist - vessel, dry - vessel];
        expect(asReceived?.("Moisture")).toBeCloseTo((moist - dry) / sample, 6);
        for (const [label, mass] of [
          ["Volatile matter", dry - char],
          ["Fixed carbon", char - ash],
          ["Ash", ash - vessel],
        ] as const) {
          expect(asReceived?.(label)).toBeCloseTo(mass / sample, 6);
          expect(onDry?.(label)).toBeCloseTo(mass / drySample, 6);
        }
        for (const basis of [asReceived, onDry]) expect(basis?.("Sum")).toBeCloseTo(1, 9);
      }),
    );
  }),

  law(
    "VOLATILEMATTER",
    "ASHFRACTION",
    "FIXEDCARBON",
    "MOISTURE.WET",
    "PROXIMATE",
  )("one by one give the shares of PROXIMATE, as received and dry", (call) => {
    const number = numberBy(call);
    fc.assert(
      fc.property(run, ([vessel, moist, dry, char, ash]) => {
        const expected = (label: string, column: number): number => figureBy(call)(label, column, "PROXIMATE", vessel, moist, dry, char, ash);
        const moisture = number("MOISTURE.WET", vessel, moist, dry);
        const volatile = number("VOLATILEMATTER", vessel, moist, char, moisture);
        const ashes = number("ASHFRACTION", vessel, moist, ash);
        expect(volatile).toBeCloseTo(expected("Volatile matter", 1), 9);
        expect(ashes).toBeCloseTo(expected("Ash", 1), 9);
        expect(number("FIXEDCARBON", moisture, volatile, ashes)).toBeCloseTo(expected("Fixed carbon", 1), 9);
        expect(number("VOLATILEMATTER", vessel, moist, char, moisture, "dry")).toBeCloseTo(expected("Volatile matter", 2), 6);
        expect(number("ASHFRACTION", vessel, moist, ash, moisture)).toBeCloseTo(expected("Ash", 2), 6);
      }),
    );
  }),

  law("BASIS.CONVERT")("multiplies by the printed factor, for each pair of bases", (call) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.entries(BASIS_FACTORS)),
        between(0.01, 0.2),
        between(0.001, 0.7),
        between(0.001, 0.2),
        between(0.001, 0.3),
        ([way, factor], value, received, analysed, ash) => {
          const ours = numberBy(call)("BASIS.CONVERT", value, ...way.split(" to "), received, analysed, ash);
          expect(ours).toBeCloseTo(value * factor(100 * received, 100 * analysed, 100 * ash), 9);
        },
      ),
      { numRuns: 300 },
    );
  }),

  law("BASIS.CONVERT", "ATOMS")("of hydrogen and oxygen takes out what the water of the sample holds", (call) => {
    fc.assert(
      fc.property(
        fc.constantFrom(["hydrogen", "H"] as const, ["oxygen", "O"] as const),
        between(0.01, 0.1),
        between(0.001, 0.5),
        ([quantity, symbol], dry, moisture) => {
          const ofWater = moisture * figureBy(call)(symbol, 3, "ATOMS", "H2O");
          expect(numberBy(call)("BASIS.CONVERT", dry, "dry", "as received", moisture, null, null, quantity)).toBeCloseTo(
            dry * (1 - moisture) + ofWater,
            9,
          );
        },
      ),
    );
  }),
];
