import { LocalUndoRedoService, type IUndoRedoItem } from "@univerjs/core";

interface Gathered {
  readonly done: IUndoRedoItem[];
  history?: LocalUndoRedoService;
}

/** What is being done as one step, by workbook. */
const underWay = new Map<string, Gathered>();

let isReady = false;

/** Lets asOneStep gather; before the engine first asks for its history, whose methods it keeps from then on. */
export function gatherSteps(): void {
  if (isReady) return;
  isReady = true;
  const history = LocalUndoRedoService.prototype;
  const push = history.pushUndoRedo;
  history.pushUndoRedo = function pushOrGather(this: LocalUndoRedoService, item) {
    const gathered = underWay.get(item.unitID);
    if (gathered === undefined) return push.call(this, item);
    gathered.history = this;
    gathered.done.push(item);
  };
}

/**
 * Does work of many commands, none of which waits, so that it is taken back and done again as one. Engine 0.25.1 keeps the last twenty steps, fewer
 * than growing a sheet takes, and what it offers for several commands takes the first of them back first.
 */
export function asOneStep(unitID: string, work: () => void): void {
  const gathered: Gathered = { done: [] };
  underWay.set(unitID, gathered);
  try {
    work();
  } finally {
    underWay.delete(unitID);
    gathered.history?.pushUndoRedo({
      unitID,
      undoMutations: [...gathered.done].reverse().flatMap(({ undoMutations }) => undoMutations),
      redoMutations: gathered.done.flatMap(({ redoMutations }) => redoMutations),
    });
  }
}
