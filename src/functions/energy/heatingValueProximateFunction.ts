import { outsideRange } from "../../energy/higherHeatingValue";
import {
  LEAST_SUM,
  MOST_SUM,
  PROXIMATE_ERROR,
  PROXIMATE_FACTORS,
  PROXIMATE_RANGE,
  type ProximateAnalysis,
  proximateHeatingValue,
} from "../../energy/proximateHeatingValue";
import { ashShare, presentMassFraction } from "../../inputs/kinds/shares";
import { correlationRow, statedError } from "../../problems/functions/energyProblems";
import { notOneDrySample } from "../../problems/sharing/plainCellProblems";
import { tableFunction } from "../cellFunction";
import { put } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { FUEL_FOR_REAL } from "./cautions";
import { correlationInCells } from "./correlationInCells";

const AUTHORS = "Parikh and others";
const SHARES = ["fixedCarbon", "volatile", "ash"] as const;

const secondRow = ({ fixedCarbon, volatile, ash }: ProximateAnalysis): string =>
  correlationRow(
    AUTHORS,
    statedError(PROXIMATE_ERROR),
    outsideRange({ "fixed carbon": fixedCarbon, "volatile matter": volatile, ash }, RANGE),
    undefined,
  );

const RANGE = { "fixed carbon": PROXIMATE_RANGE.fixedCarbon, "volatile matter": PROXIMATE_RANGE.volatile, ash: PROXIMATE_RANGE.ash };

export const heatingValueProximateFunction = tableFunction({
  name: "HEATINGVALUE.PROXIMATE",
  summary:
    "Higher heating value of the dry sample in MJ/kg from its proximate analysis; below it, the correlation's stated error and whether the sample lies in its range.",
  inputs: {
    fixedCarbon: presentMassFraction("Fixed carbon, dry basis [fraction], as FIXEDCARBON gives it."),
    volatile: presentMassFraction("Volatile matter, dry basis [fraction]."),
    ash: ashShare('Ash, dry basis [fraction], or "none".'),
  },
  result: { about: "Higher heating value [MJ/kg], and a row in words", unit: "" },
  computeTable: (analysis) => [[proximateHeatingValue(analysis)], [secondRow(analysis)]],
  refusesInCells: (texts) => {
    const sum = SHARES.map((share) => numberInCells(texts[share], 0)).join("+");
    return [{ when: `(${sum}<${LEAST_SUM})+(${sum}>${MOST_SUM})`, says: notOneDrySample }];
  },
  inManyCells: (texts) => {
    const terms = SHARES.map((share) => `${put(PROXIMATE_FACTORS[share])}*${numberInCells(texts[share], 0)}`);
    const percent = (share: (typeof SHARES)[number]): string => `(100*${numberInCells(texts[share], 0)})`;
    const shares = { "fixed carbon": percent("fixedCarbon"), "volatile matter": percent("volatile"), ash: percent("ash") };
    return [[`100*(${terms.join("+")})`], [correlationInCells(AUTHORS, statedError(PROXIMATE_ERROR), RANGE, shares)]];
  },
  working: (analysis) => {
    const [fc, vm, ash] = [analysis.fixedCarbon, analysis.volatile, analysis.ash].map((share) => inFigures(100 * share));
    return [
      `higher heating value = ${PROXIMATE_FACTORS.fixedCarbon} x ${fc} + ${PROXIMATE_FACTORS.volatile} x ${vm} - ${-PROXIMATE_FACTORS.ash} x ${ash} = ${inFigures(proximateHeatingValue(analysis))} MJ/kg`,
      secondRow(analysis),
    ];
  },
  examples: [
    {
      cell: "=RETORT.HEATINGVALUE.PROXIMATE(0.1347, 0.8622, 0.0031)",
      gives: [[18.202271999999997], ["Parikh and others: stated average absolute error 3.74 %; the sample lies inside its range."]],
      about: "Sawdust of red oak.",
    },
  ],
  source: "Parikh, Channiwala and Ghosal, Fuel 84 (2005) 487, with its ranges and error, in dry mass per cent.",
  caution: FUEL_FOR_REAL,
});
