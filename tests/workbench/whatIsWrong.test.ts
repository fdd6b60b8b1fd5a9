import { refersToItself } from "../../src/workbench/whatIsWrong";

const own = { sheet: "Kiln", cell: "I6" };

describe("refersToItself(cellFormula, address)", () => {
  test.each(["=I6+1", "=-$I$6", "=SUM(H1:J9)", "=Kiln!I6*2", "='kiln'!I6", "=RETORT.MOISTURE.WET(1,I6,2)", "=IF(A1>0,i6,0)"])(
    "finds the cell itself in %s",
    (formula) => expect(refersToItself(formula, own)).toBe(true),
  );

  test.each(["=I7+1", "=Other!I6", '="I6"', "=ROW(I6)+COLUMN(I6)", "=SUM(H1:J5)", "=I66", "=1+1", "", "=(", "=I6#REF"])(
    "finds no need of it in %s",
    (formula) => expect(refersToItself(formula, own)).toBe(false),
  );
});
