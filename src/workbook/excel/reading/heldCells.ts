import { hostBusy } from "../../../problems/workbook/workbookProblems";
import { areaNamed } from "../../areaNamed";
import { cellAt, rangeOf, type CellArea } from "../../cellArea";
import { WorkbookProblem } from "../../Workbook";
import { bytesOf } from "../bytesOf";
import { CELLS_A_REQUEST } from "../inRequests";
import { BYTES_AN_ANSWER, inBands } from "./inBands";
import { withoutSheet } from "./readCells";

type Held = string | number | boolean;

/** What stands in the cells of a sheet, as it would be typed, under the name of each cell; blank cells are left out. */
export type HeldCells = ReadonlyMap<string, Held>;

/** @param bytes of what is known to stand there */
export const fitsOneAnswer = ({ rows, columns }: CellArea, bytes = 0): boolean => rows * columns <= CELLS_A_REQUEST && bytes <= BYTES_AN_ANSWER;

/** Asks for all that stands on a sheet that fits one answer. @returns it, once the request has been answered */
export function askForHeld(worksheet: Excel.Worksheet): () => HeldCells {
  const used = worksheet.getUsedRangeOrNullObject(true).load("address,formulas");
  return () => (used.isNullObject ? new Map() : new Map(heldIn(areaNamed(withoutSheet(used.address)), used.formulas as Held[][])));
}

/** Asks where things stand on a sheet. @returns it, once the request has been answered; undefined for an empty sheet */
export function askForExtent(worksheet: Excel.Worksheet): () => CellArea | undefined {
  const used = worksheet.getUsedRangeOrNullObject(true).load("address");
  return () => (used.isNullObject ? undefined : areaNamed(withoutSheet(used.address)));
}

/**
 * All that stands on a sheet of any size. What fits one answer comes in the last request that this makes, whatever has been added by
 * then; of a larger sheet, that nothing has been added.
 * @param extent where things stood a moment ago
 * @param bytes of what is known to stand there
 * @throws WorkbookProblem while somebody adds to a very large sheet
 */
export async function readHeld(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  extent: CellArea | undefined,
  bytes = 0,
): Promise<HeldCells> {
  if (extent === undefined || fitsOneAnswer(extent, bytes)) {
    const held = askForHeld(worksheet);
    await context.sync();
    return held();
  }
  const ranges = await inBands(context, extent, {
    ...(bytes > 0 ? { bytesACell: BYTES_A_CELL + bytes / (extent.rows * extent.columns) } : {}),
    ask: (band) => ({
      band,
      range: worksheet.getRangeByIndexes(band.row, band.column, band.rows, band.columns).load("formulas"),
      extent: askForExtent(worksheet),
    }),
    weigh: ({ range }) => bytesOf(range.formulas),
  });
  const now = ranges.at(-1)?.extent();
  if (now === undefined || rangeOf(now) !== rangeOf(extent)) throw new WorkbookProblem(hostBusy);
  return new Map(ranges.flatMap(({ band, range }) => heldIn(band, range.formulas as Held[][])));
}

// A blank one: two quotes and a comma.
const BYTES_A_CELL = 3;

const heldIn = ({ row, column }: CellArea, formulas: readonly (readonly Held[])[]): [string, Held][] =>
  formulas.flatMap((line, down) =>
    line.flatMap((held, across): [string, Held][] => (held === "" ? [] : [[cellAt(row + down, column + across), held]])),
  );

// A cell keeps 15 to 17 digits.
const RELATIVE_DIFFERENCE = 1e-14;

/** True where a cell holds what was written into it. Excel may write a formula in its own way: letter case, spaces, an @. */
export function isAlike(written: Held | undefined, held: Held): boolean {
  if (written === held) return true;
  if (typeof written === "number" && typeof held === "number") return Math.abs(written - held) <= RELATIVE_DIFFERENCE * Math.abs(written);
  return isFormula(written) && isFormula(held) && plain(written) === plain(held);
}

export const isFormula = (held: Held | undefined): held is string => typeof held === "string" && held.startsWith("=");

const plain = (formula: string): string => formula.replace(/[\s@]/g, "").toUpperCase();
