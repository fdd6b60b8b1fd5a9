import type { CellArea } from "../../../workbook/cellArea";
import type { ReadFormula } from "../reading/ReadSheets";

/** Of formulas whose answer may fill other cells than it did when the workbook was read. */
export interface Sizes {
  /** By number, the cell of workings that is more than 0 while one would fill others. */
  readonly resized: ReadonlyMap<number, string>;
  /** The cells that one fills and may come to fill. */
  readonly reachOf: (formula: ReadFormula) => CellArea;
}

export const AS_READ: Sizes = { resized: new Map(), reachOf: ({ area }) => area };
