import { reported, type Reported } from "../../confidence/reportedValue";
import type { Read } from "../../inputs/Input";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { resultValue } from "../../inputs/kinds/result";
import { coverageFactor } from "../../inputs/kinds/statistics";
import { optional } from "../../inputs/optional";
import { counted } from "../../problems/quoted";
import { PLUS_MINUS_IS_U } from "../../problems/reportingProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";

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
  examples: [
    { cell: "=RETORT.REPORTED(0.34802, 0.00131)", gives: "0.3480 ± 0.0013" },
    { cell: "=RETORT.REPORTED(0.34802, 0.00131, 2)", gives: "0.3480 ± 0.0026 (k = 2)" },
    { cell: "=RETORT.REPORTED(34812, 1262)", gives: "34800 ± 1300" },
  ],
  source:
    "GUM (JCGM 100:2008) 7.2.6: uncertainties to at most two significant digits, the value to the same place. Rounded half away from zero; the GUM allows rounding u up instead. Text: calculate with the value, not with this.",
});
