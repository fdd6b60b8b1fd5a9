import { MF } from "mf-parser";
import { callCellFunction } from "../../src/cells/callCellFunction";
import { CellProblem } from "../../src/cells/CellProblem";
import { atomicWeight } from "../../src/chemistry/atomicWeights";
import { molarMassFunction } from "../../src/functions/compound/molarMassFunction";
import { agree, inTurn, printed, timed, type Contenders } from "./inTurn";
import { manyFormulas, mixedFormulas, withBadOnes, type WrittenTwice } from "./manyFormulas";

// eslint-disable-next-line @typescript-eslint/no-require-imports -- the package has no types
const chemicalFormula = require("chemical-formula") as (formula: string) => Record<string, number>;

// MOLARMASS in one spilled call, on four lists of formulas; against the fastest library found, one that reads hydrates and decimals too, and a
// loop that only adds up a weight for each character. The fastest library reads neither hydrates nor decimals: it is given the same compounds
// with whole counts and without dots, rewritten beforehand. Looked at and slower, or with other answers for hydrates: molecules.js,
// molarmass.js, molecular-formula, chemymass, molarcalc.
const FORMULAS = 10_000;
const ROUNDS = 41;
const WARM_UP_ROUNDS = 15;
// mf-parser works its weights out from isotopes.
const OTHER_WEIGHTS = 2e-4;
const ROUNDING = 1e-12;

const OURS = "MOLARMASS, spilled";
const LIBRARY = "chemical-formula, with our weights";
const SLOW_LIBRARY = "mf-parser, getInfo().mass";

const spilled = (texts: readonly string[]): number[] =>
  (callCellFunction(molarMassFunction, [texts.map((text) => [text])]) as unknown[][]).map(([answer]) => (typeof answer === "number" ? answer : NaN));

function libraryMass({ plain, multiple }: WrittenTwice): number {
  try {
    const atoms = chemicalFormula(plain);
    let mass = 0;
    for (const symbol in atoms) mass += (atoms[symbol] as number) * atomicWeight(symbol);
    return mass / multiple;
  } catch {
    return NaN;
  }
}

const weightOfCharacter = Float64Array.from({ length: 256 }, (_, code) => 1 + code / 7);
function characterLoop(texts: readonly string[]): number {
  let sum = 0;
  for (const text of texts) for (let index = 0; index < text.length; index++) sum += weightOfCharacter[text.charCodeAt(index)] as number;
  return sum;
}

async function compare(title: string, formulas: readonly WrittenTwice[], others: Contenders<number> = {}): Promise<void> {
  const texts = formulas.map(({ text }) => text);
  const column = texts.map((text) => [text]);
  const ours = spilled(texts);
  const theirs = formulas.map(libraryMass);
  const good = formulas.filter((_, index) => !Number.isNaN(theirs[index]));
  agree(`${title}: ${LIBRARY}`, ours.filter((mass) => !Number.isNaN(mass)), theirs.filter((mass) => !Number.isNaN(mass)), ROUNDING); // prettier-ignore
  const measured = await inTurn<number>(
    {
      [OURS]: timed(() => void callCellFunction(molarMassFunction, [column])),
      [LIBRARY]: timed(() => formulas.forEach(libraryMass)),
      "the loop over the characters": timed(() => void characterLoop(texts)),
      ...others,
    },
    ROUNDS,
    WARM_UP_ROUNDS,
  );
  console.log(`\n${title}: ${texts.length} formulas, ${new Set(texts).size} distinct, ${good.length} good, ${texts.join("").length} characters`);
  printed(measured, OURS);
}

async function main(): Promise<void> {
  console.log(`${ROUNDS} rounds after ${WARM_UP_ROUNDS}, the contenders in turn; node ${process.version}`);
  const plain = manyFormulas(FORMULAS).map((text) => ({ text, plain: text, multiple: 1 }));
  const mass = (text: string): number => new MF(text).getInfo().mass;
  agree(SLOW_LIBRARY, spilled(plain.map(({ text }) => text)), plain.map(({ text }) => mass(text)), OTHER_WEIGHTS); // prettier-ignore
  await compare("whole counts alone", plain, {
    [SLOW_LIBRARY]: timed(() => plain.forEach(({ text }) => void mass(text))),
    "MOLARMASS, 10,000 calls of one cell": timed(() => plain.forEach(({ text }) => void callCellFunction(molarMassFunction, [[[text]]]))),
  });
  await compare("30 % hydrates and decimals", mixedFormulas(FORMULAS));
  const bad = withBadOnes(mixedFormulas(FORMULAS));
  const answers = callCellFunction(molarMassFunction, [bad.map(({ text }) => [text])]) as unknown[][];
  const refused = answers.filter(([answer]) => answer instanceof CellProblem).length;
  if (refused !== FORMULAS / 10) throw new Error(`${refused} refusals where ${FORMULAS / 10} formulas are bad`);
  await compare("the same with 10 % bad formulas", bad);
  const repeated = manyFormulas(FORMULAS).map((_, index) => plain[index % 50] as WrittenTwice);
  await compare("50 formulas, each 200 times", repeated);
}

void main();
