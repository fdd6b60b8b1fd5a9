import { cellAt } from "../workbook/cellArea";
import type { RunSheetOptions } from "./RunSheetOptions";

type Always = "number" | "clock" | "elapsed" | "loaded" | "sample" | "change" | "steady" | "notes" | "chartElapsed" | "chartSample";
type Sometimes = "zeroBefore" | "zeroAfter" | "room" | "warmth" | "cold" | "corrected" | "warmer";
export type TableColumn = Always | Sometimes;

// A to I: as many as six samples with their mean and deviation take.
const LEAST_PRINTED = 9;

/** The weigh-in table of a sheet: its columns from left to right, and their letters. */
export interface TableColumns {
  readonly printed: readonly TableColumn[];
  /** Right of everything printed: numbers that other cells rest on. */
  readonly working: readonly TableColumn[];
  /** Columns that everything printed takes, from A on. */
  readonly width: number;
  readonly letters: Readonly<Record<Always, string>> & Readonly<Partial<Record<Sometimes, string>>>;
}

/** In the order of the work: zero, weighing, zero, temperatures, then what follows from them. */
export function tableColumns({ panZeros = false, temperatures = false }: RunSheetOptions): TableColumns {
  const only = (isWanted: boolean, ...columns: TableColumn[]): TableColumn[] => (isWanted ? columns : []);
  const printed: TableColumn[] = [
    "number",
    "clock",
    "elapsed",
    ...only(panZeros, "zeroBefore"),
    "loaded",
    ...only(panZeros, "zeroAfter"),
    ...only(temperatures, "room", "warmth"),
    "sample",
    "change",
    "steady",
    ...only(temperatures, "cold"),
    "notes",
  ];
  const working: TableColumn[] = ["chartElapsed", "chartSample", ...only(panZeros, "corrected"), ...only(temperatures, "warmer")];
  const width = Math.max(LEAST_PRINTED, printed.length);
  const placed = [...printed.entries(), ...[...working.entries()].map(([index, column]) => [width + index, column] as const)];
  const letters = Object.fromEntries(placed.map(([index, column]) => [column, cellAt(0, index).slice(0, -1)])) as TableColumns["letters"];
  return { printed, working, width, letters };
}
