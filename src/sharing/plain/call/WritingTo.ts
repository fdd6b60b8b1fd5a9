import type { CellFunction } from "../../../functions/cellFunction";
import type { TableInCells, Workings } from "../../../functions/inCells/Workings";
import type { CellArea } from "../../../workbook/cellArea";
import type { FoundOnce } from "../writing/FoundOnce";
import type { Scope } from "../writing/Scope";
import type { Write } from "../writing/written";
import type { Argument, NamedInput } from "./Argument";

/** Where calls are written to: the steps of long forms, and whether the whole formula has to work over arrays. */
export interface WritingTo {
  /** Undefined where everything has to stand in one formula. */
  readonly workings: ((scope: Scope) => Workings) | undefined;
  /** Remembers how far the workings reach, and takes back what came after. */
  readonly mark?: () => () => void;
  /** The cells for whose content alone the formula is written. */
  readonly held: { readonly sheet: string; readonly area: CellArea }[];
  needsArray: boolean;
  /** How a part of the formula is written, one for the whole formula, so that each part is written once. */
  readonly write: Write;
  /** What the calls inside were written as. */
  readonly inside: FoundOnce<string>;
  /** How many rows each table on the sheet of workings has whatever its cells hold, by its reference. */
  readonly lasting: Map<string, number>;
  /** Where arguments stand that have a cell of their own. */
  readonly elsewhere: { readonly byText: Map<string, string>; readonly byPart: FoundOnce<string> };
}

/** A call written in built-in functions: one text, or the text of each cell of its table. */
export type WrittenCall = { readonly text: string } | { readonly table: TableInCells; readonly guard: (first: string) => string };

/** A call with its arguments looked at. */
export interface AskedCall {
  readonly definition: CellFunction;
  readonly inputs: readonly NamedInput[];
  readonly given: readonly Argument[];
  readonly scope: Scope;
  readonly to: WritingTo;
  /** What the call gives whatever its cells hold. */
  readonly misfit: string | undefined;
}
