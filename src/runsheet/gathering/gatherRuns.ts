import { noRunsToGather } from "../../problems/runsheet/runSheetProblems";
import { WorkbookProblem, type Workbook } from "../../workbook/Workbook";
import { gatherWords } from "../words/gatherWords";
import { olderSheets } from "../words/olderSheets";
import { setupWords } from "../words/setupWords";
import { buildGatheredSheet } from "./buildGatheredSheet";
import { readRuns } from "./readRuns";
import type { LeftOut, RunRow } from "./RunRow";

export interface Gathered {
  /** The new sheet. */
  readonly sheet: string;
  readonly samples: number;
  readonly runs: number;
  readonly leftOut: readonly LeftOut[];
  /** Run sheets whose kind has a loss and no vapour share, and why; left out where there are none. */
  readonly withoutVapour?: readonly LeftOut[];
  /** Names that a person gave to several samples; left out where there are none. */
  readonly sameNames?: readonly { readonly name: string; readonly samples: number }[];
  /** True where the demo's run is all there is. */
  readonly isDemo?: true;
}

/**
 * Makes a new sheet with one row a sample from every run sheet of the workbook. Only sheets that hold a text of run sheets are read.
 * @throws WorkbookProblem where there is none to gather
 */
export async function gatherRuns(workbook: Workbook): Promise<Gathered> {
  const readings = [];
  for (const name of await workbook.sheetNames()) if (await isRunSheet(workbook, name)) readings.push(await workbook.readUsed(name));
  const runs = readRuns(readings);
  if (runs.rows.length === 0) throw new WorkbookProblem(noRunsToGather(runs.leftOut));
  const sheet = await workbook.addSheet(buildGatheredSheet(runs));
  const without = new Map(runs.rows.flatMap(({ sheet: run, loss }) => (loss === undefined ? [] : [[run, gatherWords.without[loss.of]] as const])));
  const same = sameNames(runs.rows);
  return {
    sheet,
    samples: runs.rows.length,
    runs: new Set(runs.rows.map((row) => row.sheet)).size,
    leftOut: runs.leftOut,
    ...(without.size === 0 ? {} : { withoutVapour: [...without].map(([run, why]) => ({ sheet: run, why })) }),
    ...(same.length === 0 ? {} : { sameNames: same }),
    ...(runs.rows.every(({ isDemo }) => isDemo) ? { isDemo: true } : {}),
  };
}

/** As the sheet counts them: whatever the case of their letters. */
function sameNames(rows: readonly RunRow[]): NonNullable<Gathered["sameNames"]> {
  const found = new Map<string, { readonly name: string; readonly samples: number }>();
  for (const { own } of rows) {
    if (own === undefined || own.called === "") continue;
    const key = own.called.toLowerCase();
    const before = found.get(key);
    found.set(key, { name: before?.name ?? own.called, samples: 1 + (before?.samples ?? 0) });
  }
  return [...found.values()].filter(({ samples }) => samples > 1);
}

const isRunSheet = async (workbook: Workbook, name: string): Promise<boolean> =>
  (await workbook.holdsText(name, setupWords.legend)) ||
  (await workbook.holdsText(name, olderSheets.legend)) ||
  (await workbook.holdsText(name, olderSheets.results.heading));
