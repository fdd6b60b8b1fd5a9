import { LARGEST_SHARE, lossUncertainty } from "../../confidence/lossUncertainty";
import { mass, TARED, vesselMass } from "../../inputs/kinds/weighings";
import { balanceTooCoarseHere } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { orderInCells } from "../inCells/orderInCells";
import { isTypedNumber, isTypedText } from "../inCells/typedInCells";
import { numberInCells } from "../numberInCells";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { weighingUncertaintyInput } from "./weighingUncertaintyInput";

interface Weighed {
  readonly vessel: number;
  readonly before: number;
  readonly after: number;
  readonly u: number;
}

function answer({ vessel, before, after, u }: Weighed): number {
  const { commonTare, separateTaring } = lossUncertainty(vessel, before, after, u);
  return vessel === 0 ? separateTaring : commonTare;
}

export const lossFractionUFunction = cellFunction({
  name: "LOSSFRACTION.U",
  summary: "Standard uncertainty of a loss fraction (moisture, volatiles) from three weighings that share one empty-vessel weighing [fraction].",
  inputs: {
    vessel: vesselMass(`Empty vessel [g], or "${TARED}" for net masses that were each zeroed for themselves.`),
    before: mass("Vessel with the sample before heating [g]."),
    after: mass("Vessel with what is left, cold [g]."),
    u: weighingUncertaintyInput,
  },
  result: { about: "Standard uncertainty of the loss fraction (k = 1)", unit: "fraction" },
  compute: answer,
  working: (read) => {
    const { sample, loss, commonTare, separateTaring } = lossUncertainty(read.vessel, read.before, read.after, read.u);
    const [m, w, u] = [inFigures(sample), inFigures(loss), inFigures(read.u)];
    const common = `u / sample x sqrt((1 - w)^2 + 1 + w^2) = ${u} / ${m} x sqrt((1 - ${w})^2 + 1 + ${w}^2) = ${inFigures(commonTare)}`;
    const separate = `u / sample x sqrt(1 + (1 - w)^2) = ${u} / ${m} x sqrt(1 + (1 - ${w})^2) = ${inFigures(separateTaring)}`;
    return [
      `loss fraction w = (${inFigures(read.before)} - ${inFigures(read.after)}) / ${m} = ${w}`,
      ...(read.vessel === 0
        ? [`each net mass zeroed for itself: ${separate}`, `had one empty-vessel weighing served both: ${common}`]
        : [`one empty-vessel weighing serves both: ${common}`, `had each net mass been zeroed for itself, u with that zero in it: ${separate}`]),
      `report k = 2, about 95 %: ${w} +/- ${inFigures(2 * answer(read))}`,
    ];
  },
  refusesInCells: ({ vessel, before, after, u }) => [
    orderInCells({ vessel, before, after }),
    {
      when: `${operand(u)}>${LARGEST_SHARE}*(${operand(before)}-${numberInCells(vessel, 0)})`,
      says: balanceTooCoarseHere,
      noAnswer: true,
    },
  ],
  inCells: ({ vessel, before, after, u }) => {
    const [moist, dry, uncertainty] = [operand(before), operand(after), operand(u)];
    const separate = `${uncertainty}/${moist}*SQRT(1+(${dry}/${moist})^2)`;
    if (isTypedText(vessel)) return separate;
    const empty = operand(vessel);
    const sample = `(${moist}-${empty})`;
    const common = `${uncertainty}/${sample}*SQRT(((${dry}-${empty})/${sample})^2+1+((${moist}-${dry})/${sample})^2)`;
    return isTypedNumber(vessel) ? common : `IF(ISNUMBER(${vessel}),${common},${separate})`;
  },
  examples: [
    { cell: "=RETORT.LOSSFRACTION.U(25, 35, 32, 0.01)", gives: 0.0012569805089976537, about: "10 g of sample, 30 % loss, u = 0.01 g." },
    { cell: '=RETORT.LOSSFRACTION.U("tared", 10, 7, 0.01)', gives: 0.0012206555615733702, about: "The same, both net masses zeroed for themselves." },
  ],
  source:
    "Partial derivatives of (before - after) / (before - vessel), GUM (JCGM 100:2008) equation 10. An offset or a scale error of the balance cancels and is not counted; what happened to the sample is not counted either.",
});
