import type { NameReading } from "../../../src/sharing/plain/reading/PlainReading";
import { plainSheets, type PlainSheets } from "../../../src/sharing/plain/plainSheets";
import type { PlainOptions, TablePlace } from "../../../src/sharing/plain/reading/Surroundings";
import { areaNamed } from "../../../src/workbook/areaNamed";
import { cellAt } from "../../../src/workbook/cellArea";
import { replaceNames } from "../../../src/workbook/grid/writing/definedNames";
import type { CellContent, CellReading } from "../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

/** What is typed into the cells of each sheet; the first sheet is called Sheet1. */
export type Typed = Readonly<Record<string, Readonly<Record<string, CellContent>>>>;

export interface LiveAndPlain {
  readonly live: HeadlessWorkbook;
  readonly plain: HeadlessWorkbook;
  readonly shared: PlainSheets;
  /** Types into both. */
  type(sheet: string, cell: string, content: CellContent): Promise<void>;
  /** What both show in every cell that holds a formula or is filled by one. */
  shown(): Promise<readonly ShownTwice[]>;
  close(): void;
}

export interface ShownTwice {
  readonly sheet: string;
  readonly cell: string;
  readonly live: CellContent;
  readonly plain: CellContent;
}

export const DATE = "2027-01-15";
export const FIXED = `fixed on ${DATE}: inputs changed`;

interface Further {
  readonly names?: readonly NameReading[];
  readonly tables?: readonly TablePlace[];
  readonly options?: PlainOptions;
}

/** A workbook as typed, and beside it the one that a colleague without the add-in gets. */
export async function liveAndPlain(typed: Typed, { names = [], tables = [], options = {} }: Further = {}): Promise<LiveAndPlain> {
  const live = await openHeadlessWorkbook();
  const sheets = Object.keys(typed);
  await typeAll(live, typed, names);
  const read = await Promise.all(sheets.map((sheet) => live.workbook.readUsed(sheet)));
  const shared = plainSheets({ sheets: read, names, tables }, { ...options, date: DATE });
  const plain = await openHeadlessWorkbook();
  await typeAll(
    plain,
    typedAfter(typed, shared),
    names.map((one) => shared.names.find(({ name }) => name === one.name) ?? one),
  );
  const filled = new Map(
    read.map(({ sheet, rows }) => [
      sheet,
      rows
        .flat()
        .filter(({ formula }) => formula !== "")
        .flatMap(cellsOf),
    ]),
  );
  const shown = async (): Promise<ShownTwice[]> => {
    const all = await Promise.all(
      sheets.map(async (sheet) => [sheet, valuesOf(await live.workbook.readUsed(sheet)), valuesOf(await plain.workbook.readUsed(sheet))] as const),
    );
    return all.flatMap(([sheet, ours, theirs]) =>
      (filled.get(sheet) ?? []).map((cell) => ({ sheet, cell, live: ours.get(cell) ?? null, plain: theirs.get(cell) ?? null })),
    );
  };
  return {
    ...{ live, plain, shared, shown },
    type: async (sheet, cell, content) => {
      await live.type(sheet, cell, content);
      await plain.type(sheet, cell, content);
    },
    close: () => [live, plain].forEach((one) => one.close()),
  };
}

/** Both show the same, to the last figures that two engines share, or the plain cell says that it is fixed. */
export const isHonest = ({ live, plain }: ShownTwice): boolean => plain === FIXED || isSame(live, plain);

export function isSame(live: CellContent, plain: CellContent): boolean {
  if (typeof live === "number" && typeof plain === "number") return Math.abs(live - plain) <= 1e-11 * Math.max(1, Math.abs(live));
  if (typeof live === "string" && live.startsWith("#")) return typeof plain === "string" && plain.startsWith("#");
  return (live ?? "") === (plain ?? "");
}

async function typeAll(open: HeadlessWorkbook, typed: Typed, names: readonly NameReading[]): Promise<void> {
  for (const sheet of Object.keys(typed)) if (sheet !== FIRST_SHEET) open.engine.book.create(sheet, 2000, 80);
  replaceNames(
    open.engine,
    names.map(({ name, formula, sheet }) => ({ name, refersTo: formula.replace(/^=/, ""), sheet })),
  );
  for (const [sheet, cells] of Object.entries(typed)) for (const [cell, content] of Object.entries(cells)) await open.type(sheet, cell, content);
  await open.settled();
}

/** The same sheets with what sharing puts in place of formulas, and the sheets that it adds. */
function typedAfter(typed: Typed, { cells, workings, flags }: PlainSheets): Typed {
  const after: Record<string, Record<string, CellContent>> = Object.fromEntries(
    Object.entries(typed).map(([sheet, content]) => [sheet, { ...content }]),
  );
  for (const { sheet, cell, area, formulas } of cells) {
    const { row, column } = areaNamed(area);
    const into = (after[sheet] ??= {});
    if ("one" in formulas) into[cell] = formulas.one;
    else formulas.each.forEach((line, down) => line.forEach((formula, across) => (into[cellAt(row + down, column + across)] = formula)));
  }
  for (const { name, cells: added } of [...(workings === undefined ? [] : [workings]), ...flags])
    after[name] = Object.fromEntries(added.map(({ cell, content }) => [cell, content]));
  return after;
}

const cellsOf = ({ cell, spill }: CellReading): string[] => {
  const { row, column, rows, columns } = areaNamed(spill === "" ? cell : spill);
  return Array.from({ length: rows * columns }, (_, index) => cellAt(row + Math.floor(index / columns), column + (index % columns)));
};

const valuesOf = ({ rows }: { readonly rows: readonly (readonly CellReading[])[] }): Map<string, CellContent> =>
  new Map(rows.flat().map(({ cell, value, error }) => [cell, error === "" ? value : error]));
