import { parseFormula } from "../../../../src/chemistry/parseFormula";

const NOTE = "was read as a fraction, the amount of what follows it";
const HEMIHYDRATE = { Ca: 1, S: 1, O: 4.5, H: 1 };

test.each([
  ["CaSO4·1/2H2O", [`the 1/2 at character 7 ${NOTE}`]],
  ["CaSO4·1/2 H2O", [`the 1/2 at character 7 ${NOTE}`]],
  ["CaSO4.1/2H2O", ["the full stop at character 6 was read as a hydrate dot", `the 1/2 at character 7 ${NOTE}`]],
])("parseFormula(%s) reads half of a water, as with ½, and says so", (text, notes) => {
  const read = parseFormula(text);
  expect(Object.fromEntries(read.atoms)).toEqual(HEMIHYDRATE);
  expect(Object.fromEntries(parseFormula("CaSO4·½H2O").atoms)).toEqual(HEMIHYDRATE);
  expect(read.notes).toEqual(notes);
});

test("parseFormula(3/2H2O) multiplies what follows by 1.5", () => {
  expect(Object.fromEntries(parseFormula("3/2H2O").atoms)).toEqual({ H: 3, O: 1.5 });
});
