import { DIGITS, FINEST, FINEST_SHARE, reported, type Reported } from "../../confidence/reportedValue";
import type { Read } from "../../inputs/Input";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { resultValue } from "../../inputs/kinds/result";
import { coverageFactor } from "../../inputs/kinds/statistics";
import { optional } from "../../inputs/optional";
import { counted } from "../../problems/quoted";
import { PLUS_MINUS_IS_U } from "../../problems/functions/reportingProblems";
import { uncertaintyTooFineHere } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { significantInCells } from "../inCells/sentenceInCells";
import { inFigures, WORKING_FIGURES } from "../inFigures";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";

const inputs = {
  value: resultValue("The result, in any unit."),
  u: positiveNumber("Its standard uncertainty, in the unit of the value.", "Give a number above 0 in the unit of the value.", "an uncertainty"),
  k: optional(coverageFactor("Coverage factor for an expanded uncertainty, such as 2 for about 95 %."), "u as it is"),
};

type Asked = Read<typeof inputs>;

const reportedOf = ({ value, u, k }: Asked): Reported => reported(value, u, k);

const textOf = (asked: Asked): string => {
  const { value, uncertainty } = reportedOf(asked);
  return `${value} ± ${uncertainty}${asked.k === undefined ? "" : ` (k = ${inFigures(asked.k)})`}`;
};

export const reportedFunction = cellFunction({
  name: "REPORTED",
  summary: "A result with its uncertainty as it is printed, as text: the uncertainty to two significant digits, the value to the same place.",
  inputs,
  result: { about: "Result as text", unit: "" },
  compute: textOf,
  working: (asked) => {
    const { expanded, places } = reportedOf(asked);
    const { u, k = 1 } = asked;
    return [
      `uncertainty = ${inFigures(k)} x ${inFigures(u)} = ${inFigures(expanded)}`,
      `two significant digits, so to ${places < 0 ? `whole ${inFigures(10 ** -places)}s` : counted(places, "decimal place")}; a half is rounded away from zero, as ROUND does`,
      `printed ${textOf(asked)}`,
      ...(asked.k === undefined ? [PLUS_MINUS_IS_U] : []),
    ];
  },
  refusesInCells: ({ value, u }) => [
    { when: `(${operand(u)}<${FINEST})+(${operand(u)}<${FINEST_SHARE}*ABS(${value}))`, says: uncertaintyTooFineHere },
  ],
  inCells: ({ value, u, k }) => {
    const factor = numberInCells(k, 1);
    const expanded = k === "" ? operand(u) : `(${factor}*${operand(u)})`;
    // As `reported` has it: a logarithm a hair below a whole number is that number, and 0.0996 rounds to 0.10.
    const places = (of: string): string => `(${DIGITS - 1}-INT(ROUND(LOG10(${of}),14)))`;
    const at = places(`ROUND(${expanded},${places(expanded)})`);
    const printed = (of: string): string => `FIXED(ROUND(${of},${at}),IF(${at}>0,${at},0),TRUE)`;
    const ending = `" (k = "&${significantInCells(factor, WORKING_FIGURES)}&")"`;
    const given = isGivenInCells(k);
    const suffix = given === "0" ? "" : given === "1" ? `&${ending}` : `&IF(${given},${ending},"")`;
    return `${printed(operand(value))}&" ± "&${printed(expanded)}${suffix}`;
  },
  examples: [
    { cell: "=RETORT.REPORTED(0.34802, 0.00131)", gives: "0.3480 ± 0.0013" },
    { cell: "=RETORT.REPORTED(0.34802, 0.00131, 2)", gives: "0.3480 ± 0.0026 (k = 2)" },
    { cell: "=RETORT.REPORTED(34812, 1262)", gives: "34800 ± 1300" },
  ],
  source:
    "GUM (JCGM 100:2008) 7.2.6: uncertainties to at most two significant digits, the value to the same place. Rounded half away from zero; the GUM allows rounding u up instead. Text: calculate with the value, not with this.",
});
