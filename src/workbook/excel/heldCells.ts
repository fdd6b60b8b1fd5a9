import { areaNamed } from "../areaNamed";
import { cellArea, cellAt, type CellArea } from "../cellArea";
import { CELLS_A_REQUEST, inRequests, rowBands } from "./inRequests";
import { withoutSheet } from "./readCells";

type Held = string | number | boolean;

/** What stands in the cells of a sheet, as it would be typed, under the name of each cell; blank cells are left out. */
export type HeldCells = ReadonlyMap<string, Held>;

export const fitsOneAnswer = ({ rows, columns }: CellArea): boolean => rows * columns <= CELLS_A_REQUEST;

/** Asks for all that stands on a sheet that fits one answer. @returns it, once the request has been answered */
export function askForHeld(worksheet: Excel.Worksheet): () => HeldCells {
  const used = worksheet.getUsedRangeOrNullObject(true).load("address,formulas");
  return () => (used.isNullObject ? new Map() : new Map(heldIn(areaNamed(withoutSheet(used.address)), used.formulas as Held[][])));
}

/** All that stands on sheets of any size: one request for where, and one for what unless the sheets are very large. */
export async function readHeld(context: Excel.RequestContext, worksheets: readonly Excel.Worksheet[]): Promise<readonly HeldCells[]> {
  const used = worksheets.map((worksheet) => worksheet.getUsedRangeOrNullObject(true).load("address"));
  await context.sync();
  const wanted = worksheets.flatMap((worksheet, index) => {
    const area = used[index]?.isNullObject === false ? cellArea(withoutSheet(used[index].address)) : undefined;
    return area === undefined ? [] : rowBands(area, CELLS_A_REQUEST).map((band) => ({ worksheet, index, band }));
  });
  const weigh = ({ band }: { band: CellArea }): number => band.rows * band.columns;
  const bands = await inRequests(context, wanted, { limit: CELLS_A_REQUEST, weigh }, ({ worksheet, index, band }) => ({
    index,
    band,
    range: worksheet.getRangeByIndexes(band.row, band.column, band.rows, band.columns).load("formulas"),
  }));
  return worksheets.map(
    (_, of) => new Map(bands.filter(({ index }) => index === of).flatMap(({ band, range }) => heldIn(band, range.formulas as Held[][]))),
  );
}

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
