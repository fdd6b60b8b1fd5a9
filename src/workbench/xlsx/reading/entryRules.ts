import type { IDataValidationRule, IRange } from "@univerjs/core";
import type { DataValidation, DataValidationOperator } from "exceljs";
import { cellArea, ROWS_OF_A_SHEET, wholeLines } from "../../../workbook/cellArea";
import { ruleOf } from "../fileRule";
import { isOn, type Attributes } from "../../../xlsx/parts/readXml";
import { longer } from "../../../xlsx/parts/sharedTexts";

/** The rows and columns of a sheet. */
interface Size {
  readonly rows: number;
  readonly columns: number;
}

const FORMULA = /^formula[12]$/;

/** Takes the rules for entries of one sheet (ECMA-376 Part 1, 18.3.1.32). */
export class EntryRulesReader {
  private readonly rules: RuleInFile[] = [];

  /** False for an element that is of no rule. */
  open(element: string, attributes: Attributes): boolean {
    if (element === "dataValidation") this.rules.push(new RuleInFile(attributes));
    else if (FORMULA.test(element)) this.rules.at(-1)?.formulae.push("");
    else return false;
    return true;
  }

  text(within: string, text: string): void {
    const formulae = FORMULA.test(within) ? this.rules.at(-1)?.formulae : undefined;
    if (formulae !== undefined) formulae[formulae.length - 1] = longer(formulae.at(-1) ?? "", text);
  }

  /** How many rules the grid keeps as their prompts alone. */
  promptsAlone(): number {
    return this.rules.filter((rule) => rule.isPromptAlone()).length;
  }

  /** The rules for a grid of that size; ranges beyond it are cut. */
  forGrid(size: Size): IDataValidationRule[] {
    const rules = this.rules.map((rule) => rule.forGrid(size)).filter((rule) => rule !== undefined);
    return rules.sort((one, other) => placeOf(one) - placeOf(other));
  }
}

/** Programs write rules in any order; from the first column down is one that every program's files can be brought into. */
const placeOf = ({ ranges: [first] }: IDataValidationRule): number =>
  first === undefined ? 0 : first.startColumn * ROWS_OF_A_SHEET + first.startRow;

/** Every type there is (ECMA-376 Part 1, 18.18.21); "any" is the file library's word for "none". */
const TYPES: readonly string[] = ["decimal", "list", "none", "any", "custom", "whole", "date", "time", "textLength"];

/** A rule while it is read; its formulas come after its attributes. */
class RuleInFile {
  readonly formulae: string[] = [];

  constructor(private readonly attributes: Attributes) {}

  /** The rule for the grid, where it is for any cell of it. */
  forGrid(size: Size): IDataValidationRule | undefined {
    const ranges = rangesOf(this.attributes.sqref ?? "", size);
    return ranges.length === 0 ? undefined : ruleOf(this.inFile(), ranges);
  }

  /** True where the grid keeps the prompt alone. */
  isPromptAlone(): boolean {
    const { type = "none" } = this.attributes;
    return TYPES.includes(type) && type !== "none" && type !== "any" && ruleOf(this.inFile(), []).type === "any";
  }

  private inFile(): DataValidation {
    const { type = "any", operator = "between", promptTitle = "", prompt = "", error = "", showErrorMessage } = this.attributes;
    return {
      type: type as "decimal",
      operator: operator as DataValidationOperator,
      formulae: this.formulae,
      promptTitle,
      prompt,
      error,
      showErrorMessage: isOn(showErrorMessage),
    };
  }
}

function rangesOf(list: string, within: Size): IRange[] {
  return list.split(/\s+/).flatMap((range) => {
    const area = cellArea(range) ?? wholeLines(range);
    if (area === undefined || area.row >= within.rows || area.column >= within.columns) return [];
    return [
      {
        startRow: area.row,
        startColumn: area.column,
        endRow: Math.min(within.rows, area.row + area.rows) - 1,
        endColumn: Math.min(within.columns, area.column + area.columns) - 1,
      },
    ];
  });
}
