/**
 * The symbols of one formula's text in their order, each with its count and where it stands. One array for each property and
 * kept from one reading to the next: a long column of formulas makes no object for each symbol.
 */
export class AtomsInText {
  length = 0;
  readonly symbol: string[] = [];
  /** After all the multipliers around the symbol. */
  readonly count: number[] = [];
  /** The index of the symbol in the text. */
  readonly at: number[] = [];
  /** The index of its own count; equal to `end` where it has none. */
  readonly countAt: number[] = [];
  /** The index after the symbol and its own count. */
  readonly end: number[] = [];

  add(symbol: string, count: number, at: number, countAt: number, end: number): void {
    const place = this.length++;
    this.symbol[place] = symbol;
    this.count[place] = count;
    this.at[place] = at;
    this.countAt[place] = countAt;
    this.end[place] = end;
  }

  /** Multiplies the counts of all symbols from one on. */
  multiply(first: number, factor: number): void {
    for (let place = first; place < this.length; place++) this.count[place] = (this.count[place] as number) * factor;
  }
}
