import { noNumber } from "../expressions/choices";
import { fn, is, reckon, type Expression } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import type { Check } from "./Check";

/** Whether every weighing has both its pan zeros or neither. Undefined on a sheet without pan zeros. */
export function zerosCheck({ columns: { zeros } }: RunSheet, { emptyVessel, charring, ashing, weighIns }: SampleCells): Check | undefined {
  if (zeros === undefined) return undefined;
  const [before, after] = [weighIns(zeros.before), weighIns(zeros.after)];
  const pairs = [emptyVessel, charring?.weighing, ashing?.weighing].flatMap((weighing) => weighing?.zeros ?? []);
  const loneInTable = fn("SUMPRODUCT", fn("ABS", reckon(fn("ISNUMBER", before), "-", fn("ISNUMBER", after))));
  const lone = pairs.reduce<Expression>((sum, pair) => reckon(sum, "+", fn("MOD", fn("COUNT", pair.before, pair.after), 2)), loneInTable);
  return {
    silentWhile: noNumber(before, after, ...pairs.flatMap((pair) => [pair.before, pair.after])),
    steps: [{ when: is(lone, ">", 0), says: checkWords.zeros.oneMissing }],
  };
}
