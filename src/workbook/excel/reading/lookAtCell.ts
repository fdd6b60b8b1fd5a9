import type { Calculation, CellAddress, CellLook, CellReading } from "../../Workbook";
import { excelSupports } from "../excelReady";
import { reading, withoutSheet } from "./readCells";

const CONTENT = ["address", "values", "valueTypes", "formulas", "text"];

/**
 * Asks for one cell, the cell whose spill fills it, and the state of the calculation.
 * @param address the selected cell when left out
 * @returns what has been found, once the request has been answered
 */
export function askForLook(context: Excel.RequestContext, address?: CellAddress): () => CellLook {
  const { workbook } = context;
  const cell = address === undefined ? workbook.getActiveCell() : workbook.worksheets.getItem(address.sheet).getRange(address.cell);
  cell.load([...CONTENT, "worksheet/name"]);
  const calculation = askForCalculation(context);
  const spills = excelSupports("1.12")
    ? { area: cell.getSpillingToRangeOrNullObject().load("address"), parent: cell.getSpillParentOrNullObject().load(CONTENT) }
    : undefined;
  return () => {
    const own = readingOf(cell);
    const found = { address: { sheet: cell.worksheet.name, cell: own.cell }, calculation: calculation() };
    if (spills === undefined) return { ...found, reading: own };
    const { area, parent } = spills;
    const anchor = parent.isNullObject ? undefined : readingOf(parent);
    // A cell that is filled by another cell's formula has none of its own, whatever the host hands over for it.
    if (anchor !== undefined && anchor.cell !== own.cell) return { ...found, reading: { ...own, formula: "" }, anchor };
    const spill = area.isNullObject ? "" : withoutSheet(area.address);
    return { ...found, reading: { ...own, spill: spill === own.cell ? "" : spill } };
  };
}

const readingOf = ({ address, values, valueTypes, formulas, text }: Excel.Range): CellReading =>
  reading(withoutSheet(address), values[0]?.[0], valueTypes[0]?.[0], formulas[0]?.[0], text[0]?.[0] ?? "");

/** @returns what has been found, once the request has been answered */
export function askForCalculation(context: Excel.RequestContext): () => Calculation {
  const application = context.workbook.application.load("calculationMode,calculationState");
  return () => ({
    state: STATES[application.calculationState] ?? "pending",
    manual: application.calculationMode === Excel.CalculationMode.manual,
  });
}

const STATES: Readonly<Record<string, Calculation["state"]>> = { Done: "done", Calculating: "calculating", Pending: "pending" };
