import { emphasisStyles, sheetStyles } from "../../src/workbook/sheetStyles";
import { contrast, LEAST_FOR_TEXT } from "./contrast";

const WHITE = "#FFFFFF";
// WCAG 2.2, 1.4.11: lines that carry meaning.
const LEAST_FOR_LINES = 3;

const BOXES = ["input", "runBox", "runBoxStart", "runBoxMore", "runBoxEnd"] as const;

describe("sheetStyles", () => {
  test("the contrast used here is that of WCAG 2.2: black on white is 21:1, #767676 on white just above 4.5:1", () => {
    expect(contrast("#000000", WHITE)).toBeCloseTo(21, 10);
    expect(contrast("#767676", WHITE)).toBeCloseTo(4.54, 2);
  });

  test.each(Object.entries(sheetStyles))("%s has text that stands out from its fill", (_name, { fontColour, fill = WHITE }) => {
    expect(contrast(fontColour, fill)).toBeGreaterThanOrEqual(LEAST_FOR_TEXT);
  });

  test("cells to fill in are the only ones with a line around them, and it stands out", () => {
    expect(Object.entries(sheetStyles).flatMap(([name, { border }]) => (border === undefined ? [] : [name]))).toEqual(BOXES);
    for (const name of BOXES) expect(contrast(sheetStyles[name].border ?? "", WHITE)).toBeGreaterThanOrEqual(LEAST_FOR_LINES);
  });

  test("a box over several cells is open between them and closed around them", () => {
    expect([sheetStyles.runBoxStart, sheetStyles.runBoxMore, sheetStyles.runBoxEnd].map(({ sides }) => sides)).toEqual([
      ["left", "top", "bottom"],
      ["top", "bottom"],
      ["right", "top", "bottom"],
    ]);
  });

  test.each(Object.entries(emphasisStyles))(
    "%s stands out by weight as well as by its fill, and can be read on it",
    (_name, { fill, fontColour, bold }) => {
      expect(bold).toBe(true);
      expect(contrast(fontColour, fill)).toBeGreaterThanOrEqual(LEAST_FOR_TEXT);
    },
  );
});
