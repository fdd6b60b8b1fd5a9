import { UniverSheetsNodeCorePreset } from "@univerjs/preset-sheets-node-core";
import { functionsMetadata } from "../../cells/metadata";
import { everyFunction, NAMESPACE } from "../../functions/catalogue";
import { CustomFunctionsHost } from "../../workbench/functionsHost/CustomFunctionsHost";
import type { FunctionsMetadata } from "../../workbench/functionsHost/FunctionsMetadata";
import { sheetStates, type SheetState } from "../../workbench/xlsx/inPlace/SheetState";
import { showsDate } from "../../workbench/xlsx/reading/numberFormats";
import { readWorkbook } from "../../workbench/xlsx/readWorkbook";
import { cellAt } from "../../workbook/cellArea";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { replaceSheets } from "../../workbook/grid/writing/GridSheet";
import { GridWorkbook } from "../../workbook/grid/GridWorkbook";
import { knowsFunction } from "../../workbook/grid/knowsFunction";
import { openGrid } from "../../workbook/grid/openGrid";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import { DAYS_TO_1904 } from "../../xlsx/parts/cellValue";

/** What every cell of a workbook holds when its formulas are calculated here, by sheet and cell. Read formulas are those of the file. */
export type Calculated = ReadonlyMap<string, ReadonlyMap<string, CellReading>>;

// The functions register once in a program, with the host that stands there then.
const host = new CustomFunctionsHost();

/**
 * Calculates a workbook file with the built functions, without a page. Days are counted as the file counts them.
 * @param only the sheets that are calculated, and those that they are calculated from, in small letters; left out: all
 * @throws WorkbookProblem where it holds too much
 */
export const calculated = (content: Uint8Array<ArrayBuffer>, from1904: boolean, only?: ReadonlySet<string>): Promise<Calculated> =>
  inGrid(content, only, async (engine) => {
    const days = new Set(from1904 ? sheetStates(engine).flatMap(daysOn) : []);
    const found = new Map<string, ReadonlyMap<string, CellReading>>();
    for (const { sheet, rows } of await readings(engine))
      found.set(sheet, new Map(rows.flat().map((reading) => [reading.cell, days.has(`${sheet}!${reading.cell}`) ? asCounted(reading) : reading])));
    return found;
  });

/** Every sheet of a workbook file as it is shown when its formulas are calculated here. @throws WorkbookProblem where it holds too much */
export const calculatedSheets = (content: Uint8Array<ArrayBuffer>, only?: ReadonlySet<string>): Promise<readonly RangeReading[]> =>
  inGrid(content, only, readings);

// Here nobody scrolls through the sheets, and a book of 100,000 calls has 400,000 cells.
const MOST = { sheets: 2000, cells: 1_000_000 };

async function inGrid<T>(
  content: Uint8Array<ArrayBuffer>,
  only: ReadonlySet<string> | undefined,
  take: (engine: GridEngine) => Promise<T>,
): Promise<T> {
  host.install(globalThis);
  await import("../../cells/register");
  const metadata = functionsMetadata(everyFunction, (name) => name) as FunctionsMetadata;
  const engine = openGrid({
    functions: host.functions(metadata, NAMESPACE),
    presets: (formula) => [UniverSheetsNodeCorePreset({ formula })],
    data: { name: "", sheetOrder: ["first"], sheets: { first: { id: "first", name: "first" } } },
  });
  try {
    const settings = { ...MOST, knowsFunction: knowsFunction(engine) };
    const { sheets, names } = await readWorkbook(content, only === undefined ? settings : { ...settings, only });
    await replaceSheets(engine, sheets.map(({ sheet }) => sheet), names); // prettier-ignore
    return await take(engine);
  } finally {
    engine.univer.dispose();
  }
}

async function readings(engine: GridEngine): Promise<readonly RangeReading[]> {
  const workbook = new GridWorkbook(engine);
  const found: RangeReading[] = [];
  for (const name of await workbook.sheetNames()) found.push(await workbook.readUsed(name));
  return found;
}

const daysOn = ({ name, cells }: SheetState): string[] =>
  [...cells.values()].flatMap(({ row, column, look }) => (showsDate(look?.n?.pattern ?? "") ? [`${name}!${cellAt(row, column)}`] : []));

const asCounted = (reading: CellReading): CellReading =>
  typeof reading.value === "number" ? { ...reading, value: reading.value - DAYS_TO_1904 } : reading;
