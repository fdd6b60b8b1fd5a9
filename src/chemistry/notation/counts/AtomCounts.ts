import { totalOutOfBounds } from "../../../problems/functions/formulaProblems";
import type { Reading } from "../Reading";
import { LARGEST_COUNT, SMALLEST_COUNT } from "./readAmount";

/**
 * How many of each atom, by symbol, in the order they first appear. Two short arrays take half the time and room of a Map:
 * a formula has few elements.
 */
export class AtomCounts implements ReadonlyMap<string, number> {
  /** @param symbols each once; `counts` has one number for each */
  constructor(
    private readonly symbols: readonly string[],
    private readonly counts: readonly number[],
  ) {}

  get size(): number {
    return this.symbols.length;
  }

  get(symbol: string): number | undefined {
    return this.counts[this.symbols.indexOf(symbol)];
  }

  has(symbol: string): boolean {
    return this.symbols.includes(symbol);
  }

  forEach(visit: (count: number, symbol: string, atoms: ReadonlyMap<string, number>) => void): void {
    for (let index = 0; index < this.symbols.length; index++) visit(this.counts[index] as number, this.symbols[index] as string, this);
  }

  keys(): MapIterator<string> {
    return this.symbols.values();
  }

  values(): MapIterator<number> {
    return this.counts.values();
  }

  *entries(): MapIterator<[string, number]> {
    for (let index = 0; index < this.symbols.length; index++) yield [this.symbols[index] as string, this.counts[index] as number];
  }

  [Symbol.iterator](): MapIterator<[string, number]> {
    return this.entries();
  }
}

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
