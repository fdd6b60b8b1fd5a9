import type { CellArea } from "../cellArea";

// A request and its answer may hold 5 MB on the web ("Resource limits and performance optimization"); a cell read in full
// takes some 60 bytes and a question about one cell some 700, so both stay well below.
export const CELLS_A_REQUEST = 20_000;
export const QUESTIONS_A_REQUEST = 2_000;

/**
 * Queues the calls for every item and sends them in as few requests as the host's size limit allows: one for all but
 * very large sheets. The only place where requests follow each other in a loop.
 * @param weigh how much of a request an item takes
 * @param queue makes the calls for one item; what it returns may be read once this has resolved
 */
export async function inRequests<Item, Queued>(
  context: Excel.RequestContext,
  items: readonly Item[],
  { limit, weigh }: { readonly limit: number; readonly weigh: (item: Item) => number },
  queue: (item: Item) => Queued,
): Promise<Queued[]> {
  const queued: Queued[] = [];
  for (const batch of batches(items, limit, weigh)) {
    queued.push(...batch.map(queue));
    await context.sync();
  }
  return queued;
}

/** Items in order, as many to a batch as the limit allows; an item above the limit goes alone. */
function batches<Item>(items: readonly Item[], limit: number, weigh: (item: Item) => number): Item[][] {
  const all: Item[][] = [];
  let room = 0;
  for (const item of items) {
    const last = all.at(-1);
    if (last !== undefined && weigh(item) <= room) last.push(item);
    else all.push([item]);
    room = (last !== undefined && weigh(item) <= room ? room : limit) - weigh(item);
  }
  return all;
}

/** The area cut into bands of whole rows of at most so many cells, top to bottom; a single row is never cut. */
export function rowBands(area: CellArea, mostCells: number): CellArea[] {
  const height = Math.max(1, Math.floor(mostCells / area.columns));
  return Array.from({ length: Math.ceil(area.rows / height) }, (_, index) => ({
    ...area,
    row: area.row + index * height,
    rows: Math.min(height, area.rows - index * height),
  }));
}
