import { beyondMending, canBeMended, changedMeanwhileLeft, enterAgain, mended, nothingToMend, stillUnknown } from "../../problems/sharing/mendWords";
import { shareTabWords } from "../../problems/sharing/shareTabWords";
import { cellsToMend, hasLost, type Mending } from "../../sharing/mend";
import { recordedFormulas } from "../../sharing/record/recordedFormulas";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";
import { way } from "./way";

/** Enters formulas again that came back broken: first says which, then enters those and no others. @param chosen the sheet */
export function mendWay(workbook: Workbook, chosen: () => string): HTMLElement {
  const { mend } = shareTabWords;
  const messages = new Messages();
  let found: { readonly sheet: string; readonly mending: Mending } | undefined;
  const look = button(mend.press, "secondary", () => void messages.report(look, () => looked()));
  const enter = button("", "primary", () => void messages.report(enter, () => entered()));
  enter.hidden = true;

  const looked = async (): Promise<string> => {
    enter.hidden = true;
    const sheet = chosen();
    const reading = await workbook.readUsed(sheet);
    const mending = cellsToMend(reading, hasLost(reading) ? await recordedFormulas(workbook, sheet) : undefined);
    found = { sheet, mending };
    const { cells, beyond } = mending;
    enter.hidden = cells.length === 0;
    enter.textContent = enterAgain(cells.length);
    const recorded = cells.filter(({ from }) => from === "record").length;
    const can = cells.length > 0 ? [canBeMended(sheet, cells.map(({ cell }) => cell), recorded)] : beyond.length === 0 ? [nothingToMend(sheet)] : []; // prettier-ignore
    return [...can, ...(beyond.length > 0 ? [beyondMending(beyond)] : [])].join(" ");
  };

  const entered = async (): Promise<string> => {
    if (found === undefined) return "";
    const { sheet, mending } = found;
    const { entered: done, changed } = await workbook.reenter(sheet, mending.cells);
    enter.hidden = true;
    const still = await stillUnknownOf(sheet, done);
    return [
      mended(done.length),
      ...(changed.length > 0 ? [changedMeanwhileLeft(changed)] : []),
      ...(still.length > 0 ? [stillUnknown(still)] : []),
    ].join(" ");
  };

  /** What the cells came to is worth a sentence, and no reason to call the entering off. */
  const stillUnknownOf = async (sheet: string, cells: readonly string[]): Promise<readonly string[]> => {
    const reading = await workbook.readUsed(sheet).catch(() => undefined);
    const unknown = new Set(reading?.rows.flat().flatMap(({ cell, error }) => (error === "#NAME?" ? [cell] : [])));
    return cells.filter((cell) => unknown.has(cell));
  };

  return way("way-mend", mend.heading, element("p", {}, mend.about), look, messages.region, enter);
}
