import type { IDataValidationRule, IRange } from "@univerjs/core";
import type { DataValidation, DataValidationOperator } from "exceljs";
import { cellArea, wholeLines, type CellArea } from "../../../workbook/cellArea";
import { ruleOf } from "../fileRule";
import type { Attributes } from "../parts/readXml";

const LIKE_OURS: readonly string[] = ["decimal", "list", "none", "any", "custom", "whole", "date", "time", "textLength"];

/** A rule for entries while it is read; its formulas come after its attributes. */
export class RuleInFile {
  readonly formulae: string[] = [];

  constructor(private readonly attributes: Attributes) {}

  /** The rule for the grid. `within` holds the sheet's rows and columns; ranges beyond them are cut. */
  forGrid(within: { rows: number; columns: number }): IDataValidationRule | undefined {
    const ranges = rangesOf(this.attributes.sqref ?? "", within);
    return ranges.length === 0 ? undefined : ruleOf(this.inFile(), ranges);
  }

  /** True where the grid keeps the prompt alone. */
  isPromptAlone(): boolean {
    const { type = "none" } = this.attributes;
    return LIKE_OURS.includes(type) && type !== "none" && type !== "any" && ruleOf(this.inFile(), []).type === "any";
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
      showErrorMessage: showErrorMessage === "1" || showErrorMessage === "true",
    };
  }
}

function rangesOf(list: string, within: { rows: number; columns: number }): IRange[] {
  return list.split(/\s+/).flatMap((range) => {
    const area: CellArea | undefined = cellArea(range) ?? wholeLines(range);
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
