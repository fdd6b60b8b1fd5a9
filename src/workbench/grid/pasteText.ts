import { areaOfRange } from "../../workbook/grid/areaOfRange";
import { IEditorBridgeService } from "@univerjs/preset-sheets-core";
import { SheetDataValidationModel } from "@univerjs/sheets-data-validation";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { blockOfText } from "./blockOfText";
import { enterBlock, type Selected } from "./enterBlock";

// The engine's mark on what was copied from a grid, which it pastes with formulas and looks.
const OWN_COPY = "data-copy-id";

/**
 * Enters copied text as if it were typed. The engine (0.25.1) takes blanks from both ends of a text, and with them the empty first cell of a block, and
 * puts the looks of the page that the text came from over those of the cells. Cells with looks of their own, from another program, are left to it
 * unless they go into boxes with an entry rule.
 */
export function pasteText(engine: GridEngine, container: HTMLElement): void {
  const onPaste = (event: ClipboardEvent): void => {
    const { clipboardData: data, target } = event;
    if (!container.contains(target as Node | null) || engine.injector.get(IEditorBridgeService).isVisible().visible) return;
    const [text, html] = [data?.getData("text/plain") ?? "", data?.getData("text/html") ?? ""];
    const at = selected(engine);
    if (text === "" || html.includes(OWN_COPY) || at === undefined) return;
    const block = blockOfText(text);
    if (html !== "" && !reachesBoxes(engine, at, block)) return;
    if (!enterBlock(engine, block, at)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  window.addEventListener("paste", onPaste, { capture: true });
}

function selected({ book }: GridEngine): Selected | undefined {
  const sheet = book.getActiveSheet();
  const range = sheet.getSelection()?.getActiveRange()?.getRange();
  if (!range) return undefined;
  return { sheetId: sheet.getSheetId(), ...areaOfRange(range) };
}

function reachesBoxes({ book, injector }: GridEngine, { sheetId, row, column }: Selected, block: readonly (readonly string[])[]): boolean {
  const rules = injector.get(SheetDataValidationModel);
  return block.some((cells, down) => cells.some((_, right) => Boolean(rules.getRuleByLocation(book.getId(), sheetId, row + down, column + right))));
}
