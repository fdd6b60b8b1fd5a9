// What the grid draws of a text, measured as ink on the screen: the same in a narrow column beside a blank cell as in a wide one.
import { PNG } from "pngjs";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { charactersOf } from "../../src/workbook/columnPixels";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import { LocalWorkbook } from "./localWorkbook";

jest.setTimeout(120_000);

// Pixels: the column of row numbers, and the columns A narrow, B blank, C wide.
const NUMBERS = 46;
const [NARROW, BLANK, WIDE] = [64, 120, 300];
const ROW = 24;
const TEXTS = ["no smoke", "no smoke.", "white smok", "as weighed", "borosilicate glass 3.3"];
const CHOICES = ["repeats", ...TEXTS.slice(3)];
const FIRST_CHOICE = TEXTS.length + 1;

const words = [...TEXTS, ...CHOICES];
const plan: SheetPlan = {
  name: "Texts",
  cells: words.flatMap((content, index) => ["A", "C"].map((column) => ({ cell: `${column}${index + 1}`, content, style: "runBoxStart" as const }))),
  columnWidths: [NARROW, BLANK, WIDE].map(charactersOf),
  entryRules: [
    {
      range: `A${FIRST_CHOICE}:A${words.length}`,
      allow: { kind: "words", words: CHOICES },
      promptTitle: "",
      prompt: "",
      refusal: "Choose one.",
    },
  ],
  rowHeights: [{ from: 1, to: words.length, height: ROW * 0.75 }],
  gridlines: false,
  frozenRows: 0,
  startAt: "E20",
};

let local: LocalWorkbook;
beforeAll(async () => void (local = await LocalWorkbook.open()));
afterAll(() => local?.close());

test("a text that just fits its column, and a choice that does not fit beside its arrow, are drawn to their last letter", async () => {
  await local.page.evaluate((given) => (window as WorkbenchWindow).retortWorkbench?.workbook.addSheet(given), plan);
  await local.settled();
  await local.page.waitForTimeout(1000);
  // The cells are the largest of what the engine draws; the line of the formula is another.
  const canvas = await local.page.locator("#grid canvas").evaluateAll((every) =>
    every
      .map((one) => one.getBoundingClientRect())
      .map(({ x, y, width, height }) => ({ x, y, area: width * height }))
      .reduce((largest, one) => (one.area > largest.area ? one : largest)),
  );
  const picture = PNG.sync.read(await local.page.screenshot());
  const isInk = (x: number, y: number): boolean => {
    const [red = 255, green = 255, blue = 255] = picture.data.subarray(4 * (Math.round(y) * picture.width + Math.round(x)));
    return blue > red + 20 && red + green + blue < 450;
  };
  // The first row begins below the letters of the columns.
  const top = canvas.y + 20;
  const inkTo = (row: number, left: number, wide: number): number => {
    const columns = Array.from({ length: wide }, (_, x) => x).filter((x) =>
      Array.from({ length: ROW - 8 }, (_, y) => top + row * ROW + 4 + y).some((y) => isInk(canvas.x + NUMBERS + left + x, y)),
    );
    return columns.at(-1) ?? -1;
  };
  const drawn = words.map((word, row) => [word, inkTo(row, 2, NARROW + BLANK - 4), inkTo(row, NARROW + BLANK + 2, WIDE - 4)] as const);
  for (const [word, narrow, wide] of drawn) {
    expect([word, wide > 20]).toEqual([word, true]);
    expect([word, Math.abs(narrow - wide) <= 1 ? wide : narrow]).toEqual([word, wide]);
  }
  expect(local.complaints).toEqual([]);
});
