import { DISCHARGE, jetSpeed, meanFlow, USUAL_RISE, ventDiameter } from "../../furnace/ventDiameter";
import { gasDensity, peakOverMean, pressureAboveAir } from "../../inputs/kinds/gases";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { optional } from "../../inputs/optional";
import { HOLE_BY_FLOW } from "../../problems/functions/furnaceProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { VENTED_VESSEL } from "./cautions";

export const ventDiameterFunction = cellFunction({
  name: "VENTDIAMETER",
  summary: "Least opening by flow alone, as the diameter of one round hole [mm]; tar narrows it, so this is not a recommendation.",
  inputs: {
    volume: positiveNumber("Gas that leaves, at the temperature of the vent [L], as GASVOLUME gives it.", "Give litres.", "a volume of gas", "L"),
    minutes: positiveNumber("Time in which it leaves [min].", "Give minutes.", "a time in minutes", "min"),
    density: gasDensity("Density of that gas [kg/m³], the same as g/L: its mass over its volume."),
    peakFactor: {
      ...peakOverMean("Greatest flow over mean flow, from 1; 3 to 5 is common practice, no source."),
      detail: "A mean understates: gas comes in a rush when the sample passes through its decomposition.",
    },
    overpressure: optional(pressureAboveAir("Pressure in the vessel above the air's own [Pa]."), "10"),
  },
  result: { about: "Least opening by flow alone", unit: "mm" },
  compute: ({ volume, minutes, density, peakFactor, overpressure }) => ventDiameter(volume, minutes, density, peakFactor, overpressure),
  working: ({ volume, minutes, density, peakFactor, overpressure = USUAL_RISE }) => {
    const [flow, speed] = [meanFlow(volume, minutes) * peakFactor, jetSpeed(overpressure, density)];
    const area = flow / DISCHARGE / speed;
    return [
      `greatest flow = ${inFigures(peakFactor)} x ${inFigures(volume)} / 1000 / (60 x ${inFigures(minutes)}) = ${inFigures(flow)} m³/s`,
      `speed of the jet = sqrt(2 x ${inFigures(overpressure)} / ${inFigures(density)}) = ${inFigures(speed)} m/s`,
      `area = ${inFigures(flow)} / (${DISCHARGE} x ${inFigures(speed)}) = ${inFigures(area)} m²`,
      `diameter = 1000 x sqrt(4 x ${inFigures(area)} / ${inFigures(Math.PI)}) = ${inFigures(ventDiameter(volume, minutes, density, peakFactor, overpressure))} mm`,
      HOLE_BY_FLOW,
    ];
  },
  inCells: ({ volume, minutes, density, peakFactor, overpressure }) => {
    const flow = `${operand(peakFactor)}*${operand(volume)}/(60000*${operand(minutes)})`;
    return `1000*SQRT(4*${flow}/(PI()*${DISCHARGE}*SQRT(2*${operand(numberInCells(overpressure, USUAL_RISE))}/${operand(density)})))`;
  },
  examples: [
    {
      cell: "=RETORT.VENTDIAMETER(13.56, 5, 0.553, 4)",
      gives: 7.921604191661909,
      about: "7.5 g of vapours in 5 min with a peak of four times the mean.",
    },
  ],
  source:
    "Orifice equation Q = 0.61 A sqrt(2 dp / density) with a sharp edge (coefficient from memory). Peak factor and 10 Pa are common practice, no source.",
  caution: VENTED_VESSEL,
});
