import { CellsInError, copyTouched, StaysPending } from "../problems/sharingProblems";
import { shareAllTheSame } from "../problems/sharedCopyWords";
import type { OwnFiles } from "../sharing/shareInFile";
import { shareAsValues } from "../sharing/shareAsValues";
import type { Workbook } from "../workbook/Workbook";
import { button, element } from "./element";
import { Messages } from "./Messages";
import { ownFileWays } from "./share/ownFileWays";
import { today } from "./share/today";
import type { Tab } from "./tabs";

/** Prepares a sheet for a colleague who does not have the add-in. */
export function shareTab(workbook: Workbook, files?: OwnFiles): Tab {
  const messages = new Messages();
  const sheets = element("select", { id: "share-sheet" });
  const copy = button("Make a copy with values", "primary", () => void messages.report(copy, () => made()));
  // Only where the workbook keeps saying that something waits, and nothing does, or where cells are in error, which may be meant.
  let allTheSame: { readonly asShown: boolean; readonly withErrors: boolean } | undefined;
  const goOn = button(shareAllTheSame.asShown, "secondary", () => void messages.report(goOn, () => made(allTheSame)));
  goOn.hidden = true;
  const show = button("Show the copy", "secondary", () => void messages.report(show, shown));
  show.hidden = true;
  let last: { readonly copy: string; readonly record: string } | undefined;

  const listSheets = async (): Promise<void> => {
    const [names, { sheet }] = await Promise.all([workbook.sheetNames(), workbook.selectedCell()]);
    const chosen = names.includes(sheets.value) ? sheets.value : sheet;
    sheets.replaceChildren(...names.map((name) => element("option", { value: name, selected: name === chosen }, name)));
  };

  const made = async ({ asShown = false, withErrors = false } = {}): Promise<string> => {
    show.hidden = true;
    goOn.hidden = true;
    const shared = await shareAsValues(workbook, sheets.value, today(), { asShown, withErrors }).catch((problem: unknown) => {
      const [waits, fails] = [problem instanceof StaysPending, problem instanceof CellsInError];
      allTheSame = { asShown: asShown || waits, withErrors: withErrors || fails };
      goOn.textContent = fails ? shareAllTheSame.withErrors : shareAllTheSame.asShown;
      goOn.hidden = !waits && !fails;
      throw problem;
    });
    last = shared;
    show.hidden = false;
    await listSheets();
    return `Made "${shared.copy}" and its record, "${shared.record}". ${frozenText(shared.frozenCells)}${shared.touched ? ` ${copyTouched(shared.copy, sheets.value)}` : ""}`;
  };

  const shown = async (): Promise<string> => {
    if (last === undefined) return "";
    await workbook.select({ sheet: last.copy, cell: "A1" });
    return `"${last.copy}" is in view. Its record is "${last.record}".`;
  };

  const ownFile = files === undefined ? undefined : ownFileWays(workbook, files, () => sheets.value);
  const panel = element(
    "div",
    {},
    element("h2", {}, "Share a sheet"),
    element("p", { class: "intro" }, "For a colleague without the add-in. Your own sheet stays as it is: everything happens in a copy."),
    element("label", { for: sheets.id }, "Sheet to share"),
    sheets,
    ...(ownFile === undefined ? [] : [ownFile.panel]),
    element(
      "section",
      { class: "way", "aria-labelledby": "way-values" },
      element("h3", { id: "way-values" }, ownFile === undefined ? "As values" : "As values in this workbook"),
      element("ul", { class: "points" }, ...AS_VALUES.map((point) => element("li", {}, point))),
      copy,
      messages.region,
      goOn,
      show,
    ),
    element(
      "section",
      { class: "way", "aria-labelledby": "way-as-is" },
      element("h3", { id: "way-as-is" }, "If you send it as it is"),
      element("p", {}, AS_IT_IS),
    ),
  );
  const onShow = (): void => void listSheets().catch((problem: unknown) => messages.complain(problem));
  return { id: "share", label: "Share", panel, onShow };
}

const AS_VALUES = [
  "The copy keeps every number, text and format. Each formula gives way to the value it shows, so nothing in the copy recalculates, and a line in view says so. Prompts and lists go.",
  "A second sheet, the calculation record, lists each formula as it was typed, its value and unit, what the function does and its source.",
  "Both sheets are made, or neither. In Excel, copying a sheet cannot be undone and clears the list of what can; to take it back, delete the two sheets.",
  "While anything still calculates, or one of its Retort functions shows an error, no copy is made and you are told which cells to see to; errors that are meant you can share as they are.",
];

const AS_IT_IS =
  "Your colleague first sees your values. When a cell recalculates on their machine, because an input changed or just because a row was inserted, " +
  "it can turn to #NAME?. Saved like that, it often stays so even after the add-in is installed, until each formula is entered again.";

function frozenText(cells: number): string {
  if (cells === 0) return "No cell held a formula.";
  return cells === 1 ? "One formula cell became a value." : `${cells} formula cells became values.`;
}
