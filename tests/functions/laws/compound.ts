import { MF } from "mf-parser";
import { hydrates, withoutDots } from "../../chemistry/realCompounds";
import { asTable } from "../call";
import { law, numberBy, type Law } from "./Law";

// eslint-disable-next-line @typescript-eslint/no-require-imports -- the package has no types
const chemicalFormula = require("chemical-formula") as (formula: string) => Record<string, number>;

// mf-parser works its weights out from isotope masses and abundances: up to 150 parts in a million off for sulfur.
const RELATIVE_TOLERANCE = 2e-4;
const compounds = [...withoutDots, ...hydrates];

/** Symbol and count of each line that ATOMS gives. */
const counted = (table: readonly (readonly unknown[])[]): Record<string, unknown> =>
  Object.fromEntries(table.slice(1).map(([symbol, count]) => [symbol, count]));

export const compound: readonly Law[] = [
  law("MOLARMASS")("agrees with mf-parser on more than 300 compounds within 2 parts in 10,000", (call) => {
    expect(compounds.length).toBeGreaterThan(300);
    for (const formula of compounds) {
      const theirs = new MF(formula.replace("·", " . ")).getInfo().mass;
      expect(Math.abs(numberBy(call)("MOLARMASS", formula) / theirs - 1)).toBeLessThan(RELATIVE_TOLERANCE);
    }
  }),

  law("ATOMS")("counts the atoms of every compound without a dot as chemical-formula does", (call) => {
    for (const formula of withoutDots) expect(counted(asTable(call("ATOMS", formula), formula))).toEqual(chemicalFormula(formula));
  }),

  law("ATOMS", "MOLARMASS")("the masses of the atoms sum to the molar mass, their fractions to 1", (call) => {
    for (const formula of compounds) {
      const rows = asTable(call("ATOMS", formula), formula).slice(1) as [string, number, number, number][];
      expect(rows.reduce((sum, row) => sum + row[2], 0)).toBeCloseTo(numberBy(call)("MOLARMASS", formula), 9);
      expect(rows.reduce((sum, row) => sum + row[3], 0)).toBeCloseTo(1, 12);
    }
  }),

  law("FORMULA.CHECK", "MOLARMASS")("says the molar mass, and the atoms that chemical-formula counts", (call) => {
    for (const formula of withoutDots) {
      const said = /^(?<atoms>.*); (?<mass>[\d.]+) g\/mol/.exec(String(call("FORMULA.CHECK", formula)))?.groups;
      const atoms = Object.fromEntries((said?.atoms ?? "").split(", ").map((part) => [part.split(" ")[0], Number(part.split(" ")[1])]));
      expect(atoms).toEqual(chemicalFormula(formula));
      const half = 0.5 * 10 ** -(said?.mass?.split(".")[1]?.length ?? 0);
      expect(Math.abs(Number(said?.mass) - numberBy(call)("MOLARMASS", formula))).toBeLessThanOrEqual(half * (1 + 1e-6));
    }
  }),
];
