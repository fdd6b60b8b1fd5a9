import { cautions } from "../../runsheet/words/cautions";
import type { PlannedCell, SheetPlan } from "../../workbook/SheetPlan";

// An orchard that does not exist; every weighing on this sheet is made up. While drying, seven tenths of the water left go
// from one weighing to the next.
const SHEET = "Orchard kiln";
const MINUTES_BETWEEN = 20;
const TIN_WITH_SHELLS = [262.85, 257.97, 256.55, 256.14, 256.02, 255.99, 255.98];
const FIRST_WEIGHING = 14;
const LAST_WEIGHING = FIRST_WEIGHING + TIN_WITH_SHELLS.length - 1;
const MINUTES = `A${FIRST_WEIGHING}:A${LAST_WEIGHING}`;
const WEIGHINGS = `B${FIRST_WEIGHING}:B${LAST_WEIGHING}`;

const GRAMS = "0.00";
const SHARE = "0.0%";
const FACTOR = "0.000";

const label = (cell: string, content: string): PlannedCell => ({ cell, content, style: "label" });
const note = (cell: string, content: string): PlannedCell => ({ cell, content, style: "note" });
const heading = (row: number, content: string): PlannedCell[] =>
  [..."ABCDEFG"].map((column, index) => ({ cell: `${column}${row}`, style: "heading", ...(index === 0 && { content }) }));
const columnHeadings = (row: number, texts: readonly string[]): PlannedCell[] =>
  texts.map((content, index) => ({ cell: `${"ABCDEFG"[index]}${row}`, content, style: "columnHeading" }));
const entry = (cell: string, content: number | string, format?: string): PlannedCell => ({
  cell,
  content,
  style: "input",
  ...(format && { format }),
});
const result = (cell: string, formula: string, format: string): PlannedCell => ({ cell, formula, style: "result", format });

const details: readonly PlannedCell[] = [
  ...heading(3, "The run"),
  label("A4", "Sample"),
  entry("B4", "walnut shells"),
  label("A5", "Vessel, empty (g)"),
  entry("B5", 212.4, GRAMS),
  note("C5", "a lidded steel tin with a vent hole"),
  label("A6", "Tin + char, cooled closed (g)"),
  entry("B6", 225.14, GRAMS),
  label("A7", "Tin + ash of that char (g)"),
  entry("B7", 212.83, GRAMS),
  label("A8", "Carbon, dry shells (fraction)"),
  entry("B8", 0.5, SHARE),
  label("A9", "Hydrogen, dry shells (fraction)"),
  entry("B9", 0.06, SHARE),
  label("A10", "Oxygen, dry shells (fraction)"),
  entry("B10", 0.43, SHARE),
];

const weighings: readonly PlannedCell[] = [
  ...heading(12, `Drying at 105 °C, weighed every ${MINUTES_BETWEEN} minutes`),
  ...columnHeadings(13, ["Elapsed (min)", "Tin + sample (g)"]),
  ...TIN_WITH_SHELLS.flatMap((grams, index) => [
    entry(`A${FIRST_WEIGHING + index}`, index * MINUTES_BETWEEN, "0"),
    entry(`B${FIRST_WEIGHING + index}`, grams, GRAMS),
  ]),
  { cell: "C13", formula: `=RETORT.CONSTANTWEIGHT.STEPS(${WEIGHINGS},0.001,"of last",${MINUTES},B5)`, style: "columnHeading" },
  ...[..."DEFG"].map((column): PlannedCell => ({ cell: `${column}13`, style: "columnHeading" })),
  ...TIN_WITH_SHELLS.flatMap((_, index) =>
    [..."CDEFG"].map((column): PlannedCell => ({
      cell: `${column}${FIRST_WEIGHING + index}`,
      style: "computed",
      format: column === "C" ? "0" : FACTOR,
    })),
  ),
];

const results: readonly PlannedCell[] = [
  ...heading(22, "Results"),
  label("A23", "Steady from weighing"),
  result("B23", `=RETORT.CONSTANTWEIGHT(${WEIGHINGS},0.001,"of last",${MINUTES},B5)`, "0"),
  note("C23", "first change below 0.1 % of the sample; 0 means not yet"),
  label("A24", "Moisture, wet basis"),
  result("B24", `=RETORT.MOISTURE.WET(B5,B${FIRST_WEIGHING},B${LAST_WEIGHING})`, SHARE),
  label("A25", "Moisture, dry basis"),
  result("B25", `=RETORT.MOISTURE.DRY(B5,B${FIRST_WEIGHING},B${LAST_WEIGHING})`, SHARE),
  label("A26", "Volatile fraction, dry shells"),
  result("B26", `=RETORT.VOLATILEFRACTION(B5,B${LAST_WEIGHING},B6)`, SHARE),
  label("A27", "Char yield, ash-free"),
  result("B27", `=RETORT.CHARYIELD(B5,B${LAST_WEIGHING},B6,B7)`, SHARE),
  label("A28", "Oxygen per g of dry shells (g)"),
  result("B28", "=RETORT.OXYGENDEMAND.ULTIMATE(B8,B9,B10)", FACTOR),
  label("A29", "Air for that (g)"),
  result("B29", "=RETORT.AIRDEMAND(B28)", FACTOR),
  label("A30", "Wrong on purpose"),
  result("B30", `=RETORT.MOISTURE.WET(B5,B${LAST_WEIGHING},B${FIRST_WEIGHING})`, SHARE),
  { cell: "C30", content: "Weighings swapped. Select B30 and read below the grid.", style: "caution" },
  ...[..."DEFG"].map((column): PlannedCell => ({ cell: `${column}30`, style: "caution" })),
];

const COMPARED_ROWS = 13;
const FIRST_COMPARED = 33;

const comparison: readonly PlannedCell[] = [
  ...heading(32, "Charred closed, or burned in the open: one formula in A33 fills the table"),
  { cell: `A${FIRST_COMPARED}`, formula: `=RETORT.BURN.COMPARE(B5,B${LAST_WEIGHING},B6,B7,"",B8,B9,B10)`, style: "columnHeading" },
  ...[..."BCDE"].map((column): PlannedCell => ({ cell: `${column}${FIRST_COMPARED}`, style: "columnHeading" })),
  ...Array.from({ length: COMPARED_ROWS - 1 }, (_, index) =>
    [..."ABCDE"].map((column): PlannedCell => ({ cell: `${column}${FIRST_COMPARED + 1 + index}`, style: "computed", format: FACTOR })),
  ).flat(),
];

const CAUTIONS_FROM = FIRST_COMPARED + COMPARED_ROWS + 1;

export const demoKiln: SheetPlan = {
  name: SHEET,
  cells: [
    { cell: "A1", content: "Walnut shells in the orchard's char kiln", style: "title" },
    note("A2", "Invented: the community orchard, its kiln and every weighing here are made up, to try Retort on."),
    ...details,
    ...weighings,
    ...results,
    ...comparison,
    ...heading(CAUTIONS_FROM, "Cautions"),
    ...cautions.ashing.map((content, index): PlannedCell => ({ cell: `A${CAUTIONS_FROM + 1 + index}`, content, style: "label" })),
  ],
  columnWidths: [38, 22, 15, 15, 15, 14, 12],
  entryRules: [
    {
      range: "B5:B7",
      allow: { kind: "number", atLeast: 0, atMost: 100_000 },
      promptTitle: "Weighing in grams",
      prompt: "Weigh cold, and always the same tin with its lid.",
      refusal: "Type a weight in grams, a number from 0 up.",
    },
    {
      range: WEIGHINGS,
      allow: { kind: "number", atLeast: 0, atMost: 100_000 },
      promptTitle: "Tin + sample (g)",
      prompt: "Weigh the tin with the sample. Leave blank what is not weighed yet.",
      refusal: "Type a weight in grams, a number from 0 up.",
    },
  ],
  frozenRows: 1,
  startAt: "B24",
};
