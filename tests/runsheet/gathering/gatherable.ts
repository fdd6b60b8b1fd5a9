// Invented runs of a community orchard's char kiln and a class, in one workbook.
import { gatherRuns, type Gathered } from "../../../src/runsheet/gathering/gatherRuns";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import type { CellReading } from "../../../src/workbook/Workbook";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { openRunSheet, type OpenRunSheet } from "../openRunSheet";
import { clock, USUAL } from "../plainRun";

/** What a sample's vessel weighs: empty, moist, dry, with char, with ash. g */
export interface Weighed {
  readonly vessel: number;
  readonly moist: number;
  readonly dry: number;
  readonly char?: number;
  readonly ash?: number;
}

/** A run of one sample or more, dried in three rounds and fired twice, with the vessel weighed again. */
export async function weighed(sheet: OpenRunSheet, samples: readonly Weighed[]): Promise<void> {
  for (const [index, { vessel, moist, dry, char, ash }] of samples.entries()) {
    const sample = index + 1;
    await sheet.vessel(vessel, sample);
    for (const [round, grams] of [moist, dry, dry].entries()) await sheet.round(round + 1, sample === 1 ? clock(9, 30 * round) : null, grams, sample);
    const noted = sample === 1 ? { held: 60 } : {};
    for (const firing of [1, 2]) if (char !== undefined) await sheet.fire("charring", firing, char, noted, sample);
    for (const firing of [1, 2]) if (ash !== undefined) await sheet.fire("ashing", firing, ash, noted, sample);
    if (sheet.sheet.end !== undefined && char !== undefined) await sheet.type(sheet.sheet.end.vessel(sample), vessel);
  }
}

/** A tin of 25 g with 20 g of dry prunings, of which a share leaves. */
export const prunings = (vapour: number, ash?: number): Weighed => ({
  vessel: 25,
  moist: 65,
  dry: 45,
  char: Number((45 - 20 * vapour).toFixed(2)),
  ...(ash === undefined ? {} : { ash: Number((25 + 20 * ash).toFixed(2)) }),
});

export const charring: RunSheetOptions = { ...USUAL, kind: "charring", weighIns: 4, charFirings: 2 };

/** Charring runs named 1, 2, 3 …, each of one sample with its share of vapour. */
export async function runsOf(shares: readonly number[], open: HeadlessWorkbook): Promise<OpenRunSheet[]> {
  const sheets: OpenRunSheet[] = [];
  for (const [index, share] of shares.entries()) {
    const sheet = await openRunSheet(charring, open, `Kiln ${index + 1}`);
    await weighed(sheet, [prunings(share)]);
    sheets.push(sheet);
  }
  return sheets;
}

/** The gathered sheet as shown, row by row. */
export async function shownOn(open: HeadlessWorkbook, { sheet }: Gathered): Promise<(row: number) => readonly string[]> {
  await open.settled();
  const { rows } = await open.workbook.readUsed(sheet);
  return (row) => (rows[row - 1] ?? []).slice(0, 9).map(({ shown }: CellReading) => shown);
}

export const gathered = async (open: HeadlessWorkbook): Promise<Gathered> => gatherRuns(open.workbook);
export { openHeadlessWorkbook };
