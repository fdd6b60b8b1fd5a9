import { parseFormula } from "../../../src/chemistry/parseFormula";

test("a refused formula leaves nothing behind in the one that is read next", () => {
  expect(() => parseFormula("2CaC1.5[Fe(CN)6")).toThrow('"[" at character 8');
  const { atoms, charge, notes } = parseFormula("Na+");
  expect({ atoms: Object.fromEntries(atoms), charge, notes }).toEqual({ atoms: { Na: 1 }, charge: 1, notes: [] });
});

test("the notes of one formula are not those of the next", () => {
  const noted = parseFormula("CuSO4.5H2O");
  expect(parseFormula("CuSO4·5H2O").notes).toEqual([]);
  expect(noted.notes).toEqual(["the full stop at character 6 was read as a hydrate dot"]);
});

test("the atoms of one formula stay as they are while others are read", () => {
  const glucose = parseFormula("C6H12O6");
  parseFormula("K4[Fe(CN)6]·3H2O");
  expect([...glucose.atoms]).toEqual([
    ["C", 6],
    ["H", 12],
    ["O", 6],
  ]);
});
