import type { AstExpression } from "@borgar/fx";
import type { Cells } from "./Cells";

/** One argument of a call, read from the cell formula. */
export interface Argument {
  /** As typed; "" where it is left out. */
  readonly text: string;
  readonly expression: AstExpression | undefined;
  /** Its values; undefined where it is left out or only the spreadsheet can work it out. */
  readonly cells: Cells | undefined;
}

/** True for an argument that is there but whose value only the spreadsheet knows. */
export const isUnknown = (argument: Argument | undefined): boolean => argument !== undefined && argument.text !== "" && argument.cells === undefined;
