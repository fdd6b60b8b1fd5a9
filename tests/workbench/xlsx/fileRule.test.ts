import { DataValidationOperator, DataValidationType } from "@univerjs/core";
import { fileRule, ruleOf } from "../../../src/workbench/xlsx/fileRule";

const RANGES = [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 }];
type InFile = Parameters<typeof ruleOf>[0];
const said = { allowBlank: true, showInputMessage: true, showErrorMessage: true, promptTitle: "Tin", prompt: "Weigh it cold.", error: "No." };

describe("ruleOf(inFile, ranges)", () => {
  test.each<[string, Partial<InFile>, DataValidationType]>([
    ["a list of words", { type: "list", formulae: ['"open,closed"'] }, DataValidationType.LIST],
    ["bounds of a number", { type: "decimal", operator: "between", formulae: [0, 500] }, DataValidationType.DECIMAL],
    ["a list in cells", { type: "list", formulae: ["$A$1:$A$5"] }, DataValidationType.ANY],
    ["a number beyond one bound", { type: "decimal", operator: "greaterThan", formulae: [0] }, DataValidationType.ANY],
    ["a whole number", { type: "whole", operator: "between", formulae: [1, 9] }, DataValidationType.ANY],
    ["a condition", { type: "custom", formulae: ["A1>0"] }, DataValidationType.CUSTOM],
  ])("takes %s for the kind of rule that it is, or for a prompt alone", (_what, part, type) => {
    expect(ruleOf({ ...said, ...part } as InFile, RANGES)).toMatchObject({
      type,
      promptTitle: "Tin",
      prompt: "Weigh it cold.",
      error: "No.",
      ranges: RANGES,
    });
  });

  test("keeps words and bounds, and fileRule gives them back", () => {
    const words = ruleOf({ ...said, type: "list", formulae: ['"open,closed"'] } as InFile, RANGES);
    expect(words.formula1).toBe("open,closed");
    expect(fileRule(words)).toMatchObject({ type: "list", formulae: ['"open,closed"'], showErrorMessage: true });
    const bounds = ruleOf({ ...said, type: "decimal", operator: "between", formulae: [0.5, 500] } as InFile, RANGES);
    expect(bounds).toMatchObject({ formula1: "0.5", formula2: "500", operator: DataValidationOperator.BETWEEN });
    expect(fileRule(bounds)).toMatchObject({ type: "decimal", operator: "between", formulae: [0.5, 500] });
    const condition = ruleOf({ ...said, type: "custom", formulae: ["A1>0"] } as InFile, RANGES);
    expect(condition.formula1).toBe("=A1>0");
    expect(fileRule(condition)).toMatchObject({ type: "custom", formulae: ["A1>0"], showErrorMessage: true });
    // Newer functions are stored under a prefix.
    const newer = ruleOf({ ...said, type: "custom", formulae: ["_xlfn.ISFORMULA(A1)"] } as InFile, RANGES);
    expect([newer.formula1, fileRule(newer).formulae]).toEqual(["=ISFORMULA(A1)", ["_xlfn.ISFORMULA(A1)"]]);
    expect(fileRule({ ...condition, prompt: "" })).toMatchObject({ showInputMessage: false });
    expect(fileRule({ ...bounds, operator: DataValidationOperator.GREATER_THAN })).toMatchObject({ type: "any", formulae: [] });
  });
});
