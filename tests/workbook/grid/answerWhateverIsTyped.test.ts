import { formulaBeyondGrid } from "../../../src/problems/workbook/cellNotes";
import { explainCell } from "../../../src/explanation/explainCell";
import { whatIsWrong } from "../../../src/workbench/whatIsWrong";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

jest.setTimeout(60_000);

let live: HeadlessWorkbook;
beforeAll(async () => void (live = await openHeadlessWorkbook()));
afterAll(() => live.close());

const inside = (opening: string, times: number, closing: string): string => `=${opening.repeat(times)}1${closing.repeat(times)}`;
/** Of a few thousand characters a person waits no longer than that; alone, each takes well below one second. */
const MILLISECONDS = 10_000;

// Each of these once kept the engine calculating for good, or may.
test.each([
  ["ampersands in a row", `=${"1&".repeat(4094)}1`, "beyond"],
  ["signs", `=${"-".repeat(8100)}1`, "beyond"],
  ["brackets", inside("(", 4000, ")"), "beyond"],
  ["brackets that are never closed", `=${"(".repeat(8000)}`, "beyond"],
  ["functions", inside("ABS(", 1600, ")"), "beyond"],
  ["30,000 characters", `=${"1+".repeat(15_000)}1`, "beyond"],
  ["9,000 characters beside one another", `=SUM(${"A1,".repeat(3000)}A1)`, "beyond"],
  ["ranges of ranges", `=${"A1:".repeat(2700)}A1`, "#VALUE!"],
  ["a variable named twice", "=LET(x,1,LET(x,1,x))", "#VALUE!"],
  ["400 variables", `=${"LET(x,1,".repeat(400)}x${")".repeat(400)}`, "#VALUE!"],
  ["2,729 powers", `=${"A1^".repeat(2729)}A1`, undefined],
  ["the longest sum of cells", `=${"A1+".repeat(2729)}A1`, undefined],
  ["499 brackets", inside("(", 499, ")"), undefined],
  ["499 functions", inside("IF(1,", 499, ")"), undefined],
  ["400 functions called on the spot", inside("LAMBDA(x,x)(", 400, ")"), undefined],
])("%s: the cell answers, what is wrong is said, and the next formula is worked out", async (_, formula, wanted) => {
  const started = Date.now();
  await live.type(FIRST_SHEET, "C3", formula);
  await live.settled();
  const [[reading]] = (await live.workbook.read(FIRST_SHEET, "C3")).rows as [[Parameters<typeof whatIsWrong>[0]]];
  if (wanted !== undefined) expect(reading.error).toBe("#VALUE!");
  const said = whatIsWrong(reading, FIRST_SHEET);
  if (wanted === "beyond") expect(said).toBe(formulaBeyondGrid(500, 3000, 8192));
  else if (wanted !== undefined) expect(said).toContain("cannot be worked out as it stands");
  await expect(explainCell(live.workbook, { sheet: FIRST_SHEET, cell: "C3" })).resolves.toMatchObject({ address: { cell: "C3" } });
  await live.type(FIRST_SHEET, "D3", "=1+1");
  await live.settled();
  expect((await live.workbook.read(FIRST_SHEET, "D3")).rows[0]?.[0]?.value).toBe(2);
  expect(Date.now() - started).toBeLessThan(MILLISECONDS);
  await live.type(FIRST_SHEET, "D3", null);
});

test("says what to do", () => {
  expect(formulaBeyondGrid(500, 3000, 8192)).toBe(
    "This formula is not worked out here: it has more than 500 brackets within one another, 3000 operators or 8192 characters. Write it in several cells.",
  );
});
