import { HAIR } from "../../energy/higherHeatingValue";
import { beyondInWords, correlationRow } from "../../problems/functions/energyProblems";
import { filledInCells, significantInCells, textInCells } from "../inCells/sentenceInCells";

// Prints as itself with all the figures of a share.
const MARK = 12.34;
const FIGURES = 4;
// More than all shares of a range together take.
const LONGEST = 500;

/** A sum of fractions and from where to where it is not worth a word. */
interface SumInCells {
  readonly sum: string;
  readonly least: number;
  readonly most: number;
}

/**
 * The second row of a heating value in a cell, as `correlationRow` has it.
 * @param shares each element's per cents, one operand
 */
export function correlationInCells(
  name: string,
  error: string,
  range: Readonly<Record<string, readonly [least: number, most: number]>> | undefined,
  shares: Readonly<Record<string, string>>,
  closing?: SumInCells,
): string {
  const end = closing === undefined ? '"."' : suffixInCells(name, error, closing);
  const row = (outside: Parameters<typeof correlationRow>[2]): string => correlationRow(name, error, outside, undefined).slice(0, -1);
  if (range === undefined) return `${textInCells(row(undefined))}&${end}`;
  const items = Object.entries(range).map(([share, [least, most]]) => {
    const percent = shares[share] ?? "0";
    return {
      isOutside: `(${percent}<${least}-${HAIR})+(${percent}>${most}+${HAIR})`,
      words: filledInCells(`, ${beyondInWords({ share, percent: MARK, least, most })}`, [[String(MARK), significantInCells(percent, FIGURES)]]),
    };
  });
  const dummy = { share: "", percent: MARK, least: 0, most: 0 };
  const [before = "", after = ""] = row([dummy]).split(beyondInWords(dummy));
  const listed = items.map(({ isOutside, words }) => `IF(${isOutside},${words},"")`).join("&");
  const isInside = `${items.map(({ isOutside }) => isOutside).join("+")}=0`;
  const beyond = `${textInCells(before)}&MID(${listed},3,${LONGEST})${after === "" ? "" : `&${textInCells(after)}`}`;
  return `IF(${isInside},${textInCells(row([]))},${beyond})&${end}`;
}

/** What is said of a sum that does not come near 1, or the stop alone. */
function suffixInCells(name: string, error: string, { sum, least, most }: SumInCells): string {
  const closed = correlationRow(name, error, [], undefined);
  const said = correlationRow(name, error, [], MARK).slice(closed.length - 1);
  const suffix = filledInCells(said, [[String(MARK), significantInCells(`(${sum})`, FIGURES)]]);
  return `IF((${sum}<${least})+(${sum}>${most}),${suffix},".")`;
}
