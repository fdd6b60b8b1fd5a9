import { boilingPoint, SATURATION_LINE, saturationSteps } from "../../furnace/boilingPoint";
import { ZERO_CELSIUS } from "../../furnace/gasVolume";
import { boilingPressure } from "../../inputs/kinds/gases";
import { LOW_PRESSURE } from "../../problems/functions/furnaceProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { HOT_POINTS } from "./cautions";

// As for the volume of a gas: a working pump, or another unit.
const VACUUM = 20_000;

export const boilingPointWaterFunction = cellFunction({
  name: "BOILINGPOINT.WATER",
  summary: "Temperature at which pure water boils at a pressure [°C], to check a thermometer by.",
  inputs: {
    pressure: {
      ...boilingPressure("Pressure of the air where the water boils [Pa], not reduced to sea level: 1013.25 hPa is 101325."),
      detail: "A weather report gives sea level: take off about 12 hPa for each 100 m of height (common practice, no source).",
    },
  },
  result: { about: "Boiling point of water", unit: "°C" },
  compute: ({ pressure }) => boilingPoint(pressure),
  working: ({ pressure }) => {
    const { beta, d, kelvin } = saturationSteps(pressure);
    return [
      `beta: fourth root of ${inFigures(pressure)} Pa over 1 MPa, ${inFigures(beta)}`,
      `D of IAPWS-IF97, equation 31: ${inFigures(d)}`,
      `boiling point = ${inFigures(kelvin)} - 273.15 = ${inFigures(kelvin - ZERO_CELSIUS)} °C`,
      "hold the thermometer in the steam just above the water, not against the wall",
      ...(pressure < VACUUM ? [LOW_PRESSURE] : []),
    ];
  },
  inCells: ({ pressure }) => `${saturationInCells(operand(pressure))}-${ZERO_CELSIUS}`,
  examples: [
    { cell: "=RETORT.BOILINGPOINT.WATER(101325)", gives: 99.97430000048058 },
    { cell: "=RETORT.BOILINGPOINT.WATER(90000)", gives: 96.68703928273942, about: "At about 1000 m of height." },
  ],
  source: "IAPWS-IF97 (R7-97, 2012), saturation line, equation 31, here from 1200 Pa, since a smaller figure may be hPa, to 22.064 MPa.",
  caution: HOT_POINTS,
});

/** Equation 31 with built-in functions, in kelvin; p in Pa, the text of one operand. Constants in brackets: a leading minus binds tighter than a power. */
function saturationInCells(p: string): string {
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = SATURATION_LINE;
  const beta = `(${p}/10^6)^0.25`;
  const quadratic = (a: number, b: number, c: number): string => `(${a}*(${p}/10^6)^0.5+(${b})*${beta}+(${c}))`;
  const [e, f, g] = [quadratic(1, n3, n6), quadratic(n1, n4, n7), quadratic(n2, n5, n8)];
  const d = `(2*${g}/(-1*${f}-SQRT(${f}^2-4*${e}*${g})))`;
  return `(${n10}+${d}-SQRT((${n10}+${d})^2-4*((${n9})+${n10}*${d})))/2`;
}
