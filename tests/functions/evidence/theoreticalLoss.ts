import fc from "fast-check";
import { seededUniform } from "../../numerics/seededUniform";
import { calculated, PERCENT, published } from "../../published/Published";
import type { FunctionEvidence } from "../evidenceFiles";
import { law, numberBy, type Call } from "../laws/Law";
import { anySalt, atomsOf, sideAtoms, termsOf } from "../laws/salts";
import { scatterOf } from "../laws/scatter";

const CIAAW = "atoms counted by hand, weights of CIAAW 2021 (Prohaska et al., Pure Appl. Chem. 94 (2022) 573)";
const of = (start: string, residue: string): string => `=RETORT.THEORETICALLOSS("${start}", "${residue}")`;
const uOf = (start: string, residue: string): string => `=RETORT.THEORETICALLOSS("${start}", "${residue}", "", "u")`;
const equation = (call: Call, ...raw: readonly unknown[]): readonly string[] =>
  String(call("THEORETICALLOSS", raw[0], raw[1], raw[2] ?? null, "equation")).split(" → ");

/** Value and limit of the weights that the simulation draws, typed from the table of 2021. */
const DRAWN: Readonly<Record<string, readonly [value: number, limit: number]>> = {
  H: [1.008, 0.0002],
  C: [12.011, 0.002],
  O: [15.999, 0.001],
  S: [32.06, 0.02],
  Ca: [40.078, 0.004],
  Fe: [55.845, 0.002],
};

/** Scatter of a loss when each weight lies anywhere within its limit. */
function simulatedU(start: string, residue: string, perStart: number): number {
  const [uniform, runs] = [seededUniform(20_270_212), 12_000];
  const [left, whole] = [atomsOf(residue), atomsOf(start)];
  return scatterOf(runs, () => {
    const weights = Object.fromEntries(Object.entries(DRAWN).map(([symbol, [value, limit]]) => [symbol, value + limit * (2 * uniform() - 1)]));
    const mass = (atoms: Record<string, number>): number =>
      Object.entries(atoms).reduce((sum, [symbol, count]) => sum + count * (weights[symbol] as number), 0);
    return 1 - (perStart * mass(left)) / mass(whole);
  });
}

export const evidence: FunctionEvidence = {
  name: "THEORETICALLOSS",
  answer: ["Theoretical loss", "fraction"],
  published: [
    ...published("read as printed", "a balance maker's application note on calcium oxalate monohydrate: 87.67, 68.50 and 38.38 % left", [
      [of("CaC2O4·H2O", "CaC2O4"), "12.33", PERCENT],
      [of("CaC2O4·H2O", "CaCO3"), "31.50", PERCENT],
      [of("CaC2O4·H2O", "CaO"), "61.62", PERCENT],
    ]),
    ...calculated("decomposition.mjs", CIAAW, [
      [of("CaCO3", "CaO"), "0.43971185", "CaCO3 to CaO"],
      [of("MgCO3", "MgO"), "0.52197170", "MgCO3 to MgO"],
      [of("CaMg(CO3)2", "CaO + MgO"), "0.477324", "dolomite to oxides"],
      [of("CaMg(CO3)2", "CaO·MgO"), "0.477324", "dolomite to oxides"],
      [of("CaMg(CO3)2", "CaCO3 + MgO"), "0.238662", "dolomite to MgO and CaCO3"],
      [of("CaC2O4·H2O", "CaC2O4"), "0.123297", "oxalate to CaC2O4"],
      [of("CaC2O4·H2O", "CaCO3"), "0.315000", "oxalate to CaCO3"],
      [of("CaC2O4.H2O", "CaO"), "0.616203", "oxalate to CaO"],
      [of("CuSO4·5H2O", "CuSO4·3H2O"), "0.144306", "bluestone to trihydrate"],
      [of("CuSO4.5H2O", "CuSO4"), "0.360766", "bluestone to CuSO4"],
      [of("CuSO4·5H2O", "CuO"), "0.681408", "bluestone to CuO"],
      [of("MgSO4·7H2O", "MgSO4"), "0.511653", "epsomite to MgSO4"],
      [of("FeSO4·7H2O", "FeSO4"), "0.453605", "FeSO4·7H2O to FeSO4"],
      [of("CoCl2·6H2O", "CoCl2"), "0.45431", "CoCl2·6H2O to CoCl2"],
      [of("BaCl2·2H2O", "BaCl2"), "0.14751", "BaCl2·2H2O to BaCl2"],
      [of("Na2CO3·10H2O", "Na2CO3"), "0.62959", "soda to Na2CO3"],
      [of("Na2B4O7·10H2O", "Na2B4O7"), "0.472385", "borax to Na2B4O7", { within: [1e-6, "the weight of sodium is kept unabridged"] }],
      [of("KAl(SO4)2·12H2O", "KAl(SO4)2"), "0.45572", "alum to KAl(SO4)2"],
      [of("CaSO4·2H2O", "CaSO4·0.5H2O"), "0.156958", "gypsum to hemihydrate"],
      [of("CaSO4·2H2O", "2CaSO4·H2O"), "0.156958", "gypsum to hemihydrate"],
      [of("CaSO4·2H2O", "CaSO4"), "0.209277", "gypsum to CaSO4"],
      [of("NaHCO3", "Na2CO3"), "0.369165", "NaHCO3 to Na2CO3", { within: [2e-6, "the weight of sodium is kept unabridged, 22.98976928 for 22.990"] }],
      [of("FeCO3", "FeO"), "0.379869", "siderite to FeO"],
      [of("FeCO3", "Fe2O3"), "0.310821", "siderite to Fe2O3"],
      [of("MnCO3", "MnO"), "0.38287", "MnCO3 to MnO"],
      [of("ZnCO3", "ZnO"), "0.35098", "ZnCO3 to ZnO"],
      [of("Cu2CO3(OH)2", "CuO"), "0.28051", "malachite to CuO"],
      [of("CuCO3·Cu(OH)2", "CuO"), "0.28051", "malachite to CuO"],
      [of("Ca(OH)2", "CaO"), "0.24314", "Ca(OH)2 to CaO"],
      [of("Mg(OH)2", "MgO"), "0.30890", "Mg(OH)2 to MgO"],
      [of("Al(OH)3", "Al2O3"), "0.34643", "Al(OH)3 to Al2O3"],
      [of("Al2Si2O5(OH)4", "Al2Si2O7"), "0.13957", "kaolinite to metakaolin"],
      [of("FeOOH", "Fe2O3"), "0.10138", "goethite to Fe2O3"],
      [uOf("CaCO3", "CaO"), "0.000012655", "u, CaCO3 to CaO"],
      [uOf("CaSO4·2H2O", "CaSO4"), "0.0000147", "u, gypsum to CaSO4"],
      [uOf("FeCO3", "Fe2O3"), "0.00000805", "u, siderite to Fe2O3"],
    ]),
    ...published("worked by hand", "balanced element by element", [
      ['=RETORT.THEORETICALLOSS("NaHCO3", "Na2CO3", "", "equation")', "2 NaHCO3 → Na2CO3 + CO2 + H2O"],
      ['=RETORT.THEORETICALLOSS("FeCO3", "Fe2O3", "", "equation")', "4 FeCO3 + O2 → 2 Fe2O3 + 4 CO2"],
      ['=RETORT.THEORETICALLOSS("FeCO3", "Fe2O3", "", "oxygen")', "takes up 0.5 O from the air for each FeCO3"],
      ['=RETORT.THEORETICALLOSS("CaC2O4", "CaCO3", "", "oxygen")', "takes up 1 O from the air for each CaC2O4, or a poorer gas (CO"],
      ['=RETORT.THEORETICALLOSS("KClO3", "KCl", "", "equation")', "2 KClO3 → 2 KCl + 3 O2"],
      ['=RETORT.THEORETICALLOSS("AlCl3·6H2O", "Al2O3", "", "equation")', "2 AlCl3·6H2O → Al2O3 + 9 H2O + 6 HCl"],
      ['=RETORT.THEORETICALLOSS("CaCO3", "CaO", "", "oxygen")', "balanced"],
      ['=RETORT.THEORETICALLOSS("FeS2", "Fe2O3", "", "equation")', "4 FeS2 + 11 O2 → 2 Fe2O3 + 8 SO2"],
      ['=RETORT.THEORETICALLOSS("FeAsS", "Fe2O3", "As2O3", "equation")', "2 FeAsS + 5 O2 → Fe2O3 + 2 SO2 + As2O3"],
      ['=RETORT.THEORETICALLOSS("C6H10O5", "C", "", "equation")', "C6H10O5 → 6 C + 5 H2O"],
      // 24.305 + 15.999 over 24.305: magnesium ribbon gains.
      ['=RETORT.THEORETICALLOSS("Mg", "MgO")', "-0.658260"],
    ]),
  ],
  laws: [
    law("THEORETICALLOSS")("has as many atoms of each element before and after, over random salts and their oxides", (call) => {
      fc.assert(
        fc.property(anySalt, ({ salt, oxide }) => {
          const [left = "", right = ""] = equation(call, salt, oxide);
          expect(termsOf(left)[0]?.formula).toBe(salt);
          expect(sideAtoms(left)).toEqual(sideAtoms(right));
        }),
      );
    }),
    law("THEORETICALLOSS", "MOLARMASS")("is the mass that its own equation lets go, gases less oxygen taken up", (call) => {
      fc.assert(
        fc.property(anySalt, ({ salt, oxide }) => {
          const [left = "", right = ""] = equation(call, salt, oxide);
          const mass = (side: string, ...without: readonly string[]): number =>
            termsOf(side)
              .filter(({ formula }) => !without.includes(formula))
              .reduce((sum, { count, formula }) => sum + count * numberBy(call)("MOLARMASS", formula), 0);
          expect(mass(left) / mass(right)).toBeCloseTo(1, 10);
          const start = mass(left, "O2");
          expect((mass(right, oxide) - (mass(left) - start)) / start).toBeCloseTo(numberBy(call)("THEORETICALLOSS", salt, oxide), 10);
        }),
      );
    }),
    law("THEORETICALLOSS")("what is left after two steps is what the one leaves of what the other leaves", (call) => {
      fc.assert(
        fc.property(
          anySalt.filter(({ water }) => water > 0),
          ({ salt, oxide }) => {
            const left = (from: string, to: string): number => 1 - numberBy(call)("THEORETICALLOSS", from, to);
            const dry = salt.split("·")[0] as string;
            expect(left(salt, dry) * left(dry, oxide)).toBeCloseTo(left(salt, oxide), 12);
          },
        ),
      );
    }),
    law("THEORETICALLOSS")("scatters by its u when each atomic weight lies anywhere within its limit", (call) => {
      for (const [start, residue, perStart] of [
        ["CaCO3", "CaO", 1],
        ["CaSO4·2H2O", "CaSO4", 1],
        ["FeCO3", "Fe2O3", 1 / 2],
      ] as const) {
        const stated = numberBy(call)("THEORETICALLOSS", start, residue, null, "u");
        expect(Math.abs(simulatedU(start, residue, perStart) / stated - 1)).toBeLessThan(0.03);
      }
    }),
  ],
  refusals: [
    ['=RETORT.THEORETICALLOSS(, "CaO")', "#VALUE! start: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
    ['=RETORT.THEORETICALLOSS(43.97, "CaO")', "#VALUE! start: 43.97 is not a chemical formula. Type a chemical formula such as CaCO3."],
    ['=RETORT.THEORETICALLOSS("CaCO3", "CaO", 2)', '#VALUE! leaves: 2 is not what leaves. Type formulas parted by commas, such as "Hg, CO2".'],
    [
      '=RETORT.THEORETICALLOSS("CaO", "CaCO3")',
      '#VALUE! residue: it holds C, and "CaO" has none. Check for swapped cells; only oxygen can come from the air.',
      "swapped cells",
    ],
    [
      '=RETORT.THEORETICALLOSS("CaMg(CO3)2", "CaO")',
      '#VALUE! residue: the Mg of "CaMg(CO3)2" is not in it. Write all that is left, such as "CaO + MgO", or name Mg in leaves.',
      "figures that cannot all be of one sample",
    ],
    [
      '=RETORT.THEORETICALLOSS("CaMg(CO3)2", "Ca2MgO3")',
      '#VALUE! residue: no multiple of it keeps both the Ca and the Mg of "CaMg(CO3)2". Check the counts, or write every solid that is left, joined by plus signs.',
    ],
    [
      '=RETORT.THEORETICALLOSS("CaCO3", "CaC2O4")',
      '#VALUE! residue: it would hold more C than "CaCO3" can give. Check for swapped cells and the counts.',
    ],
    [
      '=RETORT.THEORETICALLOSS("CaCO3", "CaCO3 + CaO")',
      "#VALUE! residue: the elements that stay do not settle how much of each solid forms. Leave gases out; give solids that differ in a metal, or one at a time.",
    ],
    ['=RETORT.THEORETICALLOSS("CaMg(CO3)2", "CaO + CaMgO2 ")', '#VALUE! residue: no "CaO" would form. Leave it out, or check the counts.'],
    ['=RETORT.THEORETICALLOSS("CaCO3", "CaO +")', '#VALUE! residue: "CaO +" lacks a formula beside a plus sign. Join solids as in "CaCO3 + MgO".'],
    [
      '=RETORT.THEORETICALLOSS("CaCO3", "CaO", "Hg")',
      '#VALUE! leaves: it holds Hg, and "CaCO3" has none. Name what leaves the start, or leave the argument out.',
    ],
    [
      '=RETORT.THEORETICALLOSS("SO4^2-", "SO2")',
      '#VALUE! start: "SO4^2-" is an ion, and no ion is weighed alone. Write the whole salt, such as CaCO3.',
    ],
    [
      '=RETORT.THEORETICALLOSS("CaC03", "CaO")',
      '#VALUE! start: "03" at character 4 of "CaC03" begins with the digit 0. For oxygen type the letter O; a decimal begins 0.',
      "letter for digit or wrong capital",
    ],
    ['=RETORT.THEORETICALLOSS("CaCO3", "CaO", "", "percent")', '#VALUE! what: "percent" is not one of "loss", "u", "equation", "oxygen".'],
    ['=RETORT.THEORETICALLOSS(#N/A, "CaO")', "#N/A start: the cell given here shows #N/A. Mend that cell first."],
  ],
};
