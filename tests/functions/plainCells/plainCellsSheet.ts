import type { CellFunction } from "../../../src/functions/cellFunction";
import type { CellContent } from "../../../src/workbook/Workbook";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";

/** A function's name and the texts of its arguments, "" for one left out. */
export type Call = readonly [name: string, texts: readonly string[]];

type Shown = CellContent | null;

/** A sheet that holds each call twice: as it is, and rewritten with built-in functions. */
export interface PlainCellsSheet {
  readonly open: HeadlessWorkbook;
  /** What one call gives in two rows, null for an empty cell; numbers in so many figures. */
  ours(call: number, figures: number): Promise<Shown[]>;
  /** The same of the call rewritten. */
  plain(call: number, figures: number): Promise<Shown[]>;
}

const FIRST_ROW = 10;
// A call over two rows spills into two; one row stays free below it.
const ROWS_FOR_A_CALL = 3;
const rowOf = (call: number): number => FIRST_ROW + ROWS_FOR_A_CALL * call;

/** The cell formula that a call is rewritten to. */
export function inPlainCells(functions: readonly CellFunction[], [name, texts]: Call): string {
  const definition = functions.find((candidate) => candidate.name === name) as CellFunction;
  const named = Object.fromEntries(Object.keys(definition.inputs).map((input, index) => [input, texts[index] ?? ""]));
  return `=${definition.inCells?.(named)}`;
}

/** @param given what the cells hold that the calls refer to, above row 10 */
export async function plainCellsSheet(
  functions: readonly CellFunction[],
  given: Readonly<Record<string, CellContent>>,
  calls: readonly Call[],
): Promise<PlainCellsSheet> {
  const open = await openHeadlessWorkbook();
  for (const [cell, content] of Object.entries(given)) await open.type(FIRST_SHEET, cell, content);
  for (const [index, call] of calls.entries()) {
    await open.type(FIRST_SHEET, `H${rowOf(index)}`, `=RETORT.${call[0]}(${call[1].join(", ")})`);
    await open.type(FIRST_SHEET, `J${rowOf(index)}`, inPlainCells(functions, call));
  }
  await open.settled();
  const shownAt = async (column: string, call: number, figures: number): Promise<Shown[]> => {
    const { rows } = await open.workbook.read(FIRST_SHEET, `${column}${rowOf(call)}:${column}${rowOf(call) + 1}`);
    return rows.map(([cell]) => (typeof cell?.value === "number" ? Number(cell.value.toPrecision(figures)) : (cell?.value ?? null)));
  };
  return { open, ours: (call, figures) => shownAt("H", call, figures), plain: (call, figures) => shownAt("J", call, figures) };
}
