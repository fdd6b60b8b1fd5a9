import type { Page } from "playwright-core";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { WorkbookProblem, type CellLook, type Workbook } from "../../src/workbook/Workbook";

type Method = Exclude<keyof Workbook, "name" | "drawsCharts" | "onSelection">;

interface Watching extends WorkbenchWindow {
  stopWatching?: Record<string, () => Promise<void>>;
}

/** The workbook of an open page, each call carried out there. */
export function pageWorkbook(page: Page, { name, drawsCharts }: Pick<Workbook, "name" | "drawsCharts">): Workbook {
  let watches = 0;
  return {
    name,
    drawsCharts,
    sheetNames: () => call(page, "sheetNames"),
    selectedCell: () => call(page, "selectedCell"),
    select: (address) => call(page, "select", address),
    calculation: () => call(page, "calculation"),
    look: (address) => call(page, "look", address),
    readInputs: (address, wanted) => call(page, "readInputs", address, wanted),
    holdsText: (sheet, text) => call(page, "holdsText", sheet, text),
    read: (sheet, range) => call(page, "read", sheet, range),
    readUsed: (sheet) => call(page, "readUsed", sheet),
    firstScreen: (sheet) => call(page, "firstScreen", sheet),
    cellsBeside: (sheet) => call(page, "cellsBeside", sheet),
    readSettled: (sheet, asShown) => call(page, "readSettled", sheet, asShown),
    writeFormula: (address, formula) => call(page, "writeFormula", address, formula),
    replaceValue: (address, held, content) => call(page, "replaceValue", address, held, content),
    reenter: (sheet, cells) => call(page, "reenter", sheet, cells),
    addSheet: (plan) => call(page, "addSheet", plan),
    copyWithValues: (sheet, wanted) => call(page, "copyWithValues", sheet, wanted),
    growSheet: (sheet, growth) => call(page, "growSheet", sheet, growth),
    unfinishedSheets: () => call(page, "unfinishedSheets"),
    removeUnfinished: (sheet, asked) => call(page, "removeUnfinished", sheet, asked),
    onSelection: (listener) => watch(page, `told${++watches}`, listener),
  };
}

async function call<R>(page: Page, method: Method, ...given: unknown[]): Promise<R> {
  const { answer, problem } = await page.evaluate(
    async ([wanted, values]) => {
      const workbook = (window as WorkbenchWindow).retortWorkbench?.workbook as unknown as Record<string, (...all: unknown[]) => Promise<unknown>>;
      try {
        return { answer: await workbook[wanted]?.(...values), problem: "" };
      } catch (thrown) {
        if ((thrown as Error).name !== "WorkbookProblem") throw thrown;
        return { answer: undefined, problem: (thrown as Error).message };
      }
    },
    [method, given] as const,
  );
  if (problem !== "") throw new WorkbookProblem(problem);
  return answer as R;
}

async function watch(page: Page, key: string, listener: (look: CellLook) => void): Promise<() => Promise<void>> {
  await page.exposeFunction(key, listener);
  await page.evaluate(async (told) => {
    const here = window as unknown as Watching & Record<string, unknown>;
    const tell = here[told] as (look: CellLook) => void;
    const stop = await here.retortWorkbench?.workbook.onSelection((look) => tell(look));
    if (stop !== undefined) here.stopWatching = { ...here.stopWatching, [told]: stop };
  }, key);
  return () => page.evaluate((told) => (window as Watching).stopWatching?.[told]?.(), key);
}
