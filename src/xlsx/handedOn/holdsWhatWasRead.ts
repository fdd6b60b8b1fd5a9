import { areaNamed } from "../../workbook/areaNamed";
import { covers, type CellArea } from "../../workbook/cellArea";
import type { CellReading, RangeReading } from "../../workbook/Workbook";
import type { FileValue } from "../package/cells/CellChange";
import { WorkbookPackage } from "../package/WorkbookPackage";
import { DAYS_TO_1904 } from "../parts/cellValue";

/** A cell whose content in the file is not what was read of it. */
export interface OtherThanRead {
  readonly sheet: string;
  readonly cell: string;
}

/**
 * The first cell that shows something else in a file than was read from the open workbook; undefined where there is none. A host may hand over
 * the file as it was some moments before.
 */
export async function otherThanRead(content: Uint8Array<ArrayBuffer>, sheets: readonly RangeReading[]): Promise<OtherThanRead | undefined> {
  const file = await WorkbookPackage.of(content);
  const names = (await file.sheets()).map(({ name }) => name);
  for (const { sheet, rows } of sheets) {
    if (!names.includes(sheet)) return { sheet, cell: "A1" };
    const left = new Map(rows.flatMap((row) => row.filter((reading) => !isBlank(reading)).map((reading) => [reading.cell, reading] as const)));
    const others: string[] = [];
    // What an array formula fills holds none in the file, though a host may say that it does.
    const arrays: CellArea[] = [];
    await file.readCells(sheet, ({ row, column, cell, formulaKind, fills, value }) => {
      if (formulaKind === "array" && fills.includes(":")) arrays.push(areaNamed(fills));
      const reading = left.get(cell);
      left.delete(cell);
      const isFilled = (): boolean => reading?.formula !== "" && arrays.some((area) => covers(area, row, column));
      const isFormula = formulaKind !== "none" || isFilled();
      if (reading === undefined ? value !== null && value !== "" : !isSame(reading, value, isFormula)) others.push(cell);
    });
    const other = others[0] ?? [...left.keys()][0];
    if (other !== undefined) return { sheet, cell: other };
  }
  return undefined;
}

const isBlank = ({ value, formula }: CellReading): boolean => formula === "" && (value === null || value === "");

// A file holds 17 digits.
const RELATIVE_DIFFERENCE = 1e-14;

function isSame({ value, error, formula, spill }: CellReading, inFile: FileValue, isFormula: boolean): boolean {
  // What a spill fills holds no formula in either; what begins one may be an array in the file.
  if (formula !== "" && spill === "" && !isFormula) return false;
  if (error !== "") return typeof inFile === "object" && inFile?.error === error;
  if (typeof value === "number" && typeof inFile === "number")
    return [0, DAYS_TO_1904, -DAYS_TO_1904].some((days) => Math.abs(value - inFile - days) <= RELATIVE_DIFFERENCE * Math.max(1, Math.abs(value)));
  return (value ?? "") === (inFile ?? "");
}
