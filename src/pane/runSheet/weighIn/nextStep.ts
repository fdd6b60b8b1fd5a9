import { nameOf } from "../../../explanation/runSheet/cellNames";
import { isBox, type RunCells } from "../../../explanation/runSheet/RunCells";
import { cell, type Cell } from "../../../runsheet/expressions/Expression";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { STRIP_COLUMNS, stripCell } from "../../../runsheet/formulas/strip";
import { CLOCK } from "../../../runsheet/sheet/Columns";
import type { StripRows } from "../../../runsheet/sheet/layout";
import { FIRE_COLUMNS, type Fired, type Weighed } from "../../../runsheet/sheet/RunSheet";

/** The next box of a run, and what goes with it. */
export interface Step {
  readonly at: Cell;
  /** "vessel + char, after firing 1, sample 2" */
  readonly name: string;
  readonly unit: string;
  readonly kind: "reading" | "clock";
  /** May be passed by. */
  readonly isOptional: boolean;
  /** The box that gets the time of the reading, where the row has one. */
  readonly clock?: Cell;
  /** The table of the reading, for what was lost. */
  readonly table?: Weighed;
}

/** @param passed boxes that are to stay blank, by name of cell @returns undefined where nothing is left to fill in */
export function nextStep(cells: RunCells, passed: ReadonlySet<string>): Step | undefined {
  for (const step of inOrder(cells)) if (isBlank(cells, step.at) && !passed.has(placeOf(step.at))) return step;
  return undefined;
}

const isBlank = ({ at }: RunCells, { row, column }: Cell): boolean => at(row, column) === null;

/** Boxes in the order of the work, as far as the run has come; filled ones among them. */
function* inOrder(cells: RunCells): Generator<Step> {
  const { sheet } = cells;
  const { drying, charring, ashing, heating, rows } = sheet;
  const isBegun = (table: Weighed): boolean => sheet.samples.some((sample) => isAnyFilled(cells, table, sample));
  const { strip } = rows.drying;
  if (!isBegun(drying)) {
    yield* zeros(cells, strip, "vessel", "before");
    for (const sample of sheet.samples) yield step(cells, sheet.columns.box(rows.drying.vessel, sample), { isOptional: sample > 1 });
    yield* zeros(cells, strip, "vessel", "after");
  }
  const hasVessel = (sample: number): boolean => !isBlank(cells, sheet.columns.box(rows.drying.vessel, sample)) || isAnyFilled(cells, drying, sample);
  const inUse = sheet.samples.filter(hasVessel);
  yield* weighings(cells, drying, inUse);
  for (const [table, before] of [
    [charring ?? heating, drying],
    [ashing, charring],
  ] as const)
    if (table !== undefined && before !== undefined && (isSteady(cells, before) || isAsWeighed(cells, inUse) || isBegun(table)))
      yield* firings(cells, table, inUse);
  const last = ashing ?? charring ?? heating;
  if (last === undefined || sheet.end === undefined || !isSteady(cells, last)) return yield* rowOfSheet(cells);
  const { strip: endStrip } = rows.end;
  if (endStrip !== undefined) yield* zeros(cells, { ...endStrip, first: 0 }, "vessel", "before");
  for (const sample of inUse) yield step(cells, sheet.end.vessel(sample), {});
  if (endStrip !== undefined) yield* zeros(cells, { ...endStrip, first: 0 }, "vessel", "after");
}

const isSteady = ({ at }: RunCells, { allSteady }: Weighed): boolean => Number(at(allSteady.row, allSteady.column)) > 0;

/** Whether a salt goes into the fire as it was weighed in: all that is to be heated is known before it is shown dry. */
const isAsWeighed = ({ sheet, at }: RunCells, inUse: readonly number[]): boolean =>
  sheet.salt !== undefined &&
  inUse.length > 0 &&
  inUse.every((sample) => {
    const net = sheet.drying.net(sample);
    return typeof at(net.row, net.column) === "number";
  });

function isAnyFilled(cells: RunCells, table: Weighed, sample: number): boolean {
  for (let row = table.rows.first; row <= table.rows.last; row++) if (!isBlank(cells, table.box(row, sample))) return true;
  return false;
}

/** Rows of a table: those begun, and where it is not steady the next. */
function* weighings(cells: RunCells, table: Weighed, inUse: readonly number[]): Generator<Step> {
  const { first, last, strip } = table.rows;
  const isFilled = (row: number): boolean => inUse.some((sample) => !isBlank(cells, table.box(row, sample)));
  const isDrying = table === cells.sheet.drying;
  const isDone = isSteady(cells, table) || (isDrying && isAsWeighed(cells, inUse));
  for (let row = first; row <= last; row++) {
    if (isDone && !isFilled(row)) return;
    // What was read beside a row that has others below it is left as it is.
    const isPast = row < last && isFilled(row + 1);
    const clock = isDrying && !isPast ? { clock: cell(row, CLOCK) } : {};
    if (!isPast && !isFilled(row)) yield* zeros(cells, strip, row - first, "before");
    for (const sample of inUse) yield step(cells, table.box(row, sample), { ...clock, table });
    if (isPast || strip === undefined) continue;
    if (isDrying && cells.sheet.options.temperatures)
      for (const column of ["room", "warmth"] as const) yield step(cells, stripCell(strip.first + row - first, column), { isOptional: true });
    yield* zeros(cells, strip, row - first, "after");
  }
}

/** The firings with what is noted of each, as far as it is noted before its weighing. */
function* firings(cells: RunCells, table: Fired, inUse: readonly number[]): Generator<Step> {
  const { first, fire } = table.rows;
  const rows = [...weighings(cells, table, inUse)];
  for (const one of rows) {
    const row = one.at.row;
    const isFirstOfRow = one.table !== undefined && one.at.column === table.box(row, inUse[0] ?? 1).column;
    if (isFirstOfRow && isBlank(cells, one.at))
      for (const name of FIRE_COLUMNS) if (name !== "seen") yield step(cells, table.fire(fire.first + row - first)[name], { isOptional: true });
    yield one;
  }
}

function* zeros(
  { sheet, ...rest }: RunCells,
  strip: Pick<StripRows, "vessel" | "first"> | undefined,
  place: number | "vessel",
  when: "before" | "after",
): Generator<Step> {
  if (!sheet.options.panZeros || strip === undefined) return;
  const row = place === "vessel" ? strip.vessel : strip.first + place;
  if (row !== undefined) yield step({ sheet, ...rest }, cell(row, STRIP_COLUMNS[when]), { isOptional: true });
}

/** Of a kind of run that is not known here: the blank boxes of the row that the sheet names next. */
function* rowOfSheet(cells: RunCells): Generator<Step> {
  const { sheet, at } = cells;
  const row = Number(at(sheet.working.next.row, sheet.working.next.column));
  if (!(row > 0)) return;
  for (let column = 1; column <= sheet.columns.verdict; column++)
    if (isBox(cells.planned(row, column)) && cells.ruleOver(row, column)?.allow.kind !== "anything") yield step(cells, cell(row, column), {});
}

function step(cells: RunCells, at: Cell, more: Partial<Step>): Step {
  const { text, unit } = nameOf(cells, at);
  const kind = cells.planned(at.row, at.column)?.format === "hh:mm" ? "clock" : "reading";
  return { at, name: text, unit, kind, isOptional: false, ...more };
}
