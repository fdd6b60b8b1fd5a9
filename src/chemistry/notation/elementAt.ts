import { standardAtomicWeights } from "../standardAtomicWeights";

const CAPITAL_A = 65;
const CAPITAL_Z = 90;
const SMALL_A = 97;
const SMALL_Z = 122;
// One column for a symbol of one letter, one for each second letter.
const COLUMNS = SMALL_Z - SMALL_A + 2;

const slot = (first: number, second: number): number =>
  (first - CAPITAL_A) * COLUMNS + (second >= SMALL_A && second <= SMALL_Z ? second - SMALL_A + 1 : 0);

const symbols: (string | undefined)[] = new Array<string | undefined>((CAPITAL_Z - CAPITAL_A + 1) * COLUMNS).fill(undefined);
for (const symbol of [...standardAtomicWeights.map((element) => element.symbol), "D", "T"]) {
  symbols[slot(symbol.charCodeAt(0), symbol.charCodeAt(1))] = symbol;
}

/** The element symbol (or "D" or "T") that stands at an index, two letters before one; undefined where none does. */
export function elementAt(text: string, at: number): string | undefined {
  const first = text.charCodeAt(at);
  if (!(first >= CAPITAL_A && first <= CAPITAL_Z)) return undefined;
  return symbols[slot(first, text.charCodeAt(at + 1))];
}
