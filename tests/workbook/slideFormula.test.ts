import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import fc from "fast-check";
import { cellAt } from "../../src/workbook/cellArea";
import { slideFormula } from "../../src/workbook/slideFormula";

const DOWN = { rows: 1, columns: 0 };
const RIGHT = { rows: 0, columns: 1 };
const NO_NAMES: ReadonlySet<string> = new Set();

test.each([
  ["=A1+B2", "=A2+B3"],
  ['="SO2"&A1', '="SO2"&A2'],
  ['=RETORT.MOLARMASS("C2H5OH")*B2', '=RETORT.MOLARMASS("C2H5OH")*B3'],
  ['="say ""A1"" "&A1', '="say ""A1"" "&A2'],
  ["=$A1+A$1+$A$1", "=$A2+A$1+$A$1"],
  ["=SUM(A1:$B$2)", "=SUM(A2:$B$2)"],
  ["=SUM(A:A)+SUM($B:C)", "=SUM(A:A)+SUM($B:C)"],
  ["=SUM(1:1)+SUM($2:3)", "=SUM(2:2)+SUM($2:4)"],
  ["=LOG10(A1)+ATAN2(A1,B1)+DEC2BIN(A1)", "=LOG10(A2)+ATAN2(A2,B2)+DEC2BIN(A2)"],
  ["='Run A1'!A1+Run1!$B1", "='Run A1'!A2+Run1!$B2"],
  ["='It''s A1!'!A1", "='It''s A1!'!A2"],
  ["=SUM(Run1:Run3!A1:A2)", "=SUM(Run1:Run3!A2:A3)"],
  ["=[1]Run1!A1", "=[1]Run1!A2"],
  ["=Runs[Mass1]+Runs[[#This Row],[B2]]", "=Runs[Mass1]+Runs[[#This Row],[B2]]"],
  ["=#REF!+Run1!#REF!+A1", "=#REF!+Run1!#REF!+A2"],
  ["=R1C1+RC+tare_1", "=R1C1+RC+tare_1"],
  ["=XFE1+A1048577", "=XFE1+A1048577"],
  ["=A1:INDEX(B:B,3)", "=A2:INDEX(B:B,3)"],
  ["=A1#+@B1%", "=A2#+@B2%"],
  ["={1,2;3,4}*A1", "={1,2;3,4}*A2"],
  ["=TRUE+A1E1", "=TRUE+A1E1"],
  ["=A1 B1", "=A2 B2"],
  ["=SUM(A1,(B1,C1))", "=SUM(A2,(B2,C2))"],
  ["A1+1", "A2+1"],
])("%s, filled down, is %s", (formula, below) => {
  expect(slideFormula(formula, DOWN, NO_NAMES)).toBe(below);
});

test.each([
  ["=SUM(A:A)+SUM($B:C)+1:1", "=SUM(B:B)+SUM($B:D)+1:1"],
  ["=Z1+AZ1+ZZ1", "=AA1+BA1+AAA1"],
])("%s, filled to the right, is %s", (formula, beside) => {
  expect(slideFormula(formula, RIGHT, NO_NAMES)).toBe(beside);
});

test.each([
  ["=A1+B$1", { rows: -1, columns: 0 }, "=#REF!+B$1"],
  ["=A1+$A1", { rows: 0, columns: -1 }, "=#REF!+$A1"],
  ["='Run 1'!A1:B2", { rows: -1, columns: 0 }, "='Run 1'!#REF!"],
  ["=XFD1", { rows: 0, columns: 1 }, "=#REF!"],
  ["=A1048576+A$1048576", { rows: 1, columns: 0 }, "=#REF!+A$1048576"],
  ["=A:A", { rows: 0, columns: -1 }, "=#REF!"],
  ["=2:3", { rows: -2, columns: 0 }, "=#REF!"],
])("in %s what leaves the sheet by %j becomes an error", (formula, by, slid) => {
  expect(slideFormula(formula, by, NO_NAMES)).toBe(slid);
});

test("a name that reads like a cell stays where the workbook has that name, in any letter case, and moves where it has none", () => {
  const names = new Set(["TIN1", "SO2"]);
  expect(slideFormula("=Tin1+TIN1+Kiln!tin1+TIN2+SO2+$TIN$1", DOWN, names)).toBe("=Tin1+TIN1+Kiln!tin1+TIN3+SO2+$TIN$1");
  expect(slideFormula("=Tin1", DOWN, NO_NAMES)).toBe("=TIN2");
});

// The library's own way from one cell to another, by rows and columns counted from the cell, shares nothing with ours but the tokens.
test("any formula of references, texts and functions slides as by way of relative notation", () => {
  const corner = fc.record({ column: fc.nat(800), row: fc.nat(5000), fixed: fc.constantFrom("", "$") });
  const reference = fc.tuple(corner, corner, fc.constantFrom("", "Kiln!", "'It''s 2'!"), fc.boolean()).map(([one, other, sheet, isRange]) => {
    const text = ({ column, row, fixed }: typeof one): string => fixed + cellAt(row, column);
    // Far enough apart that no end passes the other.
    const last = { ...other, row: other.row + 6000, column: other.column + 900 };
    return sheet + (isRange ? `${text(one)}:${text(last)}` : text(one));
  });
  const part = fc.oneof(reference, fc.constantFrom('"SO2"', "LOG10(4)", "Runs[A1]", "rate_1", "1.5E3", "#N/A"));
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), fc.nat(40), fc.nat(40), (parts, rows, columns) => {
      const formula = `=${parts.join("+")}`;
      const home = { row: 12_000, column: 1800 };
      const relative = translateFormulaToR1C1(formula, cellAt(home.row, home.column));
      expect(slideFormula(formula, { rows, columns }, NO_NAMES)).toBe(
        translateFormulaToA1(relative, cellAt(home.row + rows, home.column + columns), { wrapEdges: false }),
      );
    }),
    { numRuns: 300, seed: 7 },
  );
});
