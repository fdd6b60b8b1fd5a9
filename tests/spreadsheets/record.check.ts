// Calculation records on paper, measured in what LibreOffice prints: short enough to be read, with letters above 7 points and nothing cut.
import { recordWords } from "../../src/problems/sharing/recordWords";
import { everyFormulaCell } from "../../src/sharing/formulaCells";
import { calculationRecord } from "../../src/sharing/record/calculationRecord";
import { newFileOf } from "../../src/xlsx/planned/addPlanned";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";
import { textFaults } from "../pdf/paperFaults";
import type { PrintedPage } from "../pdf/readPdf";
import { filledRuns } from "./filledRuns";
import { onPaper, PAPERS, printed, type Paper } from "./printed";

jest.setTimeout(260_000);

const LEAST_TEXT = 7;

/** On how many pages each record goes; before alike formulas were told once, that of a charring run of one sample took 21. */
// One and two pages more since what may yet dry off is worked out, and stands in every ±.
const PAGES: Readonly<Record<string, number>> = {
  "charring run of one sample": 6,
  "drying run": 3,
  "charring run of three samples with its composition, one on a tared balance": 7,
  "ashing run of two samples with pan zeros and temperatures": 10,
  "5,000 weighed samples": 2,
};
const papers = Object.keys(PAPERS) as Paper[];
let pages: ReadonlyMap<string, readonly PrintedPage[]>;

/** A table filled down, as somebody with many samples has it. */
async function manySamples(): Promise<Pick<Awaited<ReturnType<typeof openHeadlessWorkbook>>, "workbook"> & { readonly name: string; close(): void }> {
  const open = await openHeadlessWorkbook();
  const rows = Array.from({ length: 5000 }, (_, index) => index + 1);
  const name = await open.workbook.addSheet({
    ...{ name: "Trays", columnWidths: [12, 12, 12, 12], entryRules: [], frozenRows: 0, startAt: "A1" },
    cells: rows.flatMap((row) => [
      { cell: `A${row}`, content: 25 },
      { cell: `B${row}`, content: 35 + row / 1000 },
      { cell: `C${row}`, content: 31.5 },
      { cell: `D${row}`, formula: `=RETORT.MOISTURE.WET(A${row},B${row},C${row})` },
    ]),
  });
  return { workbook: open.workbook, name, close: () => open.close() };
}

beforeAll(async () => {
  const files = new Map<string, Uint8Array>();
  for (const name of Object.keys(PAGES)) {
    const { workbook, name: sheet, close } = await (filledRuns[name] ?? manySamples)();
    const used = await workbook.readUsed(sheet);
    const shared = { sheet, copy: sheet, date: "2027-01-15", formulaCells: everyFormulaCell(used), rows: used.rows };
    const file = await newFileOf([calculationRecord(shared, "Record")]);
    for (const paper of papers) files.set(`${name}, ${paper}`, await onPaper(file, paper));
    close();
  }
  pages = await printed(files);
});

/** A mark that the font lacks is drawn in another, and told as a text of its own over the one that it stands in. */
const faultsOn = (page: PrintedPage): string[] =>
  textFaults(page, LEAST_TEXT).filter((fault) => !/ and "[✓►▲◄≥≤]+" stand on each other$/u.test(fault));

test.each(papers.flatMap((paper) => Object.entries(PAGES).map(([name, most]) => [name, paper, most] as const)))(
  "the record of a %s on %s stands on at most %i pages, readable, with its columns named on each",
  (name, paper, most) => {
    const of = pages.get(`${name}, ${paper}`) ?? [];
    expect(of.length).toBeGreaterThan(0);
    expect(of.length).toBeLessThanOrEqual(most);
    expect(of.flatMap((page, index) => faultsOn(page).map((fault) => `page ${index + 1}: ${fault}`))).toEqual([]);
    for (const { width, height, texts } of of) {
      expect(width).toBeGreaterThan(height);
      expect(texts.map(({ text }) => text)).toContain(recordWords.columns[1]);
    }
  },
);
