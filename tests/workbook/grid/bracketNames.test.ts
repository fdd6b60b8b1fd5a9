import { replaceNames } from "../../../src/workbook/grid/writing/definedNames";
import { FIRST_SHEET, openHeadlessWorkbook } from "../../workbench/headlessWorkbook";

test("a name for a formula is calculated as a whole, and shown as it was given", async () => {
  const open = await openHeadlessWorkbook();
  const names = [
    { name: "total", refersTo: "Sheet1!$A$1+Sheet1!$A$2" },
    { name: "less", refersTo: "-3" },
    { name: "both", refersTo: "Sheet1!$A$1:$A$2" },
    { name: "twice", refersTo: "total*2" },
    { name: "plusOne", refersTo: "LAMBDA(x,x+1)" },
  ];
  replaceNames(open.engine, names);
  await open.type(FIRST_SHEET, "A1", 1);
  await open.type(FIRST_SHEET, "A2", 2);
  const formulas: [string, number][] = [
    ["=total*2", 6],
    ["=2^total", 8],
    ["=total^2", 9],
    ["=10-total", 7],
    ["=less^2", 9],
    ["=twice+total", 9],
    ["=SUM(both)*2", 6],
    ["=plusOne(A1)", 2],
    ["=plusOne(total)", 4],
    ["=plusOne(3)", 4],
    ["=SUM(total,1)", 4],
  ];
  for (const [row, [formula]] of formulas.entries()) await open.type(FIRST_SHEET, `C${row + 1}`, formula);
  await open.settled();
  const { rows } = await open.workbook.read(FIRST_SHEET, `C1:C${formulas.length}`);
  expect(rows.map(([cell]) => [cell?.formula, cell?.error === "" ? cell.value : cell?.error])).toEqual(formulas);
  open.close();
});
