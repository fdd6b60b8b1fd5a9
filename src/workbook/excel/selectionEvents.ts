import type { CellAddress } from "../Workbook";
import { inExcel } from "./inExcel";
import { withoutSheet } from "./readCells";

/** The selected cell and everything by which a change of its content shows. */
interface Look {
  readonly address: CellAddress;
  readonly content: string;
}

/**
 * Calls the listener when another cell is selected or the selected cell's content changes, by hand or by recalculation.
 * @returns stops the calls
 */
export async function watchSelection(listener: (address: CellAddress) => void): Promise<() => Promise<void>> {
  let last = await inExcel(lookAtSelected);
  const lookAgain = oneAtATime(async () => {
    const now = await inExcel(lookAtSelected);
    const changed = now.address.sheet !== last.address.sheet || now.address.cell !== last.address.cell || now.content !== last.content;
    last = now;
    if (changed) listener(now.address);
  });
  const watched = await inExcel(async (context) => {
    const { worksheets } = context.workbook;
    const handlers = [
      worksheets.onSelectionChanged.add(lookAgain),
      worksheets.onActivated.add(lookAgain),
      worksheets.onChanged.add(lookAgain),
      worksheets.onCalculated.add(lookAgain),
    ];
    await context.sync();
    return { context, handlers };
  });
  return async () => {
    await Excel.run(watched.context, async (context) => {
      watched.handlers.forEach((handler) => handler.remove());
      await context.sync();
    });
  };
}

async function lookAtSelected(context: Excel.RequestContext): Promise<Look> {
  const cell = context.workbook.getActiveCell().load(["address", "formulas", "text", "worksheet/name"]);
  await context.sync();
  return {
    address: { sheet: cell.worksheet.name, cell: withoutSheet(cell.address) },
    content: JSON.stringify([cell.formulas, cell.text]),
  };
}

/**
 * Many events may come at once (a recalculation raises one a sheet), and each look costs a request: while one is under
 * way the next wait as one. A look that fails is let go; the next event looks again.
 */
function oneAtATime(look: () => Promise<void>): () => Promise<void> {
  let wanted = false;
  let running: Promise<void> | undefined;
  const run = async (): Promise<void> => {
    while (wanted) {
      wanted = false;
      await look().catch(() => undefined);
    }
    running = undefined;
  };
  return () => {
    wanted = true;
    running ??= run();
    return running;
  };
}
