import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { caughtCells, type Caught } from "./Caught";
import { CLOCK, columns, LABEL, type Columns } from "./Columns";
import { layout, type Element, type Layout, type Placed, type Setting, type ShareName } from "./layout";
import { massFormats, type MassFormats } from "./massFormats";
import { judgedBy } from "./sharesOf";
import { saltCells, type Salt } from "./Salt";
import { fired, weighed, type Fired, type Weighed } from "./Weighed";

/** What every kind of sheet has. */
export interface Sheet {
  readonly options: CheckedOptions;
  readonly formats: MassFormats;
  readonly rows: Placed;
  readonly columns: Columns;
  /** Samples from 1. */
  readonly samples: readonly number[];
}

/** Everything that the blocks of a run sheet share, made once: what it was asked for, how masses show, and where each cell stands. */
export interface RunSheet extends Sheet {
  readonly rows: Layout;
  readonly setup: Readonly<Record<"date" | "operator" | "material" | "samplesAre", Cell>> & { name(sample: number): Cell };
  /** Undefined where the kind of run has no use for a setting. */
  readonly settings: Readonly<Record<Setting, Cell>>;
  readonly working: Working;
  readonly drying: Weighed;
  /** Undefined for a run that ends with drying. */
  readonly charring: Fired | undefined;
  /** Undefined for a run that ends with charring. */
  readonly ashing: Fired | undefined;
  /** Liquids caught, on a run that catches them. */
  readonly caught: Caught | undefined;
  /** Staged heating, on a run of it. */
  readonly stages: Fired | undefined;
  /** The heating of a salt or mineral, and what that is. */
  readonly heating: Fired | undefined;
  readonly salt: Salt | undefined;
  /** Tables of weighings in the order of the work, and those of them that follow a fire. */
  readonly tables: readonly Weighed[];
  readonly fired: readonly Fired[];
  /** The box of the empty vessel weighed again, undefined for a run that ends with drying, and what it gained. */
  readonly end: { vessel(sample: number): Cell; gain(sample: number): Cell } | undefined;
  /** What burns: its formula, or an analysis in percent with how exact that is. */
  readonly composition: Composition | undefined;
  readonly materials: { readonly names: Range; readonly stand: Range };
  /** The empty vessel, g, 0 where the balance was tared; nothing while not known. */
  vessel(sample: number): Cell;
  share(name: ShareName, sample: number): Cell;
  /** ± 95 % of a share, by weighing alone. */
  plusMinus(name: ShareName, sample: number): Cell;
  /** The same cells of all samples side by side. */
  across(at: (sample: number) => Cell): Range;
}

/** Cells right of everything printed. */
export interface Working {
  /** Standard uncertainty of one weighing, g, and the change that two of them explain, g. */
  readonly u: Cell;
  readonly explained: Cell;
  /** The row of the next box, 0 when all is weighed. */
  readonly next: Cell;
  /** How many samples are under way. */
  readonly inUse: Cell;
  /** How many verdicts cannot be given because the spreadsheet does not know our functions: 0 wherever Retort is installed. */
  readonly absent: Cell;
  /** When round 1 was, in days: with its date where that is known. */
  readonly start: Cell;
  /** Where two samples stand crosswise while drying, and in the first table after a fire, as numbers; on a sheet of several. */
  readonly crosswise: Cell;
  readonly crosswiseFired: Cell;
  /**
   * The last clock box that holds no time, and the last for minutes held that holds none, as numbers; 0 for none. The first is below 0 where a box
   * holds a truth (formulas/truths).
   */
  readonly wrongClock: Cell;
  readonly wrongHeld: Cell;
  /** What may still dry off a sample that was shown dry, g. */
  yetToDry(sample: number): Cell;
  /** What contradicts in a sample's weights, "" for nothing. */
  contradiction(sample: number): Cell;
  /** ± 95 % of all samples together: on a sheet of one sample that of its weighing. */
  together(name: ShareName): Cell;
  /** How the samples of a row of the results agree (AGREEMENT), on a sheet of several; rows that are judged alike have one cell. */
  agreement(name: ShareName): Cell;
}

export interface Composition extends Readonly<Record<Element, Cell>> {
  readonly formula: Cell;
  /** How far each share may be off, percent of the dry sample, 95 %. */
  readonly exactness: Cell;
  readonly note: Cell;
}

/** The sheet for options that serve, as checkOptions gives them; a balance check has one of its own, balanceSheet. */
export function runSheet(options: CheckedOptions): RunSheet {
  if (options.kind === "balance") throw new Error(options.kind);
  const [rows, at] = [layout(options), columns(options)];
  const { head, setup, drying, charring, ashing, caught, stages, heating, compound, end, results, openFire, materials } = rows;
  const timesRow = rows.checks.lines.find(({ check }) => check === "times")?.row ?? 0;
  const value = (row: number): Cell => fixed(cell(row, CLOCK));
  const work = (row: number, place = 1): Cell => fixed(at.working(row, place));
  const list = (column: number): Range => range(fixed(cell(materials.first, column)), fixed(cell(materials.last, column)));
  const plusMinus = (name: ShareName, sample: number): Cell => fixed(at.reckoned(results.shares[name] ?? 0, sample));
  const dried: Weighed = {
    ...weighed(at, drying, drying.first, options.panZeros),
    steady: (sample) => work(head.openly, sample),
    allSteady: fixed(cell(head.openly, at.elapsed)),
  };
  const fires = {
    charring: charring && fired(at, charring),
    ashing: ashing && fired(at, ashing),
    stages: stages && fired(at, stages),
    heating: heating && fired(at, heating),
  };
  const everyFire = [fires.charring, fires.ashing, fires.stages, fires.heating].filter((table) => table !== undefined);
  return {
    options,
    formats: massFormats(options),
    rows,
    columns: at,
    setup: {
      date: value(setup.date),
      operator: fixed(at.box(setup.date, 1)),
      material: value(setup.material),
      samplesAre: value(setup.samples),
      name: (sample) => fixed(at.box(setup.samples, sample)),
    },
    // A setting that the kind has no use for has no row, and no block asks for it.
    settings: cellEach(rows.settings.boxes as Readonly<Record<Setting, number>>, value),
    working: {
      u: work(head.answer),
      explained: work(head.answer, 2),
      next: work(head.checks),
      inUse: work(head.covers),
      absent: work(head.covers, 2),
      start: work(setup.date),
      crosswise: work(setup.date, 2),
      crosswiseFired: work(setup.date, 3),
      wrongClock: work(timesRow),
      wrongHeld: work(timesRow, 2),
      yetToDry: (sample) => work(setup.material, sample),
      contradiction: (sample) => work(setup.samples, sample),
      agreement: (name) => work(results.shares[judgedBy(name)] ?? 0, 2),
      together: (name) => (options.replicates === 1 ? plusMinus(name, 1) : work(results.shares[name] ?? 0)),
    },
    drying: dried,
    ...fires,
    caught: caught && caughtCells(at, caught),
    salt: compound && saltCells(at, compound),
    tables: [dried, ...everyFire],
    fired: everyFire,
    end: end.vessel === undefined ? undefined : endCells(at, end.vessel),
    composition: openFire && { ...cellEach(openFire.boxes, value), note: fixed(cell(openFire.note, LABEL)) },
    materials: { names: list(LABEL), stand: list(CLOCK) },
    samples: Array.from({ length: options.replicates }, (_, index) => index + 1),
    vessel: (sample) => work(drying.vessel, sample),
    share: (name, sample) => fixed(at.box(results.shares[name] ?? 0, sample)),
    plusMinus,
    across: (cellOf) => range(cellOf(1), cellOf(options.replicates)),
  };
}

const endCells = (at: Columns, row: number): NonNullable<RunSheet["end"]> => ({
  vessel: (sample) => fixed(at.box(row, sample)),
  gain: (sample) => fixed(at.reckoned(row, sample)),
});

/** A cell for each named row. */
export const cellEach = <Name extends string>(rows: Readonly<Record<Name, number>>, at: (row: number) => Cell): Readonly<Record<Name, Cell>> =>
  // Object.fromEntries forgets which names it was given.
  Object.fromEntries(Object.entries<number>(rows).map(([name, row]) => [name, at(row)])) as Record<Name, Cell>;
