import type { IRange } from "@univerjs/core";
import { ISheetClipboardService, PREDEFINED_HOOK_NAME_PASTE } from "@univerjs/preset-sheets-core";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { whyNotInPart } from "./filledPart";
import { onSheets } from "./keepSpillsWhole";

/** Rows and columns that are pasted, which may have hidden ones between. */
interface Lines {
  readonly rows: readonly number[];
  readonly cols: readonly number[];
}

interface Source {
  readonly copyType?: string;
  readonly subUnitId: string;
  readonly range: Lines;
}

/** The one step of the engine's clipboard that is listened to; private there. */
interface Clipboard {
  _pasteUSM(data: unknown, target: unknown, pasteType: string, source?: Source): unknown;
}

const LOOKS: readonly string[] = [PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_FORMAT, PREDEFINED_HOOK_NAME_PASTE.SPECIAL_PASTE_COL_WIDTH];

/**
 * Refuses what is pasted into a part of what a formula fills, or cut out of it, as what is typed there is refused. Looks go in.
 * @param say tells the person why
 */
export function keepSpillsFromPaste(engine: GridEngine, say: (sentence: string) => void): void {
  const service = engine.injector.get(ISheetClipboardService);
  const clipboard = service as unknown as Clipboard;
  if (typeof clipboard._pasteUSM !== "function") throw new Error("the engine's clipboard does not say what it pastes");
  const pasting: { as: string; from: Source | undefined } = { as: "", from: undefined };
  const paste = clipboard._pasteUSM.bind(clipboard);
  clipboard._pasteUSM = (data, target, as, from) => {
    Object.assign(pasting, { as, from });
    try {
      return paste(data, target, as, from);
    } finally {
      Object.assign(pasting, { as: "", from: undefined });
    }
  };
  service.addClipboardHook({
    id: "keep-spills",
    onBeforePaste: ({ subUnitId, range }) => {
      const { as, from } = pasting;
      if (LOOKS.includes(as)) return true;
      const written = areaOf(range);
      const isCut = from?.copyType === "CUT";
      const why = whyNotInPart(engine, isCut ? onSheets([from.subUnitId, areaOf(from.range)], [subUnitId, written]) : [{ sheetId: subUnitId, written: [written] }]); // prettier-ignore
      if (why !== undefined) say(why);
      return why === undefined;
    },
  });
}

const areaOf = ({ rows, cols }: Lines): IRange => ({
  startRow: Math.min(...rows),
  endRow: Math.max(...rows),
  startColumn: Math.min(...cols),
  endColumn: Math.max(...cols),
});
