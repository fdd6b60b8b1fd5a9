import type { FormulaTree } from "../formula/formulaTree";
import type { Part } from "../formula/parts";
import type { Size } from "./sizeOf";
import type { PlainOptions, Surroundings } from "../reading/Surroundings";

/** A variable of LET, or of a LAMBDA that is called on the spot. */
export interface Bound {
  readonly value: Part;
  readonly scope: Scope;
  /** True where the LET or LAMBDA itself is kept, so that the variable is written by its name. */
  readonly isKept: boolean;
  /** The size of what a function hands over for the parameter of a LAMBDA, one after the other; such a variable has no value of its own. */
  readonly given?: Size | "unknown";
}

/** All that the writing of one part of a formula depends on. */
export interface Scope {
  readonly tree: FormulaTree;
  readonly place: Surroundings;
  readonly options: PlainOptions;
  readonly variables: ReadonlyMap<string, Bound>;
  /** True where of every range its first cell is meant: behind @. */
  readonly isSingle: boolean;
  /** True where every operation up to the whole formula works on each cell by itself, so that whole columns may end where the spill does. */
  readonly isOnEach: boolean;
  /** True where every reference names its sheet, for a cell of another sheet. */
  readonly isQualified: boolean;
  /** How many names within names led here. */
  readonly depth?: number;
}

/** One for all, so that two scopes without variables are told to be alike. */
export const NO_VARIABLES: Scope["variables"] = new Map();

export const within = (scope: Scope, change: Partial<Scope>): Scope => ({ ...scope, ...change });
