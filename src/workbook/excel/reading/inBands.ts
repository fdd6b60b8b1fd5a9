import type { CellArea } from "../../cellArea";
import { CELLS_A_REQUEST } from "../inRequests";

/** An answer may hold 5 MB on the web. */
export const BYTES_AN_ANSWER = 3_000_000;

interface Asking<Asked> {
  /** Bytes that a cell is known to take on the average; left out where nothing is known: then a first answer that is too long has to be asked for again. */
  readonly bytesACell?: number;
  /** Asks for a band of whole rows. */
  ask(band: CellArea, isLast: boolean): Asked;
  /** Bytes of the answer, told once it is there. */
  weigh(asked: Asked): number;
}

/**
 * Asks for an area in bands of whole rows, top to bottom, a request each. A band takes as many cells as the weight of those before it allows, and half
 * as many once Excel finds an answer too long; a single row is never cut.
 */
export async function inBands<Asked>(context: Excel.RequestContext, area: CellArea, asking: Asking<Asked>): Promise<Asked[]> {
  const { bytesACell, ask, weigh } = asking;
  const all: Asked[] = [];
  let cells = cellsOf(bytesACell ?? 1);
  for (let row = 0; row < area.rows;) {
    const rows = Math.min(area.rows - row, Math.max(1, Math.floor(cells / area.columns)));
    const asked = ask({ ...area, row: area.row + row, rows }, row + rows === area.rows);
    try {
      await context.sync();
    } catch (thrown) {
      if (!isTooLong(thrown) || rows === 1) throw thrown;
      cells = Math.floor((rows * area.columns) / 2);
      continue;
    }
    all.push(asked);
    row += rows;
    cells = cellsOf(weigh(asked) / (rows * area.columns));
  }
  return all;
}

const cellsOf = (bytesACell: number): number => Math.min(CELLS_A_REQUEST, Math.floor(BYTES_AN_ANSWER / bytesACell));

const isTooLong = (thrown: unknown): boolean => thrown instanceof OfficeExtension.Error && thrown.code === "ResponsePayloadSizeLimitExceeded";
