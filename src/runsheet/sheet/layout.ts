import type { BlockName } from "../BlockName";
import { BENCH, has, isFired, KINDS } from "../kinds";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { cautions } from "../words/cautions";
import type { checkWords } from "../words/checkWords";
import { plannedLines } from "../words/planWords";
import type { resultWords } from "../words/resultWords";
import { settingWords } from "../words/settingWords";
import { VESSEL_MATERIALS } from "../words/vesselMaterials";
import { BALANCE_BLOCKS, BALANCE_CHECKS, type BalanceCheck } from "./balanceRows";
import { caughtRows } from "./caughtRows";
import { checksOf } from "./checksOf";
import { HEAD, HEIGHT } from "./heights";
import { printedWidths } from "./columnWidths";
import { onPaper } from "./onPaper";
import { blocksOnPageOne, pageFor, type Page } from "./pages";
import { Rows } from "./Rows";
import { sharesOf } from "./sharesOf";

export type CheckName = keyof (typeof checkWords)["names"];
export type ShareName = keyof (typeof resultWords)["shares"];
export type Setting = keyof (typeof settingWords)["boxes"];
export const ELEMENTS = ["carbon", "hydrogen", "oxygen", "nitrogen", "sulfur"] as const;
export type Element = (typeof ELEMENTS)[number];
/** What the comparison with open burning tells, one a row beside the boxes of the analysis. */
export const COMPARED = ["oxygenTaken", "air", "gases", "ashLeft", "notCovered", "vapourLeft", "charLeft"] as const;
export type Compared = (typeof COMPARED)[number];

const NOTE_ROWS = 2;
const CURVE_ROWS = 17;

/** Rows of weighings with their total, and below them those of pan zeros and temperatures where the sheet has them. */
export interface WeighedRows {
  readonly heading: number;
  readonly first: number;
  readonly last: number;
  readonly total: number;
  readonly strip: StripRows | undefined;
}

/** One row for each weighing: `vessel` for that of the empty vessel. */
export interface StripRows {
  readonly heading: number;
  readonly vessel: number | undefined;
  readonly first: number;
}

export interface FiredRows extends WeighedRows {
  readonly fire: { readonly heading: number; readonly first: number; readonly last: number };
}

export interface DryingRows extends WeighedRows {
  readonly vessel: number;
}

const BLOCKS = {
  setup: (_: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), ...rows.each(["date", "material", "samples"], HEIGHT.box) }),
  compound: (_: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), ...rows.each(["formula", "residue", "water"], HEIGHT.box) }),
  drying: ({ weighIns, panZeros, temperatures }: CheckedOptions, rows: Rows): DryingRows => {
    const [heading, vessel] = [rows.next(HEIGHT.band), rows.next(HEIGHT.box)];
    return { heading, vessel, ...weighed(rows, weighIns, panZeros || temperatures, panZeros) };
  },
  charring: (options: CheckedOptions, rows: Rows): FiredRows => fired(rows, options.charFirings, options.panZeros),
  ashing: (options: CheckedOptions, rows: Rows): FiredRows => fired(rows, options.ashFirings, options.panZeros),
  caught: caughtRows,
  stages: (options: CheckedOptions, rows: Rows): FiredRows => fired(rows, options.stages ?? 0, options.panZeros),
  heating: (options: CheckedOptions, rows: Rows): FiredRows => fired(rows, options.charFirings, options.panZeros),
  end: ({ kind, panZeros, plan, degrees }: CheckedOptions, rows: Rows) => {
    const heading = rows.next(HEIGHT.band);
    const vessel = isFired(kind) ? rows.next(HEIGHT.box) : undefined;
    const strip = panZeros && vessel !== undefined ? { heading: rows.next(HEIGHT.fireBand), vessel: rows.next(HEIGHT.box) } : undefined;
    const planned = plannedLines(plan, degrees).map(() => rows.next(HEIGHT.note));
    return { heading, vessel, strip, planned, notes: rows.run(NOTE_ROWS, HEIGHT.box) };
  },
  cautions: ({ kind }: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), ...rows.run(cautions[kind].length, HEIGHT.caution) }),
  results: (options: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    shares: rows.each(sharesOf(options), HEIGHT.result) as Readonly<Partial<Record<ShareName, number>>>,
    foot: rows.next(HEIGHT.line),
    ...(has(options.kind, "caught") ? { ledgerFoot: rows.next(HEIGHT.line) } : {}),
  }),
  checks: (options: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    lines: (options.kind === "balance" ? BALANCE_CHECKS : checksOf(options)).map((check) => ({ check, row: rows.next(HEIGHT.check) })),
  }),
  settings: (options: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), boxes: settingRows(options, rows) }),
  openFire: (_: CheckedOptions, rows: Rows) => {
    const heading = rows.next(HEIGHT.band);
    const boxes = rows.each([...ELEMENTS, "exactness", "formula"], HEIGHT.box);
    return { heading, boxes, note: rows.next(HEIGHT.note) };
  },
  curves: (_: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), ...rows.run(CURVE_ROWS, HEIGHT.curve) }),
  materials: (_: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    ...rows.run(VESSEL_MATERIALS.length, HEIGHT.note),
    note: rows.next(HEIGHT.note),
  }),
  ...BALANCE_BLOCKS,
} as const;

function settingRows(options: CheckedOptions, rows: Rows): Readonly<Partial<Record<Setting, number>>> {
  const wanted = (Object.keys(settingWords.boxes) as Setting[]).filter((name) => isWanted(name, options));
  return rows.each(wanted, HEIGHT.box);
}

function isWanted(name: Setting, { kind, replicates, plan }: CheckedOptions): boolean {
  if (name === "planned") return plan !== undefined;
  if (name === "closed") return isFired(kind);
  return name !== "methodScatter" || replicates > 1;
}

function weighed(rows: Rows, count: number, hasStrip: boolean, hasVessel: boolean): Omit<WeighedRows, "heading"> {
  const { first, last } = rows.run(count, HEIGHT.box);
  const total = rows.next(HEIGHT.total);
  if (!hasStrip) return { first, last, total, strip: undefined };
  const heading = rows.next(HEIGHT.fireBand);
  const vessel = hasVessel ? rows.next(HEIGHT.box) : undefined;
  return { first, last, total, strip: { heading, vessel, first: rows.run(count, HEIGHT.box).first } };
}

function fired(rows: Rows, count: number, panZeros: boolean): FiredRows {
  const fire = { heading: rows.next(HEIGHT.fireBand), ...rows.run(count, HEIGHT.box) };
  const heading = rows.next(HEIGHT.band);
  return { fire, heading, ...weighed(rows, count, panZeros, false) };
}

type Blocks = { readonly [Name in BlockName]: ReturnType<(typeof BLOCKS)[Name]> };
type OfBalance = keyof typeof BALANCE_BLOCKS;
type OfSamples = "setup" | "drying" | "end" | "results" | "settings" | "materials";
type Always = "cautions" | "curves";

/** What is looked at, one a row. */
export interface CheckRows<Name extends string> {
  readonly heading: number;
  readonly lines: readonly { readonly check: Name; readonly row: number }[];
}

/** Rows, from 1, of what every sheet has. */
export interface Placed extends Pick<Blocks, Always> {
  readonly head: Readonly<Record<keyof typeof HEAD, number>>;
  /** Points, row by row. */
  readonly heights: readonly number[];
  /** From top to bottom. */
  readonly order: readonly BlockName[];
  /** Rows that begin a page. */
  readonly breaks: readonly number[];
  readonly last: number;
  readonly page: Page;
  /** The last row that is printed. */
  readonly printedTo: number;
}

/** Rows of everything on a sheet of samples; undefined for a block that its kind does not have. */
export interface Layout extends Placed, Pick<Blocks, OfSamples>, Partial<Omit<Blocks, OfSamples | OfBalance | Always | "checks">> {
  readonly checks: CheckRows<CheckName>;
}

/** Rows of everything on a balance check. */
export interface BalanceLayout extends Placed, Pick<Blocks, OfBalance> {
  readonly checks: CheckRows<BalanceCheck>;
}

/** How many rows stay in view and come again on every page: what run this is, its answer, its checks. */
export const HEAD_ROWS = 3;

// Every kind of run on samples has the blocks named in OfSamples and Always, and a balance check those in OfBalance.
export const layout = (options: CheckedOptions): Layout => placed(options) as Placed & Blocks as Layout;
export const balanceLayout = (options: CheckedOptions): BalanceLayout => placed(options) as Placed & Blocks as BalanceLayout;

/** Rows of everything on the sheet for these options, without a blank row between blocks. */
function placed(options: CheckedOptions): Placed {
  const rows = new Rows();
  // As in Rows.each, with heights of their own.
  const head = Object.fromEntries(Object.entries(HEAD).map(([name, height]) => [name, rows.next(height)])) as Layout["head"];
  const repeated = HEAD.title + HEAD.answer + HEAD.checks;
  const [before, page] = [rows.total, pageFor(printedWidths(options))];
  const made: Partial<Record<BlockName, unknown>> = {};
  const blocks = inOrder(options, page, before).map((name) => {
    const [start, above] = [rows.heights.length + 1, rows.total];
    made[name] = BLOCKS[name](options, rows);
    return { name, start, height: rows.total - above };
  });
  const { breaks, notFrom, spare } = onPaper(page, before, repeated, blocks, CURVE_ROWS);
  const { first, last } = (made as Blocks).curves;
  const heights = rows.heights.map((height, index) => (index + 1 < first || index + 1 > last ? height : height + spare));
  const printedTo = (notFrom ?? heights.length + 1) - 1;
  return { ...(made as Blocks), head, heights, order: blocks.map(({ name }) => name), breaks, last: heights.length, page, printedTo };
}

/** The blocks from top to bottom, the cautions below those of the bench that fit on page one with them. */
function inOrder(options: CheckedOptions, page: Page, before: number): readonly BlockName[] {
  const every = KINDS[options.kind];
  const bench = every.filter((name) => BENCH.includes(name));
  const measuredBench = bench.map((name) => measured(name, options));
  const fitting = Math.max(1, blocksOnPageOne(page, before, measuredBench, measured("cautions", options)));
  const count = options.cautionsAfter === undefined ? fitting : bench.indexOf(options.cautionsAfter) + 1;
  const others = every.filter((name) => !BENCH.includes(name) && name !== "cautions");
  return [...bench.slice(0, count), "cautions", ...bench.slice(count), ...others];
}

function measured(name: BlockName, options: CheckedOptions): { height: number } {
  const rows = new Rows();
  BLOCKS[name](options, rows);
  return { height: rows.total };
}
