import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import type { GridEngine } from "../../src/workbook/grid/GridEngine";
import type { CellContent, CellReading, Workbook } from "../../src/workbook/Workbook";
import { openHeadlessWorkbook } from "../workbench/headlessWorkbook";

/** A run sheet in the headless workbook, handled as the person at the engine would: by what is printed on it. */
export interface OpenRunSheet {
  readonly workbook: Workbook;
  readonly engine: GridEngine;
  readonly name: string;
  /** Cells with a cell formula that show anything, or an error; empty on a blank sheet. */
  calculated(): Promise<CellReading[]>;
  /** Types into the box right of a label. @param sample whose block, from 1; left out, the first box with that label on the sheet */
  fillIn(label: string, content: CellContent, sample?: number): Promise<void>;
  /** Types clock and weight into a row of a sample's weigh-in table. */
  weighIn(number: number, clock: CellContent, grams: CellContent, sample?: number): Promise<void>;
  /** The cell of a row of a sample's weigh-in table, under a column heading. */
  inTable(number: number, heading: string, sample?: number): Promise<CellReading>;
  /** Types into a row of a sample's weigh-in table, under a column heading. */
  enter(number: number, heading: string, content: CellContent, sample?: number): Promise<void>;
  /** Types into a cell: "D62". */
  type(cell: string, content: CellContent): Promise<void>;
  /** The cell right of a label: "B12". @param sample whose block; left out, the first on the sheet */
  cellOf(label: string, sample?: number): Promise<string>;
  /** What stands right of a label. */
  beside(label: string, sample?: number): Promise<CellReading>;
  /** What stands right of a label and one row down, under a column heading above it: the line with the uncertainty. */
  below(label: string, heading?: string): Promise<CellReading>;
  /** The cell of a sample, or under another heading, in a row of the results or the comparison. */
  result(label: string, heading?: string): Promise<CellReading>;
  close(): void;
}

export async function openRunSheet(options: RunSheetOptions): Promise<OpenRunSheet> {
  const open = await openHeadlessWorkbook();
  const name = await open.workbook.addSheet(buildRunSheet(options));
  const printed = (await open.workbook.readUsed(name)).rows;
  const cellsWith = (text: string): Place[] =>
    printed.flatMap((cells, row) => cells.flatMap(({ value }, column) => (value === text ? [{ row, column }] : [])));
  const blockOf = (sample: number): number => cellsWith(`Sample ${sample}`).find(({ column }) => column === 0)?.row ?? 0;
  const boxIn = (label: string, from: number): Place => {
    const place = cellsWith(label).find(({ row, column }) => row >= from && column === 0);
    if (place === undefined) throw new Error(`no label ${label} on the sheet`);
    return { ...place, column: 1 };
  };
  const inTable = (number: number, heading: string, sample: number): Place => {
    const place = cellsWith(heading).find(({ row }) => row > blockOf(sample));
    if (place === undefined) throw new Error(`no column ${heading} on the sheet`);
    return { row: place.row + number, column: place.column };
  };
  const addressOf = ({ row, column }: Place): string => printed[row]?.[column]?.cell ?? "";
  const type = async (place: Place, content: CellContent): Promise<void> => open.type(name, addressOf(place), content);
  const read = async (place: Place): Promise<CellReading> => {
    const reading = (await open.workbook.read(name, addressOf(place))).rows[0]?.[0];
    if (reading === undefined) throw new Error("nothing read");
    return reading;
  };
  const resultPlace = (label: string, heading: string): Place => {
    const { row } = boxIn(label, 0);
    const headings = cellsWith(heading).filter((place) => place.row < row && place.column > 0);
    return { row, column: headings.at(-1)?.column ?? 1 };
  };
  return {
    workbook: open.workbook,
    engine: open.engine,
    name,
    calculated: async () =>
      (await open.workbook.readUsed(name)).rows
        .flat()
        .filter(({ formula, value, error }) => error !== "" || (formula !== "" && value !== "" && value !== null)),
    fillIn: async (label, content, sample) => type(boxIn(label, sample === undefined ? 0 : blockOf(sample)), content),
    weighIn: async (number, clock, grams, sample = 1) => {
      if (clock !== null) await type(inTable(number, "Clock", sample), clock);
      if (grams !== null) await type(inTable(number, "Vessel + sample (g)", sample), grams);
    },
    inTable: async (number, heading, sample = 1) => read(inTable(number, heading, sample)),
    type: async (cell, content) => open.type(name, cell, content),
    enter: async (number, heading, content, sample = 1) => type(inTable(number, heading, sample), content),
    cellOf: async (label, sample) => addressOf(boxIn(label, sample === undefined ? 0 : blockOf(sample))),
    beside: async (label, sample) => read(boxIn(label, sample === undefined ? 0 : blockOf(sample))),
    below: async (label, heading = "Sample 1") => {
      const { row, column } = resultPlace(label, heading);
      return read({ row: row + 1, column });
    },
    result: async (label, heading = "Sample 1") => read(resultPlace(label, heading)),
    close: () => open.close(),
  };
}

interface Place {
  readonly row: number;
  readonly column: number;
}
