import { DataValidationStatus } from "@univerjs/core";
import { IOtherFormulaManagerService } from "@univerjs/engine-formula";
import { removeRule } from "../../../../src/workbook/grid/writing/entryRules";
import type { EntryRule } from "../../../../src/workbook/SheetPlan";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(60_000);

const rule = (range: string, condition: string): EntryRule => ({
  range,
  allow: { kind: "condition", condition },
  promptTitle: "",
  prompt: "",
  refusal: "Nothing to type here.",
});

let open: HeadlessWorkbook;
let name: string;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  name = await open.workbook.addSheet({
    name: "Ruled",
    cells: ["B2", "C2", "B3", "C3"].map((cell) => ({ cell, formula: "=A1+1" })),
    columnWidths: [],
    entryRules: [rule("B2:C3", "=ISFORMULA(B2)"), rule("E2:F2", "=FALSE"), rule("E4:E5", "=IF(ISNUMBER(E4),E4>A1,FALSE)")],
    frozenRows: 0,
    startAt: "A1",
  });
  await open.settled();
});
afterEach(() => open.close());

const sheet = () => open.engine.book.getSheetByName(name) as NonNullable<ReturnType<typeof open.engine.book.getSheetByName>>;
const status = async (cell: string): Promise<DataValidationStatus | undefined> => (await sheet().getRange(cell).getValidatorStatus())[0]?.[0];
const { VALID, INVALID } = DataValidationStatus;

/** Rules whose condition the engine works out as if their cells held a formula more. */
function workedOut(): number {
  const kept = open.engine.injector.get(IOtherFormulaManagerService).getOtherFormulaData()[open.engine.book.getId()]?.[sheet().getSheetId()];
  return Object.keys(kept ?? {}).length;
}

test("a rule that asks for the cell's own formula holds until it is typed over, and again once the formula is back", async () => {
  expect(await Promise.all(["B2", "C3"].map(status))).toEqual([VALID, VALID]);
  await open.type(name, "C3", 5);
  await open.settled();
  expect(await Promise.all(["B2", "C3"].map(status))).toEqual([VALID, INVALID]);
  await open.type(name, "C3", "=A1*2");
  await open.settled();
  expect(await status("C3")).toBe(VALID);
});

test("it goes on asking each cell about itself after rows were put in above", async () => {
  sheet().insertRowsBefore(0, 2);
  await open.settled();
  await open.type(name, "B5", 5);
  await open.settled();
  expect(await Promise.all(["B4", "C4", "B5", "C5"].map(status))).toEqual([VALID, VALID, INVALID, VALID]);
});

test("a rule that refuses everything does, and any other condition is worked out with what it reads", async () => {
  await open.type(name, "F2", "x");
  await open.type(name, "A1", 3);
  await open.type(name, "E4", 4);
  await open.type(name, "E5", 2);
  await open.settled();
  // Seen from E5 the rule reads A2, which is blank.
  expect(await Promise.all(["F2", "E4", "E5"].map(status))).toEqual([INVALID, VALID, VALID]);
  await open.type(name, "A2", 9);
  await open.settled();
  expect(await status("E5")).toBe(INVALID);
});

test("only what has to be is worked out, and nothing once the rule is gone", async () => {
  expect(workedOut()).toBe(1);
  for (const { rule: held } of sheet().getDataValidations()) removeRule(open.engine, sheet(), held.uid);
  await open.settled();
  expect([workedOut(), sheet().getDataValidations().length]).toEqual([0, 0]);
});
