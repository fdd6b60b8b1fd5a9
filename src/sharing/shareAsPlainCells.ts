import { makingCopy, plainBanner, plainBannerBeside, readingSheet } from "../problems/sharing/sharedCopyWords";
import { areaNamed } from "../workbook/areaNamed";
import { cellsOfArea } from "../workbook/cellArea";
import { outOfFirstScreen } from "../workbook/OutOfView";
import type { CopiedFormula, Workbook } from "../workbook/Workbook";
import { bannerPlace } from "./bannerPlace";
import { besideCopy, ON_COPY } from "./besideCopy";
import { calculationRecord } from "./record/calculationRecord";
import { plainName, recordName } from "./copyNames";
import { finalValues, type Patience } from "./finalValues";
import { formulaCellsOf } from "./formulaCells";
import { plannedBeside } from "./plain/plannedBeside";
import { plainSheets, type PlainCell } from "./plain/plainSheets";
import { goOn, stepTo, type Progress } from "./progress";
import type { CopyShared, WithErrors } from "./shareAsValues";

export interface SharedAsPlain extends CopyShared {
  /** Cells that calculate on, and cells that hold a value behind a guard. */
  readonly cells: number;
  readonly fixed: number;
}

/**
 * Copies a sheet within its workbook for people without the add-in, its calls of ours written in built-in functions, with the sheet of workings and
 * the hidden sheet of flags that those need, and a calculation record. Defined names are written out in such calls, since on the copy they may mean the
 * cells of the sheet itself. What refers to another sheet or to a table is fixed at its value: the copy knows those by other names, or not at all. Everything is read before the copy is made.
 * @param date the day of sharing as it is to be printed
 * @throws InputProblem while anything still calculates, or when a Retort call shows an error
 * @throws WorkbookProblem when somebody changed the sheet meanwhile, on being stopped, or where the workbook cannot oblige
 */
export async function shareAsPlainCells(
  workbook: Workbook,
  sheet: string,
  date: string,
  patience: Patience & WithErrors & Progress = {},
): Promise<SharedAsPlain> {
  await stepTo(patience, readingSheet(sheet, 1, 1));
  const used = await finalValues(workbook, sheet, patience);
  const formulaCells = formulaCellsOf(used, patience.withErrors);
  await patience.looked?.([used]);
  const screen = await workbook.firstScreen(sheet);
  const taken = [...screen.sheetNames];
  const wished = plainName(sheet, taken);
  const besideName = recordName(sheet, taken);
  const { names, put, changes, unread } = await besideCopy(workbook, sheet, wished, ["colouring", "entry"]);
  const plain = plainSheets({ sheets: [{ ...used, sheet: wished }], names }, { date, taken, ...ON_COPY });
  const fixedCells = plain.cells.filter(({ kind }) => kind === "fixed");
  const fixed = fixedCells.length;
  const range = bannerPlace(used, false, outOfFirstScreen(screen));
  const title = used.rows.flat().find(({ cell }) => cell === range)?.value ?? "";
  const banner = { range, values: [[title === "" ? plainBanner(date, fixed) : plainBannerBeside(String(title), date, fixed)]] };
  const shared = { sheet: wished, copy: wished, date, formulaCells, rows: used.rows, plainCells: plain.cells, put };
  await stepTo(patience, makingCopy);
  const { copy, beside, touched } = await workbook.copyWithValues(sheet, {
    goOn: () => goOn(patience),
    ...{ name: wished, read: used, areas: [banner], keepsRules: true, rules: changes, banner: banner.range },
    fixed: fixedCells.flatMap(({ area }) => cellsOfArea(areaNamed(area)).flat()),
    formulas: plain.cells.filter(({ cell }) => cell !== banner.range).map(copied),
    beside: calculationRecord(shared, besideName),
    further: [
      ...(plain.workings === undefined ? [] : [plannedBeside(plain.workings)]),
      ...plain.flags.map((flags) => ({ ...plannedBeside(flags), isHidden: true })),
    ],
  });
  return { copy, record: beside, touched, put, unread, cells: plain.cells.filter(({ kind }) => kind === "plain").length, fixed };
}

const copied = ({ area, formulas }: PlainCell): CopiedFormula => ({ range: area, formula: "one" in formulas ? formulas.one : formulas.each });
