// What is called need not have a name: a LAMBDA on the spot, or what another call gives (the LAMBDA function's reference page allows both).
import { notGiven } from "../../../src/explanation/saved/notGiven";
import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import type { CellReading } from "../../../src/workbook/Workbook";

const place = {
  ...{ sheet: "Tray", cell: "K5", area: "K5", tableOf: () => undefined, spillOf: () => undefined },
  nameOf: (name: string) => (name === "AIRLEFT" ? "=LAMBDA(v,RETORT.AIRLEFT(v))" : undefined),
};
const LEFT = "RETORT.AIRLEFT";

test.each<[formula: string, allowed: boolean, gives: "formula" | "none"]>([
  [`=LAMBDA(x,${LEFT}(x))(A1)`, false, "formula"],
  [`=_xlfn.LAMBDA(_xlpm.x,${LEFT}(_xlpm.x))(A1)`, false, "formula"],
  [`=SUM(LAMBDA(x,y,${LEFT}(x)+y)(A1,2),3)`, false, "formula"],
  ["=AIRLEFT(A1)", false, "formula"],
  [`=LET(f,LAMBDA(x,${LEFT}(x)),f)(A1)`, true, "none"],
  [`=LAMBDA(x,LAMBDA(y,${LEFT}(x)+y))(A1)(2)`, true, "none"],
  [`=INDEX(A1,1)(${LEFT}(A1))`, true, "none"],
  [`=IF(A1>0,SUM,MAX)(${LEFT}(A1))`, true, "none"],
  // Too few arguments: #VALUE!, as in Excel.
  [`=LAMBDA(x,y,${LEFT}(x))(A1)`, true, "formula"],
])("%s is written or fixed, and does not end the sharing", (formula, allowed, gives) => {
  const found = plainFormula(formula, place, { newerFunctions: allowed });
  expect(found.kind).toBe(gives);
  if (found.kind === "formula") expect(found.formula).not.toMatch(/RETORT|LAMBDA/);
});

test("the saved value of what has no name is held against what it gives, but where a LAMBDA gives a LAMBDA", () => {
  const held = (cell: string, value: CellReading["value"], formula = ""): CellReading => ({
    ...{ cell, formula, value, shown: String(value), error: "", message: "", spill: "" },
  });
  const cells = [held("A1", 1), held("E1", 0.5, `=LAMBDA(x,${LEFT}(x))(A1)`), held("E2", 0.5, `=LAMBDA(x,LAMBDA(y,${LEFT}(x)+y))(A1)(2)`)];
  const found = notGiven({ sheets: [{ sheet: "Tray", range: "", rows: [cells] }], names: [] });
  expect(found.map(({ cell }) => cell)).toEqual(["E1"]);
});
