import { REFERS_TO_ITSELF, restsOnCircle, typedInCircle } from "../../src/problems/workbook/cellNotes";
import { textTooLong } from "../../src/problems/workbook/workbookProblems";

// Sentences that no test of the room that says them reaches.
test("a formula that refers to its own cell is told so", () => {
  expect(REFERS_TO_ITSELF).toBe("This formula refers to its own cell, so what the cell shows cannot be right. Point it at other cells.");
});

test("a text longer than a sheet holds is named with its length and the limit", () => {
  expect(textTooLong("entry prompt", 260, 255)).toBe("The entry prompt has 260 characters and the sheet can hold 255. Shorten it.");
});

test("a circle is told where it is typed, and of what rests on it", () => {
  expect(typedInCircle("A1", ["A1"])).toBe(
    "A1: this formula refers to its own cell, so what the cell shows need not be right and changes with each calculation. Point it at other cells.",
  );
  expect(typedInCircle("G1", ["G1", "F1"])).toBe(
    "G1: this formula is calculated in a circle, from its own cell by way of others (G1, F1). What these show need not be right and changes with each calculation. Point one of them at other cells.",
  );
  expect(restsOnCircle(["A1"])).toBe(
    "This value is calculated from a cell that is calculated from itself (A1), so it need not be right and changes with each calculation. Point that cell at other cells.",
  );
  expect(restsOnCircle(["A1", "B1", "C1", "D1", "E1", "F1"])).toBe(
    "This value is calculated from cells that are calculated in a circle (A1, B1, C1, D1 and 2 more), so it need not be right and changes with each calculation. Point one of them at other cells.",
  );
});
