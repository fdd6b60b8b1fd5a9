import { explainLook } from "../../../src/explanation/explainCell";
import { WeighIn } from "../../../src/pane/runSheet/weighIn/WeighIn";
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { shareAsValues } from "../../../src/sharing/shareAsValues";
import { ExcelWorkbook } from "../../../src/workbook/excel/ExcelWorkbook";
import type { CellLook } from "../../../src/workbook/Workbook";
import type { ExcelHost } from "../../host/ExcelHost";

const ROWS = 100_000;
const TALL = "Tall";

interface Counted {
  readonly operation: string;
  /** Requests that the user waits for. */
  readonly requests: number;
  /** Characters of the longest answer. */
  readonly longestAnswer: number;
}

export interface CountedOperation {
  readonly title: string;
  /** The most requests there may be; left out where no bound is set. */
  readonly most?: number;
  /** Requests of the version before 0.2, measured through the same host and library. */
  readonly before: number;
  run(host: ExcelHost, workbook: ExcelWorkbook): Promise<unknown>;
}

const largest = buildRunSheet({
  kind: "ashing",
  weighIns: 60,
  intervalMinutes: 20,
  readability: 0.01,
  vessel: "tin",
  replicates: 6,
  panZeros: true,
  temperatures: true,
});

/** Selects a cell of a sheet of 100,000 rows while This cell is open. */
const selecting = (title: string, cell: string, before: number): CountedOperation => ({
  title: `select ${title}, This cell open, ${ROWS.toLocaleString("en")} rows`,
  most: 2,
  before,
  run: (host, workbook) => selected(host, workbook, cell),
});

export const COUNTED: readonly CountedOperation[] = [
  { title: "insert the largest run sheet", most: 3, before: 4, run: (_host, workbook) => workbook.addSheet(largest) },
  selecting("a call on three cells", "E1", 6),
  selecting("a cell inside a spill", "F7", 48),
  selecting("a call on whole columns", "G1", 45),
  selecting("a call on a whole sheet's height", "H1", 45),
  selecting("a blank cell", "J9", 3),
  { title: "explain a cell of the largest run sheet", most: 2, before: 1, run: explained },
  { title: "weigh in: read where the largest run sheet stands", most: 1, before: 0, run: weighedIn },
  {
    title: "put a value into a blank cell",
    most: 2,
    before: 0,
    run: (_host, workbook) => workbook.replaceValue({ sheet: "Few", cell: "D4" }, null, 51.21),
  },
  { title: "share a sheet of a few cells", most: 9, before: 8, run: (_host, workbook) => shareAsValues(workbook, "Few", "2026-03-14") },
  {
    title: "put a formula into a cell",
    most: 2,
    before: 2,
    run: (_host, workbook) => workbook.writeFormula({ sheet: "Few", cell: "D4" }, "=RETORT.MOLARMASS(A1)"),
  },
];

async function selected(host: ExcelHost, workbook: ExcelWorkbook, cell: string): Promise<void> {
  let told: CellLook | undefined;
  host.book.activate(host.book.sheet(TALL));
  const stop = await workbook.onSelection((look) => (told = look));
  host.requests.length = 0;
  host.book.select(host.book.sheet(TALL), cell);
  host.calculateAgain();
  await host.quiet();
  if (told?.address.cell !== cell) throw new Error(`nothing was told of ${cell}`);
  await explainLook(workbook, told);
  const requests = [...host.requests];
  await stop();
  host.requests.splice(0, host.requests.length, ...requests);
}

async function explained(host: ExcelHost, workbook: ExcelWorkbook): Promise<void> {
  const sheet = await workbook.addSheet(largest);
  host.calculateAgain();
  await host.quiet();
  host.requests.length = 0;
  const { ofRun } = await explainLook(
    workbook,
    await workbook.look({ sheet, cell: largest.cells.find(({ formula }) => formula !== undefined)?.cell ?? "" }),
  );
  if (ofRun === undefined) throw new Error("the cell of a run sheet was not explained as one");
}

async function weighedIn(host: ExcelHost, workbook: ExcelWorkbook): Promise<void> {
  const sheet = await workbook.addSheet(largest);
  host.requests.length = 0;
  if ((await new WeighIn(workbook).look(sheet)) === undefined) throw new Error("no box is next on a blank run sheet");
}

/** Runs each operation on a workbook of its own and counts. */
export async function countRequests(host: ExcelHost): Promise<readonly Counted[]> {
  const counts: Counted[] = [];
  for (const { title, run } of COUNTED) {
    openTallBook(host);
    await run(host, new ExcelWorkbook());
    counts.push({ operation: title, requests: waitedFor(host), longestAnswer: host.longest.answer });
    await host.quiet();
  }
  return counts;
}

function openTallBook(host: ExcelHost): void {
  host.newBook();
  host.calculate = (formula) => (formula.includes("C1:C9") ? Array.from({ length: 9 }, () => [0.7]) : 0.7);
  host.book.rename(host.book.sheet("Sheet1"), "Few");
  host.book.sheet("Few").write(0, 0, 25);
  host.book.sheet("Few").write(1, 1, "=RETORT.VOLATILEFRACTION(A1,35,28)");
  const tall = host.book.add(TALL);
  for (let row = 0; row < ROWS; row++) tall.write(row, 0, row);
  const columns = [[2, 35], [3, 28]] as const; // prettier-ignore
  for (const [column, grams] of columns) for (let row = 0; row < 9; row++) tall.write(row, column, grams);
  tall.write(0, 1, 25);
  tall.write(0, 4, "=RETORT.VOLATILEFRACTION(B1,C1,D1)");
  tall.write(0, 5, "=RETORT.VOLATILEFRACTION(B1,C1:C9,D1:D9)");
  tall.write(0, 6, "=RETORT.REPLICATES(C:C)");
  tall.write(0, 7, "=RETORT.REPLICATES(A:A)");
  host.calculateAgain();
}

/** Requests that do more than let go of ranges. */
const waitedFor = (host: ExcelHost): number =>
  host.requests.filter(({ Actions }) => Actions.some(({ ActionType, Name }) => ActionType !== 1 && Name !== "_RemoveReference")).length;

/** The counts, as a table in Markdown. */
export const requestTable = (counts: readonly Counted[]): string =>
  [
    "| operation | requests before | requests now | longest answer, kB |",
    "| --- | --: | --: | --: |",
    ...counts.map(
      ({ operation, requests, longestAnswer }, index) =>
        `| ${operation} | ${COUNTED[index]?.before ?? ""} | ${requests} | ${Math.ceil(longestAnswer / BYTES_A_KILOBYTE)} |`,
    ),
  ].join("\n");

const BYTES_A_KILOBYTE = 1000;
