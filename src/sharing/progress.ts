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
  await new Promise((resolve) => setTimeout(resolve, 0));
  goOn(progress);
}
