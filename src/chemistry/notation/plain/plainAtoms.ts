import { LARGEST_COUNT, SMALLEST_COUNT } from "../counts/readAmount";

/** Symbols in one text; longer ones are left to the reader. */
export const MOST_ATOMS = 32;

/** The atoms of the text scanned last, elements by their index; filled anew for each text, so that a long column makes no object. */
export const plainAtoms = {
  /** How many symbols have been met. */
  length: 0,
  /** The symbols in their order, each with its count after all the multipliers around it. */
  element: new Uint8Array(MOST_ATOMS),
  count: new Float64Array(MOST_ATOMS),
  /** How many different elements there are, once they are added up. */
  size: 0,
  /** Each element once, in the order they first appear, with its total. */
  elements: new Uint8Array(MOST_ATOMS),
  totals: new Float64Array(MOST_ATOMS),
};

/** Multiplies the counts of all symbols from one on. */
export function multiplyFrom(first: number, factor: number): void {
  const { length, count } = plainAtoms;
  for (let place = first; place < length; place++) count[place] = (count[place] as number) * factor;
}

/**
 * Adds up the counts of each element, in the very order of `totalAtoms`, so that the sums are the same to the last bit.
 * @returns false where a sum lies outside the bounds of a count
 */
export function addUp(): boolean {
  const { length, element, count, elements, totals } = plainAtoms;
  let size = 0;
  for (let place = 0; place < length; place++) {
    const index = element[place] as number;
    let known = 0;
    while (known < size && elements[known] !== index) known++;
    const total = known < size ? (totals[known] as number) + (count[place] as number) : (count[place] as number);
    if (total > LARGEST_COUNT || total < SMALLEST_COUNT) return false;
    elements[known] = index;
    totals[known] = total;
    if (known === size) size++;
  }
  plainAtoms.size = size;
  return true;
}
