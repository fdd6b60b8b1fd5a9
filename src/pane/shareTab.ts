import { copyInView, shareTabWords } from "../problems/sharing/shareTabWords";
import { shareAllTheSame } from "../problems/sharing/sharedCopyWords";
import { CellsInError, StaysPending } from "../problems/sharing/sharingProblems";
import type { FileKind, OwnFiles } from "../sharing/shareInFile";
import type { Workbook } from "../workbook/Workbook";
import { button, element } from "./element";
import { Messages } from "./Messages";
import { asItIsWay } from "./share/asItIsWay";
import { mendWay } from "./share/mendWay";
import { share, type Told } from "./share/sharing";
import { points, way } from "./share/way";
import { whereTo } from "./share/whereTo";
import type { Tab } from "./tabs";

interface AllTheSame {
  readonly as: FileKind;
  readonly asShown: boolean;
  readonly withErrors: boolean;
}

/** Prepares a sheet for a colleague who does not have the add-in. @param files what makes files of their own, where the host can */
export function shareTab(workbook: Workbook, files?: OwnFiles): Tab {
  const messages = new Messages();
  const progress = element("p", { class: "hint", role: "status" });
  const sheets = element("select", { id: "share-sheet" });
  const every = element("input", { type: "checkbox", id: "share-all" });
  const everyLine = element("label", { class: "choice", for: every.id }, every, element("span", {}, shareTabWords.every));
  const where = files === undefined ? undefined : whereTo(() => (everyLine.hidden = !isInFile()));
  const isInFile = (): boolean => where?.inFile() ?? false;
  everyLine.hidden = files === undefined;

  let isStopped = false;
  const stop = button(shareTabWords.stop, "secondary", () => void (isStopped = true));
  stop.hidden = true;
  // Only where the workbook keeps saying that something waits, and nothing does, or where cells are in error, which may be meant.
  let allTheSame: AllTheSame | undefined;
  const goOn = button(shareAllTheSame.asShown, "secondary", () => void messages.report(goOn, () => shared(allTheSame?.as ?? "values", allTheSame)));
  goOn.hidden = true;
  const show = button(shareTabWords.show, "secondary", () => void messages.report(show, shown));
  show.hidden = true;
  let last: Told["made"];

  const listSheets = async (): Promise<void> => {
    const [names, { sheet }] = await Promise.all([workbook.sheetNames(), workbook.selectedCell()]);
    const chosen = names.includes(sheets.value) ? sheets.value : sheet;
    sheets.replaceChildren(...names.map((name) => element("option", { value: name, selected: name === chosen }, name)));
  };

  const shared = async (as: FileKind, { asShown = false, withErrors = false } = {}): Promise<string> => {
    show.hidden = true;
    goOn.hidden = true;
    isStopped = false;
    stop.hidden = false;
    const told = (step: string): void => void (progress.textContent = step);
    const wanted = { as, sheet: sheets.value, all: isInFile() && every.checked, files: isInFile() ? files : undefined, asShown, withErrors };
    try {
      const { said, made } = await share(workbook, { ...wanted, told, isStopped: () => isStopped });
      last = made;
      show.hidden = made === undefined;
      if (made !== undefined) {
        await listSheets();
        // What was made is what one wants to see; where the workbook does not show it, the button does.
        await workbook.select({ sheet: made.copy, cell: "A1" }).catch(() => undefined);
      }
      return said;
    } catch (problem) {
      const [waits, fails] = [problem instanceof StaysPending, problem instanceof CellsInError];
      allTheSame = { as, asShown: asShown || waits, withErrors: withErrors || fails };
      goOn.textContent = fails ? shareAllTheSame.withErrors : shareAllTheSame.asShown;
      goOn.hidden = !waits && !fails;
      throw problem;
    } finally {
      stop.hidden = true;
      progress.textContent = "";
    }
  };

  const shown = async (): Promise<string> => {
    if (last === undefined) return "";
    await workbook.select({ sheet: last.copy, cell: "A1" });
    return copyInView(last.copy, last.record);
  };

  const { values: asValues, plain: asPlain } = shareTabWords;
  const values = button(asValues.press, "primary", () => void messages.report(values, () => shared("values")));
  const plain = button(asPlain.press, "primary", () => void messages.report(plain, () => shared("plain")));
  const panel = element(
    "div",
    {},
    element("h2", {}, shareTabWords.heading),
    element("p", { class: "intro" }, shareTabWords.intro),
    element("label", { for: sheets.id }, shareTabWords.sheet),
    sheets,
    everyLine,
    ...(where === undefined ? [] : [where.block]),
    way("way-values", asValues.heading, points(asValues.points), values),
    way("way-plain", asPlain.heading, points(asPlain.points), plain),
    progress,
    stop,
    messages.region,
    goOn,
    show,
    points([shareTabWords.refusal, shareTabWords.undo]),
    asItIsWay(workbook, () => sheets.value),
    mendWay(workbook, () => sheets.value),
  );
  const onShow = (): void => void listSheets().catch((problem: unknown) => messages.complain(problem));
  return { id: "share", label: "Share", panel, onShow };
}
