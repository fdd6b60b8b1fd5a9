import { standardAtomicWeights } from "../../standardAtomicWeights";
import { onFirstUse } from "../../onFirstUse";
import { massNumbersOf } from "../nuclides";

const [CAPITAL_A, CAPITAL_Z, SMALL_A, SMALL_Z] = [0x41, 0x5a, 0x61, 0x7a];
// One column for a symbol of one letter, one for each second letter.
const COLUMNS = SMALL_Z - SMALL_A + 2;

/** No element with a standard atomic weight; more than any index and any mass number below. */
export const NONE = 255;

const indexBySymbol = new Map(standardAtomicWeights.map(({ symbol }, index): [string, number] => [symbol, index]));

/** The place of an element in the table of standard atomic weights. */
export const indexOf = (symbol: string): number => indexBySymbol.get(symbol) ?? NONE;

const bySlot = new Uint8Array((CAPITAL_Z - CAPITAL_A + 1) * COLUMNS).fill(NONE);
const slot = (first: number, second: number): number => (first - CAPITAL_A) * COLUMNS + (second === 0 ? 0 : second - SMALL_A + 1);
standardAtomicWeights.forEach(({ symbol, standard }, index) => {
  if (standard !== "") bySlot[slot(symbol.charCodeAt(0), symbol.length === 1 ? 0 : symbol.charCodeAt(1))] = index;
});

/** The index of the element of a capital letter and a small one, 0 for no second letter; NONE where there is none with a weight. */
export const indexOfLetters = (first: number, second: number): number => bySlot[slot(first, second)] as number;

/** The lightest and the heaviest mass number of each element, in two places side by side. */
const massNumberBounds = onFirstUse(() => {
  const bounds = new Uint8Array(2 * standardAtomicWeights.length).fill(NONE);
  standardAtomicWeights.forEach(({ symbol }, index) => {
    // H1 to H3 are counts everywhere.
    const known = symbol === "H" ? [] : massNumbersOf(symbol);
    if (known.length > 0) bounds.set([Math.min(...known), Math.max(...known)], 2 * index);
    else bounds[2 * index + 1] = 0;
  });
  return bounds;
});

/** True for a number between the lightest and the heaviest nuclide of an element that the reader knows. */
export function canBeMassNumber(number: number, index: number): boolean {
  const bounds = massNumberBounds();
  return number >= (bounds[2 * index] as number) && number <= (bounds[2 * index + 1] as number);
}
