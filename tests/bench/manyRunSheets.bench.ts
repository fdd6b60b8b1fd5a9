import type { CDPSession, Page } from "playwright-core";
import { buildRunSheet } from "../../src/runsheet/buildRunSheet";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { growRunSheet } from "../../src/runsheet/growing/growRunSheet";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import type { RunSheetOptions } from "../../src/runsheet/options/RunSheetOptions";
import { runSheet } from "../../src/runsheet/sheet/RunSheet";
import { LocalWorkbook } from "../browser/localWorkbook";
import { pageWorkbook } from "../browser/pageWorkbook";
import type { WorkbenchWindow } from "../../src/workbench/WorkbenchWindow";
import { inTurn, median, minimum, printed } from "./inTurn";

// The largest run sheet in the local workbook's page in Chromium: the main thread's work to insert it and to add a round to it, and the time until an edit of a
// weighing has settled, with one such sheet in the workbook and with twenty. Two pages stand side by side and are asked in turn.
const MANY = 20;
const ADDED = 5;
const ROUNDS = 9;
const WARM_UP_ROUNDS = 2;
const OPTIONS: RunSheetOptions = {
  kind: "ashing",
  weighIns: 60,
  intervalMinutes: 20,
  readability: 0.01,
  vessel: "tin",
  replicates: 6,
  charFirings: 4,
  ashFirings: 4,
  panZeros: true,
  temperatures: true,
};
const LARGEST = buildRunSheet(OPTIONS);
/** Where the sheet works out the weight of the vessel, its zero taken off. */
const COUNTED = placeOf(runSheet(checkOptions(OPTIONS)).vessel(1));
const BOX = LARGEST.startAt;

/** Seconds of the processor that the page's main thread has had: what else runs on the machine lengthens its tasks, and hardly touches this. */
async function worked(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return metrics.find(({ name }) => name === "ThreadTime")?.value ?? NaN;
}

/** Seconds that a round takes to be put into the largest sheet but one, of the same main thread. */
async function growth(local: LocalWorkbook, session: CDPSession, sheet: string): Promise<number> {
  const workbook = pageWorkbook(local.page, { name: "the local workbook", drawsCharts: false });
  const before = await worked(session);
  await growRunSheet(workbook, sheet, "weighIns");
  await local.settled();
  return (await worked(session)) - before;
}

/** Types a vessel's weight on the first sheet. @returns milliseconds until every cell shows what comes of it */
async function edit(page: Page, sheet: string, grams: number): Promise<number> {
  return page.evaluate(
    async ([name, cell, weight]) => {
      const { engine, type } = (window as WorkbenchWindow).retortWorkbench ?? {};
      const start = performance.now();
      type?.({ sheet: name, cell }, weight);
      await engine?.settled();
      return performance.now() - start;
    },
    [sheet, BOX, grams] as const,
  );
}

async function main(): Promise<void> {
  const [one, many] = [await LocalWorkbook.open(), await LocalWorkbook.open()];
  const sheets = new Map<LocalWorkbook, string>();
  const inserted: number[] = [];
  const grown: number[] = [];
  for (const [local, count] of [
    [one, 1],
    [many, MANY],
  ] as const) {
    const session = await local.page.context().newCDPSession(local.page);
    await session.send("Performance.enable");
    const workbook = pageWorkbook(local.page, { name: "the local workbook", drawsCharts: false });
    if (count === MANY) {
      const smaller = await workbook.addSheet(buildRunSheet({ ...OPTIONS, weighIns: OPTIONS.weighIns - ADDED }));
      for (let added = 0; added < ADDED; added++) grown.push(await growth(local, session, smaller));
    }
    for (let made = 0; made < count; made++) {
      const before = await worked(session);
      const name = await workbook.addSheet(LARGEST);
      await local.settled();
      inserted.push((await worked(session)) - before);
      if (made === 0) sheets.set(local, name);
    }
  }
  console.log(
    `largest sheet (${LARGEST.cells.filter(({ formula }) => formula !== undefined).length} formula cells), inserted ${inserted.length} times`,
  );
  console.log(`main thread, s: min ${minimum(inserted).toFixed(2)} median ${median(inserted).toFixed(2)} max ${Math.max(...inserted).toFixed(2)}`);
  console.log(
    `a round added, main thread, s: min ${minimum(grown).toFixed(2)} median ${median(grown).toFixed(2)} max ${Math.max(...grown).toFixed(2)}`,
  );
  let grams = 20;
  const contender = (local: LocalWorkbook) => async (): Promise<number> => {
    const sheet = sheets.get(local) as string;
    grams += 0.01;
    const took = await edit(local.page, sheet, grams);
    const shown = (await pageWorkbook(local.page, { name: "", drawsCharts: false }).read(sheet, COUNTED)).rows[0]?.[0]?.value;
    if (shown !== grams) throw new Error(`${COUNTED} shows ${String(shown)}, not ${grams}`);
    return took;
  };
  const names = { one: "edit with one", many: `edit with ${MANY}` } as const;
  printed(await inTurn({ [names.one]: contender(one), [names.many]: contender(many) }, ROUNDS, WARM_UP_ROUNDS), names.one);
  await Promise.all([one.close(), many.close()]);
}

void main().then(() => process.exit(0));
