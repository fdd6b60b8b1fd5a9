import { DataValidationStatus, Dimension, RANGE_TYPE } from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import { MoveRangeCommand, SetDefinedNameCommand } from "@univerjs/sheets";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { namesIn, replaceNames } from "../../../../src/workbook/grid/writing/definedNames";
import type { CellContent } from "../../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

const bare = (name: string) => ({ name, cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });

interface Rows {
  readonly startRow: number;
  readonly endRow: number;
}

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  await open.workbook.addSheet(bare("Answers"));
  replaceNames(open.engine, [
    { name: "vessel", refersTo: "Sheet1!$B$2" },
    { name: "Moist", refersTo: "Sheet1!$B$3" },
    { name: "dry", refersTo: "Sheet1!$B$4" },
    { name: "lost", refersTo: "Moist-dry" },
    { name: "all", refersTo: "Sheet1!$B$2:$B$4" },
    { name: "twiceMoist", refersTo: "Sheet1!$B$3*2" },
  ]);
  for (const [row, grams] of [25, 75, 61].entries()) await open.type(FIRST_SHEET, `B${row + 2}`, grams);
  for (const [row, formula] of FORMULAS.entries()) await open.type("Answers", `A${row + 1}`, formula);
  await open.type(FIRST_SHEET, "D6", "=moist-dry");
  await open.settled();
  open.engine.book.setActiveSheet(sheet(FIRST_SHEET));
});
afterEach(() => open.close());

const FORMULAS = [
  "=moist-dry",
  "=moist",
  "=LOST*2",
  "=SUM(all)",
  "=RETORT.MOISTURE.WET(vessel,moist,dry)",
  '=INDIRECT("dry")',
  "=twicemoist",
  "=-dry",
];

const sheet = (name: string): FWorksheet => open.engine.book.getSheetByName(name) as FWorksheet;
async function shown(range = "A1:A8", on = "Answers"): Promise<CellContent[]> {
  await open.settled();
  return (await open.workbook.read(on, range)).rows.flat().map(({ value }) => value);
}
const expected = (vessel: number, moist: number, dry: number): CellContent[] =>
  [moist - dry, moist, 2 * (moist - dry), vessel + moist + dry, (moist - dry) / (moist - vessel), dry, 2 * moist, -dry]; // prettier-ignore
const move = (from: Rows, to: Rows): unknown => {
  const columnB = { startColumn: 1, endColumn: 1, rangeType: RANGE_TYPE.NORMAL };
  return open.engine.api.executeCommand(MoveRangeCommand.id, { fromRange: { ...from, ...columnB }, toRange: { ...to, ...columnB } });
};

test.each<[string, () => unknown, string]>([
  ["rows put in above", () => sheet(FIRST_SHEET).insertRowsBefore(0, 2), "B5"],
  ["a row put in between", () => sheet(FIRST_SHEET).insertRowsBefore(2, 1), "B4"],
  ["rows taken out above", () => sheet(FIRST_SHEET).deleteRows(0, 1), "B2"],
  ["a column put in before", () => sheet(FIRST_SHEET).insertColumnsBefore(1, 1), "C3"],
  ["a column taken out before", () => sheet(FIRST_SHEET).deleteColumns(0, 1), "A3"],
  ["rows dragged elsewhere", () => sheet(FIRST_SHEET).moveRows(sheet(FIRST_SHEET).getRange(1, 0, 3, 26), 9), "B8"],
  ["a column dragged elsewhere", () => sheet(FIRST_SHEET).moveColumns(sheet(FIRST_SHEET).getRange(0, 1, 200, 1), 6), "F3"],
  ["cells put in above", () => sheet(FIRST_SHEET).getRange(0, 1, 1, 1).insertCells(Dimension.ROWS), "B4"],
  ["cells put in before", () => sheet(FIRST_SHEET).getRange(1, 0, 3, 1).insertCells(Dimension.COLUMNS), "C3"],
  ["cells taken out above", () => sheet(FIRST_SHEET).getRange(0, 1, 1, 1).deleteCells(Dimension.ROWS), "B2"],
  ["the cells cut and pasted, or dragged", () => move({ startRow: 1, endRow: 3 }, { startRow: 8, endRow: 10 }), "B10"],
  ["the sheet renamed", () => sheet(FIRST_SHEET).setName("Oven's 2"), "B3"],
])("formulas follow their names: %s, taken back, and done again", async (_what, change, moist) => {
  const first = sheet(FIRST_SHEET).getSheetId();
  const type = (grams: number): Promise<void> => open.type(open.engine.book.getSheetBySheetId(first)?.getSheetName() ?? "", moist, grams);
  expect(await shown()).toEqual(expected(25, 75, 61));
  for (const again of [change, () => open.engine.book.redo()]) {
    await again();
    expect(await shown()).toEqual(expected(25, 75, 61));
    await type(70);
    expect(await shown()).toEqual(expected(25, 70, 61));
    open.engine.book.undo();
    open.engine.book.undo();
    expect(await shown()).toEqual(expected(25, 75, 61));
    await open.type(FIRST_SHEET, "B3", 72);
    expect(await shown()).toEqual(expected(25, 72, 61));
    open.engine.book.undo();
    // The step that was taken back can no longer be done again once something else was typed.
    open.engine.book.redo();
    open.engine.book.undo();
    await change();
    expect(await shown()).toEqual(expected(25, 75, 61));
    open.engine.book.undo();
    expect(await shown()).toEqual(expected(25, 75, 61));
  }
});

test("a sheet that names stand for is renamed: formulas without names go on too", async () => {
  await open.type("Answers", "B1", "=RETORT.MOISTURE.WET(Sheet1!B2,Sheet1!B3,Sheet1!B4)");
  await open.type("Answers", "B2", "=Sheet1!B3+1");
  await open.settled();
  sheet(FIRST_SHEET).setName("Oven's 2");
  await open.settled();
  await open.type("Oven's 2", "B3", 70);
  expect([await shown(), await shown("B1:B2")]).toEqual([expected(25, 70, 61), [0.2, 71]]);
});

test("a sheet that names stand for is taken away: their formulas are #REF!, until it is back", async () => {
  // Our own functions tell of an error in words.
  const answers = ["#REF!", "#REF!", "#REF!", "#REF!", "#VALUE!", "#REF!", "#REF!", "#REF!"];
  open.engine.book.deleteSheet(sheet(FIRST_SHEET));
  expect(await shown()).toEqual(answers);
  open.engine.book.undo();
  expect(await shown()).toEqual(expected(25, 75, 61));
  await open.type(FIRST_SHEET, "B3", 70);
  expect(await shown()).toEqual(expected(25, 70, 61));
  open.engine.book.undo();
  open.engine.book.redo();
  expect(await shown()).toEqual(expected(25, 70, 61));
});

test("so are those that stand for more than cells of that sheet, and nothing else", async () => {
  await open.workbook.addSheet(bare("It's gone"));
  const names = [
    "Sheet1!$B$2+'It''s gone'!$A$1",
    "SUM('It''s gone'!$A:$A)",
    "'It''s gone'!$A$1:$A$3",
    "SUM(Sheet1!$B$2,'It''s gone'!$A$2)",
    '"It\'s gone!A1"&1',
  ];
  replaceNames(open.engine, names.map((refersTo, place) => ({ name: `name_${place}`, refersTo }))); // prettier-ignore
  for (const [row, formula] of ["=name_0", "=name_1", "=SUM(name_2)", "=name_3", "=name_4", "=IFERROR(name_0,-1)"].entries())
    await open.type("Answers", `B${row + 1}`, formula);
  await open.type("It's gone", "A1", 5);
  const before = [30, 5, 5, 25, "It's gone!A11", 30];
  expect(await shown("B1:B6")).toEqual(before);
  for (const change of [() => open.engine.book.deleteSheet(sheet("It's gone")), () => open.engine.book.redo()]) {
    change();
    expect(await shown("B1:B6")).toEqual(["#REF!", "#REF!", "#REF!", "#REF!", "It's gone!A11", -1]);
    open.engine.book.undo();
    expect([await shown("B1:B6"), namesIn(open.engine).map(({ refersTo }) => refersTo)]).toEqual([before, names]);
  }
});

test("cells cut to another sheet take their names along", async () => {
  const place = { startRow: 1, endRow: 3, startColumn: 1, endColumn: 1 };
  const [fromSubUnitId, toSubUnitId] = [FIRST_SHEET, "Answers"].map((name) => sheet(name).getSheetId());
  await open.engine.api.executeCommand(MoveRangeCommand.id, { fromRange: place, toRange: place, fromSubUnitId, toSubUnitId });
  expect([await shown(), await shown("B2:B4")]).toEqual([expected(25, 75, 61), [25, 75, 61]]);
  await open.type("Answers", "B3", 70);
  expect([await shown(), await shown("D6", FIRST_SHEET)]).toEqual([expected(25, 70, 61), [9]]);
  open.engine.book.undo();
  open.engine.book.undo();
  expect([await shown(), await shown("B2:B4")]).toEqual([expected(25, 75, 61), [null, null, null]]);
});

test("a name that is given, changed, called otherwise or taken away is followed, there and back", async () => {
  const { book } = open.engine;
  const edit = (name: string, to: { readonly name?: string; readonly formulaOrRefString?: string }): unknown => {
    const unitId = book.getId();
    return open.engine.api.syncExecuteCommand(SetDefinedNameCommand.id, {
      ...open.engine.injector.get(IDefinedNamesService).getValueByName(unitId, name),
      ...to,
      unitId,
    });
  };
  const back = async (): Promise<CellContent[]> => {
    book.undo();
    return shown();
  };
  await open.type("Answers", "B1", "=later*2");
  await open.type("Answers", "B2", "=later");
  expect(await shown("B1:B2")).toEqual(["#NAME?", "#NAME?"]);
  book.insertDefinedName("later", "Sheet1!$B$2");
  expect(await shown("B1:B2")).toEqual([50, 25]);
  await back();
  expect(await shown("B1:B2")).toEqual(["#NAME?", "#NAME?"]);
  edit("Moist", { formulaOrRefString: "Sheet1!$B$2" });
  expect((await shown()).slice(0, 3)).toEqual([-36, 25, -72]);
  await open.type(FIRST_SHEET, "B2", 26);
  expect((await shown()).slice(0, 3)).toEqual([-35, 26, -70]);
  await back();
  expect(await back()).toEqual(expected(25, 75, 61));
  edit("vessel", { name: "tare" });
  expect(await shown()).toEqual(expected(25, 75, 61));
  await open.type(FIRST_SHEET, "B2", 35);
  expect(await shown()).toEqual(expected(35, 75, 61));
  await back();
  expect(await back()).toEqual(expected(25, 75, 61));
  book.deleteDefinedName("Moist");
  expect((await shown()).slice(0, 3)).not.toContain(75);
  expect(await back()).toEqual(expected(25, 75, 61));
});

test("a formula that was not there while its names changed is read anew when it comes back", async () => {
  await open.type("Answers", "A1", "");
  await open.type("Answers", "A2", "");
  await open.settled();
  sheet(FIRST_SHEET).insertRowsBefore(0, 2);
  await open.settled();
  for (const [row, formula] of FORMULAS.slice(0, 2).entries()) await open.type("Answers", `A${row + 1}`, formula);
  expect(await shown()).toEqual(expected(25, 75, 61));
  replaceNames(open.engine, []);
  expect(await shown()).toEqual(["#NAME?", "#NAME?", "#NAME?", "#NAME?", "#VALUE!", "#REF!", "#NAME?", "#NAME?"]);
});

test("an entry rule follows the names in its condition", async () => {
  const refuses = async (): Promise<unknown> => {
    await open.settled();
    return sheet("Kiln").getRange("A1").getValidatorStatus();
  };
  const { VALID, INVALID } = DataValidationStatus;
  const allow = { kind: "condition", condition: "=A1<moist" } as const;
  await open.workbook.addSheet({ ...bare("Kiln"), entryRules: [{ range: "A1", allow, promptTitle: "", prompt: "", refusal: "too much" }] });
  await open.type("Kiln", "A1", 72);
  expect(await refuses()).toEqual([[VALID]]);
  open.engine.book.setActiveSheet(sheet(FIRST_SHEET));
  sheet(FIRST_SHEET).insertRowsBefore(0, 2);
  expect(await refuses()).toEqual([[VALID]]);
  await open.type(FIRST_SHEET, "B5", 70);
  expect(await refuses()).toEqual([[INVALID]]);
});

test("what a name no longer stands for can depend on the formula that uses it", async () => {
  await open.type("Answers", "B1", "=moist*2");
  await open.settled();
  await move({ startRow: 2, endRow: 2 }, { startRow: 20, endRow: 20 });
  await open.type(FIRST_SHEET, "B3", "=Answers!B1+1");
  expect([await shown("B1"), await shown("B3", FIRST_SHEET)]).toEqual([[150], [151]]);
});

// Every formula with a name has one beside it with the cells that the name stands for, which move with the same changes.
test.each([5, 17])("after any changes formulas with names give what those with cells give (seed %i)", async (start) => {
  let seed = start * 7919;
  const random = (below: number): number => ((seed = (seed * 48271) % 2147483647) >> 8) % below;
  const pairs = [["=moist-dry", "=Sheet1!B3-Sheet1!B4"], ["=SUM(all)*vessel", "=SUM(Sheet1!B2:B4)*Sheet1!B2"], ["=lost/twicemoist", "=(Sheet1!B3-Sheet1!B4)/(Sheet1!B3*2)"]]; // prettier-ignore
  const first = sheet(FIRST_SHEET).getSheetId();
  const weighed = (): FWorksheet | undefined => open.engine.book.getSheets().find((one) => one.getSheetId() === first);
  for (const [row, [named, plain]] of pairs.entries()) {
    await open.type("Answers", `E${row + 1}`, named as string);
    await open.type("Answers", `F${row + 1}`, plain as string);
  }
  const changes: readonly (() => unknown)[] = [
    () => weighed()?.insertRowsBefore(random(5), 1 + random(2)),
    () => weighed()?.insertColumnsBefore(random(2), 1),
    () => random(3) === 0 && weighed()?.deleteRows(random(4), 1),
    () => weighed()?.getRange(random(3), random(2), 1, 1).insertCells(Dimension.ROWS),
    () => weighed()?.setName(`Oven's ${random(1000)}`),
    () => weighed() && move({ startRow: 1, endRow: 3 }, { startRow: 9, endRow: 11 }),
    () => weighed() && open.engine.book.getSheets().length > 1 && random(4) === 0 && open.engine.book.deleteSheet(weighed() as FWorksheet),
    () => weighed() && open.type((weighed() as FWorksheet).getSheetName(), `B${2 + random(9)}`, random(90)),
    () => open.engine.book.undo(),
    () => open.engine.book.undo(),
    () => open.engine.book.redo(),
  ];
  let numbers = 0;
  for (let step = 0; step < 60; step++) {
    const found = weighed();
    if (found) open.engine.book.setActiveSheet(found);
    await changes[random(changes.length)]?.();
    if (random(3) === 0) continue;
    const [withNames, withCells] = [await shown("E1:E3"), await shown("F1:F3")];
    expect({ step, withNames }).toEqual({ step, withNames: withCells });
    numbers += withCells.filter((value) => typeof value === "number").length;
  }
  expect(numbers).toBeGreaterThan(50);
});
