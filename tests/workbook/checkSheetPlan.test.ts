import { notACellFormula, notACellRange, textTooLong, wordWithComma } from "../../src/problems/workbook/workbookProblems";
import { checkSheetPlan } from "../../src/workbook/checkSheetPlan";
import type { EntryRule, SheetPlan } from "../../src/workbook/SheetPlan";
import { WorkbookProblem } from "../../src/workbook/Workbook";

const plan: SheetPlan = { name: "Run", cells: [], columnWidths: [], entryRules: [], frozenRows: 0, startAt: "A1" };
const rule: EntryRule = { range: "A1", allow: { kind: "anything" }, promptTitle: "", prompt: "", refusal: "" };
const long = (length: number): string => "x".repeat(length);

describe("checkSheetPlan(plan)", () => {
  test("takes texts as long as a sheet can hold", () => {
    const words: EntryRule["allow"] = { kind: "words", words: [long(127), long(127)] };
    const longest = { ...rule, allow: words, promptTitle: long(32), prompt: long(255), refusal: long(225) };
    expect(() => checkSheetPlan({ ...plan, cells: [{ cell: "A1", content: long(32_767) }], entryRules: [longest] })).not.toThrow();
  });

  test.each<[string, Partial<SheetPlan>, string]>([
    ["a prompt title of 33 characters", { entryRules: [{ ...rule, promptTitle: long(33) }] }, textTooLong("title of an entry prompt", 33, 32)],
    ["a prompt of 256 characters", { entryRules: [{ ...rule, prompt: long(256) }] }, textTooLong("entry prompt", 256, 255)],
    ["a refusal of 226 characters", { entryRules: [{ ...rule, refusal: long(226) }] }, textTooLong("refusal of an entry", 226, 225)],
    [
      "words of 256 characters",
      { entryRules: [{ ...rule, allow: { kind: "words", words: [long(128), long(127)] } }] },
      textTooLong("list of words", 256, 255),
    ],
    ["a word with a comma", { entryRules: [{ ...rule, allow: { kind: "words", words: ["dry, hot"] } }] }, wordWithComma("dry, hot")],
    ["a text of 32,768 characters", { cells: [{ cell: "A1", content: long(32_768) }] }, textTooLong("text of a cell", 32_768, 32_767)],
    ["a formula without =", { cells: [{ cell: "A1", formula: "1+1" }] }, notACellFormula("1+1")],
    ["a cell that is none", { cells: [{ cell: "A0", content: 1 }] }, notACellRange("A0")],
    ["a rule on no range", { entryRules: [{ ...rule, range: "all" }] }, notACellRange("all")],
    ["a start that is no cell", { startAt: "" }, notACellRange("")],
    [
      "a chart of no range",
      { charts: [{ title: "", xTitle: "", yTitle: "", series: [{ name: "", x: "A:A", y: "B1" }], over: "D1:E2" }] },
      notACellRange("A:A"),
    ],
  ])("refuses %s", (_what, part, sentence) => {
    expect(() => checkSheetPlan({ ...plan, ...part })).toThrow(new WorkbookProblem(sentence));
  });
});
