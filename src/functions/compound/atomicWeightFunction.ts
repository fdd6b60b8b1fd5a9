import { atomicWeight } from "../../chemistry/atomicWeights";
import { atomicWeightLimit, atomicWeightUncertainty } from "../../chemistry/atomicWeightUncertainty";
import { elementNamed } from "../../chemistry/elementNamed";
import { elementOf } from "../../chemistry/elementOf";
import { elementRow } from "../../chemistry/elementRow";
import { choice } from "../../inputs/choice";
import { numberText } from "../../inputs/numberText";
import { elementText } from "../../inputs/kinds/elements";
import { optional } from "../../inputs/optional";
import { noInterval, noLimitOfIsotope } from "../../problems/functions/compoundProblems";
import { plainNumber } from "../../problems/quoted";
import { cellFunction, type Shown } from "../cellFunction";
import { label } from "../inCells/formulaInCells";
import { orProblemInCells } from "../inCells/problemInCells";
import { isTypedText, typedTextOf } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { wordInCells } from "../wordInCells";
import { WEIGHTS_SOURCE } from "./molarMassFunction";

const ANSWERS = ["value", "limit", "interval", "name"] as const;
type Asked = (typeof ANSWERS)[number];

export const atomicWeightFunction = cellFunction({
  name: "ATOMICWEIGHT",
  summary: "Standard atomic weight of an element [g/mol]; or its limit, its interval or its name.",
  inputs: {
    symbol: { ...elementText('Symbol, such as "Ca", or name of the element.'), detail: "An isotope as 13C or D gives the mass of the nuclide." },
    what: {
      ...optional(choice("What to answer.", ANSWERS), '"value"'),
      detail: "The limit is the ± printed beside the value; fourteen elements have an interval, whose abridged value and limit are used.",
    },
  },
  result: { about: "Atomic weight", unit: "g/mol" },
  compute: ({ symbol, what = "value" }): Shown => answerOf(symbol, what),
  inManyCells: ({ symbol, what }) => {
    if (!isTypedText(symbol)) return undefined;
    const answer = (asked: Asked): string =>
      orProblemInCells(() => {
        const shown = answerOf(typedTextOf(symbol), asked);
        return typeof shown === "number" ? numberText(shown) : label(String(shown));
      });
    return wordInCells(
      what,
      [
        ["limit", answer("limit")],
        ["interval", answer("interval")],
        ["name", answer("name")],
      ],
      answer("value"),
    );
  },
  working: ({ symbol: text }) => {
    const symbol = elementNamed(text);
    const row = elementRow(symbol);
    if (row === undefined) return [`${nameOf(symbol)}: one isotope, ${plainNumber(atomicWeight(symbol, "symbol"))} g/mol`];
    const value = `${plainNumber(atomicWeight(symbol, "symbol"))} ± ${plainNumber(atomicWeightLimit(symbol))} g/mol`;
    return [
      row.standard.startsWith("[") ? `${row.name}: interval ${row.standard}, abridged ${value}` : `${row.name}: ${value}`,
      `standard uncertainty = ${plainNumber(atomicWeightLimit(symbol))} / sqrt(3) = ${inFigures(atomicWeightUncertainty(symbol))} g/mol`,
    ];
  },
  examples: [
    { cell: '=RETORT.ATOMICWEIGHT("Ca")', gives: 40.078 },
    { cell: '=RETORT.ATOMICWEIGHT("Ca", "limit")', gives: 0.004 },
    { cell: '=RETORT.ATOMICWEIGHT("C", "interval")', gives: "[12.0096, 12.0116]", about: "What carbon of any ordinary origin lies within." },
    { cell: '=RETORT.ATOMICWEIGHT("sulphur", "name")', gives: "sulfur" },
  ],
  source: WEIGHTS_SOURCE,
});

/** `calcium`, `carbon-13`, `hydrogen-2`. */
function nameOf(symbol: string): string {
  const name = elementRow(elementOf(symbol))?.name ?? symbol;
  if (elementRow(symbol) !== undefined) return name;
  return `${name}-${symbol === "D" ? 2 : symbol === "T" ? 3 : symbol.replace(/\D/g, "")}`;
}

function answerOf(text: string, what: Asked): Shown {
  const symbol = elementNamed(text);
  if (what === "name") return nameOf(symbol);
  const value = atomicWeight(symbol, "symbol");
  if (what === "value") return value;
  const row = elementRow(symbol);
  if (row === undefined) throw noLimitOfIsotope(symbol);
  if (what === "limit") return atomicWeightLimit(symbol);
  if (!row.standard.startsWith("[")) throw noInterval(row.name, symbol);
  return row.standard.replace(",", ", ");
}
