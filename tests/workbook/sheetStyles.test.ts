import { sheetStyles } from "../../src/workbook/sheetStyles";
import { contrast, LEAST_FOR_TEXT } from "./contrast";

const WHITE = "#FFFFFF";
// WCAG 2.2, 1.4.11: lines that carry meaning.
const LEAST_FOR_LINES = 3;

describe("sheetStyles", () => {
  test("the contrast used here is that of WCAG 2.2: black on white is 21:1, #767676 on white just above 4.5:1", () => {
    expect(contrast("#000000", WHITE)).toBeCloseTo(21, 10);
    expect(contrast("#767676", WHITE)).toBeCloseTo(4.54, 2);
  });

  test.each(Object.entries(sheetStyles))("%s has text that stands out from its fill", (_name, { fontColour, fill = WHITE }) => {
    expect(contrast(fontColour, fill)).toBeGreaterThanOrEqual(LEAST_FOR_TEXT);
  });

  test("cells to fill in are the only ones with a line around them, and it stands out", () => {
    expect(Object.entries(sheetStyles).flatMap(([name, { border }]) => (border === undefined ? [] : [name]))).toEqual(["input"]);
    expect(contrast(sheetStyles.input.border ?? "", WHITE)).toBeGreaterThanOrEqual(LEAST_FOR_LINES);
  });
});
