import { changeVerdict } from "../../confidence/changeVerdict";
import { usualCoverage } from "../../confidence/readingUncertainty";
import { coverageFactor, standardUncertainty } from "../../inputs/kinds/statistics";
import { mass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";

export const changeSignificantFunction = cellFunction({
  name: "CHANGE.SIGNIFICANT",
  summary: 'Whether two weighings differ by more than their readings explain: "loss", "gain" or "not significant".',
  inputs: {
    before: mass("First weighing [g]."),
    after: mass("Second weighing of the same vessel and sample [g]."),
    u: standardUncertainty("Standard uncertainty of one weighing [g], as READING.U gives it; with its tared TRUE where each weighing was zeroed."),
    k: optional(coverageFactor("Coverage factor."), "2, about 95 %"),
  },
  result: { about: '"loss", "gain" or "not significant", to read or to test with IF', unit: "" },
  compute: ({ before, after, u, k }) => changeVerdict(before, after, u, k).verdict,
  working: ({ before, after, u, k = usualCoverage }) => {
    const { change, limit, verdict } = changeVerdict(before, after, u, k);
    return [
      `change = ${inFigures(after)} - ${inFigures(before)} = ${inFigures(change)} g`,
      `limit = k sqrt(2) u = ${inFigures(k)} x sqrt(2) x ${inFigures(u)} = ${inFigures(limit)} g, either way`,
      verdict === "not significant" ? "not significant: that does not prove that nothing changed" : `${verdict}: more than the two readings explain`,
    ];
  },
  inCells: ({ before, after, u, k }) =>
    `IF(ABS(${operand(after)}-${operand(before)})>${numberInCells(k, usualCoverage)}*SQRT(2)*${operand(u)},IF(${operand(after)}<${operand(before)},"loss","gain"),"not significant")`,
  examples: [
    { cell: "=RETORT.CHANGE.SIGNIFICANT(35, 34.97, 0.01)", gives: "loss" },
    { cell: "=RETORT.CHANGE.SIGNIFICANT(35, 34.98, 0.01)", gives: "not significant" },
    {
      cell: "=RETORT.CHANGE.SIGNIFICANT(35, 34.99, 0.00408)",
      gives: "not significant",
      about: "One display step means nothing: rounding alone makes 1.15 steps at k = 2.",
    },
  ],
  source: "Difference of two independent weighings, GUM (JCGM 100:2008) equation 10: |change| > k sqrt(2) u.",
});
