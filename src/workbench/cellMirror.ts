import type { GridEngine } from "../workbook/grid/GridEngine";
import type { GridWorkbook } from "../workbook/grid/GridWorkbook";
import { entryPrompt } from "../workbook/grid/writing/entryRules";
import type { CellAddress } from "../workbook/Workbook";
import { restsOnCircle } from "../problems/workbook/cellNotes";
import { withCircles } from "./grid/tellCircles";
import { whatIsWrong } from "./whatIsWrong";

/**
 * Keeps the element telling of the selected cell: address, cell formula, shown value, the sentence behind an error and the
 * prompt for an entry. The grid is a picture that a screen reader cannot read, and shows neither sentences nor prompts.
 */
export async function cellMirror(workbook: GridWorkbook, engine: GridEngine, root: HTMLElement): Promise<void> {
  const turn = { latest: 0 };
  const tell = async (address: CellAddress): Promise<void> => {
    const mine = ++turn.latest;
    const cell = (await workbook.read(address.sheet, address.cell)).rows[0]?.[0];
    if (cell === undefined || mine !== turn.latest) return;
    const prompt = entryPrompt(engine, address);
    root.replaceChildren(
      ...line("address", `${address.sheet}, ${cell.cell}`),
      ...line("formula", cell.formula),
      ...line("shown", cell.shown === "" ? "blank" : cell.shown),
      ...line("spill", cell.spill === "" ? "" : `fills ${cell.spill}`),
      ...line("message", whatIsWrong(cell, address.sheet)),
      ...line("prompt", [prompt.title, prompt.text].filter((text) => text !== "").join(": ")),
    );
    // What takes longer is told behind.
    const { circle } = (await withCircles(workbook, engine).look(address)).reading;
    if (circle === undefined || mine !== turn.latest || whatIsWrong(cell, address.sheet) !== "") return;
    root.append(...line("message", restsOnCircle(circle)));
  };
  await workbook.onSelection(({ address }) => void tell(address));
  await tell(await workbook.selectedCell());
}

function line(kind: string, text: string): HTMLElement[] {
  if (text === "") return [];
  const element = document.createElement("p");
  element.className = kind;
  element.textContent = text;
  return [element];
}
