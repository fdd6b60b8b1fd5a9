import { changeVerdict, scatterWithin, TYPED } from "../../confidence/changeVerdict";
import { usualCoverage } from "../../confidence/readingUncertainty";
import { coverageFactor } from "../../inputs/kinds/statistics";
import { mass, readability } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { plainNumber, SIZE_FIGURES } from "../../problems/quoted";
import { uncertaintyBelowStep, uncertaintyNotBelow } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { isTypedNumber } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { weighingUncertaintyInput } from "./weighingUncertaintyInput";

export const changeSignificantFunction = cellFunction({
  name: "CHANGE.SIGNIFICANT",
  summary:
    'Whether two weighings differ by more than their readings explain: "loss", "gain" or "not significant". At k = 2 an unchanged load is called changed in at most 4.55 % of pairs.',
  inputs: {
    before: mass("First weighing [g]."),
    after: mass("Second weighing of the same vessel and sample [g]."),
    u: weighingUncertaintyInput,
    k: optional(coverageFactor("Coverage factor."), "2, about 95 %"),
    readability: optional(readability("Smallest display step of the balance [g], so that less is significant."), "the worst step that u allows"),
  },
  result: { about: '"loss", "gain" or "not significant", to read or to test with IF', unit: "" },
  compute: ({ before, after, u, k, readability: step }) => changeVerdict(before, after, u, k, step).verdict,
  working: ({ before, after, u, k = usualCoverage, readability: step }) => {
    const { change, limit, level, verdict } = changeVerdict(before, after, u, k, step);
    return [
      `change = ${inFigures(after)} - ${inFigures(before)} = ${inFigures(change)} g`,
      ...(step === undefined ? blindLines(u, k, limit) : steppedLines(u, k, step, limit)),
      `level: an unchanged load is called changed in at most ${plainNumber(100 * level, SIZE_FIGURES)} % of pairs, if u holds the scatter of the weighings`,
      verdict === "not significant" ? "not significant: that does not prove that nothing changed" : `${verdict}: more than the two readings explain`,
    ];
  },
  refusesInCells: ({ before, u, readability: step }) => {
    const above = { when: `${operand(u)}>=${operand(before)}`, says: uncertaintyNotBelow };
    const d = operand(numberInCells(step, 0));
    return step === "" ? [above] : [above, { when: `${operand(u)}<${TYPED}*SQRT(${d}^2/12)`, says: uncertaintyBelowStep }];
  },
  inCells: ({ before, after, u: uncertainty, k: coverage, readability: given }) => {
    const [first, second, u, k] = [operand(before), operand(after), operand(uncertainty), numberInCells(coverage, usualCoverage)];
    const blind = `SQRT(12+IF(2*${operand(k)}^2>12,2*${operand(k)}^2,12))*${u}`;
    const limit = given === "" ? blind : steppedInCells(u, operand(k), given, blind);
    // A nanogram for binary rounding, as in the computation.
    return `IF(ABS(${second}-${first})>${limit}+1E-9,IF(${second}<${first},"loss","gain"),"not significant")`;
  },
  examples: [
    { cell: "=RETORT.CHANGE.SIGNIFICANT(35, 34.95, 0.01)", gives: "loss" },
    { cell: "=RETORT.CHANGE.SIGNIFICANT(35, 34.97, 0.01)", gives: "not significant" },
    {
      cell: "=RETORT.CHANGE.SIGNIFICANT(35, 34.97, 0.01, 2, 0.001)",
      gives: "loss",
      about: "A balance that shows 0.001 g: once its display step is known, less is significant.",
    },
    {
      cell: "=RETORT.CHANGE.SIGNIFICANT(35, 34.99, 0.00408)",
      gives: "not significant",
      about: "One display step means nothing: a load on the border between two steps shows either.",
    },
  ],
  source:
    "Scatter k sqrt(2) s of a difference (GUM, JCGM 100:2008, equation 10) and one display step for the rounding of both, derived here and enumerated at every position within the step. u has to hold the scatter; for means of n readings give READING.U the repeatability over sqrt(n).",
});

function blindLines(u: number, k: number, limit: number): string[] {
  const twice = Math.max(2 * k ** 2, 12);
  return [
    `limit = sqrt(12 + the larger of 12 and 2 k^2) u: sqrt(12 + ${inFigures(twice)}) x ${inFigures(u)} = ${inFigures(limit)} g, either way, whatever the display step`,
  ];
}

function steppedLines(u: number, k: number, step: number, limit: number): string[] {
  const scatter = scatterWithin(u, step);
  const byScatter = k * Math.SQRT2 * scatter + step;
  const [reading, d, factor, variance] = [u, step, k, scatter ** 2].map(inFigures);
  return [
    scatter === 0
      ? "scatter s: u leaves none beside the rounding"
      : `scatter s^2 = u^2 - readability^2 / 12 = ${reading}^2 - ${d}^2 / 12 = ${variance} g^2`,
    `limit = k sqrt(2) s + readability = ${factor} x sqrt(2) x sqrt(${variance}) + ${d} = ${inFigures(byScatter)} g, either way`,
    ...(limit > byScatter ? [`at least two steps, or sqrt(24) u if that is less, where the zero is rounded too: ${inFigures(limit)} g`] : []),
  ];
}

/** The limit for a display step that a cell may hold or leave blank; IF works on each cell of a range, MAX and MIN would not. */
function steppedInCells(u: string, k: string, given: string, blind: string): string {
  const d = operand(given);
  const scatter = `IF(${u}^2>${d}^2/12,SQRT(ABS(${u}^2-${d}^2/12)),0)`;
  const byScatter = `(${k}*SQRT(2)*${scatter}+${d})`;
  const zeroed = `IF(2*${d}<SQRT(24)*${u},2*${d},SQRT(24)*${u})`;
  const stepped = `IF(${byScatter}>${zeroed},${byScatter},${zeroed})`;
  return isTypedNumber(given) ? stepped : `IF(IF(ISNUMBER(${given}),${d}>0,FALSE),${stepped},${blind})`;
}
