import { LARGEST_SUM, oxygenDemandUltimate, oxygenFactors } from "../../chemistry/burning/oxygenDemandUltimate";
import { ROUNDING_RESIDUE } from "../../chemistry/burning/roundingResidue";
import { massFraction, presentMassFraction } from "../../inputs/kinds/shares";
import { optional } from "../../inputs/optional";
import { SURPLUS } from "../../problems/functions/burningProblems";
import { sharesAboveWhole } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { put } from "../inCells/typedInCells";
import { numberInCells } from "../numberInCells";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { OPEN_BURNING } from "./cautions";

export const oxygenDemandUltimateFunction = cellFunction({
  name: "OXYGENDEMAND.ULTIMATE",
  summary:
    "Oxygen that complete burning takes up, O2 per gram of fuel [g/g], from an ultimate analysis on one basis, hydrogen and oxygen without those of moisture.",
  inputs: {
    carbon: presentMassFraction("Carbon [fraction of the mass]."),
    hydrogen: massFraction("Hydrogen, without that of moisture [fraction]."),
    oxygen: massFraction("Oxygen, without that of moisture [fraction]."),
    nitrogen: optional(massFraction("Nitrogen [fraction]; leaves as N2."), "none"),
    sulfur: optional(massFraction("Sulfur [fraction]; burns to SO2."), "none"),
    chlorine: optional(massFraction("Chlorine [fraction]; leaves as HCl."), "none"),
  },
  result: { about: "Oxygen demand", unit: "g/g" },
  compute: (analysis) => oxygenDemandUltimate(withoutGaps(analysis)),
  working: (analysis) => {
    const { carbon, hydrogen, oxygen, sulfur = 0, chlorine = 0 } = analysis;
    const factors = oxygenFactors();
    const demand = oxygenDemandUltimate(withoutGaps(analysis));
    const hydrogenTerm = `${inFigures(factors.hydrogen)} × ${inFigures(hydrogen)}`;
    const hydrogenLeft = chlorine === 0 ? hydrogenTerm : `max(0, ${hydrogenTerm} - ${inFigures(factors.chlorine)} × ${inFigures(chlorine)})`;
    const sulfurTerm = sulfur === 0 ? "" : ` + ${inFigures(factors.sulfur)} × ${inFigures(sulfur)}`;
    return [
      `oxygen demand = ${inFigures(factors.carbon)} × ${inFigures(carbon)} + ${hydrogenLeft}${sulfurTerm} - ${inFigures(oxygen)} = ${inFigures(demand)} g O2 per g`,
      ...(demand < 0 ? [SURPLUS] : []),
    ];
  },
  refusesInCells: ({ carbon, hydrogen, oxygen, nitrogen, sulfur, chlorine }) => {
    const left = [nitrogen, sulfur, chlorine].filter((text) => text !== "").map((text) => `+${numberInCells(text, 0)}`);
    const sum = `${operand(carbon)}+${operand(hydrogen)}+${operand(oxygen)}${left.join("")}`;
    return [{ when: `${sum}>${LARGEST_SUM}+${put(ROUNDING_RESIDUE)}`, says: sharesAboveWhole }];
  },
  inCells: ({ carbon, hydrogen, oxygen, sulfur, chlorine }) => {
    const factors = oxygenFactors();
    const hydrogenTerm = `${factors.hydrogen}*${operand(hydrogen)}`;
    const chlorineTerm = `${factors.chlorine}*${numberInCells(chlorine, 0)}`;
    const hydrogenLeft = chlorine === "" ? hydrogenTerm : `IF(${hydrogenTerm}>${chlorineTerm},${hydrogenTerm}-${chlorineTerm},0)`;
    return `${factors.carbon}*${operand(carbon)}+${hydrogenLeft}${sulfur === "" ? "" : `+${factors.sulfur}*${numberInCells(sulfur, 0)}`}-${operand(oxygen)}`;
  },
  examples: [
    {
      cell: "=RETORT.OXYGENDEMAND.ULTIMATE(0.4877, 0.0613, 0.4069, 0.0005)",
      gives: 1.3788385904562683,
      about: "Pine wood with 48.8 % carbon: 1 g takes up 1.38 g of oxygen.",
    },
  ],
  source: "Stoichiometry with the CIAAW 2021 atomic weights: 2.664 C + 7.936 H + 0.998 S - O - 0.226 Cl. Older books round to 8/3 C + 8 H + S - O.",
  caution: OPEN_BURNING,
});

type Analysis = Readonly<Record<"carbon" | "hydrogen" | "oxygen", number> & Record<"nitrogen" | "sulfur" | "chlorine", number | undefined>>;

const withoutGaps = ({ nitrogen = 0, sulfur = 0, chlorine = 0, ...rest }: Analysis): Readonly<Record<keyof Analysis, number>> => ({
  ...rest,
  nitrogen,
  sulfur,
  chlorine,
});
