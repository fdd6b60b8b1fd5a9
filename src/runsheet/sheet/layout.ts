import type { BlockName } from "../BlockName";
import { BENCH, has, KINDS } from "../kinds";
import type { CheckedOptions } from "../options/RunSheetOptions";
import { cautions } from "../words/cautions";
import type { checkWords } from "../words/checkWords";
import type { resultWords } from "../words/resultWords";
import { settingWords } from "../words/settingWords";
import { VESSEL_MATERIALS } from "../words/vesselMaterials";
import { beginPages, blocksOnPageOne } from "./pages";
import { Rows } from "./Rows";

export type CheckName = keyof (typeof checkWords)["names"];
export type ShareName = keyof (typeof resultWords)["shares"];
export type Setting = keyof (typeof settingWords)["boxes"];
export const ELEMENTS = ["carbon", "hydrogen", "oxygen", "nitrogen", "sulfur"] as const;
export type Element = (typeof ELEMENTS)[number];
/** What the comparison with open burning tells, one a row beside the boxes of the analysis. */
export const COMPARED = ["oxygenTaken", "air", "gases", "ashLeft", "notCovered", "vapourLeft", "charLeft"] as const;
export type Compared = (typeof COMPARED)[number];

/** Points. A box printed at 82 % is 6.07 mm high, enough to write in by hand. */
const HEIGHT = { band: 16.5, fireBand: 27, box: 21, total: 18, caution: 12.75, result: 16, check: 15, line: 15, note: 14 } as const;
const HEAD = { title: 19.5, answer: 18, checks: 16.5, covers: 15, openly: 15 } as const;
const NOTE_ROWS = 2;
const CURVE_ROWS = 17;

/** What is looked at on a sheet for these options, in its order. */
export const checksOf = ({ kind, panZeros, temperatures, replicates }: CheckedOptions): readonly CheckName[] => {
  const only = (isWanted: boolean, ...names: CheckName[]): CheckName[] => (isWanted ? names : []);
  const [charring, ashing] = [has(kind, "charring"), has(kind, "ashing")];
  return [
    ...(["vessel", "times", "rows", "gain", "order", "dryness"] as const),
    ...only(charring, "opened", "charDone"),
    ...only(ashing, "ashDone"),
    ...only(charring, "air", "vesselAgain"),
    ...only(replicates > 1, "agree"),
    ...(["fine", "range", "material"] as const),
    ...only(charring, "analysis"),
    ...only(panZeros, "zeros"),
    ...only(temperatures, "warmth"),
    "typedOver",
  ];
};

export const sharesOf = ({ kind }: CheckedOptions): readonly ShareName[] => [
  ...(["moistureWet", "moistureDry"] as const),
  ...(has(kind, "charring") ? (["volatile", "charYield"] as const) : []),
  ...(has(kind, "ashing") ? (["charYieldAshFree", "ash"] as const) : []),
];

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
  drying: ({ weighIns, panZeros, temperatures }: CheckedOptions, rows: Rows): DryingRows => {
    const [heading, vessel] = [rows.next(HEIGHT.band), rows.next(HEIGHT.box)];
    return { heading, vessel, ...weighed(rows, weighIns, panZeros || temperatures, panZeros) };
  },
  charring: (options: CheckedOptions, rows: Rows): FiredRows => fired(rows, options.charFirings, options.panZeros),
  ashing: (options: CheckedOptions, rows: Rows): FiredRows => fired(rows, options.ashFirings, options.panZeros),
  end: ({ kind, panZeros }: CheckedOptions, rows: Rows) => {
    const heading = rows.next(HEIGHT.band);
    const vessel = has(kind, "charring") ? rows.next(HEIGHT.box) : undefined;
    const strip = panZeros && vessel !== undefined ? { heading: rows.next(HEIGHT.fireBand), vessel: rows.next(HEIGHT.box) } : undefined;
    return { heading, vessel, strip, notes: rows.run(NOTE_ROWS, HEIGHT.box) };
  },
  cautions: ({ kind }: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), ...rows.run(cautions[kind].length, HEIGHT.caution) }),
  results: (options: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    shares: rows.each(sharesOf(options), HEIGHT.result) as Readonly<Partial<Record<ShareName, number>>>,
    foot: rows.next(HEIGHT.line),
  }),
  checks: (options: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    lines: checksOf(options).map((check) => ({ check, row: rows.next(HEIGHT.check) })),
  }),
  settings: (options: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), boxes: settingRows(options, rows) }),
  openFire: (_: CheckedOptions, rows: Rows) => {
    const heading = rows.next(HEIGHT.band);
    const boxes = rows.each([...ELEMENTS, "exactness", "formula"], HEIGHT.box);
    return { heading, boxes, note: rows.next(HEIGHT.note) };
  },
  curves: (_: CheckedOptions, rows: Rows) => ({ heading: rows.next(HEIGHT.band), ...rows.run(CURVE_ROWS, HEIGHT.line) }),
  materials: (_: CheckedOptions, rows: Rows) => ({
    heading: rows.next(HEIGHT.band),
    ...rows.run(VESSEL_MATERIALS.length, HEIGHT.note),
    note: rows.next(HEIGHT.note),
  }),
} as const;

function settingRows(options: CheckedOptions, rows: Rows): Readonly<Partial<Record<Setting, number>>> {
  const wanted = (Object.keys(settingWords.boxes) as Setting[]).filter((name) => isWanted(name, options));
  return rows.each(wanted, HEIGHT.box);
}

function isWanted(name: Setting, { kind, replicates }: CheckedOptions): boolean {
  if (name === "closed") return has(kind, "charring");
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
type Always = "setup" | "drying" | "end" | "cautions" | "results" | "checks" | "settings" | "curves" | "materials";

/** Rows, from 1, of everything on a sheet; undefined for a block that its kind does not have. */
export interface Layout extends Pick<Blocks, Always>, Partial<Omit<Blocks, Always>> {
  readonly head: Readonly<Record<keyof typeof HEAD, number>>;
  /** Points, row by row. */
  readonly heights: readonly number[];
  /** From top to bottom. */
  readonly order: readonly BlockName[];
  /** Rows that begin a page. */
  readonly breaks: readonly number[];
  readonly last: number;
}

/** How many rows stay in view and come again on every page: what run this is, its answer, its checks. */
export const HEAD_ROWS = 3;

/** Rows of everything on the sheet for these options, without a blank row between blocks. */
export function layout(options: CheckedOptions): Layout {
  const rows = new Rows();
  // As in Rows.each, with heights of their own.
  const head = Object.fromEntries(Object.entries(HEAD).map(([name, height]) => [name, rows.next(height)])) as Layout["head"];
  const repeated = HEAD.title + HEAD.answer + HEAD.checks;
  const { order, onPageOne } = inOrder(options, rows.total);
  const made: Partial<Record<BlockName, unknown>> = {};
  const starts: number[] = [];
  for (const name of order) {
    starts.push(rows.heights.length + 1);
    made[name] = BLOCKS[name](options, rows);
  }
  const later = order.slice(onPageOne).map((name) => measured(name, options));
  const breaks = beginPages(repeated, later).map((index) => starts[onPageOne + index] ?? 0);
  // Every kind has the blocks named in Always.
  return { ...(made as Blocks), head, heights: rows.heights, order, breaks, last: rows.heights.length };
}

/** The blocks from top to bottom with the cautions as the last on page one, and how many stand there. */
function inOrder(options: CheckedOptions, before: number): { order: readonly BlockName[]; onPageOne: number } {
  const every = KINDS[options.kind];
  const bench = every.filter((name) => BENCH.includes(name));
  const measuredBench = bench.map((name) => measured(name, options));
  const fitting = Math.max(1, blocksOnPageOne(before, measuredBench, measured("cautions", options)));
  const count = options.cautionsAfter === undefined ? fitting : bench.indexOf(options.cautionsAfter) + 1;
  const others = every.filter((name) => !BENCH.includes(name) && name !== "cautions");
  return { order: [...bench.slice(0, count), "cautions", ...bench.slice(count), ...others], onPageOne: count + 1 };
}

function measured(name: BlockName, options: CheckedOptions): { height: number } {
  const rows = new Rows();
  BLOCKS[name](options, rows);
  return { height: rows.total };
}
