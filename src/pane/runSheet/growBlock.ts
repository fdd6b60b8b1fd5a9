import { columnsMoved, growthUnderWay, grownBy, otherFormulas } from "../../problems/runsheet/growingProblems";
import { growRunSheet, mendRunSheet } from "../../runsheet/growing/growRunSheet";
import { calledOn, GROWTHS, hasUseFor, type Growth } from "../../runsheet/growing/growths";
import { recorded, underWay } from "../../runsheet/growing/record";
import { formulasNotOwn } from "../../runsheet/reading/formulasNotOwn";
import { readRunSheet } from "../../runsheet/reading/readRunSheet";
import type { Workbook } from "../../workbook/Workbook";
import { button, element } from "../element";
import { Messages } from "../Messages";

const addOne = (growth: keyof typeof grownBy): string => `Add a ${grownBy[growth].one}`;

/** Buttons that let the open run sheet follow its run: more rounds, firings and samples, and formulas mended. */
export function growBlock(workbook: Workbook, changed: () => void): { block: HTMLElement; follow: (sheet: string) => Promise<void> } {
  const messages = new Messages();
  const now = { sheet: "" };
  const broken = element("p", { class: "hint" });
  const others = element("p", { class: "other-formulas", role: "status" });
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
    const made = button(addOne(growth), "secondary", () => void messages.report(made, () => done((sheet) => growRunSheet(workbook, sheet, growth))));
    return made;
  };
  const adds = new Map(GROWTHS.map((growth) => [growth, add(growth)]));
  const mend = button("Mend formulas", "secondary", () => void messages.report(mend, () => done((sheet) => mendRunSheet(workbook, sheet))));
  const block = element(
    "div",
    { class: "grow", role: "group", "aria-label": "Let the sheet follow the run", hidden: true },
    element("div", { class: "grow-buttons" }, ...adds.values(), mend),
    others,
    broken,
    messages.region,
  );

  const look = async (sheet: string): Promise<void> => {
    const reading = await workbook.readUsed(sheet);
    // A large sheet takes a while to read: what is told is of the sheet in view.
    if (sheet !== now.sheet) return;
    const begun = underWay(reading);
    const options = recorded(reading);
    for (const [growth, one] of adds) {
      one.hidden = options !== undefined && !hasUseFor(options, growth);
      if (options !== undefined) one.textContent = addOne(calledOn(options, growth));
    }
    broken.textContent = begun === undefined ? "" : growthUnderWay;
    const read = readRunSheet(reading);
    const isMoved = read.is === "rearranged" && read.stands !== undefined;
    const said = isMoved ? columnsMoved(read.missing, read.cell, read.stands) : otherFormulas(formulasNotOwn(reading));
    // A live region is written only when its words change, so that nothing is announced twice.
    if (others.textContent !== said) others.textContent = said;
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
