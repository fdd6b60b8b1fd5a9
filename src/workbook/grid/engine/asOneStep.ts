import { IUndoRedoService, LocalUndoRedoService, type IUndoRedoItem } from "@univerjs/core";
import type { GridEngine } from "../GridEngine";

/** The pieces of work that are being done, by workbook. */
const underWay = new Map<string, OneStep>();

/** True while a piece of work of several commands is being done. */
export const isUnderWay = ({ book }: GridEngine): boolean => underWay.has(book.getId());

let isReady = false;

/** Lets steps be gathered; before the engine first asks for its history, whose methods it keeps from then on. */
export function gatherSteps(): void {
  if (isReady) return;
  isReady = true;
  const history = LocalUndoRedoService.prototype;
  const push = history.pushUndoRedo;
  history.pushUndoRedo = function pushOrGather(this: LocalUndoRedoService, item) {
    const step = underWay.get(item.unitID);
    if (step === undefined) push.call(this, item);
    else step.gather(this, item);
  };
}

/**
 * Work of many commands that is taken back and done again as one. Engine 0.25.1 keeps the last twenty steps, fewer than growing a sheet takes, and
 * what it offers for several commands takes the first of them back first.
 */
export class OneStep {
  private readonly done: IUndoRedoItem[] = [];
  private history: LocalUndoRedoService | undefined;

  constructor(private readonly unitID: string) {}

  /** Does a piece of the work that does not wait; what others do between the pieces stays a step of their own. */
  piece<T>(work: () => T): T {
    const around = underWay.get(this.unitID);
    underWay.set(this.unitID, this);
    try {
      return work();
    } finally {
      if (around === undefined) underWay.delete(this.unitID);
      else underWay.set(this.unitID, around);
    }
  }

  /** Offers the work to be taken back. Work that is never offered cannot be. */
  offer(): void {
    if (this.done.length === 0) return;
    // The engine copies a large sheet in a way that it cannot do again; what follows makes no sense without the copy.
    const isForBoth = this.done.every(({ redoMutations }) => redoMutations.length > 0);
    this.history?.pushUndoRedo({
      unitID: this.unitID,
      undoMutations: [...this.done].reverse().flatMap(({ undoMutations }) => undoMutations),
      redoMutations: isForBoth ? this.done.flatMap(({ redoMutations }) => redoMutations) : [],
    });
  }

  gather(history: LocalUndoRedoService, item: IUndoRedoItem): void {
    this.history = history;
    this.done.push(item);
  }
}

/** Does work that does not wait as one step. */
export function asOneStep(unitID: string, work: () => void): void {
  const step = new OneStep(unitID);
  try {
    step.piece(work);
  } finally {
    step.offer();
  }
}

/** Does work that does not wait and that nobody takes back. */
export const asNoStep = <T>({ book }: GridEngine, work: () => T): T => new OneStep(book.getId()).piece(work);

/** Leaves nothing to be taken back or done again, where the sheets that it was done on are gone. */
export const forgetSteps = ({ injector, book }: GridEngine): void => injector.get(IUndoRedoService).clearUndoRedo(book.getId());
