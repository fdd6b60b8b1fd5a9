import { separateTaringFactor } from "../../confidence/lossUncertainty";
import { usualCoverage } from "../../confidence/readingUncertainty";
import { pharmacopoeiaMinimum, smallestSample } from "../../confidence/smallestSample";
import { fraction } from "../../inputs/kinds/shares";
import { coverageFactor, wantedUncertainty } from "../../inputs/kinds/statistics";
import { optional } from "../../inputs/optional";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { weighingUncertaintyInput } from "./weighingUncertaintyInput";

export const sampleMinimumFunction = cellFunction({
  name: "SAMPLE.MINIMUM",
  summary: "Smallest sample whose loss fraction this balance gives within the wanted uncertainty [g].",
  inputs: {
    u: weighingUncertaintyInput,
    wantedU: wantedUncertainty("Expanded uncertainty wanted for the loss fraction [fraction], such as 0.005 for half a percentage point."),
    expectedLoss: optional({ ...fraction("Share of the sample expected to be lost [fraction]."), zero: "none" }, "the least favourable loss"),
    k: optional(coverageFactor("Coverage factor of the wanted uncertainty."), "2, about 95 %"),
  },
  result: { about: "Smallest sample", unit: "g" },
  compute: ({ u, wantedU, expectedLoss, k }) => smallestSample(u, wantedU, expectedLoss, k),
  working: ({ u, wantedU, expectedLoss = 0, k = usualCoverage }) => {
    const [loss, factor, reading, wanted] = [expectedLoss, k, u, wantedU].map(inFigures);
    return [
      `sample = k u sqrt((1 - w)^2 + 1 + w^2) / U = ${factor} x ${reading} x sqrt((1 - ${loss})^2 + 1 + ${loss}^2) / ${wanted} = ${inFigures(smallestSample(u, wantedU, expectedLoss, k))} g`,
      `with net masses each zeroed for themselves: ${inFigures((k * u * separateTaringFactor(expectedLoss)) / wantedU)} g`,
      `for comparison, the pharmacopoeia's weighing rule (USP <41>) of 2000 standard deviations, u put for s: ${inFigures(pharmacopoeiaMinimum(u))} g`,
    ];
  },
  inCells: ({ u, wantedU, expectedLoss, k }) => {
    const loss = numberInCells(expectedLoss, 0);
    return `${numberInCells(k, usualCoverage)}*${operand(u)}*SQRT((1-${loss})^2+1+${loss}^2)/${operand(wantedU)}`;
  },
  examples: [
    { cell: "=RETORT.SAMPLE.MINIMUM(0.01, 0.005, 0.3)", gives: 5.027922035990614, about: "Half a percentage point at 30 % loss." },
    { cell: "=RETORT.SAMPLE.MINIMUM(0.01, 0.005)", gives: 5.656854249492381, about: "Whatever the loss." },
  ],
  source: "LOSSFRACTION.U solved for the sample mass. USP <41> (2000 s, s not below 0.41 display steps) is shown for comparison only.",
});
