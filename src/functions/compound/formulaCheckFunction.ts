import type { Formula } from "../../chemistry/Formula";
import { molarMass } from "../../chemistry/molarMass";
import { parseFormula } from "../../chemistry/parseFormula";
import { formulaText } from "../../inputs/kinds/words";
import { orProblem } from "../../inputs/optional";
import { InputProblem } from "../../problems/InputProblem";
import { plainNumber } from "../../problems/quoted";
import { cellFunction } from "../cellFunction";
import { textInCells } from "../inCells/sentenceInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { WEIGHTS_SOURCE } from "./molarMassFunction";

export const formulaCheckFunction = cellFunction({
  name: "FORMULA.CHECK",
  summary: "How a chemical formula is read, in words: its atoms, molar mass and what was decided; or what is wrong with it, as text.",
  inputs: { formula: orProblem(formulaText("Chemical formula to check.")) },
  result: { about: "How the formula is read", unit: "" },
  compute: ({ formula }) => (formula instanceof InputProblem ? formula.message : checked(formula)),
  inManyCells: ({ formula }) => (isTypedText(formula) ? textInCells(checked(typedTextOf(formula))) : undefined),
  examples: [
    { cell: '=RETORT.FORMULA.CHECK("CaCO3")', gives: "Ca 1, C 1, O 3; 100.086 g/mol." },
    {
      cell: '=RETORT.FORMULA.CHECK("CuSO4.5H2O")',
      gives: "Cu 1, S 1, O 9, H 10; 249.677 g/mol. Note: the full stop at character 6 was read as a hydrate dot.",
    },
    { cell: '=RETORT.FORMULA.CHECK("CaXoO3")', gives: 'formula: no element "Xo" at character 3 of "CaXoO3". Check the symbol.' },
  ],
  source: WEIGHTS_SOURCE,
});

function checked(text: string): string {
  try {
    const formula = parseFormula(text);
    return [`${atoms(formula)}; ${charge(formula)}${inFigures(molarMass(formula))} g/mol.`, ...notes(formula)].join(" ");
  } catch (thrown) {
    if (thrown instanceof InputProblem) return thrown.message;
    throw thrown;
  }
}

const atoms = (formula: Formula): string => [...formula.atoms].map(([symbol, count]) => `${symbol} ${plainNumber(count)}`).join(", ");

const charge = ({ charge }: Formula): string => (charge === 0 ? "" : `charge ${Math.abs(charge)}${charge > 0 ? "+" : "-"}; `);

const notes = ({ notes }: Formula): readonly string[] => (notes.length === 0 ? [] : [`Note: ${notes.join("; ")}.`]);
