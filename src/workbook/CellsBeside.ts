/** A defined name of the workbook, or of one of its sheets. */
export interface DefinedName {
  readonly name: string;
  /** The sheet that it belongs to; left out for one of the whole workbook. */
  readonly sheet?: string;
  /** "=Run!$B$4" */
  readonly formula: string;
}

/** A rule of a sheet for colouring cells or for entries, with its formulas as typed, each beginning with "=". */
export interface SheetRule {
  readonly kind: "colouring" | "entry";
  /** Relative references are those of the first area's first cell: "B4:B9". */
  readonly areas: readonly string[];
  readonly formulas: readonly string[];
  /** True for entries from a list. */
  readonly isList?: boolean;
  /** Whether a formula says that the rule holds, or what a cell is compared with; left out for lists, scales, bars and icons. */
  readonly says?: "holds" | "compared";
}

/** What may hold formulas and stands in no cell. */
export type Beside = "names" | SheetRule["kind"];

/** What stands beside the cells of a sheet, as far as the workbook tells it. */
export interface CellsBeside {
  /** Those of the workbook and of this sheet. */
  readonly names: readonly DefinedName[];
  /** Those with a formula; a rule may be told in several pieces, each with formulas of its own. */
  readonly rules: readonly SheetRule[];
  /** What could not be read, or not all of it. */
  readonly unread: readonly Beside[];
}

/** Other formulas, as many as before, for a rule of a copy, or "out" where it goes. A rule is known by its kind and formulas. */
export interface RuleChange extends Pick<SheetRule, "kind" | "formulas"> {
  readonly now: readonly string[] | "out";
}

/** The change that is meant for a rule. @param isSame tells formulas apart from those that were read, which may name the sheet copied */
export const changeFor = (
  { kind, formulas }: SheetRule,
  changes: readonly RuleChange[],
  isSame: (read: string, here: string) => boolean,
): RuleChange | undefined =>
  changes.find(
    (one) => one.kind === kind && one.formulas.length === formulas.length && one.formulas.every((read, place) => isSame(read, formulas[place] ?? "")),
  );
