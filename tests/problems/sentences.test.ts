import { REFERS_TO_ITSELF } from "../../src/problems/workbook/cellNotes";
import { textTooLong } from "../../src/problems/workbook/workbookProblems";

// Sentences that no test of the room that says them reaches.
test("a formula that refers to its own cell is told so", () => {
  expect(REFERS_TO_ITSELF).toBe("This formula refers to its own cell, so what the cell shows cannot be right. Point it at other cells.");
});

test("a text longer than a sheet holds is named with its length and the limit", () => {
  expect(textTooLong("entry prompt", 260, 255)).toBe("The entry prompt has 260 characters and the sheet can hold 255. Shorten it.");
});
