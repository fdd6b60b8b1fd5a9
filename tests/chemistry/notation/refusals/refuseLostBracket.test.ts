import { molarMass } from "../../../../src/chemistry/molarMass";
import { parseFormula } from "../../../../src/chemistry/parseFormula";

const salts =
  "Ca(NO3)2 Mg(NO3)2 Pb(NO3)2 Cu(NO3)2 Fe(NO3)3 Al(NO3)3 La(NO3)3 Ca(NO2)2 Ba(NO2)2 Al2(SO4)3 Fe2(SO4)3 Cr2(SO4)3 KAl(SO4)2 KAl(SO4)2·12H2O La2(CO3)3 CaMg(CO3)2 Ca3(PO4)2 " +
  "Mg3(PO4)2 Zn3(PO4)2 Mg(ClO4)2 Ba(ClO3)2 Ca(HCO3)2 Ca(HSO4)2 Ca(H2PO4)2 Mg(OH)2 Ca(OH)2 Ba(OH)2 Al(OH)3 Fe(OH)3 Zn(OH)2 B(OH)3 Si(OH)4 Zr(OH)4 (NH4)2SO4 (NH4)2CO3 " +
  "(NH4)3PO4 Ca(NO3)2·4H2O Al2(SO4)3·18H2O";

test.each(salts.split(" "))("parseFormula refuses %s without its brackets, and reads it with the group that the sentence names", (salt) => {
  const bare = salt.replace("(", "").replace(")", "");
  const [, group = "", count = ""] = /\((\w+)\)(\d)/.exec(salt) ?? [];
  const seen = `"${group}${count}" at character ${salt.indexOf("(") + 1} of "${bare}"`;
  expect(() => parseFormula(bare)).toThrow(
    new Error(`formula: ${seen} makes a compound that does not balance. Type (${group})${count} if the group is meant so often.`),
  );
  expect(molarMass(parseFormula(bare.replace(group + count, `(${group})${count}`)))).toBe(molarMass(parseFormula(salt)));
});

test.each([
  "SO42-",
  "CO32-",
  "PO43-",
  "HPO42-",
  "C20H42",
  "CH3OH2+",
  "CaCN2",
  "HCOOH",
  "CaN(O)32",
  "C60H86O20",
  "Na3PO4",
  "COOH2",
  "K[Cr(C2O4)2(OH2)2]",
  "CaC2O4OH2",
  "Cr(OH2)6Cl3",
  "VO(OH2)5SO4",
])("parseFormula reads %s as it stands", (text) => {
  expect(molarMass(parseFormula(text))).toBeGreaterThan(0);
});
