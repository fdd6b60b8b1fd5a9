import { Dimension } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { CellContent } from "../../../../src/workbook/Workbook";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";

jest.setTimeout(120_000);

const bare = (name: string) => ({ name, cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
});
afterEach(() => open.close());

const sheets = (): FWorksheet[] => open.engine.book.getSheets();
const shown = async (sheet: string, range: string): Promise<CellContent[]> =>
  (await open.workbook.read(sheet, range)).rows.flat().map(({ value }) => value);

async function calculated(): Promise<Record<string, CellContent[]>> {
  await open.settled();
  return Object.fromEntries(await Promise.all(sheets().map(async (one) => [one.getSheetName(), await shown(one.getSheetName(), "A1:K30")])));
}

async function calculatedAnew(): Promise<Record<string, CellContent[]>> {
  open.engine.api.getFormula().executeCalculation();
  await open.engine.api.getFormula().onCalculationEnd();
  return calculated();
}

test("what a formula spilled goes with it where rows go out, come in or are taken back", async () => {
  for (const row of [1, 2, 3]) await open.type("Sheet1", `A${row}`, row);
  await open.type("Sheet1", "C10", "=A1:A3*2");
  await open.settled();
  const [sheet] = sheets() as [FWorksheet];
  sheet.deleteRows(5, 2);
  await open.settled();
  expect(await shown("Sheet1", "C7:C13")).toEqual([null, 2, 4, 6, null, null, null]);
  sheet.insertRowsBefore(0, 4);
  await open.settled();
  expect(await shown("Sheet1", "C7:C16")).toEqual([null, null, null, null, null, 2, 4, 6, null, null]);
  open.engine.book.undo();
  await open.settled();
  expect(await shown("Sheet1", "C7:C13")).toEqual([null, 2, 4, 6, null, null, null]);
  await open.type("Sheet1", "A2", 20);
  await open.settled();
  expect(await shown("Sheet1", "C8:C11")).toEqual([2, 40, 6, null]);
});

// Formulas stand in D to F and look at columns before their own and at earlier sheets, and only cells of A to C are moved, so that nothing depends
// on itself.
test.each([3, 11])("after any change of rows, columns, cells and sheets a full calculation changes no cell (seed %i)", async (start) => {
  let seed = start * 7919;
  const random = (below: number): number => ((seed = (seed * 48271) % 2147483647) >> 8) % below;
  const pick = <T>(from: readonly T[]): T => from[random(from.length)] as T;
  for (const name of ["Two", "It's"]) await open.workbook.addSheet(bare(name));
  const quoted = (sheet: FWorksheet): string => `'${sheet.getSheetName().replaceAll("'", "''")}'`;
  const held = (): string => `${pick([..."ABC"])}${1 + random(12)}`;
  const formulas: readonly (() => string)[] = [
    () => `=${held()}+1`,
    () => `=SUM(${held()}:${held()})`,
    () => `=IF(${held()}="",${held()},"no")`,
    () => `=INDEX(A1:C12,${1 + random(12)},${1 + random(3)})`,
    () => `=SUM(OFFSET(A1,${random(6)},1,${1 + random(6)},1))`,
    () => `=COUNT(A:C)&"x"`,
    () => `=RETORT.MOISTURE.WET(25,${40 + random(9)},${held()})`,
    () => `=ROW(${held()})`,
  ];
  const changes: readonly (() => unknown)[] = [
    () => open.type(pick(sheets()).getSheetName(), `D${1 + random(12)}`, pick(formulas)()),
    () => open.type(pick(sheets()).getSheetName(), `E${1 + random(12)}`, `=D${1 + random(12)}&SUM(D1:D9)`),
    () => open.type(pick(sheets()).getSheetName(), `F${1 + random(12)}`, pick(["=A1:A3*2", '=IF(E2="","",E2)', '=COUNTIF(D1:E12,"*")'])),
    () => open.type(pick(sheets()).getSheetName(), held(), pick([7, 30, "", "oak", '=""', 0])),
    () => open.type(pick(sheets()).getSheetName(), held(), random(60)),
    () => pick(sheets()).insertRowsBefore(random(10), 1 + random(2)),
    () => pick(sheets()).deleteRows(random(10), 1 + random(2)),
    () => pick(sheets()).insertColumnsBefore(0, 1),
    () => pick(sheets()).deleteColumns(random(2), 1),
    () => pick(sheets()).getRange(random(10), random(2), 1, 1).insertCells(Dimension.ROWS),
    () => pick(sheets()).getRange(random(10), random(2), 2, 1).deleteCells(Dimension.ROWS),
    () => pick(sheets()).setName(`Oven's ${random(1000)}`),
    () => sheets().length < 5 && open.engine.book.duplicateSheet(pick(sheets())),
    () => sheets().length > 2 && open.engine.book.deleteSheet(sheets().at(-1) as FWorksheet),
    () => {
      const later = sheets().at(-1) as FWorksheet;
      return open.type(later.getSheetName(), `D${13 + random(4)}`, `=SUM(${quoted(sheets()[0] as FWorksheet)}!A1:E12)`);
    },
    () => open.engine.book.undo(),
  ];
  let changed = 0;
  for (let step = 0; step < 60; step++) {
    await pick(changes)();
    if (random(3) > 0) await open.settled();
    if (step % 4 !== 3) continue;
    const after = await calculated();
    expect({ step, cells: await calculatedAnew() }).toEqual({ step, cells: after });
    changed += Object.values(after).flat().filter((value) => value !== null).length; // prettier-ignore
  }
  expect(changed).toBeGreaterThan(100);
});
