import { areaNamed } from "../workbook/areaNamed";
import { cellArea, cellAt, COLUMNS_OF_A_SHEET, ROWS_OF_A_SHEET } from "../workbook/cellArea";
import { boxesOf } from "../runsheet/reading/boxesOf";
import { outOfFirstScreen } from "../workbook/OutOfView";
import type { RangeReading, Workbook } from "../workbook/Workbook";
import { makingCopy, readingSheet, valuesBanner } from "../problems/sharing/sharedCopyWords";
import type { Beside } from "../workbook/CellsBeside";
import { bannerPlace } from "./bannerPlace";
import { besideCopy } from "./besideCopy";
import type { RulesPut } from "./plain/plainRules";
import { joinedAreas } from "./joinedAreas";
import { calculationRecord } from "./record/calculationRecord";
import { recordName, valuesName } from "./copyNames";
import { finalValues, type Patience } from "./finalValues";
import { formulaCellsOf } from "./formulaCells";
import { goOn, stepTo, type Progress } from "./progress";

export interface WithErrors {
  /** True where the user shares cells in error as they are. */
  readonly withErrors?: boolean;
  /** Looks at what was read of the sheets that are shared; throws where it is not to be shared. */
  readonly looked?: (sheets: readonly RangeReading[]) => Promise<void>;
}

/** A copy within the workbook. */
export interface CopyShared {
  /** The name of the copy. */
  readonly copy: string;
  /** The name of the calculation record. */
  readonly record: string;
  /** True where somebody typed into the copy while it was made. */
  readonly touched: boolean;
  /** What became of the rules and names beside its cells that called us. */
  readonly put: RulesPut;
  /** Of what beside its cells it could not be read whether it does. */
  readonly unread: readonly Beside[];
}

export interface Shared extends CopyShared {
  /** Cells of the copy in which a value took the place of a cell formula. */
  readonly frozenCells: number;
}

/**
 * Copies a sheet for people without the add-in: numbers stay, cell formulas go, and a calculation record says how each
 * value came about. A line in view says so, and no rule for entries or box to fill in is left. Everything is read before the copy is made, so that a refusal leaves nothing behind.
 * @param date the day of sharing as it is to be printed on the record
 * @throws InputProblem while anything still calculates, or when a Retort call shows an error
 * @throws WorkbookProblem when somebody changed the sheet meanwhile, on being stopped, or where the workbook cannot oblige
 */
export async function shareAsValues(
  workbook: Workbook,
  sheet: string,
  date: string,
  patience: Patience & WithErrors & Progress = {},
): Promise<Shared> {
  await stepTo(patience, readingSheet(sheet, 1, 1));
  const used = await finalValues(workbook, sheet, patience);
  const formulaCells = formulaCellsOf(used, patience.withErrors);
  await patience.looked?.([used]);
  const screen = await workbook.firstScreen(sheet);
  const banner = onSheet(bannerPlace(used, true, outOfFirstScreen(screen)), used.range);
  const areas = formulaCells.map(({ area }) => area);
  const saying = { range: banner, values: [[valuesBanner(date)]] };
  const taken = [...screen.sheetNames];
  const wished = valuesName(sheet, taken);
  const { put, changes, unread } = await besideCopy(workbook, sheet, wished, ["colouring"]);
  const record = calculationRecord({ sheet, copy: wished, date, formulaCells, rows: used.rows, put }, recordName(sheet, taken));
  await stepTo(patience, makingCopy);
  // A copy takes what stands on the sheet at that moment, which has to be what was read.
  const { copy, beside, touched } = await workbook.copyWithValues(sheet, {
    goOn: () => goOn(patience),
    ...{ name: wished, read: used, beside: record },
    ...{ unboxed: boxesOf(used), banner, rules: changes },
    areas: [...joinedAreas(areas.filter(({ range }) => range !== banner)), saying],
  });
  return { copy, record: beside, touched, put, unread, frozenCells: areas.reduce((cells, { values }) => cells + values.flat().length, 0) };
}

/** Below everything, where the first rows are full to the last column. */
function onSheet(cell: string, range: string): string {
  if ((cellArea(cell)?.column ?? 0) < COLUMNS_OF_A_SHEET) return cell;
  const { row, rows } = areaNamed(range);
  return cellAt(Math.min(row + rows, ROWS_OF_A_SHEET - 1), 0);
}
