import { emphasisStyles, sheetStyles } from "../../src/workbook/sheetStyles";

const WHITE = "#FFFFFF";
// WCAG 2.2: 1.4.3 for text, 1.4.11 for lines that carry meaning.
const LEAST_FOR_TEXT = 4.5;
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

/** Contrast ratio of two colours, 1 to 21 (WCAG 2.2, definitions of contrast ratio and relative luminance). */
function contrast(one: string, other: string): number {
  const [darker = 0, lighter = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => linear(parseInt(colour.slice(at, at + 2), 16) / 255));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const linear = (channel: number): number => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
