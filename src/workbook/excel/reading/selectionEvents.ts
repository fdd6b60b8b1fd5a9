import { isNews } from "../../isNews";
import type { CellLook } from "../../Workbook";
import { inExcel } from "../inExcel";
import { askForLook } from "./lookAtCell";

/**
 * Calls the listener when another cell is selected or the selected cell's content changes, by hand or by recalculation, with the
 * look at the cell that told so: who explains the cell needs no other.
 * @param isWanted while it is false nothing is asked of Excel, and the next look after that is told whatever it shows
 * @returns stops the calls
 */
export async function watchSelection(listener: (look: CellLook) => void, isWanted = (): boolean => true): Promise<() => Promise<void>> {
  let told: CellLook | undefined = await inExcel(lookAtSelected);
  const lookAgain = oneAtATime(async () => {
    if (!isWanted()) {
      told = undefined;
      return;
    }
    const now = await inExcel(lookAtSelected);
    if (told !== undefined && !isNews(told, now)) return;
    told = now;
    listener(now);
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

async function lookAtSelected(context: Excel.RequestContext): Promise<CellLook> {
  const found = askForLook(context);
  await context.sync();
  return found();
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
