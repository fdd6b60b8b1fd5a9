import { sharingStopped } from "../problems/sharing/sharedCopyWords";
import { WorkbookProblem } from "../workbook/Workbook";

export interface Progress {
  /** Told of each step. */
  readonly told?: (step: string) => void;
  /** Asked between steps; true leaves everything as it was. */
  readonly isStopped?: () => boolean;
}

/** @throws WorkbookProblem where the user has stopped */
export function goOn({ isStopped = () => false }: Progress): void {
  if (isStopped()) throw new WorkbookProblem(sharingStopped);
}

/** Says what comes next, and lets the page show it and hear of a press before it does. @throws WorkbookProblem where the user has stopped */
export async function stepTo(progress: Progress, step: string): Promise<void> {
  progress.told?.(step);
  await goOnLater(progress);
}

/** Goes on once the page has had its turn: a press waits while we work. @throws WorkbookProblem where the user has stopped */
export async function goOnLater(progress: Progress): Promise<void> {
  await pageTurn();
  goOn(progress);
}

// A page out of view draws nothing.
const LONGEST_WAIT = 100;

/** Lets a page draw and hear what was pressed: a timer alone may come before both. Where nothing is drawn, a timer is enough. */
function pageTurn(): Promise<void> {
  return new Promise((resolve) => {
    const { requestAnimationFrame: drawn } = globalThis as { readonly requestAnimationFrame?: (then: () => void) => number };
    const later = (): void => void setTimeout(resolve, 0);
    if (drawn === undefined) return later();
    const waiting = setTimeout(later, LONGEST_WAIT);
    drawn(() => {
      clearTimeout(waiting);
      later();
    });
  });
}
