import type { CellLook, CellReading, RangeReading, Workbook } from "../workbook/Workbook";
import type { KeptFormulas } from "./xlsx/kept/KeptFormulas";

/** Which cells hold values from before, as far as the file is concerned that is open; none where no file is. */
export interface Doubts {
  kept: KeptFormulas | undefined;
  /** Cells that have lost formulas which the grid cannot calculate, as the file named them in which they stood. */
  lacking: readonly string[];
}

/** Cells whose formulas are in no sheet here: what is made of the sheets alone does not have them. */
export const lackingIn = ({ kept, lacking }: Doubts): readonly string[] => [...new Set([...lacking, ...(kept?.cellsOfFile() ?? [])])];

type Reached = ReadonlyMap<string, ReadonlySet<string>>;

/**
 * The workbook, saying of each cell that it reads whether its value is from before: the grid keeps values that it cannot calculate, and calculates
 * from them.
 */
export function withDoubts(workbook: Workbook, doubts: Doubts): Workbook {
  const reached = async (): Promise<Reached> => doubts.kept?.reached() ?? new Map<string, ReadonlySet<string>>();
  const marked = (cells: ReadonlySet<string> | undefined, reading: CellReading): CellReading =>
    cells?.has(reading.cell) === true ? { ...reading, isFromBefore: true } : reading;
  const range = (from: Reached, reading: RangeReading): RangeReading => {
    const cells = from.get(reading.sheet);
    return cells === undefined ? reading : { ...reading, rows: reading.rows.map((row) => row.map((one) => marked(cells, one))) };
  };
  const look = (from: Reached, { address, reading, anchor, ...others }: CellLook): CellLook => {
    const cells = from.get(address.sheet);
    return { ...others, address, reading: marked(cells, reading), ...(anchor === undefined ? {} : { anchor: marked(cells, anchor) }) };
  };
  const changed: Partial<Workbook> = {
    look: async (address) => look(await reached(), await workbook.look(address)),
    readInputs: async (address, wanted) => {
      const { again, ...others } = await workbook.readInputs(address, wanted);
      return { ...others, again: look(await reached(), again) };
    },
    read: async (sheet, area) => range(await reached(), await workbook.read(sheet, area)),
    readUsed: async (sheet) => range(await reached(), await workbook.readUsed(sheet)),
    readSettled: async (sheet, asShown) => {
      const { reading, ...others } = await workbook.readSettled(sheet, asShown);
      return reading === undefined ? others : { ...others, reading: range(await reached(), reading) };
    },
  };
  return new Proxy(workbook, {
    get: (target, key) => {
      const own: unknown = Reflect.get(changed, key) ?? Reflect.get(target, key, target);
      return typeof own === "function" ? (own.bind(target) as unknown) : own;
    },
  });
}
