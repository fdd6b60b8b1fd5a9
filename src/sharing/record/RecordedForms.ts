import { areaNamed } from "../../workbook/areaNamed";
import { lettersOf } from "../../workbook/cellArea";
import type { RangeReading } from "../../workbook/Workbook";
import type { FormulaCell } from "../formulaCells";
import { relativeFormula, textInRows, type RelativeFormula } from "../plain/formula/RelativeFormula";
import { builtInAlone, builtInForm, heldIn, type BuiltInForm, type HeldAt } from "./builtInForm";
import { asTyped } from "./asTyped";
import { rangesIn } from "./workedWith";

type InRow<T> = (row: number) => T;

/** What is said of one formula, in any row that it is filled down to, row counted from 1. */
interface Known {
  readonly formula: InRow<string>;
  readonly typed: InRow<string>;
  readonly ranges: readonly InRow<string>[];
  /** Undefined where the form is another one in other rows, or rests on what cells held. Found when it is first asked for. */
  form?: InRow<BuiltInForm> | undefined;
  isFormKnown: boolean;
}

/** What a record says of the formulas of a sheet, made once for all cells of a column that one is filled down to, wherever others stand between. */
export class RecordedForms {
  private readonly known = new Map<string, Known>();
  private held: HeldAt | undefined;

  constructor(private readonly rows: RangeReading["rows"]) {}

  /** The formula under the names a person types. */
  typed({ cell, formula }: FormulaCell): string {
    const { row, known } = this.knownOf(cell, formula);
    return known === undefined ? asTyped(formula) : known.typed(row);
  }

  /** The ranges of its own sheet that it refers to. */
  ranges({ cell, formula }: FormulaCell): readonly string[] {
    const { row, known } = this.knownOf(cell, formula);
    return known === undefined ? rangesIn(formula) : known.ranges.map((inRow) => inRow(row));
  }

  /** Its guarded form in built-in functions, or why there is none. */
  builtIn(one: FormulaCell): BuiltInForm {
    const { row, known, relative } = one.area.range === one.cell ? this.knownOf(one.cell, one.formula) : NOT_MOVED;
    if (known !== undefined && !known.isFormKnown) {
      known.isFormKnown = true;
      known.form = one.calls.length === 0 ? undefined : formIn(one.cell, relative);
    }
    if (known?.form !== undefined) return known.form(row);
    return builtInForm(one, (this.held ??= heldIn(this.rows)));
  }

  private knownOf(cell: string, formula: string): { readonly row: number; readonly known: Known | undefined; readonly relative: RelativeFormula } {
    const { row, column } = areaNamed(cell);
    const relative = relativeFormula(formula, row + 1);
    if (relative === undefined) return NOT_MOVED;
    const key = `${column}!${relative.formula}`;
    let known = this.known.get(key);
    if (known === undefined) {
      known = {
        formula: textInRows(relative.formula),
        typed: textInRows(asTyped(relative.formula)),
        ranges: rangesIn(relative.formula).map(textInRows),
        isFormKnown: false,
      };
      this.known.set(key, known);
    }
    // Small letters, among others, are told as they were typed.
    return known.formula(row + 1) === formula ? { row: row + 1, known, relative } : NOT_MOVED;
  }
}

const NOT_MOVED = { row: 0, known: undefined, relative: { formula: "", row: 0 } } as const;

function formIn(cell: string, relative: RelativeFormula): InRow<BuiltInForm> | undefined {
  const form = builtInAlone(relative.formula, `${lettersOf(areaNamed(cell).column)}${relative.row}`);
  if (form === undefined || form.isArray) return undefined;
  const text = textInRows(form.text);
  return (row) => ({ text: text(row), isArray: false });
}
