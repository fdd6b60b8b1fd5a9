import { molarMass } from "../../../../src/chemistry/molarMass";
import { parseFormula } from "../../../../src/chemistry/parseFormula";

const atomsOf = (text: string): Record<string, number> => Object.fromEntries(parseFormula(text).atoms);

// Addition compounds as catalogues type them, beside the same with the middle dot, which has one reading only.
test.each([
  ["2Na2CO3.3H2O2", "2Na2CO3·3H2O2"],
  ["Na2CO3.1.5H2O2", "Na2CO3·1.5H2O2"],
  ["PbO2.2PbO", "PbO2·2PbO"],
  ["2ZnCO3.3Zn(OH)2", "2ZnCO3·3Zn(OH)2"],
  ["NiCO3.2Ni(OH)2.4H2O", "NiCO3·2Ni(OH)2·4H2O"],
  ["NiCO3.2Ni(OH)2.1.5H2O", "NiCO3·2Ni(OH)2·1.5H2O"],
  ["Mg(OH)2.4MgCO3.5H2O", "Mg(OH)2·4MgCO3·5H2O"],
  ["ZnCl2.2NH4Cl", "ZnCl2·2NH4Cl"],
  ["CuCl2.2NH4Cl.2H2O", "CuCl2·2NH4Cl·2H2O"],
  ["(NH4)2SO4.2NH4NO3", "(NH4)2SO4·2NH4NO3"],
  ["P2O5.24MoO3.48H2O", "P2O5·24MoO3·48H2O"],
  ["SnCl4.2CH3CN", "SnCl4·2CH3CN"],
  ["Na3PO4.2NaOH", "Na3PO4·2NaOH"],
  ["CH3COONa.3H2O", "CH3COONa·3H2O"],
  ["PbO.2PbCO3", "PbO·2PbCO3"],
])("parseFormula(%s) reads the full stop as it reads %s, and says so", (typed, plain) => {
  expect(atomsOf(typed)).toEqual(atomsOf(plain));
  expect(parseFormula(typed).notes).toContain(`the full stop at character ${typed.indexOf(".") + 1} was read as a hydrate dot`);
});

test.each([
  ["C7.4H10.6O6.4Na0.7", { C: 7.4, H: 10.6, O: 6.4, Na: 0.7 }],
  ["C9H8.3O2.7(OCH3)0.97", { C: 9.97, H: 8.3 + 3 * 0.97, O: 2.7 + 0.97 }],
  ["Mg1.8Fe0.2SiO4", { Mg: 1.8, Fe: 0.2, Si: 1, O: 4 }],
  ["Ca1.5Al2Si3O10.5", { Ca: 1.5, Al: 2, Si: 3, O: 10.5 }],
  ["C6H7O6.5Na", { C: 6, H: 7, O: 6.5, Na: 1 }],
  ["(O)2.1(U)2(H)2", { O: 2.1, U: 2, H: 2 }],
  ["(NH4)2.5Na", { N: 2.5, H: 10, Na: 1 }],
])("parseFormula(%s) reads every full stop as a decimal point", (text, atoms) => {
  expect(atomsOf(text)).toEqual(atoms);
  expect(parseFormula(text).notes).toEqual([]);
});

test.each(["\u2027", "\u30fb", "\uff65", "\u0387", "\ua78f", "\u25cf"])(
  "parseFormula takes the dot %s of other keyboards for a hydrate dot",
  (dot) => {
    expect(molarMass(parseFormula(`CuSO4${dot}5H2O`))).toBe(molarMass(parseFormula("CuSO4·5H2O")));
    expect(() => parseFormula(`CuSO4${dot}5H20`)).toThrow('"H20" at character 8');
  },
);

test("parseFormula leaves iodine and vanadium in brackets of their own alone", () => {
  expect(atomsOf("(V)2(O)5")).toEqual({ V: 2, O: 5 });
  expect(atomsOf("(C)(I)4")).toEqual({ C: 1, I: 4 });
  expect(atomsOf("Ca(I)2")).toEqual({ Ca: 1, I: 2 });
});
