import { everyPublished } from "../../published/everyPublished";
import { halfLastDigit } from "../../published/halfLastDigit";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { argumentTexts, functionNamed, inCellsOf, nameIn } from "../call";

/** What a call is rewritten to for a colleague without the add-in. */
function rewritten(cell: string): string {
  const texts = argumentTexts(cell);
  const named = Object.fromEntries(Object.keys(functionNamed(nameIn(cell)).inputs).map((input, index) => [input, texts[index] ?? ""]));
  return `=${inCellsOf(nameIn(cell), named)}`;
}

const rows = everyPublished.filter(({ cell }) => functionNamed(nameIn(cell)).inCells !== undefined);

// The sheet has 200 rows and 26 columns.
const ROWS_OF_A_COLUMN = 100;
const placeOf = (index: number): string => `${String.fromCharCode(65 + Math.floor(index / ROWS_OF_A_COLUMN))}${(index % ROWS_OF_A_COLUMN) + 1}`;

let open: HeadlessWorkbook;
let shown: unknown[] = [];
beforeAll(async () => {
  open = await openHeadlessWorkbook();
  for (const [index, { cell }] of rows.entries()) await open.type(FIRST_SHEET, placeOf(index), rewritten(cell));
  await open.settled();
  const read = (await open.workbook.read(FIRST_SHEET, `A1:Z${ROWS_OF_A_COLUMN}`)).rows;
  shown = rows.map((_, index) => read[index % ROWS_OF_A_COLUMN]?.[Math.floor(index / ROWS_OF_A_COLUMN)]?.value);
});
afterAll(() => open.close());

// Built-in functions alone, in another program's arithmetic, against the same outside values.
test.each(rows.map(({ cell, printed, kind }, index) => [cell, printed, kind, index] as const))(
  "%s in plain cells gives %s (%s)",
  (_cell, printed, _kind, index) => {
    const { times = 1, within } = rows[index] ?? {};
    if (Number.isNaN(Number(printed))) return expect(shown[index]).toBe(printed);
    expect(shown[index]).toEqual(expect.any(Number));
    const allowed = (within?.[0] ?? halfLastDigit(printed)) * (1 + 1e-6);
    expect(Math.abs((shown[index] as number) * times - Number(printed))).toBeLessThanOrEqual(allowed);
  },
);
