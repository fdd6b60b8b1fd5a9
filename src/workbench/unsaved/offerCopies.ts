import { copyGoes, copyLacks, copyNotOpened, copyOffered, copyOpened, copyOpenedInPart, copyOfFile } from "../../problems/files/fileProblems";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import { WorkbookProblem } from "../../workbook/Workbook";
import type { Bar } from "../bar/bar";
import { focusCells } from "../grid/cellEditing";
import type { CopyKeeper } from "./keepCopy";
import type { KeptCopies, KeptCopy } from "./KeptCopies";
import type { SavedContent } from "./SavedContent";

interface Offer extends Pick<Bar, "say" | "mayReplace" | "openCopy"> {
  readonly engine: GridEngine;
  readonly saved: SavedContent;
  readonly copies: KeptCopies;
  readonly keeper: CopyKeeper;
  /** Holds a paragraph and a row of buttons. */
  readonly root: HTMLElement;
}

/** Offers what earlier windows left unsaved, one after the other, the latest first. Nothing is opened or removed without being asked for. */
export async function offerCopies(offer: Offer): Promise<void> {
  const copies = await offer.copies.leftBehind();
  const ask = asker(offer.root);
  for (const copy of copies) if ((await answered(offer, ask, copy)) === "stop") break;
  // What was pressed last is gone.
  if (copies.length > 0) focusCells(offer.engine);
}

async function answered(offer: Offer, ask: Ask, copy: KeptCopy): Promise<"next" | "stop"> {
  const when = whenOf(copy.at);
  const sheets = copy.sheets.map(({ name }) => name);
  for (;;) {
    const answer = await ask([copyOffered(when, sheets), ...fromFile(copy)].join(" "), ["Open the copy", "Not now", "Throw the copy away"]);
    if (answer === "Not now") return "next";
    if (answer === "Open the copy" && (await opened(offer, copy, when))) return "stop";
    if (answer === "Throw the copy away" && (await ask(copyGoes(when), ["Keep the copy", "Remove it for good"])) === "Remove it for good") {
      await offer.copies.remove(copy.id);
      return "next";
    }
  }
}

const fromFile = ({ file }: KeptCopy): readonly string[] =>
  file === undefined ? [] : [file.isKept ? copyOfFile(file.name) : copyLacks(file.name, file.lacks)];

async function opened({ saved, copies, keeper, say, openCopy, mayReplace }: Offer, copy: KeptCopy, when: string): Promise<boolean> {
  if (!(await mayReplace(`the copy from ${when}`))) return false;
  let isWhole: boolean;
  try {
    isWhole = await openCopy(copy, await copies.fileOf(copy));
  } catch (problem) {
    say(problem instanceof WorkbookProblem ? problem.message : copyNotOpened, "problem");
    return false;
  }
  saved.set();
  // Where this window's own copy could not be kept, the earlier one is still the only one there is.
  if ((await keeper.now()) && copies.knowsOpenWindows) await copies.remove(copy.id);
  if (isWhole || copy.file === undefined) say(copyOpened(when));
  else say(copyOpenedInPart(when, copy.file.name), "problem");
  return true;
}

/** Shows the text with the buttons and gives the one that was chosen. */
type Ask = (text: string, answers: readonly string[]) => Promise<string>;

/** Asks in `root`, one question after the other. The first takes the focus from nobody; those that follow an answer have it. */
function asker(root: HTMLElement): Ask {
  let isAnswering = false;
  return (text, answers) => {
    const about = document.createElement("p");
    about.textContent = text;
    return new Promise((resolve) => {
      const buttons = answers.map((answer) => {
        const button = document.createElement("button");
        button.type = "button";
        button.textContent = answer;
        button.onclick = () => {
          root.hidden = true;
          root.replaceChildren();
          isAnswering = true;
          resolve(answer);
        };
        return button;
      });
      root.replaceChildren(about, ...buttons);
      root.hidden = false;
      if (isAnswering) buttons[0]?.focus();
    });
  };
}

const whenOf = (at: number): string => new Date(at).toLocaleString("en-GB", { dateStyle: "long", timeStyle: "short" });
