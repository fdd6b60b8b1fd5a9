import { growthUnderWay, grownBy } from "../../problems/growingProblems";
import { growRunSheet, mendRunSheet } from "../../runsheet/growing/growRunSheet";
import { GROWTHS, hasUseFor, type Growth } from "../../runsheet/growing/growths";
import { recorded, underWay } from "../../runsheet/growing/record";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";

// The record of what a sheet was made with stands in the first row, however many samples it has columns for.
const FIRST_ROW = "A1:Z1";

/** Buttons that let the open run sheet follow its run: more rounds, firings and samples, and formulas mended. */
export function growBlock(workbook: Workbook, changed: () => void): { block: HTMLElement; follow: (sheet: string) => Promise<void> } {
  const messages = new Messages();
  const now = { sheet: "" };
  const broken = element("p", { class: "hint" });
  const done = async (work: (sheet: string) => Promise<string>): Promise<string> => {
    try {
      const said = await work(now.sheet);
      // What was done may have brought a new sheet into view; what is said of it stays.
      now.sheet = (await workbook.selectedCell()).sheet;
      return said;
    } finally {
      await look(now.sheet).catch(() => undefined);
      changed();
    }
  };
  const add = (growth: Growth): HTMLButtonElement => {
    const made = button(
      `Add a ${grownBy[growth].one}`,
      "secondary",
      () => void messages.report(made, () => done((sheet) => growRunSheet(workbook, sheet, growth))),
    );
    return made;
  };
  const adds = new Map(GROWTHS.map((growth) => [growth, add(growth)]));
  const mend = button("Mend formulas", "secondary", () => void messages.report(mend, () => done((sheet) => mendRunSheet(workbook, sheet))));
  const block = element(
    "div",
    { class: "grow", role: "group", "aria-label": "Let the sheet follow the run", hidden: true },
    element("div", { class: "grow-buttons" }, ...adds.values(), mend),
    broken,
    messages.region,
  );

  const look = async (sheet: string): Promise<void> => {
    const reading = await workbook.read(sheet, FIRST_ROW);
    const begun = underWay(reading);
    const options = recorded(reading);
    for (const [growth, one] of adds) one.hidden = options !== undefined && !hasUseFor(options, growth);
    broken.textContent = begun === undefined ? "" : growthUnderWay;
    block.hidden = false;
  };
  /**
   * Asks only when another run sheet comes into view: what it was made with changes by these buttons alone.
   * @param sheet "" where none is selected
   */
  const follow = async (sheet: string): Promise<void> => {
    if (sheet === now.sheet) return;
    now.sheet = sheet;
    messages.tell("");
    if (sheet !== "") await look(sheet);
  };
  return { block, follow };
}
