import { UniverSheetsNodeCorePreset } from "@univerjs/preset-sheets-node-core";
import { functionsMetadata } from "../../src/cells/metadata";
import { everyFunction, NAMESPACE } from "../../src/functions/catalogue";
import { CustomFunctionsHost } from "../../src/workbench/functionsHost/CustomFunctionsHost";
import type { FunctionsMetadata } from "../../src/workbench/functionsHost/FunctionsMetadata";
import type { GridEngine } from "../../src/workbook/grid/GridEngine";
import { GridWorkbook } from "../../src/workbook/grid/GridWorkbook";
import type { HostFunction } from "../../src/workbook/grid/calling/HostFunction";
import { openGrid } from "../../src/workbook/grid/openGrid";
import { typeInto } from "../../src/workbook/grid/typing/typeInto";
import { channelsLeftOpen } from "./channelsLeftOpen";
import type { CellContent } from "../../src/workbook/Workbook";

export interface HeadlessWorkbook {
  readonly workbook: GridWorkbook;
  readonly engine: GridEngine;
  /** Changes what a blank cell and an error are handed over as. */
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
  const closeChannels = channelsLeftOpen();
  host.install(globalThis);
  host.blankAs = 0;
  host.errorAs = "rich value";
  await import("../../src/cells/register");
  const metadata = functionsMetadata(everyFunction, (name) => `https://localhost/help/${name}.html`) as FunctionsMetadata;
  const engine = openGrid({
    functions: [...host.functions(metadata, NAMESPACE), ...further],
    presets: (formula) => [UniverSheetsNodeCorePreset({ formula })],
    data: {
      name: "Headless",
      sheetOrder: ["first"],
      sheets: { first: { id: "first", name: FIRST_SHEET, rowCount: 200, columnCount: 26 } },
    },
  });
  return {
    workbook: new GridWorkbook(engine),
    engine,
    host,
    type: async (sheet, cell, content) => typeInto(engine, { sheet, cell }, content),
    settled: async () => {
      await engine.settled();
      // Changes of selection are told in a task of their own.
      await new Promise((resolve) => setTimeout(resolve, 0));
    },
    close: () => {
      engine.univer.dispose();
      closeChannels();
    },
  };
}
