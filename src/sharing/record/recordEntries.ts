import { tokenize, tokenTypes } from "@borgar/fx";
import { catalogue } from "../../functions/catalogue";
import { recordWords } from "../../problems/sharing/recordWords";
import { cellArea, cellsOfArea } from "../../workbook/cellArea";
import type { CellContent } from "../../workbook/Workbook";
import type { FormulaCell } from "../formulaCells";
import type { PlainCell } from "../plain/plainSheets";
import { alikeCells, type AlikeCells } from "./alikeCells";

/** What is recorded of one step of the work on a run sheet; elsewhere of one family of functions, or of built-in functions alone. */
export interface RecordEntries {
  readonly heading: string;
  readonly entries: readonly AlikeCells[];
}

export interface Recorded {
  readonly groups: readonly RecordEntries[];
  /** Of a run sheet, its sentences, checks and workings of the curves, by the step they stand in: no listed number rests on them. */
  readonly sayings: readonly RecordEntries[];
}

/** The value of the cell, or of the first cell of a spill; null is blank. */
export const firstValue = ({ area }: FormulaCell): CellContent => area.values[0]?.[0] ?? null;

/** The family of a function of ours; that of built-in ones for none. */
export function familyOf(name: string | undefined): string {
  if (name === undefined) return recordWords.builtInGroup;
  return families.get(name) ?? recordWords.unknownGroup;
}

const families: ReadonlyMap<string, string> = new Map(catalogue.flatMap(({ heading, functions }) => functions.map(({ name }) => [name, heading])));

export const FAMILIES: readonly string[] = [...catalogue.map(({ heading }) => heading), recordWords.unknownGroup, recordWords.builtInGroup];

/** Formulas without calls of ours that are blank until an input exists explain no value on the sheet. */
export const isRecorded = (cell: FormulaCell): boolean => cell.calls.length > 0 || firstValue(cell) !== null;

/** @param plainCells what became of the cells on a copy of plain cells */
export function recordEntries(formulaCells: readonly FormulaCell[], plainCells: readonly PlainCell[] = []): Recorded {
  const plain = new Map(plainCells.map((one) => [one.cell, one]));
  const recorded = formulaCells.filter(isRecorded);
  const isSaying = sayingsAmong(recorded);
  const headingOf = (cell: FormulaCell): string => cell.step ?? familyOf(cell.calls[0]?.name);
  const becameOf = ({ cell }: FormulaCell): string => `${plain.get(cell)?.kind ?? ""} ${plain.get(cell)?.why ?? ""}`;
  const grouped = (cells: readonly FormulaCell[]): RecordEntries[] => {
    const headings = cells.some(({ step }) => step !== undefined) ? [...new Set(cells.map(headingOf))] : FAMILIES;
    const entries = new Map<string, AlikeCells[]>(headings.map((heading) => [heading, []]));
    for (const alike of alikeCells(cells, (cell) => `${headingOf(cell)} ${becameOf(cell)}`)) entries.get(headingOf(alike.first))?.push(alike);
    return [...entries].map(([heading, those]) => ({ heading, entries: those })).filter((group) => group.entries.length > 0);
  };
  return { groups: grouped(recorded.filter((cell) => !isSaying(cell))), sayings: grouped(recorded.filter(isSaying)) };
}

/**
 * Tells the cells of a run sheet that say something about its numbers: sentences, verdicts, and workings that neither a printed number nor a call of
 * ours is calculated from. Their formulas are the longest of the sheet. On any other sheet every cell counts.
 */
function sayingsAmong(cells: readonly FormulaCell[]): (cell: FormulaCell) => boolean {
  const isWords = (cell: FormulaCell): boolean => cell.calls.length === 0 && typeof firstValue(cell) === "string" && cell.errors.length === 0;
  const numbers = new Map(cells.filter((cell) => !isWords(cell)).map((cell) => [cell.cell, cell]));
  const reached = new Set<FormulaCell>();
  const ahead = [...numbers.values()].filter(({ calls, isWorking }) => calls.length > 0 || isWorking !== true);
  for (let cell = ahead.pop(); cell !== undefined; cell = ahead.pop()) {
    if (reached.has(cell) || cell.step === undefined) continue;
    reached.add(cell);
    for (const other of cellsIn(cell.formula)) {
      const next = numbers.get(other);
      if (next !== undefined) ahead.push(next);
    }
  }
  return (cell) => cell.step !== undefined && !reached.has(cell);
}

// A run sheet has some hundred rows.
const MOST_CELLS = 10_000;

const cellsIn = (formula: string): string[] =>
  tokenize(formula).flatMap(({ type, value }) => {
    const area = type === tokenTypes.REF_RANGE ? cellArea(value) : undefined;
    return area === undefined || area.rows * area.columns > MOST_CELLS ? [] : cellsOfArea(area).flat();
  });
