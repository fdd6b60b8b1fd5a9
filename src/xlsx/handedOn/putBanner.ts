import { bannerCell } from "../../sharing/bannerCell";
import { cellArea, cellAt, rangeOf } from "../../workbook/cellArea";
import { sheetStyles } from "../../workbook/sheetStyles";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import type { LookChange } from "../package/StylesPart";
import type { WorkbookPackage } from "../package/WorkbookPackage";

const BANNER_LOOK: LookChange = { bold: true, italic: false, colour: sheetStyles.caution.fontColour };
// A banner may stand below a short sheet, and no further down than a reader sees.
const ROWS_IN_VIEW = 5;

/** Where a banner stands on a sheet whose reading may leave blank cells out. */
export const bannerPlace = (reading: RangeReading, isStill: boolean): string => bannerCell(inView(reading), isStill);

export async function putBanner(file: WorkbookPackage, sheet: string, cell: string, words: string): Promise<void> {
  const [look] = await file.addLooks([[0, BANNER_LOOK]]);
  await file.changeCells(sheet, [{ cell, content: { kind: "value", value: words }, ...(look !== undefined && { look }) }]);
}

/** The top of a sheet with every cell of it, blank ones too. */
function inView({ rows }: RangeReading): Pick<RangeReading, "range" | "rows"> {
  const found = new Map<string, CellReading>();
  let [first, last, columns] = [Number.POSITIVE_INFINITY, 0, 0];
  for (const line of rows)
    for (const reading of line) {
      const place = cellArea(reading.cell);
      if (place === undefined || (reading.formula === "" && (reading.value === null || reading.value === ""))) continue;
      [first, last, columns] = [Math.min(first, place.row), Math.max(last, place.row), Math.max(columns, place.column + 1)];
      if (place.row < ROWS_IN_VIEW) found.set(reading.cell, reading);
    }
  if (columns === 0) return { range: "", rows: [] };
  const shown = Math.max(ROWS_IN_VIEW, first + 1);
  return {
    range: rangeOf({ row: first, column: 0, rows: Math.max(last + 1, shown) - first, columns }),
    rows: Array.from({ length: shown - first }, (_, down) =>
      Array.from({ length: columns }, (_, column) => found.get(cellAt(first + down, column)) ?? blank(cellAt(first + down, column))),
    ),
  };
}

const blank = (cell: string): CellReading => ({ cell, formula: "", value: null, shown: "", error: "", message: "", spill: "" });
