import { isNumberInCells } from "../inputs/refusedInCells";
import { plainNumber } from "../problems/quoted";
import { bandOf, MOST_HEATING, RANGE_ROUNDING, typicalRange } from "../sense/typicalRange";
import { sentenceInCells, textInCells } from "./inCells/sentenceInCells";
import { isTypedText, put } from "./inCells/typedInCells";

// A share of the band that gives a number printed nowhere else in a sentence.
const INSIDE = 0.4567;
// Beyond either end by so much of it.
const BEYOND = 0.0123;
const LONGEST_QUOTED = 40;

/**
 * TYPICALRANGE in cells: each of its sentences, with the value put in; a number stands in it with as many figures as the spreadsheet writes.
 * Undefined where the quantity or the feedstock stands in a cell.
 */
export function rangeInCells({ quantity, value, feedstock }: Readonly<Record<"quantity" | "value" | "feedstock", string>>): string | undefined {
  if (!isTypedText(quantity) || !(feedstock === "" || isTypedText(feedstock))) return undefined;
  const [asked, material] = [quantity.slice(1, -1), feedstock === "" ? undefined : feedstock.slice(1, -1)];
  const passing = (text: string): string => `IF(ISERROR(${value}),${value},${text})`;
  const band = bandOf(asked, material);
  if (band === undefined) return passing(textInCells(typicalRange(asked, 1, material)));
  const [least, most] = band;
  const about = (sample: number): string | undefined => sentenceInCells(typicalRange(asked, sample, material), plainNumber(sample), value);
  const largest = asked.trim().toLowerCase() === "heating value" ? MOST_HEATING : 1;
  const sentences = {
    below: least > 0 ? about(least * (1 - BEYOND)) : '""',
    inside: about(least + INSIDE * (most - least)),
    above: about(most + BEYOND * (largest - most)),
    negative: about(-BEYOND),
    percent: about(largest * (1 + BEYOND)),
    word: sentenceInCells(typicalRange(asked, "\u0001", material), "\u0001", shortenedInCells(value)),
  };
  const { below, inside, above, negative, percent, word } = sentences;
  if (below === undefined || inside === undefined || above === undefined || negative === undefined || percent === undefined || word === undefined)
    return undefined;
  const nothing = textInCells(typicalRange(asked, undefined, material));
  const judged = `IF(${value}<${least}-${put(RANGE_ROUNDING)},${below},IF(${value}>${most}+${put(RANGE_ROUNDING)},${above},${inside}))`;
  const zero = least > 0 ? `IF(${value}=0,${nothing},${judged})` : judged;
  const number = `IF(${value}<0,${negative},IF(${value}>${largest},${percent},${zero}))`;
  const [yes, no] = [true, false].map((truth) => textInCells(typicalRange(asked, truth, material)));
  const other = `IF(ISLOGICAL(${value}),IF(${value},${yes},${no}),IF(TRIM(${value})="",${nothing},${word}))`;
  return passing(`IF(${isNumberInCells(value)},${number},${other})`);
}

/** A long text is quoted without its middle. */
const shortenedInCells = (value: string): string =>
  `IF(LEN(${value})>${LONGEST_QUOTED},LEFT(${value},${LONGEST_QUOTED / 2})&"…"&RIGHT(${value},${LONGEST_QUOTED / 2}),${value})`;
