import {
  CORRELATIONS,
  type CorrelationName,
  correlations,
  type Element,
  ELEMENTS,
  higherHeatingValue,
  LEAST_SUM,
  MOST_SUM,
  outsideRange,
  sumOf,
  type UltimateAnalysis,
  USUAL_CORRELATION,
} from "../../energy/higherHeatingValue";
import { choice } from "../../inputs/choice";
import type { Read } from "../../inputs/Input";
import { massFraction, presentMassFraction } from "../../inputs/kinds/shares";
import { optional } from "../../inputs/optional";
import { correlationRow, statedError } from "../../problems/functions/energyProblems";
import { notOneDrySample } from "../../problems/sharing/plainCellProblems";
import { tableFunction } from "../cellFunction";
import { isTypedText, put, typedTextOf } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { FUEL_FOR_REAL } from "./cautions";
import { correlationInCells } from "./correlationInCells";

const inputs = {
  carbon: presentMassFraction("Carbon in the dry sample [fraction]."),
  hydrogen: presentMassFraction("Hydrogen in the dry sample, without that of moisture [fraction]."),
  oxygen: massFraction("Oxygen in the dry sample, without that of moisture [fraction]."),
  nitrogen: optional(massFraction("Nitrogen in the dry sample [fraction]."), "none"),
  sulfur: optional(massFraction("Sulfur in the dry sample [fraction]."), "none"),
  ash: optional(massFraction("Ash of the dry sample [fraction]."), "none"),
  correlation: optional(choice("Whose correlation.", CORRELATIONS), USUAL_CORRELATION),
};

// Beyond these a sum of shares is worth a second look, though real ones reach it. Common practice, no source.
const LEAST_CLOSED = 0.97;
const MOST_CLOSED = 1.03;

type Asked = Read<typeof inputs>;

const analysisOf = ({ carbon, hydrogen, oxygen, nitrogen = 0, sulfur = 0, ash = 0 }: Asked): UltimateAnalysis => ({
  ...{ carbon, hydrogen, oxygen },
  ...{ nitrogen, sulfur, ash },
});

function secondRow(asked: Asked): string {
  const analysis = analysisOf(asked);
  const name = asked.correlation ?? USUAL_CORRELATION;
  const { statedError: percent, isForCoal, range } = correlations[name];
  const sum = sumOf(analysis);
  const closes = sum >= LEAST_CLOSED && sum <= MOST_CLOSED;
  return correlationRow(
    name,
    statedError(percent, isForCoal),
    range === undefined ? undefined : outsideRange(analysis, range),
    closes ? undefined : sum,
  );
}

type Texts = Readonly<Record<Element | "correlation", string>>;

const shareInCells = (texts: Texts, element: Element): string => numberInCells(texts[element], 0);

const sumInCells = (texts: Texts): string => `(${ELEMENTS.map((element) => shareInCells(texts, element)).join("+")})`;

function valueInCells(texts: Texts, name: CorrelationName): string {
  const { constant = 0, factors } = correlations[name];
  const terms = ELEMENTS.flatMap((element) => (factors[element] === undefined ? [] : [`${put(factors[element])}*${shareInCells(texts, element)}`]));
  return `${put(constant)}+100*(${terms.join("+")})`;
}

function rowInCells(texts: Texts, name: CorrelationName): string {
  const { statedError: percent, isForCoal, range } = correlations[name];
  const shares = Object.fromEntries(ELEMENTS.map((element) => [element, `(100*${shareInCells(texts, element)})`]));
  const closing = { sum: sumInCells(texts), least: LEAST_CLOSED, most: MOST_CLOSED };
  return correlationInCells(name, statedError(percent, isForCoal), range, shares, closing);
}

export const heatingValueHigherFunction = tableFunction({
  name: "HEATINGVALUE.HIGHER",
  summary:
    "Higher heating value of the dry sample in MJ/kg from its ultimate analysis; below it, the correlation's stated error and whether the sample lies in its range.",
  inputs,
  result: { about: "Higher heating value [MJ/kg], and a row in words", unit: "" },
  computeTable: (asked) => [[higherHeatingValue(analysisOf(asked), asked.correlation)], [secondRow(asked)]],
  refusesInCells: (texts) => {
    const sum = sumInCells(texts);
    return [{ when: `(${sum}<${LEAST_SUM})+(${sum}>${MOST_SUM})`, says: notOneDrySample }];
  },
  // The sentences of all correlations do not go into one cell.
  inManyCells: (texts) => {
    if (texts.correlation !== "" && !isTypedText(texts.correlation)) return undefined;
    const typed = texts.correlation === "" ? USUAL_CORRELATION : typedTextOf(texts.correlation).trim().toLowerCase();
    const name = CORRELATIONS.find((one) => one.toLowerCase() === typed) ?? USUAL_CORRELATION;
    return [[valueInCells(texts, name)], [rowInCells(texts, name)]];
  },
  working: (asked) => {
    const analysis = analysisOf(asked);
    const { constant = 0, factors } = correlations[asked.correlation ?? USUAL_CORRELATION];
    const terms = ELEMENTS.flatMap((element) => {
      const factor = factors[element];
      return factor === undefined || analysis[element] === 0
        ? []
        : [`${factor < 0 ? "-" : "+"} ${inFigures(Math.abs(factor))} x ${inFigures(100 * analysis[element])}`];
    });
    const sum = [...(constant === 0 ? [] : [`+ ${inFigures(constant)}`]), ...terms].join(" ").replace(/^\+ /, "");
    return [
      `per cents of the dry sample: ${ELEMENTS.map((element) => `${element} ${inFigures(100 * analysis[element])}`).join(", ")}`,
      `higher heating value = ${sum} = ${inFigures(higherHeatingValue(analysis, asked.correlation))} MJ/kg`,
      secondRow(asked),
    ];
  },
  examples: [
    {
      cell: "=RETORT.HEATINGVALUE.HIGHER(0.4996, 0.0592, 0.4377, 0.0003, 0.0001, 0.0031)",
      gives: [[19.884764999999998], ["Channiwala-Parikh: stated average absolute error 1.45 %; the sample lies inside its range."]],
      about: "Sawdust of red oak.",
    },
    {
      cell: '=RETORT.HEATINGVALUE.HIGHER(0.4996, 0.0592, 0.4377, 0.0003, 0.0001, 0.0031, "Dulong")',
      gives: [
        [17.549956249999997],
        [
          "Dulong: coefficients from memory, stated error not known here; made for coal, about 12 % low for wood; the sample lies OUTSIDE its range: oxygen 43.77 % is not in 0 to 15 %.",
        ],
      ],
      about: "Dulong's, made for coal, falls short for wood.",
    },
  ],
  source:
    "Channiwala and Parikh, Fuel 81 (2002) 1051, with its ranges and error (factors also in Energies 15 (2022) 7343, table 1). Boie, Milne, Dulong, and Sheng and Azevedo (Biomass and Bioenergy 28 (2005) 499): coefficients from memory, and printed copies of the last two differ. Char lies outside all ranges but the first.",
  caution: FUEL_FOR_REAL,
});
