// Sentences of a function that answers in words: none of these is thrown.
import { sentenceAbout } from "../ArgumentProblem";
import { listed, plainNumber, quoted, withUnit } from "../quoted";

type Given = number | string | boolean | undefined;

/** A value that is to be judged, and the published band it is judged by. */
export interface Judged {
  readonly quantity: string;
  readonly value: number;
  /** What it is a share of: "dry". */
  readonly reckoned: string;
  readonly band: readonly [least: number, most: number];
  readonly unit: string;
  readonly of: string;
  readonly source: string;
}

export const unknownRangeWord = (argument: string, given: Given, words: readonly string[]): string =>
  given === undefined
    ? sentenceAbout(argument, "nothing here (blank or 0)", `Type one of ${listed(words)}.`)
    : sentenceAbout(argument, `${quoted(given)} is not one of ${listed(words)}`);

const aboutValue = (wrong: string, advice: string): string => sentenceAbout("value", wrong, advice);

export const noValueToJudge = (advice: string): string => aboutValue("nothing here (blank or 0)", advice);

export const valueNotANumber = (value: string | boolean, advice: string): string => aboutValue(`${quoted(value)} is not a number`, advice);

export const valueLooksLikePercent = (value: number): string =>
  aboutValue(
    `${plainNumber(value)} is above 1 and looks like a percentage`,
    `Type ${plainNumber(value)} % as ${plainNumber(value / 100)} or ${plainNumber(value)}%.`,
  );

export const valueLooksLikeKilojoules = (value: number, most: number): string =>
  aboutValue(`${withUnit(value, "MJ/kg")} is above ${withUnit(most, "MJ/kg")} and looks like kJ/kg`, "Give MJ/kg, such as 19.8.");

export const valueBelowZero = (value: number, unit: string): string =>
  aboutValue(`${withUnit(value, unit)} is below zero`, "Check for swapped cells.");

/** @param known what is printed of the feedstock itself, "" where nothing is to be added */
export const insideRange = ({ band, unit, of, source, ...result }: Judged, known: string): string =>
  `inside: ${found(result, unit)} lies in the ${span(band, unit)} of ${of} (${source})${known}.`;

export const outsideRange = ({ band, unit, of, source, ...result }: Judged, known: string, advice: string): string =>
  `outside: ${found(result, unit)} is ${result.value < band[0] ? "below" : "above"} the ${span(band, unit)} of ${of} (${source})${known}. ${advice}`;

export const printedValue = (feedstock: string, value: number, unit: string, source: string): string =>
  `; ${feedstock} is printed with ${withUnit(value, unit)} (${source})`;

export const noPrintedValue = (feedstock: string): string => `; for ${feedstock} none is printed`;

const found = ({ quantity, value, reckoned }: Pick<Judged, "quantity" | "value" | "reckoned">, unit: string): string =>
  `${quantity} of ${withUnit(value, unit)}, ${reckoned},`;

const span = ([least, most]: readonly [number, number], unit: string): string => `${plainNumber(least)} to ${withUnit(most, unit)}`;
