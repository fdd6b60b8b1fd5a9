import type { CellAddress } from "../workbook/Workbook";

/** One argument of an explained call. */
export interface InputRow {
  readonly name: string;
  /** What the argument is, with its unit, as the catalogue says it. */
  readonly about: string;
  /** What more the catalogue says of it. */
  readonly detail?: string;
  /** The value with its unit ("35 g"), "blank", "left out", or WORKED_OUT_IN_CELL. */
  readonly value: string;
  /** "B7", "Weighings!B7:B12", "typed in the formula", or the expression as typed. */
  readonly from: string;
  /** True for the argument that the problem's message names. */
  readonly atFault: boolean;
}

/** What is wrong, in full: the code the cell shows and the sentence behind it. */
export interface ExplainedProblem {
  readonly code: string;
  readonly message: string;
}

/** Some rows of the answer of a function that gives a table. */
export interface ExplainedTable {
  readonly rows: readonly (readonly string[])[];
  /** Which row of the whole table the first one is, from 1. */
  readonly firstRow: number;
  readonly rowCount: number;
}

/** One call of ours, explained with the numbers put in. */
export interface CallExplanation {
  /** "RETORT.MOISTURE.WET" */
  readonly name: string;
  readonly summary: string;
  readonly inputs: readonly InputRow[];
  /** Lines of arithmetic; empty where there is a problem or nothing to show. */
  readonly working: readonly string[];
  /** What the answer is: "Moisture content, wet basis". */
  readonly resultAbout: string;
  /** The answer with its unit; "" where there is a problem or the answer is a table. */
  readonly result: string;
  readonly table?: ExplainedTable;
  readonly problem?: ExplainedProblem;
  /** Why the formula does not work this call out: which branch is taken in its place. Then nothing is said of an answer. */
  readonly passedOver?: string;
  /** True where the cell shows nothing yet, so that a problem only says what is still missing. */
  readonly waiting: boolean;
  /** Which row of a whole column is explained: "row 3 of 12", or "all 12 rows" where another function takes them; "" for one value. */
  readonly extent: string;
  readonly source: string;
  readonly caution: string;
}

/** What stands in a cell, in words. */
export interface CellExplanation {
  readonly address: CellAddress;
  /** One sentence: what kind of cell this is. */
  readonly opening: string;
  /** As typed; "" for a value or a blank cell. */
  readonly cellFormula: string;
  /** As the sheet shows it. */
  readonly shown: string;
  /** What the formula chose between, and by what: a sentence each. */
  readonly ways: readonly string[];
  /** The formula around its calls with the numbers put in, "0.7*100 = 70"; "" where a call is all of it, or it cannot be told. */
  readonly around: string;
  /** Outermost call first. */
  readonly calls: readonly CallExplanation[];
  /** Left out where the cell is not a calculated one of a run sheet. */
  readonly ofRun?: RunCellExplanation;
  /** What else the reader must know: a cell not calculated, a value that no longer agrees. */
  readonly notes: readonly string[];
}

/** Said of an optional argument that was not given. */
export const LEFT_OUT = "left out";

/** Said behind the value of an optional argument that counts as not given. */
export const AS_LEFT_OUT = ", the same as left out";

/** Said of an argument whose value only the spreadsheet can work out. */
export const WORKED_OUT_IN_CELL = "worked out in the cell";

/** A calculated cell of a run sheet, explained with the numbers put in. */
export interface RunCellExplanation {
  /** "lost, round 3, sample 2" */
  readonly name: string;
  /** The heading of its block, "" for the lines at the top. */
  readonly block: string;
  readonly about: string;
  readonly inputs: readonly Pick<InputRow, "name" | "value" | "from">[];
  /** Inputs that are not listed. */
  readonly moreInputs: number;
  /** What the formula asks before it answers, in its order. */
  readonly choices: readonly { readonly asked: string; readonly holds: boolean }[];
  /** Lines of arithmetic; empty where there is none, or where the cell shows something else. */
  readonly working: readonly string[];
  /** With its unit, as the cell holds it; "" for a cell that shows nothing. */
  readonly result: string;
  /** What a ± covers and by what factor, or "". */
  readonly plusMinus: string;
  readonly check?: { readonly looksAt: string; readonly found: string; readonly remedy: string };
  /** What a cell that shows nothing waits for. */
  readonly waitsFor: readonly string[];
  readonly source: string;
}
