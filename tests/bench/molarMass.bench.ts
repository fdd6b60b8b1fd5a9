import { MF } from "mf-parser";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { atomicWeight } from "../../src/chemistry/atomicWeights";
import { molarMassFunction } from "../../src/functions/compound/molarMassFunction";
import { manyFormulas } from "./manyFormulas";

// eslint-disable-next-line @typescript-eslint/no-require-imports -- the package has no types
const chemicalFormula = require("chemical-formula") as (formula: string) => Record<string, number>;

// MOLARMASS on 10,000 distinct formulas in one spilled call, more than are remembered between calls, so that each is parsed anew;
// against two libraries on the same list, and a loop that only reads every character.
const FORMULAS = 10_000;
const ROUNDS = 31;
const WARM_UP_ROUNDS = 10;
const OURS = "MOLARMASS, one spilled call";

const list = manyFormulas(FORMULAS);
const column = list.map((formula) => [formula]);

const contenders: Readonly<Record<string, () => number>> = {
  [OURS]: () => (callCellFunction(molarMassFunction, [column]) as number[][]).reduce((sum, [mass]) => sum + (mass ?? 0), 0),
  "mf-parser, getInfo().mass": () => list.reduce((sum, formula) => sum + new MF(formula).getInfo().mass, 0),
  "chemical-formula, counts only": () => list.reduce((sum, formula) => sum + Object.keys(chemicalFormula(formula)).length, 0),
  "chemical-formula, with our weights": () =>
    list.reduce(
      (sum, formula) => sum + Object.entries(chemicalFormula(formula)).reduce((mass, [symbol, n]) => mass + n * atomicWeight(symbol), 0),
      0,
    ),
  "reading the characters": () => {
    let sum = 0;
    for (const formula of list) for (let index = 0; index < formula.length; index++) sum += formula.charCodeAt(index);
    return sum;
  },
  "10,000 calls of one cell": () =>
    list.reduce((sum, formula) => sum + ((callCellFunction(molarMassFunction, [[[formula]]]) as number[][])[0]?.[0] ?? 0), 0),
};

// The contenders take turns, so that a busy machine slows all of them alike.
const times = new Map(Object.keys(contenders).map((name): [string, number[]] => [name, []]));
for (let round = -WARM_UP_ROUNDS; round < ROUNDS; round++) {
  for (const [name, contender] of Object.entries(contenders)) {
    const start = performance.now();
    contender();
    if (round >= 0) times.get(name)?.push(performance.now() - start);
  }
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;
const ours = median(times.get(OURS) ?? []);
console.log(`${FORMULAS} distinct formulas, ${list.join("").length} characters; medians of ${ROUNDS} rounds, node ${process.version}`);
for (const [name, taken] of times) {
  console.log(`${name.padEnd(36)} ${median(taken).toFixed(2).padStart(9)} ms  ${(median(taken) / ours).toFixed(3).padStart(8)} × MOLARMASS`);
}
