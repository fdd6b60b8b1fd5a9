/** One cell. A fixed row, or row and column, keeps its place when the formula is copied: "E$33", "$B$10". */
export interface Cell {
  readonly kind: "cell";
  /** From 1, as printed. */
  readonly row: number;
  /** From 0: A. */
  readonly column: number;
  readonly fixed: "nothing" | "row" | "both";
  /** The sheet it stands on, by its name; left out: the one with the formula. */
  readonly sheet?: string;
}

export interface Range {
  readonly kind: "range";
  readonly from: Cell;
  readonly to: Cell;
}

/** A function of the spreadsheet or of ours. */
export interface Call {
  readonly kind: "call";
  readonly name: BuiltIn | OurFunction;
  readonly given: readonly Expression[];
}

export interface Infix {
  readonly kind: "infix";
  readonly left: Expression;
  readonly operator: Comparison | Arithmetic;
  readonly right: Expression;
}

/** Texts and values one after another, as one text. */
export interface Joined {
  readonly kind: "joined";
  readonly parts: readonly Expression[];
}

/** Brackets that the order of reckoning does not ask for. */
export interface Bracketed {
  readonly kind: "bracketed";
  readonly inner: Expression;
}

/** What a cell works out, as data: written as a cell formula by formulaText, worked out on plain values by the tests. */
export type Expression = string | number | boolean | Cell | Range | Call | Infix | Joined | Bracketed;

export type Comparison = "=" | "<" | "<=" | ">" | ">=";
export type Arithmetic = "+" | "-" | "*" | "/" | "^";

/** Built-in functions that Excel 2016, LibreOffice 7.4 and the local workbook's engine all have. */
export type BuiltIn =
  | (
      | "IF"
      | "AND"
      | "OR"
      | "ISNUMBER"
      | "ISTEXT"
      | "ISERROR"
      | "ERROR.TYPE"
      | "ISBLANK"
      | "ISFORMULA"
      | "IFERROR"
      | "INDEX"
      | "MATCH"
      | "COUNT"
      | "COUNTA"
      | "COUNTIF"
      | "COUNTIFS"
    )
  | (
      | "SUM"
      | "SUMPRODUCT"
      | "MAX"
      | "MIN"
      | "MOD"
      | "ROUND"
      | "ROUNDUP"
      | "INT"
      | "ABS"
      | "SQRT"
      | "LOG10"
      | "AVERAGE"
      | "MEDIAN"
      | "LARGE"
      | "SMALL"
      | "STDEV"
      | "TINV"
      | "NA"
    )
  | ("N" | "ROW" | "ROWS" | "COLUMN" | "CHAR" | "HOUR" | "MINUTE" | "FIXED" | "LEFT" | "MID" | "RIGHT" | "FIND" | "LEN" | "SUBSTITUTE");
export type OurFunction = `RETORT.${string}`;

export const cell = (row: number, column: number): Cell => ({ kind: "cell", row, column, fixed: "nothing" });
export const fixed = (at: Cell, what: Cell["fixed"] = "both"): Cell => ({ ...at, fixed: what });
/** A cell of another sheet, in its place: such a reference follows the sheet when it is renamed, and rows put in above. */
export const elsewhere = (sheet: string, at: Cell): Cell => ({ ...fixed(at), sheet });
export const range = (from: Cell, to: Cell): Range => ({ kind: "range", from, to });

/** A built-in function of the spreadsheet: fn("MAX", changes). */
export const fn = (name: BuiltIn, ...given: readonly Expression[]): Call => ({ kind: "call", name, given });

/**
 * What stands for an argument left out before another. Nothing between two commas is not sure to reach a function of ours: how Excel
 * hands over an input that may be a range and is left out so, nobody has seen. Empty text reads as left out in every optional input.
 */
export const LEFT_OUT = "";

/** One of our own functions: retort("CHARYIELD", vessel, dry, char). */
export const retort = (name: string, ...given: readonly Expression[]): Call => ({ kind: "call", name: `RETORT.${name}`, given });

/** A comparison: is(ash, ">", char). */
export const is = (left: Expression, operator: Comparison, right: Expression): Infix => ({ kind: "infix", left, operator, right });

/** Arithmetic: reckon(ash, "-", vessel). */
export const reckon = (left: Expression, operator: Arithmetic, right: Expression): Infix => ({ kind: "infix", left, operator, right });

export const bracketed = (inner: Expression): Bracketed => ({ kind: "bracketed", inner });

/** A sentence with values in it: text`set to ${hottest} °C`. */
export const text = (words: TemplateStringsArray, ...values: readonly Expression[]): Joined =>
  joined(...words.flatMap((word, index) => [word, ...values.slice(index, index + 1)]));

/** Parts one after another; texts that meet become one. */
export const joined = (...parts: readonly Expression[]): Joined => ({
  kind: "joined",
  parts: parts.reduce<Expression[]>((so, part) => {
    const last = so.at(-1);
    if (part === "") return so;
    return typeof last === "string" && typeof part === "string" ? [...so.slice(0, -1), last + part] : [...so, part];
  }, []),
});
