import { parseFormula } from "../../../../src/chemistry/parseFormula";

// What catalogues sell salts with, behind a full stop: waters, acids, bases and solvents of crystallisation, and the oxides and salts that
// minerals and cements are written in. A full stop before one of them that were read as a decimal point would give a wrong mass in silence.
const WITH_SALTS =
  "H2O D2O NH3 HCl HBr HF HNO3 H2SO4 H3PO4 CH3OH CH4O C2H5OH CH3CH2OH C2H6O CH3COOH HCOOH C6H6 C4H8O C3H7NO " +
  "H2O2 N2H4 CH3CN C2H3N C5H5N C3H6O C4H10O C7H8 CHCl3 CH2Cl2 C2H6OS CH4N2O CO(NH2)2 H3BO3 NH4Cl NH4NO3 NH4HSO4";
const IN_MINERALS =
  "SiO2 Al2O3 Fe2O3 FeO CaO MgO MnO Na2O K2O P2O5 B2O3 TiO2 SO3 SO2 CO2 " +
  "NaCl KCl CaCl2 MgCl2 CaF2 CaCO3 MgCO3 CaSO4 Na2SO4 NaHCO3 Na2CO3 Ca(OH)2 Mg(OH)2";

const subscript = (text: string): string => text.replace(/\d/g, (digit) => String.fromCodePoint(0x2080 + Number(digit)));
const atomsOf = (text: string): Record<string, number> => Object.fromEntries(parseFormula(text).atoms);

// Behind C6, which ends no salt, so that what follows the full stop decides alone.
test.each(`${WITH_SALTS} ${IN_MINERALS}`.split(" "))("parseFormula reads the full stop before %s as a hydrate dot", (companion) => {
  const meant = atomsOf(`N2C6·3${companion}`);
  for (const typed of [
    `N2C6.3${companion}`,
    `N2C6.3(${companion})`,
    `N2C6.3[${companion}]`,
    `N2C6. 3 ${companion}`,
    `N2C6.3${companion}(s)`,
    `N2C6.3${subscript(companion)}`,
  ]) {
    expect([typed, atomsOf(typed)]).toEqual([typed, meant]);
  }
  expect(atomsOf(`N2C6.1.5${companion}`)).toEqual(atomsOf(`N2C6·1.5${companion}`));
  expect(atomsOf(`N2C6.½${companion}`)).toEqual(atomsOf(`N2C6·½${companion}`));
  expect(atomsOf(`N2C6.1/2${companion}`)).toEqual(atomsOf(`N2C6·½${companion}`));
  expect(atomsOf(`(N2C6.3${companion})2`)).toEqual(atomsOf(`(N2C6·3${companion})2`));
  expect(atomsOf(`N2C6.3${companion}.2H2O`)).toEqual(atomsOf(`N2C6·3${companion}·2H2O`));
});

test("a full stop before what is no companion stays a decimal point", () => {
  expect(atomsOf("N2C6.3NO")).toEqual({ N: 3, C: 6.3, O: 1 });
  expect(atomsOf("N2C6.3NH2O")).toEqual({ N: 3, C: 6.3, H: 2, O: 1 });
  expect(atomsOf("CH1.5O0.5·H2O")).toEqual({ C: 1, H: 3.5, O: 1.5 });
  expect(atomsOf("N2C6.3H2ON")).toEqual({ N: 3, C: 6.3, H: 2, O: 1 });
});
