import fc from "fast-check";
import { law, type Law } from "./Law";

const QUANTITIES = ["volatile matter", "fixed carbon", "ash", "carbon", "hydrogen", "oxygen", "nitrogen", "moisture", "char yield"] as const;

export const sense: readonly Law[] = [
  law("TYPICALRANGE")("judges by the two limits that it names, both of them inside", (call) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...QUANTITIES),
        fc.integer({ min: 1, max: 999 }).map((thousandths) => thousandths / 1000),
        fc.constantFrom("wood", "nut shells", "plant matter", "rice husk"),
        (quantity, value, feedstock) => {
          const said = String(call("TYPICALRANGE", quantity, value, feedstock));
          const { verdict, of, least, most } =
            /^(?<verdict>inside|outside): .* of (?<of>[\d.]+),.* the (?<least>[\d.]+) to (?<most>[\d.]+) of /.exec(said)?.groups ?? {};
          expect(Number(of)).toBe(value);
          expect(verdict).toBe(Number(least) <= value && value <= Number(most) ? "inside" : "outside");
          if (verdict === "outside") expect(said).toContain(value < Number(least) ? "is below the" : "is above the");
        },
      ),
      { numRuns: 300 },
    );
  }),
];
