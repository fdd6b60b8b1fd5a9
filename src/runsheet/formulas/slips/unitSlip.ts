import { all, any, countWhere, NOTHING, product, sum, when, type Condition } from "../../expressions/choices";
import { fixed, fn, is, range, reckon, type Expression, type Range } from "../../expressions/Expression";
import { nameBelow, nameOf } from "../../expressions/formulaText";
import type { Caught } from "../../sheet/Caught";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Weighed } from "../../sheet/Weighed";
import { checkWords } from "../../words/checkWords";
import { lastCellWhere, lastRowWhere } from "../cellsNamed";
import { block, pairsOf } from "../weighings";

const { units, belowZero } = checkWords.order;

// Nothing that is heated is so many times heavier than before, nor lighter than its vessel; a point shifted by one place gives 10. Own bound.
const TOO_FAR = 20;
// One vessel, weighed twice: a thousand times but for scale. A receiver may take up many times its own weight. Own bounds.
const VESSEL_TOO_FAR = 100;
const PART_TOO_FAR = 300;

type Told = readonly [Condition, Expression];

const isBeyond = (heavy: Expression, times: number, light: Expression): Condition => is(heavy, ">", reckon(times, "*", light));

/** The name of the box of a sample that holds a weight, in whichever table it stands. */
const nameOfWeight = (tables: readonly Weighed[], sample: number, weight: Expression): Expression =>
  tables.reduceRight<Expression>((next, { box, boxes, rows }) => {
    const at = nameBelow(box(rows.first, sample), reckon(fn("MATCH", weight, boxes(sample), 0), "-", 1));
    return next === NOTHING ? at : fn("IFERROR", at, next);
  }, NOTHING);

/**
 * Two weights of a sample, or of its vessel or apparatus, that cannot both be grams, by name. A kilogram for a gram is a factor of 1000 from its
 * neighbours: such a weight lies far below the vessel, or far above what was weighed before. On a tared balance a weight may fall to any
 * residue, so that one that is last and light is none (isKilogram looks at its figures).
 */
export function unitSlips(sheet: RunSheet, sample: number): readonly Told[] {
  const { tables, drying, vessel, columns, rows, end, caught } = sheet;
  const boxes = tables.map((table) => table.boxes(sample));
  const [least, most] = [fn("MIN", ...boxes), fn("MAX", ...boxes)];
  const empty = columns.box(rows.drying.vessel, sample);
  const first = drying.box(drying.rows.first, sample);
  return [
    [is(least, "<", 0), belowZero(nameOfWeight(tables, sample, least))],
    [isBeyond(vessel(sample), TOO_FAR, least), units(nameOfWeight(tables, sample, least), nameOf(empty))],
    [isBeyond(most, TOO_FAR, fn("N", first)), units(nameOf(first), nameOfWeight(tables, sample, most))],
    ...tables.map((table): Told => risenIn(table, sample)),
    ...tables.slice(1).map((table, index): Told => risenSince(tables[index] ?? table, table, sample)),
    ...(end === undefined ? [] : [vesselsApart(sheet, end, sample)]),
    ...(caught === undefined ? [] : partApart(caught, sample)),
  ];
}

/** A weight far above the one before it in its table. */
function risenIn(table: Weighed, sample: number): Told {
  const [below, above] = pairsOf(table, sample);
  const holds = product(fn("ISNUMBER", below), fn("ISNUMBER", above), is(below, ">", reckon(TOO_FAR, "*", above)));
  const row = lastRowWhere(holds, below);
  const { first } = table.rows;
  const at = (rowsBack: number): Expression =>
    nameBelow(table.box(first, sample), reckon(reckon(row, "-", fn("ROW", table.box(first, sample))), "-", rowsBack));
  // A text among the boxes is an error in arithmetic, and told by the check of the rows.
  return [is(fn("IFERROR", countWhere(holds), 0), ">", 0), units(at(1), at(0))];
}

function risenSince(before: Weighed, after: Weighed, sample: number): Told {
  const [least, most] = [fn("MIN", before.boxes(sample)), fn("MAX", after.boxes(sample))];
  return [all(is(least, ">", 0), isBeyond(most, TOO_FAR, least)), units(nameOfWeight([before], sample, least), nameOfWeight([after], sample, most))];
}

function vesselsApart(sheet: RunSheet, end: NonNullable<RunSheet["end"]>, sample: number): Told {
  const { vessel, columns, rows } = sheet;
  const [before, again] = [fn("N", vessel(sample)), fn("N", end.vessel(sample))];
  const isApart = any(isBeyond(before, VESSEL_TOO_FAR, again), isBeyond(again, VESSEL_TOO_FAR, before));
  // On a tared balance the vessel weighs nothing before, and next to nothing again.
  return [all(is(before, ">", 0), is(again, ">", 0), isApart), units(nameOf(end.vessel(sample)), nameOf(columns.box(rows.drying.vessel, sample)))];
}

/** A part of the apparatus far lighter than it was empty, or far heavier than what it caught can make it. */
function partApart({ before, after, parts }: Caught, sample: number): Told[] {
  const down = (of: Caught["before"]): Range => range(fixed(of(0, sample)), fixed(of(parts.length - 1, sample)));
  const [empty, full] = [down(before), down(after)];
  const isFar = sum(is(empty, ">", reckon(TOO_FAR, "*", full)), is(full, ">", reckon(PART_TOO_FAR, "*", empty)));
  const holds = product(fn("ISNUMBER", empty), fn("ISNUMBER", full), isFar);
  const at = (of: Caught["before"], block: Range): Expression =>
    nameBelow(of(0, sample), reckon(lastRowWhere(holds, block), "-", fn("ROW", of(0, sample))));
  return [[is(fn("IFERROR", countWhere(holds), 0), ">", 0), units(at(before, empty), at(after, full))]];
}

// A weight in kilograms has fewer display steps than this where it has any of its figures; own bound.
const STEPS_OF_KILOGRAMS = 1000;
const PER_KILOGRAM = 1000;
// Ten places finer than the balance, and far from the other weights of the table; own bounds.
const TENTH = 10;
const FAR_FROM_OTHERS = 300;
const ROUNDING = 20;

// No balance has so many display steps, but for a few of below a kilogram; own bound.
const MOST_STEPS = 1_000_000;
const LEAST_OF_THEM = 1000;
const PARTS_OF_A_STEP = 10_000;

/** Whether so many times a weight is whole display steps. */
function isWhole(weight: Expression, step: Expression, times: number): Condition {
  const steps = reckon(reckon(times, "*", weight), "/", step);
  return is(reckon(fn("ABS", reckon(steps, "-", fn("ROUND", steps, 0))), "*", ROUNDING), "<", 1);
}

/** The same of figures alone: whether a weight is typed as no balance of that step shows it in grams, but shows it in kilograms. */
export const readsAsKilograms = (grams: number, step: number): boolean => {
  const isWholeOf = (times: number): boolean => Math.abs((times * grams) / step - Math.round((times * grams) / step)) * ROUNDING < 1;
  return grams > 0 && grams < STEPS_OF_KILOGRAMS * step && isWholeOf(PER_KILOGRAM) && !isWholeOf(TENTH);
};

/** Whether it is more than such a balance weighs, in whole thousands of steps as milligrams are. */
export const readsAsMilligrams = (grams: number, step: number): boolean => {
  const steps = grams / step / PER_KILOGRAM;
  return grams > LEAST_OF_THEM && grams > MOST_STEPS * step && Math.abs(steps - Math.round(steps)) * PARTS_OF_A_STEP < 1;
};

const isNot = (condition: Condition): Condition => is(condition, "=", false);

/**
 * Whether the lightest weight of a table has figures that the balance does not show and would show in kilograms: finer than a tenth of the
 * display step, or finer than the step and far below the others.
 */
export function isKilogram(sheet: RunSheet, table: Weighed): Condition {
  const [weights, step] = [block(sheet, table), sheet.settings.readability];
  const least = fn("MIN", weights);
  const isLone = all(isNot(isWhole(least, step, 1)), isBeyond(fn("MEDIAN", weights), FAR_FROM_OTHERS, least));
  const isFiner = any(isNot(isWhole(least, step, TENTH)), isLone);
  const isLight = is(least, "<", reckon(STEPS_OF_KILOGRAMS, "*", step));
  return when(all(is(fn("SUM", step), ">", 0), is(least, ">", 0)), all(isLight, isWhole(least, step, PER_KILOGRAM), isFiner), false);
}

/** The name of the lightest weight of a table. */
export const lightestOf = (sheet: RunSheet, table: Weighed): Expression => {
  const weights = block(sheet, table);
  return lastCellWhere(is(weights, "=", fn("MIN", weights)), weights);
};

/** Whether the heaviest weight while drying is more than a balance of that step weighs, in whole thousands of steps as milligrams are. */
export function isMilligram(sheet: RunSheet): Condition {
  const step = sheet.settings.readability;
  const most = fn("MAX", block(sheet, sheet.drying));
  const steps = reckon(reckon(most, "/", step), "/", PER_KILOGRAM);
  const isThousands = is(reckon(fn("ABS", reckon(steps, "-", fn("ROUND", steps, 0))), "*", PARTS_OF_A_STEP), "<", 1);
  const isMany = is(most, ">", reckon(MOST_STEPS, "*", step));
  return when(all(is(fn("SUM", step), ">", 0), is(most, ">", LEAST_OF_THEM)), all(isMany, isThousands), false);
}

export const heaviestOf = (sheet: RunSheet): Expression => {
  const weights = block(sheet, sheet.drying);
  return lastCellWhere(is(weights, "=", fn("MAX", weights)), weights);
};
