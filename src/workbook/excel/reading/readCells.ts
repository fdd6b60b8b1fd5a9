import { cellArea, cellAt, covers, rangeOf, type CellArea } from "../../cellArea";
import type { CellContent, CellReading, RangeReading } from "../../Workbook";
import { isErrorCode } from "./errorCodes";
import { excelSupports } from "../excelReady";
import { bytesOf } from "../bytesOf";
import { inRequests, QUESTIONS_A_REQUEST } from "../inRequests";
import { inBands } from "./inBands";

/**
 * Reads an area of a sheet: one request for its cells and, only where something spills, one for the spilled areas.
 * @param besides called as the last of the cells are asked for, to ask for more in the same request
 */
export async function readCells(
  context: Excel.RequestContext,
  sheet: string,
  area: CellArea,
  besides = (): unknown => undefined,
): Promise<RangeReading> {
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const bands = await inBands(context, area, {
    ask: (band, isLast) => {
      const range = loaded(worksheet, band);
      if (isLast) besides();
      return { band, range };
    },
    weigh: ({ range: { values, valueTypes, formulas, text } }) => bytesOf([values, valueTypes, formulas, text]),
  });
  const rows = bands.flatMap(({ band, range }) => bandRows(band, range));
  if (!excelSupports("1.12") || bands.every(({ range }) => range.hasSpill === false)) return { sheet, range: rangeOf(area), rows };
  const formulaCells = rows.flat().flatMap(({ cell, formula }) => (formula === "" ? [] : [cell]));
  return { sheet, range: rangeOf(area), rows: withSpills(rows, area, await spills(context, worksheet, formulaCells)) };
}

function loaded(worksheet: Excel.Worksheet, { row, column, rows, columns }: CellArea): Excel.Range {
  const range = worksheet.getRangeByIndexes(row, column, rows, columns);
  return range.load(["values", "valueTypes", "formulas", "text", ...(excelSupports("1.12") ? ["hasSpill"] : [])]);
}

const bandRows = (band: CellArea, { values, valueTypes, formulas, text }: Excel.Range): CellReading[][] =>
  values.map((row, down) =>
    row.map((value, across) =>
      reading(cellAt(band.row + down, band.column + across), value, valueTypes[down]?.[across], formulas[down]?.[across], text[down]?.[across] ?? ""),
    ),
  );

export function reading(cell: string, value: unknown, type: string | undefined, formulaOrValue: unknown, shown: string): CellReading {
  const formula = cellFormula(formulaOrValue, value);
  // A formula that still calculates may be typed as text, hence the look at the code itself.
  const error = type === "Error" || (formula !== "" && isErrorCode(value)) ? String(value) : "";
  return { cell, formula, value: type === "Empty" ? null : (value as CellContent), shown, error, message: "", spill: "" };
}

/** Excel gives text such as "=1+1" in place of a formula, too; only then is it the same as the value. */
const cellFormula = (formulaOrValue: unknown, value: unknown): string =>
  typeof formulaOrValue === "string" && formulaOrValue.startsWith("=") && formulaOrValue !== value ? formulaOrValue : "";

/** A cell that is filled by another cell's formula has none of its own, whatever the host hands over for it. */
function withSpills(rows: readonly (readonly CellReading[])[], area: CellArea, { begun, filled }: Spills): CellReading[][] {
  const areas = [...begun.values()].flatMap((range) => cellArea(range) ?? []);
  return rows.map((row, down) =>
    row.map((one, across) => {
      const spill = begun.get(one.cell);
      if (spill !== undefined) return { ...one, spill };
      const isFilled = filled.has(one.cell) || areas.some((other) => covers(other, area.row + down, area.column + across));
      return isFilled ? { ...one, formula: "" } : one;
    }),
  );
}

interface Spills {
  /** The area that each formula fills, under the formula's cell: "B7" -> "B7:C12". */
  readonly begun: ReadonlyMap<string, string>;
  /** Cells that only stand in the spill of another cell's formula. */
  readonly filled: ReadonlySet<string>;
}

/** Which of these cells begin a spill, and which only stand in one. Needs ExcelApi 1.12. */
async function spills(context: Excel.RequestContext, worksheet: Excel.Worksheet, cells: readonly string[]): Promise<Spills> {
  const asked = await inRequests(context, cells, { limit: QUESTIONS_A_REQUEST, weigh: () => 1 }, (cell) => {
    const range = worksheet.getRange(cell);
    return { cell, area: range.getSpillingToRangeOrNullObject().load("address"), parent: range.getSpillParentOrNullObject().load("address") };
  });
  const begun = asked.flatMap(({ cell, area }) =>
    area.isNullObject || withoutSheet(area.address) === cell ? [] : [[cell, withoutSheet(area.address)] as const],
  );
  const filled = asked.flatMap(({ cell, parent }) => (parent.isNullObject || withoutSheet(parent.address) === cell ? [] : [cell]));
  return { begun: new Map(begun), filled: new Set(filled) };
}

/** "B7" from "'Run 1'!$B$7": the host's addresses name the sheet. */
export const withoutSheet = (address: string): string => address.slice(address.lastIndexOf("!") + 1).replaceAll("$", "");
