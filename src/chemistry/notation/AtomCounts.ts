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
