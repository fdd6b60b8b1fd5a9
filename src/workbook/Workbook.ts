import type { CellsBeside, RuleChange } from "./CellsBeside";
import type { FirstScreen } from "./OutOfView";
import type { Grown, SheetGrowth } from "./SheetGrowth";
import type { SheetPlan } from "./SheetPlan";

export interface CellAddress {
  readonly sheet: string;
  /** Column letters and row number, no dollar signs: "B7". */
  readonly cell: string;
}

/** What a cell holds as a value; null is a blank cell, told apart from 0. */
export type CellContent = number | string | boolean | null;

export interface CellReading {
  /** "B7" */
  readonly cell: string;
  /** The cell formula in English notation, beginning with "=", or "" when the cell has none of its own. */
  readonly formula: string;
  /** The value; for an error cell the code as text, such as "#N/A". */
  readonly value: CellContent;
  /** As formatted on the sheet. */
  readonly shown: string;
  /** The error code the cell shows, or "". */
  readonly error: string;
  /** The sentence behind the error where the host keeps it, or "". */
  readonly message: string;
  /** For the formula cell of a spill, the whole area it fills ("B7:C12"); else "". */
  readonly spill: string;
  /** True for a formula known to take as many cells as its answer needs, be it one; left out where it keeps its size, or that is not told. */
  readonly spills?: boolean;
  /** True where the workbook cannot calculate the cell, or something on the way to it, and what that is calculated from has changed. */
  readonly isFromBefore?: boolean;
  /** The cells of a circle that it is calculated from, where one was looked for and found. */
  readonly circle?: readonly string[];
}

/** A rectangle of cells, row by row. */
export interface RangeReading {
  readonly sheet: string;
  /** "A1:C3"; "" when the sheet is empty. */
  readonly range: string;
  readonly rows: readonly (readonly CellReading[])[];
}

/** Whether what the cells show is final. */
export interface Calculation {
  /** "pending" while something waits to be calculated and nothing calculates. */
  readonly state: "done" | "calculating" | "pending";
  /** True where formulas are calculated only when the user asks for it. */
  readonly manual: boolean;
}

/** One cell, with all that tells what it shows and whether that is final. */
export interface CellLook {
  readonly address: CellAddress;
  readonly reading: CellReading;
  /** The formula cell whose spill fills this one; left out where the cell stands in no other cell's spill. */
  readonly anchor?: CellReading;
  readonly calculation: Calculation;
}

/** Cells that a cell formula refers to. */
export interface WantedCells {
  readonly sheet: string;
  /** "B7", "B7:C12", whole columns "B:C" or whole rows "3:9", no dollar signs. */
  readonly range: string;
  /** True for the spill of the cell: "B7#". */
  readonly spill: boolean;
}

export interface InputCell {
  readonly value: CellContent;
  /** The error code the cell shows, or "". */
  readonly error: string;
}

export interface InputsReading {
  /** The cell once more: another look than before means that something changed in between. */
  readonly again: CellLook;
  /**
   * In the order asked for, row by row. Whole columns and rows reach from the sheet's first row and column to the last cell of
   * theirs that holds anything. Undefined where there are more cells than are read at once.
   */
  readonly ranges: readonly (readonly (readonly InputCell[])[] | undefined)[];
}

/** Values to stand where cell formulas stood. Text stays text even when it begins with = + - or @. */
export interface FrozenArea {
  /** "B7" or, for a spill, its whole area "B7:C12". */
  readonly range: string;
  readonly values: readonly (readonly CellContent[])[];
}

/** What stands on a sheet, where that is final. */
export interface SettledReading {
  /** As last seen. */
  readonly calculation: Calculation;
  /** Undefined where something calculates, or where two readings one after the other differ. */
  readonly reading?: RangeReading;
}

/** A cell formula to stand where another stood, on a copy. References to the copy name it as it will be called in the end. */
export interface CopiedFormula {
  /** "B7", or for a formula that fills more, its whole area. */
  readonly range: string;
  /** In English notation, beginning with "="; for a range, either one that fills it or one for each cell, row by row. */
  readonly formula: string | readonly (readonly string[])[];
}

/** A copy in which values, or other formulas, stand where cell formulas stood, and the sheets that go with it. */
export interface CopyWithValues {
  /** The copy's name; it has to be free. */
  readonly name: string;
  /** What was read of the sheet: the same has to stand there when it is copied. */
  readonly read: RangeReading;
  readonly areas: readonly FrozenArea[];
  /** Formulas in place of others; left out: none. */
  readonly formulas?: readonly CopiedFormula[];
  /** Stands after the copy, under the plan's own name, which has to be free. */
  readonly beside: SheetPlan;
  /** Sheets that the formulas need, under their own names too; hidden ones stay out of view. */
  readonly further?: readonly (SheetPlan & { readonly isHidden?: boolean })[];
  /** True where people go on typing into the copy: its rules for entries stay. */
  readonly keepsRules?: boolean;
  /** Rules of the copy that get other formulas or go; the formulas may call the sheet or the copy by name where they tell a rule. Left out: none. */
  readonly rules?: readonly RuleChange[];
  /** Cells that were boxes to fill in and look printed on the copy. */
  readonly unboxed?: readonly string[];
  /** Cells that hold a value behind a guard on the copy, marked as a file of plain cells marks them. */
  readonly fixed?: readonly string[];
  /** The cell in which the copy says what it is, to be seen at once. */
  readonly banner?: string;
  /** Called between the steps; where it throws, what was made so far goes again. */
  readonly goOn?: () => void;
}

/** A cell formula to be entered again. */
export interface Reentry {
  /** "B7" */
  readonly cell: string;
  /** What stands there, as Excel reads it out: the formula, or the error where only that is left. */
  readonly held: string;
  /** What is entered in its place. */
  readonly formula: string;
}

/** What came of entering formulas again. */
export interface Reentered {
  readonly entered: readonly string[];
  /** Cells that hold something else by now and were left as they are. */
  readonly changed: readonly string[];
}

/** A copy and the sheet beside it, as they stand in the workbook. */
export interface CopyMade {
  /** The name of the copy, and that of the sheet beside it. */
  readonly copy: string;
  readonly beside: string;
  /** True where something else stands on the copy than was put there: somebody typed into it while it was made. */
  readonly touched: boolean;
}

/** A sheet that was begun and neither finished nor taken away, because the workbook stopped answering. */
export interface UnfinishedSheet {
  /** The workbook's own key for the sheet, which outlasts a change of name. */
  readonly id: string;
  readonly name: string;
  /** Tells the attempt that began the sheet from every other. */
  readonly mark: string;
  /** True where another pane may still be making the sheet. */
  readonly mayBeUnderWay: boolean;
}

/** What came of the wish to remove an unfinished sheet; "ask first" where something may stand there that is the user's. */
export type Removal = "removed" | "gone" | "ask first";

/**
 * What the pane asks of the workbook it stands beside. Two adapters fulfil it and one contract suite holds them to it.
 * Every call rejects with a WorkbookProblem, whose message says what to do, when the workbook cannot oblige.
 */
export interface Workbook {
  /** As named in a sentence: "Excel", "the local workbook". */
  readonly name: string;
  /** False where the pane has to draw a run's chart itself. */
  readonly drawsCharts: boolean;

  sheetNames(): Promise<readonly string[]>;
  selectedCell(): Promise<CellAddress>;
  /** Shows the sheet and selects the cell. */
  select(address: CellAddress): Promise<void>;
  /**
   * Calls the listener after each change of selection, of the selected cell's content or of the calculation.
   * @param isWanted while it is false nothing is asked of the workbook; whatever changed meanwhile is told with the next change
   * @returns stops the calls
   */
  onSelection(listener: (look: CellLook) => void, isWanted?: () => boolean): Promise<() => Promise<void>>;
  /** Whether what the cells show is final; does not wait. */
  calculation(): Promise<Calculation>;
  /** Looks at one cell, in one request. @param address the selected cell when left out */
  look(address?: CellAddress): Promise<CellLook>;
  /** Reads the inputs of a cell formula together with the cell itself, in one request whatever the size of the sheet. */
  readInputs(address: CellAddress, wanted: readonly WantedCells[]): Promise<InputsReading>;
  /** True where some cell of the sheet holds exactly this text; reads no other cell. */
  holdsText(sheet: string, text: string): Promise<boolean>;

  /** @param range "A1:C3" or "B7", English notation, without a sheet */
  read(sheet: string, range: string): Promise<RangeReading>;
  /** All cells of a sheet that hold anything. */
  readUsed(sheet: string): Promise<RangeReading>;
  /** What of the sheet's first screen nobody sees. */
  firstScreen(sheet: string): Promise<FirstScreen>;
  /** The defined names and rules that a sheet goes by, as far as the workbook tells them; what it does not is told as unread. */
  cellsBeside(sheet: string): Promise<CellsBeside>;
  /**
   * All cells of a sheet that hold anything, once nothing calculates: read twice, alike both times. Does not wait.
   * @param asShown reads whatever the calculation says
   */
  readSettled(sheet: string, asShown: boolean): Promise<SettledReading>;

  /**
   * Puts a cell formula (English notation, beginning with "=") into one blank cell. Rejects when the cell holds anything; what
   * came into the cell meanwhile is put back.
   */
  writeFormula(address: CellAddress, formula: string): Promise<void>;
  /**
   * Puts a value into one cell in place of exactly what it held, null for blank, and keeps its format; null clears it. Rejects when the
   * cell holds anything else, a formula too; what came into the cell meanwhile is put back.
   */
  replaceValue(address: CellAddress, held: CellContent, content: CellContent): Promise<void>;
  /**
   * Enters formulas again, each only in place of exactly what was read; what came into a cell meanwhile is put back or left. What breaks off
   * half-way may be called again: a formula that was entered is entered once more without a difference.
   */
  reenter(sheet: string, cells: readonly Reentry[]): Promise<Reentered>;
  /** Makes a new sheet at the end, never over an existing one. @returns its name then, numbered when the wanted one is taken */
  addSheet(plan: SheetPlan): Promise<string>;
  /**
   * Copies a sheet, formats included, puts values or other formulas in place of its cell formulas (a spill goes as a whole), takes its rules
   * for entries away unless they are kept, and makes the sheets beside it: all or none. Until they stand, the copy has a name that says it is
   * unfinished.
   */
  copyWithValues(sheet: string, wanted: CopyWithValues): Promise<CopyMade>;

  /**
   * Puts rows into a sheet made from a plan and sets anew what hangs on them; what was typed stays and moves with its rows. Rejects,
   * before anything is changed, where something else stands there than was read, or the sheet is protected or filtered. What breaks
   * off half-way leaves every typed cell, and `begun` where it stood.
   */
  growSheet(sheet: string, growth: SheetGrowth): Promise<Grown>;

  /** Sheets that addSheet or copyWithValues began and could not take away, still marked as such. */
  unfinishedSheets(): Promise<readonly UnfinishedSheet[]>;
  /**
   * Leaves a sheet alone that is gone or no longer marked as unfinished ("gone"), and one on which something may stand that was not
   * put there by the attempt that began it ("ask first").
   * @param asked true where the user has looked at the sheet and wants it removed with all that is on it
   */
  removeUnfinished(sheet: UnfinishedSheet, asked: boolean): Promise<Removal>;
}

/** The workbook could not do what was asked; the message says why and what to do. */
export class WorkbookProblem extends Error {
  override readonly name = "WorkbookProblem";
}
