import { molarMass } from "../../../src/chemistry/molarMass";
import { parseFormula } from "../../../src/chemistry/parseFormula";

const dot = (character: number, seen = "full stop"): string => `the ${seen} at character ${character} was read as a hydrate dot`;
const UNDERSCORES = "each _ was read as a subscript and left out; places are counted without them";
const FULL_STOP = "the full stop at the end was left out";

// What bottle labels, text-books and typesetting write, beside the same in plain notation.
test.each([
  ["CO2↑", "CO2", ["the ↑ at the end (gas given off) was left out"]],
  ["BaSO4 ↓", "BaSO4", ["the ↓ at the end (solid that settles) was left out"]],
  ["CO2(g)↑", "CO2", ["the ↑ at the end (gas given off) was left out"]],
  ["H2O.", "H2O", [FULL_STOP]],
  ["CuSO4.5H2O.", "CuSO4·5H2O", [FULL_STOP, dot(6)]],
  ["H2O(l).", "H2O", [FULL_STOP]],
  ["H_2O", "H2O", [UNDERSCORES]],
  ["H_{2}O", "H2O", [UNDERSCORES]],
  ["C_6H_{12}O_6", "C6H12O6", [UNDERSCORES]],
  ["CuSO_4.5H_2O", "CuSO4·5H2O", [UNDERSCORES, dot(6)]],
  ["CuSO4 x 5H2O", "CuSO4·5H2O", ["the x was read as a hydrate dot"]],
  ["CuSO4x5H2O", "CuSO4·5H2O", ["the x was read as a hydrate dot"]],
  ["CuSO4 X 5 H2O", "CuSO4·5H2O", ["the X was read as a hydrate dot"]],
  ["CuSO4 × 5 H2O", "CuSO4·5H2O", ["the × was read as a hydrate dot"]],
  ["CuSO4×½H2O", "CuSO4·½H2O", ["the × was read as a hydrate dot"]],
  ["CuSO4 × H2O", "CuSO4·H2O", ["the × was read as a hydrate dot"]],
  ["CuSO4*5H2O", "CuSO4·5H2O", [dot(6, "*")]],
  ["CaSO4.1⅛H2O", "CaSO4·1⅛H2O", [dot(6)]],
  ["CaSO4.⅞H2O", "CaSO4·⅞H2O", [dot(6)]],
  ["CuSO4.5OH2", "CuSO4·5H2O", [dot(6)]],
])("parseFormula reads %s as %s, and says what it decided", (typed, plain, notes) => {
  const read = parseFormula(typed);
  expect(Object.fromEntries(read.atoms)).toEqual(Object.fromEntries(parseFormula(plain).atoms));
  expect(read).toMatchObject({ text: typed, notes });
});

// Charges: general chemistry texts, from memory. Each has one reading that is an ion.
test.each([
  ["Ca2+", "Ca^2+", "2+ was read as the charge; for 2 atoms and one charge type 2^+"],
  ["Fe3+", "Fe^3+", "3+ was read as the charge; for 3 atoms and one charge type 3^+"],
  ["Al3+(aq)", "Al^3+", "3+ was read as the charge; for 3 atoms and one charge type 3^+"],
  ["S2-", "S^2-", "2- was read as the charge; for 2 atoms and one charge type 2^-"],
  ["SO42-", "SO4^2-", "42- was read as the count 4 and the charge 2-; for a count of 42 type 42^-"],
  ["CO32-", "CO3^2-", "32- was read as the count 3 and the charge 2-; for a count of 32 type 32^-"],
  ["PO43-", "PO4^3-", "43- was read as the count 4 and the charge 3-; for a count of 43 type 43^-"],
  ["Cr2O72-", "Cr2O7^2-", "72- was read as the count 7 and the charge 2-; for a count of 72 type 72^-"],
  ["Hg22+", "Hg2^2+", "22+ was read as the count 2 and the charge 2+; for a count of 22 type 22^+"],
  ["UO22+", "UO2^2+", "22+ was read as the count 2 and the charge 2+; for a count of 22 type 22^+"],
  ["TiO2+", "TiO^2+", "2+ was read as the charge; for 2 atoms and one charge type 2^+"],
  ["Fe(CN)64-", "Fe(CN)6^4-", "64- was read as the count 6 and the charge 4-; for a count of 64 type 64^-"],
  ["Cu(NH3)42+", "Cu(NH3)4^2+", "42+ was read as the count 4 and the charge 2+; for a count of 42 type 42^+"],
  ["Al(OH)4-", "Al(OH)4^-", "the 4 before the charge was read as a count; for a charge of 4 type ^4-"],
  ["I3-", "I3^-", "the 3 before the charge was read as a count; for a charge of 3 type ^3-"],
  ["NO3-", "NO3^-", "the 3 before the charge was read as a count; for a charge of 3 type ^3-"],
])("parseFormula reads the ion %s as %s, the one of its readings that chemistry knows, and says so", (typed, plain, note) => {
  const [read, meant] = [parseFormula(typed), parseFormula(plain)];
  expect(molarMass(read)).toBe(molarMass(meant));
  expect(read).toMatchObject({ charge: meant.charge, notes: [note] });
});

test("parseFormula reads one atom of charge one without a note, as both readings are the same", () => {
  expect(parseFormula("Na1+")).toMatchObject({ charge: 1, notes: [] });
});

test.each([
  ["D2O", ["D was read as deuterium (hydrogen-2)"]],
  ["HTO", ["T was read as tritium (hydrogen-3)"]],
  ["D", ["D was read as deuterium (hydrogen-2)"]],
  ["[2H]2TiO3", []],
  ["NO", ["NO was read as a formula; it is also a word or an abbreviation"]],
  ["NCS", ["NCS was read as a formula; it is also a word or an abbreviation"]],
])("parseFormula(%s) notes %j", (text, notes) => {
  expect(parseFormula(text).notes).toEqual(notes);
});
