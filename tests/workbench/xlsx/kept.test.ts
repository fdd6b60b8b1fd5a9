import { readBook } from "../../../src/command/book/Book";
import { explainCell } from "../../../src/explanation/explainCell";
import { FROM_BEFORE } from "../../../src/problems/workbook/cellNotes";
import { formulasLost, keptFromBefore } from "../../../src/problems/files/packageProblems";
import { fromBefore } from "../../../src/problems/sharing/sharingProblems";
import { finalValues } from "../../../src/sharing/finalValues";
import { lackingIn, withDoubts } from "../../../src/workbench/withDoubts";
import type { OpenedFile } from "../../../src/workbench/xlsx/inPlace/OpenedFile";
import { openFile } from "../../../src/workbench/xlsx/openXlsx";
import type { Workbook } from "../../../src/workbook/Workbook";
import { oddBook, type OddCell } from "../../sharing/odd/oddBook";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../headlessWorkbook";

jest.setTimeout(120_000);

let open: HeadlessWorkbook;
beforeEach(async () => void (open = await openHeadlessWorkbook()));
afterEach(() => open.close());

// 25 g vessel, 35 g moist, 31.5 g dry: 3.5/10 = 0.35, worked by hand.
const tin = (value = 0.35): Record<string, OddCell> => ({
  ...{ B1: 25, B2: 35, B3: 31.5, C1: 7 },
  B4: { formula: "_xldudf_RETORT_MOISTURE_WET(B1,B2,B3)", value },
});

async function opened(formula: string, first = 0.35, calculation = ""): Promise<{ readonly workbook: Workbook; readonly file: OpenedFile }> {
  const sum = {
    A1: { formula, value: 0.35 },
    A2: { formula: 'IF(A1>0.36,"too wet","in order")', value: "in order" },
    A3: { formula: "1+1", value: 2 },
  };
  const sheets = [{ name: "Sum", cells: sum }, { name: "Tin 1", cells: tin(first) }, { name: "Tin 2", cells: tin() }]; // prettier-ignore
  const { opened: file } = await openFile(open.engine, new Uint8Array(oddBook({ sheets, calculation })));
  return { workbook: withDoubts(open.workbook, { kept: file.kept, lacking: [] }), file };
}

async function isToBeCalculated(file: OpenedFile): Promise<boolean> {
  const saved = await file.saved();
  if ("because" in saved) throw new Error(saved.because);
  return (await readBook(saved.content)).isStale;
}

const SEVERAL: readonly string[] = [
  "AVERAGE('Tin 1:Tin 2'!B4)",
  "'Tin 1'!B4 'Tin 1'!B:B",
  "'Tin 1'!B4+0*[1]Sheet1!A1",
  "IFERROR(SUM('Tin 1'!1:4)*0,0)+0.35",
  // The grid gives something else: it has no such function, does not read "#", and counts rows that were out of view where the file was saved.
  "KILNLOG('Tin 1'!B4)",
  "IFERROR(KILNLOG('Tin 1'!B2),0)+1",
  "_xldudf_RETORT_MOISTURE_WET('Tin 1'!B1,KILNLOG('Tin 1'!B2),'Tin 1'!B3)",
  "AVERAGE(_xlfn.ANCHORARRAY('Tin 1'!B4))",
  "_xlfn.ANCHORARRAY('Tin 1'!B4)*1",
  "SUBTOTAL(109,'Tin 1'!B2:B4)",
  "AGGREGATE(9,5,'Tin 1'!B2:B4)/100",
  "_xlfn.LET(_xlpm.x,KILNLOG('Tin 1'!B4),_xlpm.x)",
];

describe.each(SEVERAL)("%s, which the grid cannot calculate", (formula) => {
  test("is final while nothing has changed that it is calculated from", async () => {
    const { workbook, file } = await opened(formula);
    await open.type("Sum", "E9", 12);
    await open.settled();
    expect(file.kept?.fromBefore()).toEqual([]);
    expect((await finalValues(workbook, "Sum")).rows.flat().find(({ cell }) => cell === "A1")?.value).toBe(0.35);
    expect(await isToBeCalculated(file)).toBe(false);
  });

  test("is from before once something has, with everything calculated from it", async () => {
    const { workbook, file } = await opened(formula);
    await open.type("Tin 1", "B2", 90);
    await open.settled();
    expect(file.kept?.fromBefore()).toEqual(["Sum!A1"]);
    await expect(finalValues(workbook, "Sum", { asShown: true })).rejects.toThrow(fromBefore("Sum", [{ cell: "A1" }, { cell: "A2" }]).message);
    await expect(finalValues(workbook, "Tin 1")).resolves.toBeDefined();
    for (const cell of ["A1", "A2"]) expect((await explainCell(workbook, { sheet: "Sum", cell })).notes).toEqual([FROM_BEFORE]);
    expect((await explainCell(workbook, { sheet: "Sum", cell: "A3" })).notes).not.toContain(FROM_BEFORE);
    expect(await isToBeCalculated(file)).toBe(true);
  });
});

test("what the file held otherwise than it is calculated here is a change as well, and so is the file's own word", async () => {
  const [formula = ""] = SEVERAL;
  expect((await opened(formula, 0.99)).file.kept?.fromBefore()).toEqual(["Sum!A1"]);
  expect((await opened(formula, 0.35, '<calcPr fullCalcOnLoad="1"/>')).file.kept?.fromBefore()).toEqual(["Sum!A1"]);
});

test("a cell that was typed over is anybody's own, and the change taken back is none", async () => {
  const [formula = ""] = SEVERAL;
  const { workbook, file } = await opened(formula);
  await open.type("Tin 1", "B2", 90);
  await open.settled();
  expect(file.kept?.fromBefore()).toEqual(["Sum!A1"]);
  await open.type("Tin 1", "B2", 35);
  await open.settled();
  expect(file.kept?.fromBefore()).toEqual([]);
  await open.type("Tin 1", "B2", 90);
  await open.type("Sum", "A1", 0.4);
  await open.settled();
  expect(file.kept?.fromBefore()).toEqual([]);
  await expect(finalValues(workbook, "Sum")).resolves.toBeDefined();
});

test("what sheets alone do not have is named as the file has it, rows moved or not, and what was typed over is not", async () => {
  const [formula = ""] = SEVERAL;
  const { file } = await opened(formula);
  const lacking = (): readonly string[] => lackingIn({ kept: file.kept, lacking: ["Earlier!B2"] });
  expect(file.kept?.cellsOfFile()).toEqual(["Sum!A1"]);
  expect(lacking()).toEqual(["Earlier!B2", "Sum!A1"]);
  open.engine.book.getSheetByName("Sum")?.insertRows(0, 2);
  await open.settled();
  expect("because" in (await file.saved())).toBe(true);
  expect(lacking()).toEqual(["Earlier!B2", "Sum!A1"]);
  const another = await opened(formula);
  await open.type("Sum", "A1", 0.4);
  await open.settled();
  expect(another.file.kept?.cellsOfFile()).toEqual([]);
  expect(lackingIn({ kept: undefined, lacking: [] })).toEqual([]);
});

test("the words name the cells", () => {
  expect(formulasLost(["Sum!A1"])).toBe(
    "Sum!A1 holds its value without its cell formula, which cannot be calculated here, and does not follow any change. It is named as the opened file has it.",
  );
  expect(formulasLost(["A", "B", "C", "D", "E", "F", "G"].map((column) => `Sum!${column}1`))).toBe(
    "Sum!A1, Sum!B1, Sum!C1, Sum!D1, Sum!E1 and 2 more hold their values without their cell formulas, which cannot be calculated here, and do not follow any change. They are named as the opened file has them.",
  );
  expect(fromBefore("Sum", [{ cell: "A1" }]).message).toBe(
    'sheet: A1 on "Sum" is from before: something that it is calculated from was changed, and a cell formula on the way cannot be calculated rightly here. Save the workbook, let the spreadsheet it comes from calculate it, and share it from there.',
  );
  expect(keptFromBefore(["Sum!A1"], 0)).toBe(
    "Sum!A1 shows a value from before: something that it is calculated from was changed, and the cell formula cannot be calculated rightly here. Save the workbook and let the spreadsheet it comes from calculate it.",
  );
  expect(keptFromBefore(["Sum!A1", "Sum!A4"], 3)).toBe(
    "Sum!A1, Sum!A4 and 3 more show values from before: something that they are calculated from was changed, and the cell formulas cannot be calculated rightly here. Save the workbook and let the spreadsheet it comes from calculate it.",
  );
});
