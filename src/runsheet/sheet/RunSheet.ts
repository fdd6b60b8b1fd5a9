import { cell, fixed, range, type Cell, type Range } from "../expressions/Expression";
import type { CheckedOptions } from "../options/RunSheetOptions";
import type { CaughtRows, LedgerBox } from "./caughtRows";
import { CLOCK, columns, LABEL, type Columns } from "./Columns";
import { layout, type Element, type FiredRows, type Layout, type Placed, type Setting, type ShareName, type WeighedRows } from "./layout";
import { massFormats, type MassFormats } from "./massFormats";
import { judgedBy } from "./sharesOf";

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
  /** The last clock box that holds no time, and the last for minutes held that holds none, as numbers; 0 for none. */
  readonly wrongClock: Cell;
  readonly wrongHeld: Cell;
  weighingsLeft(sample: number): Cell;
  /** What contradicts in a sample's weights, "" for nothing. */
  contradiction(sample: number): Cell;
  /** ± 95 % of all samples together: on a sheet of one sample that of its weighing. */
  together(name: ShareName): Cell;
  /** How the samples of a row of the results agree (AGREEMENT), on a sheet of several; rows that are judged alike have one cell. */
  agreement(name: ShareName): Cell;
}

/** Weighings one below the other, the same round of all samples in a row. */
export interface Weighed {
  readonly rows: WeighedRows;
  /** A box, what was lost since the weighing before, and the verdict on the row. */
  box(row: number, sample: number): Cell;
  lost(row: number, sample: number): Cell;
  verdict(row: number): Cell;
  /** All boxes of a sample, down to and with the empty cell in the row of the total, so that rows put in above it belong to it. */
  boxes(sample: number): Range;
  /** What counts, g with the vessel: the boxes, or working cells with what the sheet makes of them. */
  counted(sample: number): Range;
  /** Minutes, beside what counts. */
  readonly minutes: Range;
  /** Since which weighing a sample is steady, or why it is not; and all samples together, 0 while not. */
  steady(sample: number): Cell;
  readonly allSteady: Cell;
  /** What is left at the end of the table, g without the vessel. */
  net(sample: number): Cell;
}

export interface Fired extends Weighed {
  readonly rows: FiredRows;
  /** The vessel as it was while this was weighed, g. */
  vessel(sample: number): Cell;
  fire(row: number): Readonly<Record<FireColumn, Cell>>;
}

/** What a salt or mineral is by its formula, and what follows from that. */
export interface Salt {
  readonly rows: { readonly heading: number; readonly formula: number; readonly residue: number; readonly water: number };
  readonly formula: Cell;
  readonly residue: Cell;
  /** Whether its surface water is dried off first, or it is heated as weighed in. */
  readonly water: Cell;
  /** Theoretical loss, its equation, and g/mol of start and residue: calls of ours alone in a cell, nothing while not asked. */
  readonly theory: Cell;
  readonly equation: Cell;
  readonly startMass: Cell;
  readonly residueMass: Cell;
  /** Waters lost by theory for one formula of the residue; and 1 where nothing but water leaves, else 0. */
  readonly waters: Cell;
  readonly isWater: Cell;
}

/** The apparatus that catches liquids, part by part, each sample's in its own column. */
export interface Caught {
  readonly rows: CaughtRows;
  /** A part's weight before the fire and after it, and its gain; parts from 0. */
  before(part: number, sample: number): Cell;
  after(part: number, sample: number): Cell;
  gain(part: number, sample: number): Cell;
  readonly parts: readonly number[];
  /** The same of all parts, down to and with the row below, where no number stands, so that rows put in there belong to them. */
  befores(sample: number): Range;
  afters(sample: number): Range;
  /** Gas, g, water in the liquids, %, moisture of a sample fed moist, %, and what either % is known to, %. */
  box(name: LedgerBox, sample: number): Cell;
  /** Parts weighed both before and after; what they gained, g: nothing until each that was weighed once is weighed twice. */
  pairs(sample: number): Cell;
  liquids(sample: number): Cell;
  /** What went into the fire, g: the dry sample and its water; char, liquids and gas together, g. */
  fed(sample: number): Cell;
  found(sample: number): Cell;
  says(row: number): Cell;
}

export const FIRE_COLUMNS = ["lit", "set", "measured", "held", "quiet", "opened", "seen"] as const;
export type FireColumn = (typeof FIRE_COLUMNS)[number];

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
      weighingsLeft: (sample) => work(setup.material, sample),
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

function caughtCells(at: Columns, rows: CaughtRows): Caught {
  const parts = Array.from({ length: rows.last - rows.first + 1 }, (_, index) => index);
  const down = (cellAt: (row: number) => Cell, first: number, below: number): Range => range(fixed(cellAt(first)), fixed(cellAt(below)));
  return {
    rows,
    parts,
    before: (part, sample) => fixed(at.box(rows.before.first + part, sample)),
    after: (part, sample) => fixed(at.box(rows.first + part, sample)),
    gain: (part, sample) => fixed(at.reckoned(rows.first + part, sample)),
    befores: (sample) => down((row) => at.box(row, sample), rows.before.first, rows.heading),
    afters: (sample) => down((row) => at.box(row, sample), rows.first, rows.total),
    box: (name, sample) => fixed(at.box(rows.boxes[name], sample)),
    pairs: (sample) => fixed(at.working(rows.total, sample)),
    liquids: (sample) => fixed(at.reckoned(rows.total, sample)),
    fed: (sample) => fixed(at.working(rows.before.heading, sample)),
    found: (sample) => fixed(at.working(rows.heading, sample)),
    says: (row) => cell(row, at.verdict),
  };
}

function saltCells(at: Columns, rows: Salt["rows"]): Salt {
  const value = (row: number): Cell => fixed(cell(row, CLOCK));
  const work = (row: number, place: number): Cell => fixed(at.working(row, place));
  return {
    rows,
    formula: value(rows.formula),
    residue: value(rows.residue),
    water: value(rows.water),
    theory: work(rows.formula, 1),
    startMass: work(rows.formula, 2),
    equation: work(rows.residue, 1),
    residueMass: work(rows.residue, 2),
    waters: work(rows.water, 1),
    isWater: work(rows.water, 2),
  };
}

/** @param from the first row of what counts: that of the heading where the weighing before stands there */
function weighed(at: Columns, rows: WeighedRows, from: number, isWorked: boolean): Omit<Weighed, "steady" | "allSteady"> {
  const down = (first: Cell, last: Cell): Range => range(fixed(first), fixed(last));
  const boxes = (sample: number): Range => down(at.box(rows.first, sample), at.box(rows.total, sample));
  return {
    rows,
    box: (row, sample) => at.box(row, sample),
    lost: (row, sample) => at.reckoned(row, sample),
    verdict: (row) => cell(row, at.verdict),
    boxes,
    counted: (sample) => (isWorked ? down(at.working(from, sample), at.working(rows.total, sample)) : boxes(sample)),
    minutes: down(cell(from, at.elapsed), cell(rows.total, at.elapsed)),
    net: (sample) => fixed(at.reckoned(rows.total, sample)),
  };
}

function fired(at: Columns, rows: FiredRows): Fired {
  const { fire } = rows;
  return {
    ...weighed(at, rows, rows.heading, true),
    rows,
    // Not beside the heading, where the minutes of the table above reach one row past its total.
    steady: (sample) => fixed(at.working(fire.first, sample)),
    allSteady: fixed(cell(fire.first, at.elapsed)),
    vessel: (sample) => fixed(at.working(fire.heading, sample)),
    fire: (row) => Object.fromEntries(FIRE_COLUMNS.map((name, index) => [name, cell(row, CLOCK + index)])) as Record<FireColumn, Cell>,
  };
}

/** A cell for each named row. */
export const cellEach = <Name extends string>(rows: Readonly<Record<Name, number>>, at: (row: number) => Cell): Readonly<Record<Name, Cell>> =>
  // Object.fromEntries forgets which names it was given.
  Object.fromEntries(Object.entries<number>(rows).map(([name, row]) => [name, at(row)])) as Record<Name, Cell>;
