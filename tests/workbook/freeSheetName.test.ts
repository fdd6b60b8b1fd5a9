import fc from "fast-check";
import { sheetNameBlank, sheetNameMarks, sheetNameReserved } from "../../src/problems/workbook/workbookProblems";
import { freeNameBeside, freeSheetName, LONGEST_SHEET_NAME, unfinishedCopyName } from "../../src/workbook/freeSheetName";
import { WorkbookProblem } from "../../src/workbook/Workbook";

describe("freeSheetName(wanted, taken)", () => {
  test.each([
    ["Run", [], "Run"],
    ["Run", ["run"], "Run (2)"],
    ["Run", ["Run", "RUN (2)"], "Run (3)"],
    ["  Run ", [], "Run"],
    ["A name that is rather longer than a sheet can bear", [], "A name that is rather longer th"],
    ["A name that is rather longer than a sheet can bear", ["a name that is rather longer th"], "A name that is rather longe (2)"],
    ["Thirty-one characters and it's 🌳", [], "Thirty-one characters and it's"],
  ])("makes of %s, with %j taken, %s", (wanted, taken, name) => expect(freeSheetName(wanted, taken)).toBe(name));

  test.each([
    ["", sheetNameBlank],
    ["   ", sheetNameBlank],
    ["a:b", sheetNameMarks("a:b")],
    ["'quoted'", sheetNameMarks("'quoted'")],
    ["[1]", sheetNameMarks("[1]")],
    ["History", sheetNameReserved("History")],
  ])("refuses %j", (wanted, sentence) => {
    expect(() => freeSheetName(wanted, [])).toThrow(new WorkbookProblem(sentence));
  });

  test("never gives a taken name, nor one of more than 31 characters, nor one that ends in a space or an apostrophe", () => {
    const wanted = fc.stringMatching(/^[A-Za-z][A-Za-z0-9 '.-]{0,45}[a-z]$/);
    fc.assert(
      fc.property(wanted, fc.integer({ min: 0, max: 12 }), (name, already) => {
        fc.pre(name.toLowerCase() !== "history");
        const taken: string[] = [];
        for (let count = 0; count <= already; count++) taken.push(freeSheetName(name, taken));
        expect(new Set(taken.map((one) => one.toLowerCase())).size).toBe(already + 1);
        expect(taken.filter((one) => one.length > LONGEST_SHEET_NAME || /[\s']$/.test(one))).toEqual([]);
      }),
    );
  });
});

describe("freeNameBeside(sheet, ending, taken)", () => {
  test.each([
    ["It's (a) [b]", [], "It's (a) (b) changes"],
    ["It's (a) [b]", ["it's (a) (b) CHANGES"], "It's (a) (b) changes (2)"],
    ["'a/b' \\ c:d*e?", [], "a-b' - c-d-e- changes"],
    ["'''", [], "changes"],
    ["O'Neil's run of an open kiln, May'", [], "O'Neil's run of an open changes"],
    ["Thirty-one characters, 1 at end'", [], "Thirty-one characters, changes"],
    ["History", [], "History changes"],
    ["🌳🌳🌳🌳🌳🌳🌳🌳🌳🌳🌳🌳", [], "🌳🌳🌳🌳🌳🌳🌳🌳🌳🌳🌳 changes"],
  ])("makes of %s, with %j taken, %s", (sheet, taken, name) => expect(freeNameBeside(sheet, " changes", taken)).toBe(name));

  // Short enough that no cut takes the apostrophe away.
  test.each([
    ["!'", "Unfinished copy of !"],
    ["Kiln''", "Unfinished copy of Kiln"],
    ["'", "Unfinished copy of"],
  ])("a copy of %s is at first called %s", (sheet, name) => expect(unfinishedCopyName(sheet, [])).toBe(name));

  test("gives a name that a sheet may have for whatever another sheet is called", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: "grapheme", maxLength: 45 }), { minLength: 1, maxLength: 6 }), (sheets) => {
        const taken: string[] = [];
        for (const sheet of sheets) taken.push(freeNameBeside(sheet, " record", taken));
        expect(taken.map((name) => freeSheetName(name, []))).toEqual(taken);
        expect(new Set(taken.map((one) => one.toLowerCase())).size).toBe(sheets.length);
        expect(unfinishedCopyName(sheets[0] ?? "", []).length).toBeLessThanOrEqual(LONGEST_SHEET_NAME);
      }),
    );
  });
});
