import type { Formula } from "../../Formula";
import { standardAtomicWeights } from "../../standardAtomicWeights";
import { AtomCounts } from "../counts/AtomCounts";
import { formulaNotes } from "../formulaNotes";
import { plainAtoms } from "./plainAtoms";
import { fullStopRead, scanPlainFormula } from "./scanPlainFormula";

const symbols = standardAtomicWeights.map(({ symbol }) => symbol);
const NO_NOTES: readonly string[] = [];

/** What `readFormula` makes of a formula of the plain kind; undefined where the text is left to it. */
export function plainFormula(text: string): Formula | undefined {
  if (!scanPlainFormula(text)) return undefined;
  const { size, elements, totals } = plainAtoms;
  const kinds = new Array<string>(size);
  const counts = new Array<number>(size);
  for (let place = 0; place < size; place++) {
    kinds[place] = symbols[elements[place] as number] as string;
    counts[place] = totals[place] as number;
  }
  const fullStop = fullStopRead();
  return { text, atoms: new AtomCounts(kinds, counts), charge: 0, notes: fullStop < 0 ? NO_NOTES : [formulaNotes.hydrateDot(fullStop + 1)] };
}
