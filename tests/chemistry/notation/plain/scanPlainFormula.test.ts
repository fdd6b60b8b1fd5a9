import { plainFormula } from "../../../../src/chemistry/notation/plain/plainFormula";
import { moreCompounds } from "../../corpora/compounds";
import { spellings, tradeWords } from "../../corpora/tradeWords";
import { hydrates, withoutDots } from "../../realCompounds";
import { formulaTexts } from "./formulaTexts";
import { readTwice } from "./readTwice";

const isPlain = (text: string): boolean => plainFormula(text) !== undefined;

// The share of accepted texts is what keeps the comparison from being empty.
const TEXTS = 50_000;
test.each([
  ["fromGrammar", 0.2],
  ["withSlips", 0.3],
  ["noise", 0.01],
] as const)("a scanned formula is what the full reader reads, to the last bit, and is never one that it refuses: texts %s", (kind, share) => {
  const next = formulaTexts(8)[kind];
  let scanned = 0;
  const apart: string[] = [];
  for (let index = 0; index < TEXTS; index++) {
    const read = readTwice(next());
    if (read.isPlain) scanned++;
    if (read.apart !== undefined) apart.push(read.apart);
  }
  expect(apart).toEqual([]);
  expect(scanned / TEXTS).toBeGreaterThan(share);
});

test("of the real compounds seven in eight with a count are scanned, and read as by the full reader", () => {
  const counted = [...withoutDots, ...hydrates, ...moreCompounds].filter((text) => /\d/.test(text));
  expect(counted.map((text) => readTwice(text).apart).filter((apart) => apart !== undefined)).toEqual([]);
  const usual = [...withoutDots, ...hydrates].filter((text) => /\d/.test(text));
  expect(usual.filter(isPlain).length / usual.length).toBeGreaterThan(7 / 8);
});

test("no word of the trade is scanned, in any spelling, unless the full reader takes it too", () => {
  const texts = tradeWords.flatMap(spellings);
  expect(texts.length).toBeGreaterThan(1000);
  expect(texts.map((text) => readTwice(text).apart).filter((apart) => apart !== undefined)).toEqual([]);
});

test.each([
  ["H2O", { H: 2, O: 1 }],
  ["Ca(OH)2", { Ca: 1, O: 2, H: 2 }],
  ["Fe4(Fe(CN)6)3", { Fe: 7, C: 18, N: 18 }],
  ["CH1.44O0.66", { C: 1, H: 1.44, O: 0.66 }],
  ["CuSO4·5H2O", { Cu: 1, S: 1, O: 9, H: 10 }],
  ["CaSO4·0.5H2O", { Ca: 1, S: 1, O: 4.5, H: 1 }],
  ["K2SO4·Al2(SO4)3·24H2O", { K: 2, S: 4, O: 40, Al: 2, H: 48 }],
  ["C10H20O5", { C: 10, H: 20, O: 5 }],
  ["C12H22O11", { C: 12, H: 22, O: 11 }],
  ["Co3O4", { Co: 3, O: 4 }],
  ["Co(NO3)2·6H2O", { Co: 1, N: 2, O: 12, H: 12 }],
  ["K2CO3", { K: 2, C: 1, O: 3 }],
  ["NaHCO3", { Na: 1, H: 1, C: 1, O: 3 }],
])("%s is scanned", (text, atoms) => {
  const formula = plainFormula(text);
  expect(formula).toMatchObject({ text, charge: 0, notes: [] });
  expect(Object.fromEntries(formula?.atoms ?? [])).toEqual(atoms);
});

test("a full stop before water is scanned with the note that the full reader makes", () => {
  expect(plainFormula("CuSO4.5H2O")?.notes).toEqual(["the full stop at character 6 was read as a hydrate dot"]);
});

// Each stands for a rule of the reader that the scan leaves to it: a doubt taken out fails here, whatever that rule says today.
test.each([
  ["letters alone, which can be a word", ["NaCl", "KHP", "COCONUT", "(OK)"]],
  ["capitals with a number behind them, which can be a label", ["POT3", "CO2", "PA66", "UV2", "(CVN61)"]],
  ["metals that are also two capitals, behind anything and alone", ["CaCo3", "NaHCo3", "LiCoO2", "K2Bi2", "Co2", "Ni3(Ni2)2", "Ho2O3"]],
  ["urea and acetone with a slip", ["Co(NH2)2", "Co(CH3)2"]],
  ["two capitals at the beginning that are also one metal", ["COSO4", "NICl2", "PBSO4", "LiCOO2", "CO(NO3)2", "HCON2H"]],
  ["deuterium and tritium", ["D2O", "TiT2"]],
  ["elements without an atomic weight", ["TcO2", "Po2"]],
  ["I and U right behind a symbol without a count", ["NaCI2", "C2H2CU2", "AgI2"]],
  ["C1 at an end", ["NaC1", "CaC12", "(C1)2"]],
  ["a count of 1, of 0, or with a leading 0", ["CH1", "H0", "CaCO03"]],
  ["a 0 in a count of a formula that can be a slip", ["H20", "Fe203", "NaCl·H20", "(H20)2", "C10H8", "CH60O"]],
  ["digits that can be a mass number", ["K15NO3", "H218O", "Ba14CO3", "(15NH4)2SO4", "H2O18", "N15", "Na22SO3", "CH5NO16S", "C12H3", "Li7O2"]],
  ["decimals from 1 on behind a group or what salts end in, and before a last H", ["FeCl1.5", "(NH4)2.5", "CuSO4.5", "Cu2.5H"]],
  ["an amount before the formula", ["2H2O", "0.5O2"]],
  ["an amount before anything but water", ["NiCO3·2Ni(OH)2", "Na2CO3·15NH3"]],
  ["a full stop that can be either mark", ["ZnCl2.2NH4Cl", "Al2O3.4SiO2", "CaSO4.2H2O.2H2O", "CH1.5O2.5H2O", "CH4.5.6", "CaSO4.0.5H2O", "Fe2.H2"]],
  ["oxidation states and states", ["Fe(II)2", "Cu(V)2", "H2O(g)"]],
  ["other brackets, charges, spaces and signs", ["K4[Fe(CN)6]", "NH4+", "SO4^2-", "Fe2 O3", "H₂O", "CO2,5", "CuSO4*5H2O"]],
  ["brackets that do not match, or hold nothing", ["Ca(OH2", "CaOH)2", "Ca()2", "Ca(OH·H2O)2"]],
  ["small letters left over", ["Fex2", "Caa2", "h2O", "Xy2"]],
  ["a dot that leads nowhere", ["CuSO4·", "CuSO4·5", "·5H2O", "CuSO4..5H2O", "CuSO4·5H2Oa"]],
  ["counts of too many digits, and totals out of bounds", ["CH10000000", "H1.2345678901234567890", "H0.0000001", "(H9999999)9"]],
  ["long and deep texts", ["CaO2".repeat(26), "((((((H2))))))", "H2O".repeat(20)]],
])("the scan leaves to the full reader: %s", (_, texts) => {
  expect(texts.filter(isPlain)).toEqual([]);
});
