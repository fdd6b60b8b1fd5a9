import { totalOutOfBounds } from "../../problems/formulaProblems";
import { AtomCounts } from "./AtomCounts";
import { LARGEST_COUNT, SMALLEST_COUNT } from "./readAmount";
import type { Reading } from "./Reading";

// Filled anew for each formula.
const symbols: string[] = [];
const counts: number[] = [];

/**
 * How many of each atom, in the order they first appear.
 * @throws InputProblem where brackets multiply out to a number beyond the bounds of a count
 */
export function totalAtoms(reading: Reading): AtomCounts {
  const { atoms } = reading;
  let size = 0;
  for (let index = 0; index < atoms.length; index++) {
    const symbol = atoms.symbol[index] as string;
    const count = atoms.count[index] as number;
    let place = 0;
    while (place < size && symbols[place] !== symbol) place++;
    const total = place < size ? (counts[place] as number) + count : count;
    if (total > LARGEST_COUNT || total < SMALLEST_COUNT) throw totalOutOfBounds(reading.spot(0), symbol, total);
    symbols[place] = symbol;
    counts[place] = total;
    if (place === size) size++;
  }
  return new AtomCounts(symbols.slice(0, size), counts.slice(0, size));
}
