import { UniverSheetsNodeCorePreset } from "@univerjs/preset-sheets-node-core";
import { functionsMetadata } from "../../cells/metadata";
import { everyFunction, NAMESPACE } from "../../functions/catalogue";
import { CustomFunctionsHost } from "../../workbench/functionsHost/CustomFunctionsHost";
import type { FunctionsMetadata } from "../../workbench/functionsHost/FunctionsMetadata";
import { readWorkbook } from "../../workbench/xlsx/readWorkbook";
import { replaceSheets } from "../../workbook/grid/GridSheet";
import { GridWorkbook } from "../../workbook/grid/GridWorkbook";
import { openGrid } from "../../workbook/grid/openGrid";
import type { CellReading, RangeReading } from "../../workbook/Workbook";

/** What every cell of a workbook holds when its formulas are calculated here, by sheet and cell. Read formulas are those of the file. */
export type Calculated = ReadonlyMap<string, ReadonlyMap<string, CellReading>>;

// The functions register once in a program, with the host that stands there then.
const host = new CustomFunctionsHost();

/** Calculates a workbook file with the built functions, without a page. @throws WorkbookProblem where it holds too much */
export async function calculated(content: Uint8Array<ArrayBuffer>): Promise<Calculated> {
  const found = new Map<string, ReadonlyMap<string, CellReading>>();
  for (const { sheet, rows } of await calculatedSheets(content)) found.set(sheet, new Map(rows.flat().map((reading) => [reading.cell, reading])));
  return found;
}

/** Every sheet of a workbook file as it is shown when its formulas are calculated here. @throws WorkbookProblem where it holds too much */
export async function calculatedSheets(content: Uint8Array<ArrayBuffer>): Promise<readonly RangeReading[]> {
  const { sheets, names } = await readWorkbook(content);
  host.install(globalThis);
  await import("../../cells/register");
  const metadata = functionsMetadata(everyFunction, (name) => name) as FunctionsMetadata;
  const engine = openGrid({
    functions: host.functions(metadata, NAMESPACE),
    presets: (formula) => [UniverSheetsNodeCorePreset({ formula })],
    data: { name: "", sheetOrder: ["first"], sheets: { first: { id: "first", name: "first" } } },
  });
  try {
    await replaceSheets(engine, sheets.map(({ sheet }) => sheet), names); // prettier-ignore
    const workbook = new GridWorkbook(engine);
    const found: RangeReading[] = [];
    for (const name of await workbook.sheetNames()) found.push(await workbook.readUsed(name));
    return found;
  } finally {
    engine.univer.dispose();
  }
}
