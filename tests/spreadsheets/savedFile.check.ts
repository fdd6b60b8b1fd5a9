// What a saved workbook looks like to a colleague who opens it in another spreadsheet, without the add-in.
import { Workbook, type Cell, type Worksheet } from "exceljs";
import { shareAsValues } from "../../src/sharing/shareAsValues";
import { saveXlsx } from "../../src/workbench/xlsx/saveXlsx";
import { filledRuns } from "./filledRuns";
import { throughLibreOffice } from "./recalculated";

jest.setTimeout(180_000);

const DAY = "2027-01-15";

let given: Workbook;
let back: Workbook;
beforeAll(async () => {
  const sheet = await filledRuns["charring run of three samples with its composition, one on a tared balance"]?.();
  if (sheet === undefined) throw new Error("no such run");
  await shareAsValues(sheet.workbook, sheet.name, DAY);
  given = new Workbook();
  await given.xlsx.load((await saveXlsx(sheet.engine)).buffer);
  sheet.close();
  back = await throughLibreOffice(given);
});

/** The cells of a sheet that hold anything, each told by `tell`; what tells nothing is left out. */
function told(sheet: Worksheet, tell: (cell: Cell) => unknown): Record<string, unknown> {
  const cells: Record<string, unknown> = {};
  sheet.eachRow((row) =>
    row.eachCell((cell) => {
      const text = tell(cell);
      if (text !== undefined) cells[cell.address] = text;
    }),
  );
  return cells;
}

const SHEETS = ["Charring run", "Charring run values", "Charring run record"];
const sheetsCalled = (name: string): [Worksheet, Worksheet] => [given.getWorksheet(name) as Worksheet, back.getWorksheet(name) as Worksheet];

test("every sheet comes back, in its order", () => {
  expect(back.worksheets.map(({ name }) => name)).toEqual(expect.arrayContaining(SHEETS));
  expect(back.worksheets.map(({ name }) => name)).toEqual(given.worksheets.map(({ name }) => name));
});

test.each(SHEETS)("every text of %s comes back, texts that look like formulas among them", (name) => {
  const texts = (cell: Cell): unknown => (typeof cell.value === "string" && cell.value !== "" ? cell.value : undefined);
  const [before, after] = sheetsCalled(name).map((sheet) => told(sheet, texts));
  expect(Object.keys(before ?? {}).length).toBeGreaterThan(20);
  expect(after).toEqual(before);
});

/** LibreOffice calculates formulas over arrays whatever the file says, and knows none of our functions. */
const isOursOverArrays = ({ value, formula }: Cell): boolean =>
  (value as { shareType?: string } | null)?.shareType === "array" && formula.includes("RETORT_");

test.each(SHEETS)("every value of %s comes back, those of our own functions as they were saved where they are not over arrays", (name) => {
  const overArrays = new Set(Object.keys(told(sheetsCalled(name)[0], (cell) => (isOursOverArrays(cell) ? true : undefined))));
  expect(overArrays.size).toBeLessThan(10);
  const results = (cell: Cell): unknown => {
    if (overArrays.has(cell.address)) return undefined;
    const held = cell.formula ? cell.result : cell.value;
    return typeof held === "number" ? Number(held.toPrecision(12)) : undefined;
  };
  const [before, after] = sheetsCalled(name).map((sheet) => told(sheet, results));
  expect(Object.keys(before ?? {}).length).toBeGreaterThan(10);
  expect(after).toEqual(before);
});

const look = ({ numFmt, border, font, fill, value }: Cell): { readonly boxed: string | undefined } & Record<string, unknown> => ({
  format: typeof value === "string" ? "" : (numFmt ?? "General"),
  boxed: border?.left?.style,
  bold: font.bold === true,
  filled: fill?.type === "pattern" ? fill.fgColor?.argb : undefined,
});
const boxesIn = (looks: Record<string, unknown> | undefined): string[] =>
  Object.entries(looks ?? {}).flatMap(([cell, one]) => ((one as ReturnType<typeof look>).boxed === "thin" ? [cell] : []));

test("number formats, borders of boxes to fill in, bold type and fills of a live run sheet come back", () => {
  const [before, after] = sheetsCalled("Charring run").map((sheet) => told(sheet, look));
  expect(boxesIn(before).length).toBeGreaterThan(20);
  expect(after).toMatchObject(before ?? {});
});

test("number formats, bold type and fills of a copy with values come back, and no box to fill in stands on it", () => {
  const boxes = boxesIn(told(sheetsCalled("Charring run")[0], look));
  const [before, after] = sheetsCalled("Charring run values").map((sheet) => told(sheet, look));
  expect({ before: boxesIn(before), after: boxesIn(after) }).toEqual({ before: [], after: [] });
  expect(boxes.filter((cell) => (before?.[cell] as { filled?: string } | undefined)?.filled !== undefined)).toEqual([]);
  expect(after).toMatchObject(before ?? {});
});

test("prompts and limits of boxes to fill in come back", () => {
  const rules = ({ dataValidation: rule }: Cell): unknown => {
    if (rule === undefined) return undefined;
    // LibreOffice gives a list a second formula of 0. The file library calls a box that takes anything "any", the file format "none".
    const limits: Readonly<Record<string, unknown>> = { decimal: rule.formulae, list: rule.formulae?.[0], any: "any", none: "any" };
    return { limits: limits[rule.type] ?? rule.type, title: rule.promptTitle, prompt: rule.prompt, error: rule.error };
  };
  const [before, after] = sheetsCalled("Charring run").map((sheet) => told(sheet, rules));
  expect(Object.keys(before ?? {}).length).toBeGreaterThan(20);
  expect(after).toEqual(before);
});

test("a row is as high as its wrapped text was made", () => {
  const heights = (sheet: Worksheet): number[] => (sheet.getRows(1, sheet.rowCount) ?? []).map(({ height }) => Math.round(height ?? 0));
  const [before, after] = sheetsCalled("Charring run record").map(heights);
  const high = (before ?? []).flatMap((height, index) => (height > 0 ? [[index, height]] : []));
  expect(high.length).toBeGreaterThan(5);
  expect(high.map(([index]) => [index, after?.[index ?? 0]])).toEqual(high);
});
