import fc from "fast-check";
import { asTable } from "../call";
import { between, grams } from "./draws";
import { figureBy, law, numberBy, type Law } from "./Law";

// eslint-disable-next-line @typescript-eslint/no-require-imports -- the package has no types
const chemicalFormula = require("chemical-formula") as (formula: string) => Record<string, number>;

/** A fuel of carbon, hydrogen and oxygen that takes up oxygen, and what it is made of. */
const fuel = fc
  .record({ c: fc.integer({ min: 1, max: 60 }), h: fc.integer({ min: 1, max: 120 }), o: fc.integer({ min: 0, max: 60 }) })
  .filter(({ c, h, o }) => 4 * c + h > 2 * o)
  // Each symbol in a bracket of its own: CH60 reads as a slip for the letter O, CH116O as one for the isotope O-16.
  .map(({ c, h, o }) => ({ c, h, o, formula: `(C)${c}(H)${h}${o > 0 ? `(O)${o}` : ""}` }));

/** `2 C8H18 + 25 O2` as atoms. */
function atomsOf(side: string): Record<string, number> {
  const sum: Record<string, number> = {};
  for (const term of side.split(" + ")) {
    const { count = "1", formula = "" } = /^(?:(?<count>[\d.]+) )?(?<formula>\S+)$/.exec(term)?.groups ?? {};
    for (const [symbol, atoms] of Object.entries(chemicalFormula(formula))) sum[symbol] = (sum[symbol] ?? 0) + Number(count ?? 1) * atoms;
  }
  return sum;
}

export const burning: readonly Law[] = [
  law("OXYGENDEMAND", "MOLARMASS")("of CxHyOz is x + y/4 - z/2 mol of O2 on a mole", (call) => {
    const number = numberBy(call);
    fc.assert(
      fc.property(fuel, ({ c, h, o, formula }) => {
        const moles = (number("OXYGENDEMAND", formula) * number("MOLARMASS", formula)) / 31.998;
        expect(moles).toBeCloseTo(c + h / 4 - o / 2, 6);
      }),
    );
  }),

  law(
    "OXYGENDEMAND.ULTIMATE",
    "OXYGENDEMAND",
    "ATOMS",
  )("of a formula's own mass fractions is the formula's oxygen demand", (call) => {
    fc.assert(
      fc.property(fuel, ({ o, formula }) => {
        const share = (symbol: string): number => figureBy(call)(symbol, 3, "ATOMS", formula);
        const ultimate = numberBy(call)("OXYGENDEMAND.ULTIMATE", share("C"), share("H"), o > 0 ? share("O") : 0);
        expect(ultimate).toBeCloseTo(numberBy(call)("OXYGENDEMAND", formula), 9);
      }),
    );
  }),

  law("AIRDEMAND")("holds the oxygen that is asked for, at any share of it in air", (call) => {
    fc.assert(
      fc.property(between(0.01, 8), between(0.22, 0.25), (oxygen, share) => {
        expect((numberBy(call)("AIRDEMAND", oxygen, share) * share) / oxygen).toBeCloseTo(1, 12);
      }),
    );
  }),

  law("BURN.EQUATION")("has as many atoms of each element on both sides, as chemical-formula counts them", (call) => {
    fc.assert(
      fc.property(fuel, ({ formula }) => {
        const [left = "", right = ""] = String(call("BURN.EQUATION", formula)).split(" → ");
        expect(left).toContain(formula);
        expect(atomsOf(left)).toEqual(atomsOf(right));
      }),
    );
  }),

  law("BURN.PRODUCTS", "OXYGENDEMAND")("weighs as much after burning as before: 1 g of fuel and the oxygen it takes up", (call) => {
    fc.assert(
      fc.property(fuel, ({ formula }) => {
        const taken = 1 + numberBy(call)("OXYGENDEMAND", formula);
        for (const side of ["In: fuel + oxygen", "Out: products"]) expect(figureBy(call)(side, 2, "BURN.PRODUCTS", formula)).toBeCloseTo(taken, 9);
        const products = asTable(call("BURN.PRODUCTS", formula), formula).slice(1, -2);
        expect(products.reduce((sum, row) => sum + (row[2] as number), 0)).toBeCloseTo(taken, 9);
      }),
    );
  }),

  law(
    "BURN.PRODUCTS",
    "AIRDEMAND",
    "OXYGENDEMAND",
  )("with excess air weighs 1 g of fuel and all that air", (call) => {
    fc.assert(
      fc.property(fuel, between(0, 3), ({ formula }, excess) => {
        const air = numberBy(call)("AIRDEMAND", numberBy(call)("OXYGENDEMAND", formula)) * (1 + excess);
        expect(figureBy(call)("Out: products", 2, "BURN.PRODUCTS", formula, excess) / (1 + air)).toBeCloseTo(1, 9);
      }),
    );
  }),

  law("BURN.COMPARE", "OXYGENDEMAND")("closes both ways, and the open fire takes up the oxygen of all that is not ash", (call) => {
    const weighed = fc.record({ vessel: grams(0, 60_000), dry: grams(2000, 20_000), char: grams(200, 1900), ash: grams(1, 199) });
    fc.assert(
      fc.property(fuel, weighed, ({ formula }, { vessel, dry, char, ash }) => {
        const raw = [vessel || "tared", vessel + dry, vessel + char, vessel + ash, formula];
        const figure = (label: string, column: number): number => figureBy(call)(label, column, "BURN.COMPARE", ...raw);
        for (const column of [1, 3]) expect(figure("Out, together", column)).toBeCloseTo(figure("In, together", column), 6);
        expect(figure("In: oxygen taken up", 3)).toBeCloseTo((dry - ash) * numberBy(call)("OXYGENDEMAND", formula), 6);
        expect(figure("Leaves: vapours, or burned gases", 1)).toBeCloseTo(dry - char, 6);
      }),
    );
  }),
];
