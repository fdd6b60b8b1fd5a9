import { UniverSheetsNodeCorePreset } from "@univerjs/preset-sheets-node-core";
import { functionsMetadata } from "../../src/cells/metadata";
import { everyFunction, NAMESPACE } from "../../src/functions/catalogue";
import { CustomFunctionsHost } from "../../src/workbench/customFunctionsHost";
import type { FunctionsMetadata } from "../../src/workbench/FunctionsMetadata";
import type { Bench } from "../../src/workbook/bench/Bench";
import { BenchWorkbook } from "../../src/workbook/bench/BenchWorkbook";
import type { HostFunction } from "../../src/workbook/bench/HostFunction";
import { openBench } from "../../src/workbook/bench/openBench";
import { typeInto } from "../../src/workbook/bench/typeInto";
import type { CellContent } from "../../src/workbook/Workbook";

export interface HeadlessWorkbook {
  readonly workbook: BenchWorkbook;
  readonly bench: Bench;
  /** Changes what a blank cell is handed over as. */
  readonly host: CustomFunctionsHost;
  /** As if typed and entered: "=..." is a formula, "12" a number, "'12" the text 12, "" clears the cell. Calculation follows. */
  type(sheet: string, cell: string, content: CellContent): Promise<void>;
  /** Resolves when every cell shows the result of what was last typed and every listener has been called. */
  settled(): Promise<void>;
  close(): void;
}

export const FIRST_SHEET = "Sheet1";

const host = new CustomFunctionsHost();

/**
 * The local workbook without a page: the same engine in Node, every function of the catalogue registered, one blank sheet.
 * @param further functions for a test alone, under their full names
 */
export async function openHeadlessWorkbook(further: readonly HostFunction[] = []): Promise<HeadlessWorkbook> {
  host.install(globalThis);
  host.blankAs = 0;
  await import("../../src/cells/register");
  const metadata = functionsMetadata(everyFunction, (name) => `https://localhost/help/${name}.html`) as FunctionsMetadata;
  const bench = openBench({
    functions: [...host.functions(metadata, NAMESPACE), ...further],
    presets: (formula) => [UniverSheetsNodeCorePreset({ formula })],
    data: {
      name: "Headless",
      sheetOrder: ["first"],
      sheets: { first: { id: "first", name: FIRST_SHEET, rowCount: 200, columnCount: 26 } },
    },
  });
  return {
    workbook: new BenchWorkbook(bench),
    bench,
    host,
    type: async (sheet, cell, content) => typeInto(bench, { sheet, cell }, content),
    settled: async () => {
      await bench.settled();
      // Changes of selection are told in a task of their own.
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    close: () => bench.univer.dispose(),
  };
}
