import type { RunCells } from "../../../../explanation/runSheet/RunCells";
import { cell } from "../../../../runsheet/expressions/Expression";
import { STRIP_COLUMNS } from "../../../../runsheet/formulas/strip";
import type { StripRows } from "../../../../runsheet/sheet/layout";
import type { Weighed } from "../../../../runsheet/sheet/Weighed";
import { caughtAfter, caughtBefore } from "./caughtOrder";
import { firings, stages } from "./firingOrder";
import { isAnyFilled, isEveryRowFilled, isKnownDry, isSteady } from "./howFar";
import { roundsWhileDrying } from "./roundsOrder";
import { isBlank, step, type Step, type Work } from "./Step";

/** Boxes of a run on samples in the order of the work, as far as the run has come; filled ones among them. */
export function* runOrder(work: Work<RunCells>): Generator<Step> {
  const { cells } = work;
  const { sheet } = cells;
  const { drying, charring, ashing, heating, caught, rows, columns } = sheet;
  const isBegun = (table: Weighed): boolean => sheet.samples.some((sample) => isAnyFilled(cells, table, sample));
  const { strip } = rows.drying;
  if (!isBegun(drying)) {
    yield* zeros(work, strip, "before");
    for (const sample of sheet.samples) yield step(cells, columns.box(rows.drying.vessel, sample), { isOptional: sample > 1 });
    yield* zeros(work, strip, "after");
  }
  const hasVessel = (sample: number): boolean => !isBlank(cells, columns.box(rows.drying.vessel, sample)) || isAnyFilled(cells, drying, sample);
  const inUse = sheet.samples.filter(hasVessel);
  // A vessel left out, or that of a sample that was added since: without it nothing of the sample is judged.
  for (const sample of isBegun(drying) ? [...inUse, ...addedBlank(work, inUse)] : []) yield step(cells, columns.box(rows.drying.vessel, sample));
  const isFired = sheet.fired.some(isBegun);
  yield* roundsWhileDrying(work, inUse, isFired || isKnownDry(cells));
  const isReady = (after: Weighed, table: Weighed): boolean => (after === drying ? isKnownDry(cells) : isSteady(cells, after)) || isBegun(table);
  const first = charring ?? heating;
  if (first !== undefined && isReady(drying, first)) {
    if (caught !== undefined && !isBegun(first)) yield* caughtBefore(work, caught, first, inUse);
    yield* firings(work, first, inUse, isSteady(cells, first) || (ashing !== undefined && isBegun(ashing)));
  }
  if (ashing !== undefined && charring !== undefined && isReady(charring, ashing)) yield* firings(work, ashing, inUse, isSteady(cells, ashing));
  if (caught !== undefined && charring !== undefined && (isSteady(cells, charring) || isEveryRowFilled(cells, charring, inUse)))
    yield* caughtAfter(work, caught, inUse);
  const { isOver } = sheet.stages === undefined ? { isOver: false } : yield* stages(work, sheet.stages, inUse, isReady(drying, sheet.stages));
  const last = ashing ?? first;
  if (sheet.end === undefined || !(last === undefined ? isOver : isSteady(cells, last))) return;
  yield* zeros(work, rows.end.strip, "before");
  for (const sample of inUse) yield step(cells, sheet.end.vessel(sample));
  yield* zeros(work, rows.end.strip, "after");
}

/** The sample that was added to a run under way, until it is begun. */
const addedBlank = ({ cells }: Work<RunCells>, inUse: readonly number[]): number[] =>
  cells.sheet.samples.filter((sample) => sample === cells.sheet.options.addedSample && !inUse.includes(sample));

/** The balance's zero before or after the empty vessels. */
function* zeros({ cells }: Work<RunCells>, strip: Pick<StripRows, "vessel"> | undefined, when: "before" | "after"): Generator<Step> {
  if (!cells.sheet.options.panZeros || strip?.vessel === undefined) return;
  yield step(cells, cell(strip.vessel, STRIP_COLUMNS[when]), { isOptional: true });
}
