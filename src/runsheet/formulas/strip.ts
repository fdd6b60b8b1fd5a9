import { CRUCIBLE_RATE } from "../../balance/hotWeighing";
import { firstOf, isNumber, lacksNumber, NOTHING, when } from "../expressions/choices";
import { cell, fn, is, reckon, type Call, type Cell, type Expression } from "../expressions/Expression";
import type { StripRows } from "../sheet/layout";
import type { RunSheet } from "../sheet/RunSheet";
import { stripWords } from "../words/stripWords";

export const STRIP_COLUMNS = { before: 1, after: 2, room: 3, warmth: 4 } as const;
type StripColumn = keyof typeof STRIP_COLUMNS;

export const stripCell = (row: number, column: StripColumn): Cell => cell(row, STRIP_COLUMNS[column]);

/** What is taken off each weighing of a row, g: the middle of the zeros before and after, since a drift is taken to run evenly. */
export const correctionOf = (row: number): Call => {
  const [before, after] = [stripCell(row, "before"), stripCell(row, "after")];
  return when(lacksNumber(before, after), NOTHING, reckon(reckon(before, "+", after), "/", 2));
};

/** The cell of that correction, beside the row of the strip for a row of its table; undefined on a sheet without pan zeros. */
export function correctionFor(
  { options, columns }: RunSheet,
  strip: Pick<StripRows, "vessel" | "first"> | undefined,
  place: number | "vessel",
): Cell | undefined {
  if (!options.panZeros || strip === undefined) return undefined;
  const row = place === "vessel" ? strip.vessel : strip.first + place;
  return row === undefined ? undefined : columns.reckoned(row, 1);
}

/** A weighing with what counts of it: less the balance's zero where that was read. */
export const countedWeighing = (box: Cell, correction: Cell | undefined): Call =>
  when(isNumber(box), correction === undefined ? box : reckon(box, "-", fn("N", correction)), NOTHING);

// In cell formulas a whole number over a power of ten; 0.19 mg needs five places.
const PER = 100_000;
const GRAMS = Math.round(CRUCIBLE_RATE * PER);
const MILLIGRAMS_PER_GRAM = 1000;
// A larger vessel errs more than the crucible that was measured, so a tenth of a display step counts; own margin, no source.
const SHARE_OF_A_STEP = 10;
// Fahrenheit degrees in five Celsius ones.
const FAHRENHEIT_PER_FIVE = 9;

/** How far a sample was above the room, in degrees Celsius whatever the sheet's unit. */
export const warmerBy = ({ options }: RunSheet, room: Expression, sample: Expression): Expression => {
  const degrees = reckon(sample, "-", room);
  return options.degrees === "C" ? degrees : reckon(reckon(degrees, "*", 5), "/", FAHRENHEIT_PER_FIVE);
};

/**
 * How much lighter a warm vessel reads, mg, by the published case of HOTWEIGHING (Blade, Analytical Chemistry): 0.19 mg for
 * each degree, to a tenth of a mg. A hint, for one crucible.
 */
export const readsLighterBy = (degrees: Expression): Call => fn("ROUND", reckon(reckon(degrees, "*", GRAMS * MILLIGRAMS_PER_GRAM), "/", PER), 1);

/** Whether this balance could show that a sample was warmer or colder than the room when weighed. Nothing is corrected. */
export function coldEnough(sheet: RunSheet, row: number): Expression {
  const [room, sample] = [stripCell(row, "room"), stripCell(row, "warmth")];
  const { readability } = sheet.settings;
  const { enough, warm, chilled } = stripWords.cold;
  const shows = (one: Cell, other: Cell) =>
    is(reckon(warmerBy(sheet, other, one), "*", GRAMS * SHARE_OF_A_STEP), ">=", reckon(readability, "*", PER));
  return firstOf(
    [
      [lacksNumber(room, sample, readability), NOTHING],
      [shows(sample, room), warm],
      [shows(room, sample), chilled],
    ],
    enough,
  );
}
