import type { CellArea } from "../../cellArea";
import { bytesOf } from "../bytesOf";
import { CELLS_A_REQUEST, inRequests } from "../inRequests";

// A request may hold 5 MB on the web ("Resource limits and performance optimization"), and what a request adds of its own is not counted here.
const BYTES_A_REQUEST = 3_000_000;
// What one write takes beside its contents, and one setting of a look, as measured on the client library.
const BYTES_A_WRITE = 700;
const BYTES_A_SETTING = 400;

/** A write that is made when its turn comes, and how much of a request it takes. */
export interface WrittenLater {
  readonly bytes: number;
  /** Cells that contents are written into. */
  readonly cells: number;
  write(): void;
}

/** Contents of an area that fit one request. */
export interface Piece<Entry> {
  readonly area: CellArea;
  readonly entries: Entry[][];
  readonly bytes: number;
}

/** Makes the writes in order, in as few requests as their bytes allow. */
export const writeWeighed = (context: Excel.RequestContext, writes: readonly WrittenLater[]): Promise<unknown> =>
  inRequests(context, writes, { limit: 1, weigh: share }, ({ write }) => write());

/** The same, the last request left to whoever sends the next one. */
export async function writeAllButLast(context: Excel.RequestContext, writes: readonly WrittenLater[]): Promise<void> {
  let taken = 0;
  for (const one of writes) {
    if (taken > 0 && taken + share(one) > 1) {
      await context.sync();
      taken = 0;
    }
    one.write();
    taken += share(one);
  }
}

const share = ({ bytes, cells }: WrittenLater): number => Math.max(cells / CELLS_A_REQUEST, bytes / BYTES_A_REQUEST);

/** A look, a rule or a height. @param settings how many things it sets */
export const setLater = (settings: number, write: () => void): WrittenLater => ({
  bytes: BYTES_A_WRITE + settings * BYTES_A_SETTING,
  cells: 0,
  write,
});

/** Contents for an area in writes that each fit a request. */
export const contentsLater = <Entry>(area: CellArea, entries: readonly (readonly Entry[])[], write: (piece: Piece<Entry>) => void): WrittenLater[] =>
  piecesOf(area, entries).map((piece) => ({
    bytes: BYTES_A_WRITE + piece.bytes,
    cells: piece.area.rows * piece.area.columns,
    write: () => write(piece),
  }));

/** Contents cut where they would outgrow a request: between rows, and within a row only where one outgrows it by itself. */
export function piecesOf<Entry>(area: CellArea, entries: readonly (readonly Entry[])[]): Piece<Entry>[] {
  const rows = entries.flatMap((row, down) => pieceOfRow(row, BYTES_A_REQUEST).map((piece) => ({ ...piece, row: area.row + down })));
  const pieces: Piece<Entry>[] = [];
  for (const { row, from, entries: own, bytes } of rows) {
    const last = pieces.at(-1);
    const isWhole = own.length === area.columns;
    const goesOn = last !== undefined && isWhole && last.area.columns === area.columns;
    if (goesOn && last.bytes + bytes <= BYTES_A_REQUEST && (last.area.rows + 1) * area.columns <= CELLS_A_REQUEST) {
      last.entries.push([...own]);
      pieces[pieces.length - 1] = { area: { ...last.area, rows: last.area.rows + 1 }, entries: last.entries, bytes: last.bytes + bytes };
    } else pieces.push({ area: { row, column: area.column + from, rows: 1, columns: own.length }, entries: [[...own]], bytes });
  }
  return pieces;
}

interface RowPiece<Entry> {
  readonly from: number;
  readonly entries: readonly Entry[];
  readonly bytes: number;
}

function pieceOfRow<Entry>(row: readonly Entry[], limit: number): RowPiece<Entry>[] {
  const bytes = bytesOf(row);
  if (bytes <= limit || row.length === 1) return [{ from: 0, entries: row, bytes }];
  const half = Math.ceil(row.length / 2);
  const right = pieceOfRow(row.slice(half), limit).map((piece) => ({ ...piece, from: piece.from + half }));
  return [...pieceOfRow(row.slice(0, half), limit), ...right];
}
