import fc from "fast-check";
import type { Answer } from "../../src/cells/CellProblem";
import { answerOf, column, workingOf } from "./call";
import { hydrates, withoutDots } from "../chemistry/realCompounds";

test("MOLARMASS(formula) over a column equals MOLARMASS cell by cell, bad rows included", () => {
  const cell = fc.oneof(fc.constantFrom(...withoutDots, ...hydrates), fc.constantFrom("Xo", "", "H20", 12, true, null, "CaCO3 "));
  fc.assert(
    fc.property(fc.array(cell, { minLength: 2, maxLength: 40 }), (cells) => {
      const answers = answerOf("MOLARMASS", column(cells)) as Answer[][];
      const isBlank = (value: unknown): boolean => value === "" || value === null;
      expect(answers.map(([value]) => value)).toEqual(cells.map((value) => (isBlank(value) ? "" : answerOf("MOLARMASS", value))));
    }),
    { numRuns: 300 },
  );
});

test.each([...withoutDots, ...hydrates].filter((_, index) => index % 7 === 0))(
  "ATOMS(formula) of %s has fractions that sum to one and masses that sum to MOLARMASS",
  (text) => {
    const [, ...rows] = answerOf("ATOMS", text) as [string, number, number, number][];
    expect(rows.reduce((sum, row) => sum + row[3], 0)).toBeCloseTo(1, 12);
    expect(rows.reduce((sum, row) => sum + row[2], 0)).toBeCloseTo(answerOf("MOLARMASS", text) as number, 9);
  },
);

test("ATOMS(formula) lists symbols in the order they are written, isotopes apart", () => {
  const table = answerOf("ATOMS", "[13C]H3CH2OD") as Answer[][];
  expect(table.map(([symbol, count]) => [symbol, count])).toEqual([
    ["Symbol", "Count"],
    ["13C", 1],
    ["H", 5],
    ["C", 1],
    ["O", 1],
    ["D", 1],
  ]);
});

test.each([
  ["CaCO3", "Ca 1, C 1, O 3; 100.086 g/mol."],
  ["SO4^2-", "S 1, O 4; charge 2-; 96.056 g/mol."],
  ["NH4+", "N 1, H 4; charge 1+; 18.039 g/mol. Note: the 4 before the charge was read as a count; for a charge of 4 type ^4+."],
  ["[Fe(CN)6]4-", "Fe 1, C 6, N 6; charge 4-; 211.953 g/mol. Note: the 4 after the bracket was read as the size of the charge."],
  ["2H", "D 1; 2.014102 g/mol. Note: 2H was read as the isotope H-2; for 2 atoms type H2."],
  [
    "CH1,44O0,66",
    "C 1, H 1.44, O 0.66; 24.02186 g/mol. Note: the comma at character 4 was read as a decimal mark; the comma at character 9 was read as a decimal mark.",
  ],
  ["SO42-", "S 1, O 4; charge 2-; 96.056 g/mol. Note: 42- was read as the count 4 and the charge 2-; for a count of 42 type 42^-."],
  ["CuSO4 x 5H2O", "Cu 1, S 1, O 9, H 10; 249.677 g/mol. Note: the x was read as a hydrate dot."],
  ["CO2↑", "C 1, O 2; 44.009 g/mol. Note: the ↑ at the end (gas given off) was left out."],
  ["H2O.", "H 2, O 1; 18.015 g/mol. Note: the full stop at the end was left out."],
  ["H_2O", "H 2, O 1; 18.015 g/mol. Note: each _ was read as a subscript and left out; places are counted without them."],
  ["D2O", "D 2, O 1; 20.0272 g/mol. Note: D was read as deuterium (hydrogen-2)."],
  ["NO", "N 1, O 1; 30.006 g/mol. Note: NO was read as a formula; it is also a word or an abbreviation."],
  ["CaCo3", 'formula: "Co3" at character 3 of "CaCo3" reads as cobalt. Type CO3 for carbon and oxygen, or (Co)3 if so meant.'],
  ["WOOD", 'formula: "WOOD" is a word or an abbreviation, spelled in symbols. Type the formula, or (W)OOD if so meant.'],
  ["TcO2", "formula: technetium (Tc) has no standard atomic weight, so no molar mass follows. Leave it out or use one isotope's mass."],
  ["H20", 'formula: "H20" at character 1 of "H20" holds the digit 0. For oxygen type the letter O; for that count type (H)20.'],
  [100.09, "formula: 100.09 is not a chemical formula. Type a chemical formula such as CaCO3."],
  [true, "formula: TRUE is not a chemical formula. Type a chemical formula such as CaCO3."],
  [0, "formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
  [" ", "formula: nothing here (blank or 0). Type a chemical formula such as CaCO3."],
])("FORMULA.CHECK(formula) says of %j: %s", (text, sentence) => {
  expect(answerOf("FORMULA.CHECK", text)).toBe(sentence);
});

test("FORMULA.CHECK(formula) is text for any text, never an error", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 20 }), (text) => {
      expect(typeof answerOf("FORMULA.CHECK", text)).toBe("string");
    }),
    { numRuns: 5000 },
  );
});

test("the working of MOLARMASS(formula) shows each product, the sum, the edition and the notes", () => {
  expect(workingOf("MOLARMASS", { formula: "CaCO3" })).toEqual([
    "Ca 1 × 40.078 = 40.078 g/mol",
    "C 1 × 12.011 = 12.011 g/mol",
    "O 3 × 15.999 = 47.997 g/mol",
    "sum 100.086 g/mol, weights CIAAW 2021",
  ]);
  expect(workingOf("MOLARMASS", { formula: "CaSO4.2H2O" })?.at(-1)).toBe("the full stop at character 6 was read as a hydrate dot");
});
