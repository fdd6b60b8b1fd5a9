import { RedoCommandId, UndoCommandId } from "@univerjs/core";
import { MOVE_CELLS, sheetsMoved, type Moved } from "../../../workbook/grid/engine/calculateMovedCells";
import type { GridEngine } from "../../../workbook/grid/GridEngine";

/** How far a sheet is from how it stands in the file. */
interface Away {
  /** Moves made since, and not taken back. */
  made: number;
  /** Moves from before that were taken back. */
  takenBack: number;
}

/** The sheets, by their ids in the grid, on which cells stand in other places than in the file: what else the file has on them would stay behind. */
export class MovedSheets {
  private readonly away = new Map<string, Away>();
  private readonly forGood = new Set<string>();
  private readonly listening: { dispose(): void };

  constructor(engine: GridEngine) {
    this.listening = engine.api.addEvent(engine.api.Event.CommandExecuted, ({ id, params }) => {
      if (!MOVE_CELLS.includes(id)) return;
      // The engine notes with each change which command made it.
      const { trigger } = params as { readonly trigger?: string };
      for (const sheet of sheetsMoved(params as Moved)) this.note(sheet, trigger);
    });
  }

  /** Those on which cells are moved now. */
  get ids(): readonly string[] {
    const away = [...this.away].filter(([, { made, takenBack }]) => made + takenBack > 0).map(([id]) => id);
    return [...new Set([...this.forGood, ...away])];
  }

  has(id: string): boolean {
    return this.ids.includes(id);
  }

  /** Takes over that cells of a sheet were moved, which nobody can take back any longer. */
  add(id: string): void {
    this.forGood.add(id);
  }

  stop(): void {
    this.listening.dispose();
  }

  private note(sheet: string, trigger: string | undefined): void {
    const away = this.away.get(sheet) ?? { made: 0, takenBack: 0 };
    this.away.set(sheet, away);
    if (trigger === UndoCommandId) {
      if (away.made > 0) away.made -= 1;
      else away.takenBack += 1;
    } else if (trigger === RedoCommandId && away.takenBack > 0) away.takenBack -= 1;
    else {
      // What was taken back before something else was moved cannot be done again.
      if (trigger !== RedoCommandId && away.takenBack > 0) this.forGood.add(sheet);
      away.made += 1;
    }
  }
}
