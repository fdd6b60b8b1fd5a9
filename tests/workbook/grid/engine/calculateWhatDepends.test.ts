import { IFormulaDependencyGenerator } from "@univerjs/engine-formula";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../../workbench/headlessWorkbook";
import type { CellContent } from "../../../../src/workbook/Workbook";

jest.setTimeout(60_000);

const SHEETS = [FIRST_SHEET, "Two", "It's (3)", "Four"];
const bare = (name: string) => ({ name, cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" });

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook();
  for (const name of SHEETS.slice(1)) await open.workbook.addSheet(bare(name));
  await open.settled();
});
afterEach(() => open.close());

const values = async (): Promise<CellContent[][]> =>
  Promise.all(SHEETS.map(async (sheet) => (await open.workbook.read(sheet, "A1:F12")).rows.flat().map(({ value }) => value)));

async function shows(sheet: string, cell: string, expected: CellContent): Promise<void> {
  expect([sheet, cell, (await open.workbook.read(sheet, cell)).rows[0]?.[0]?.value]).toEqual([sheet, cell, expected]);
}

const typed = async (sheet: string, cell: string, content: CellContent): Promise<void> => {
  await open.type(sheet, cell, content);
  await open.settled();
};

test("an edit reaches other sheets through sheets that were not touched, names, spills, INDIRECT and whole columns", async () => {
  const [first, two, three, four] = SHEETS as [string, string, string, string];
  open.engine.book.insertDefinedName("oven", `'${first}'!$A$1`);
  await typed(first, "A1", 100);
  await typed(two, "B1", `='${first}'!A1+1`);
  await typed(two, "B2", "=B1*2");
  await typed(three, "C1", `=${two}!B2+${two}!B1`);
  await typed(three, "C2", "=oven+5");
  await typed(three, "D1", `=INDIRECT("${first}!A1")*3`);
  await typed(four, "A1", "=SUM('It''s (3)'!C:C)");
  await typed(four, "B1", "=RETORT.MOISTURE.WET(25,A2:A3,B2:B3)");
  await typed(four, "D1", "=SUM(B1:C3)");
  await typed(first, "A1", 200);
  await shows(two, "B2", 402);
  await shows(three, "C1", 603);
  await shows(three, "C2", 205);
  await shows(three, "D1", 600);
  await shows(four, "A1", 808);
  await typed(four, "E1", "=A1+1");
  await typed(two, "B1", 7);
  await shows(three, "C1", 21);
  await shows(four, "E1", 227);
});

test("a sheet that comes to look at another one is followed from then on, and forgotten when it no longer does", async () => {
  const [first, two] = SHEETS as [string, string];
  await typed(two, "A1", "=B1+1");
  await typed(first, "A1", 1);
  await typed(two, "A1", `=${first}!A1+1`);
  await typed(first, "A1", 5);
  await shows(two, "A1", 6);
  await typed(two, "A1", "=B1+1");
  await typed(first, "A1", 6);
  await shows(two, "A1", 1);
});

test("sheets that come, go and change their names leave every other cell right", async () => {
  const [first, two, three] = SHEETS as [string, string, string];
  await typed(first, "A1", 4);
  await typed(two, "A1", `='It''s (3)'!A1*2`);
  await typed(three, "A1", `=${first}!A1*10`);
  await shows(two, "A1", 80);
  open.engine.book.getSheetByName(three)?.setName("Third");
  await open.settled();
  await typed(first, "A1", 5);
  await shows(two, "A1", 100);
  const added = await open.workbook.addSheet({ ...bare("Five"), cells: [{ cell: "A1", formula: `=${two}!A1+1` }] });
  await open.settled();
  await typed(first, "A1", 6);
  await shows(added, "A1", 121);
});

test("after any edits on four sheets that look at one another here and there, a full calculation changes no cell", async () => {
  let seed = 11;
  const random = (below: number): number => (seed = (seed * 48271) % 2147483647) % below;
  // Rows above alone, so that nothing depends on itself.
  const above = (row: number): string => `${"ABCDEF"[random(6)]}${1 + random(row - 1)}`;
  const formulas = [
    (row: number) => `=${above(row)}+1`,
    (row: number) => `=SUM(${above(row)}:${above(row)})`,
    (row: number) => `='It''s (3)'!${above(row)}&"!"`,
    (row: number) => `=Two!${above(row)}`,
    (row: number) => `=IF(ISNUMBER(${above(row)}),${above(row)},"Two!A1")`,
    (row: number) => `=INDEX($A$1:$F$${row - 1},${1 + random(row - 1)},${1 + random(6)})`,
    (row: number) => `=RETORT.MOISTURE.WET(25,${40 + random(9)},${above(row)})`,
  ];
  for (let edit = 0; edit < 50; edit++) {
    const row = 1 + random(12);
    const content = row === 1 || random(3) === 0 ? random(60) : (formulas[random(formulas.length)] as (row: number) => string)(row);
    await open.type(SHEETS[random(SHEETS.length)] as string, `${"ABCDEF"[random(6)]}${row}`, content);
    if (random(3) > 0) await open.settled();
  }
  await open.settled();
  const after = await values();
  open.engine.api.getFormula().executeCalculation();
  await open.engine.api.getFormula().onCalculationEnd();
  await open.settled();
  expect(await values()).toEqual(after);
});

const more = { ...bare("More"), cells: Array.from({ length: 20 }, (_, row) => ({ cell: `B${row + 1}`, formula: `=A${row + 1}+1` })) };

/** The sheets whose formulas the engine goes through from now on, one for each formula. */
function sheetsAsked(): string[] {
  const generator = open.engine.injector.get(IFormulaDependencyGenerator) as unknown as { _getTreeNode(tree: { subUnitId: string }): unknown };
  const original = generator._getTreeNode.bind(generator);
  const asked: string[] = [];
  generator._getTreeNode = (tree) => {
    asked.push(tree.subUnitId);
    return original(tree);
  };
  return asked;
}

async function twentySheets(): Promise<string[]> {
  for (let sheet = 0; sheet < 16; sheet++) await open.workbook.addSheet(more);
  await open.settled();
  return sheetsAsked();
}

const idOf = (sheet: string): string | undefined => open.engine.book.getSheetByName(sheet)?.getSheetId();

test("an edit on one of twenty sheets that look at no other goes through the formulas of that sheet alone", async () => {
  const asked = await twentySheets();
  await typed("More", "A3", 5);
  await shows("More", "B3", 6);
  expect(asked.length).toBeGreaterThanOrEqual(20);
  expect(new Set(asked)).toEqual(new Set([idOf("More")]));
});

test("so does a sheet that comes in beside twenty others, and rows put into one of them", async () => {
  const asked = await twentySheets();
  const added = await open.workbook.addSheet(more);
  await open.settled();
  await shows(added, "B3", 1);
  expect(new Set(asked)).toEqual(new Set([idOf(added)]));
  asked.length = 0;
  open.engine.book.getSheetByName("More")?.insertRowsBefore(1, 2);
  await open.settled();
  await typed("More", "A5", 7);
  await shows("More", "B5", 8);
  expect(new Set(asked)).toEqual(new Set([idOf("More")]));
});
