import type { RangeReading } from "../../workbook/Workbook";
import { readRunSheet } from "../reading/readRunSheet";
import { gatherWords } from "../words/gatherWords";
import { HeldCells } from "./HeldCells";
import { readOlderRun } from "./readOlderRun";
import { readRun } from "./readRun";
import type { RunRow, RunsRead } from "./RunRow";

/**
 * One row a sample from every run sheet among these, by references to it. Results are found by their headings, so rows put in by hand
 * and sheets of earlier versions are no hindrance; a run sheet whose results are not found, or hold values alone, is left out.
 */
export function readRuns(sheets: readonly RangeReading[]): RunsRead {
  const { copy, noShares } = gatherWords.leftOut;
  const read = sheets.map((reading) => {
    const held = new HeldCells(reading);
    return { reading, held, rows: readRun(reading.sheet, held) ?? readOlderRun(reading.sheet, held) };
  });
  return read.reduce<RunsRead>(
    ({ rows, leftOut }, { reading, held, rows: found }) => {
      const leave = (why: string): RunsRead => ({ rows, leftOut: [...leftOut, { sheet: reading.sheet, why }] });
      if (found === undefined || found.length === 0) return readRunSheet(reading).is === "other" ? { rows, leftOut } : leave(noShares);
      return found.some((row) => isLive(held, row)) ? { rows: [...rows, ...found], leftOut } : leave(copy);
    },
    { rows: [], leftOut: [] },
  );
}

const isLive = (held: HeldCells, { shares }: RunRow): boolean => Object.values(shares).some((share) => held.isCalculated(share));
