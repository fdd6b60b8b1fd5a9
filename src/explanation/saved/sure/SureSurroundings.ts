import type { AstExpression } from "@borgar/fx";
import type { CellValue } from "../../../inputs/CellValue";
import type { Lambda } from "../../../sharing/plain/formula/parts";
import type { BlankForm, Cells } from "../../formula/Cells";
import type { Certain } from "./certain";

/** What an expression is worked out from. */
export interface SureSurroundings {
  /** What a reference as typed holds, "B7" or for a spill the "B7" of "B7#"; undefined where that is not known. */
  readonly referred: (text: string, isSpill: boolean) => Cells | undefined;
  /** What a reference to several sheets holds, one sheet's cells below the other's; undefined for any other reference. */
  readonly onSheets: (text: string) => Cells | undefined;
  readonly blankAs: BlankForm;
  /** The one cell of a reference in the formula's own row or column. */
  readonly intersected?: (text: string, isSpill: boolean) => Certain<CellValue>;
  /**
   * The cells of a reference that SUBTOTAL counts, one below the other: not those with a subtotal of their own, nor those in rows that are not shown.
   * @param areHiddenLeft true where the function leaves out rows that a person hid as well; else undefined where some are hidden, be it by a filter
   */
  readonly counted?: (text: string, isSpill: boolean, areHiddenLeft: boolean) => Certain<Cells>;
  /** The LAMBDA that a defined name stands for; undefined for any other name. */
  readonly lambdaNamed?: (name: string) => Lambda | undefined;
  /** True for a formula that works on arrays wherever a range stands in it; left out where operators within functions may take one cell of a range. */
  readonly isOverArrays?: boolean;
  /** What LET and LAMBDA name, in small letters; it hides defined names. */
  readonly variables?: ReadonlyMap<string, Variable>;
  /** How often a LAMBDA may still be called: one that calls itself may do so without end. */
  readonly calls?: { left: number };
  /** LAMBDAs within which this one is called. */
  readonly depth?: number;
}

export interface Variable {
  /** Undefined for a LAMBDA. */
  readonly cells: Cells | undefined;
  /** True where it stands for cells of a sheet. */
  readonly isReference: boolean;
  readonly calls?: Callable;
}

/** What can be called by a variable, or handed to MAP: a LAMBDA where it stands, or a function by its name. */
export type Callable = { readonly lambda: Lambda; readonly around: SureSurroundings } | { readonly name: string };

export const variableOf = (part: AstExpression | null | undefined, { variables }: SureSurroundings): Variable | undefined =>
  part?.type === "ReferenceIdentifier" ? variables?.get(part.value.toLowerCase()) : undefined;
