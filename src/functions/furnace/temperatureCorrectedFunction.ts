import { spanOf, temperatureCorrected } from "../../furnace/calibration";
import { thermometerReading } from "../../inputs/kinds/furnace";
import { calibrationPoints } from "../../inputs/kinds/series";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { calibrationInCells } from "./calibrationInCells";
import { HOT_POINTS } from "./cautions";

const inBrackets = (value: number): string => (value < 0 ? `(${inFigures(value)})` : inFigures(value));

export const temperatureCorrectedFunction = cellFunction({
  name: "TEMPERATURE.CORRECTED",
  summary: "A thermometer's reading put right by its calibration points, on the straight line between the two around it; refused outside them [°C].",
  inputs: {
    reading: thermometerReading("Reading to be put right [°C]."),
    readings: {
      ...calibrationPoints("What the thermometer showed at each calibration point [°C], in any order."),
      detail:
        "Ice water is 0 °C; boiling water BOILINGPOINT.WATER at the pressure of the day; tin freezes at 231.928, zinc at 419.527, aluminium at 660.323 °C.",
    },
    references: calibrationPoints("What was really there at each of them [°C]."),
  },
  result: { about: "Corrected temperature", unit: "°C" },
  compute: ({ reading, readings, references }) => temperatureCorrected(reading, readings, references),
  inManyCells: calibrationInCells,
  working: ({ reading, readings, references }) => {
    const [below, above] = spanOf(reading, readings, references);
    const answer = temperatureCorrected(reading, readings, references);
    const share = (reading - below.reading) / (above.reading - below.reading);
    return [
      `between the points ${inFigures(below.reading)} and ${inFigures(above.reading)} °C`,
      `share of the span = (${inFigures(reading)} - ${inBrackets(below.reading)}) / (${inFigures(above.reading)} - ${inBrackets(below.reading)}) = ${inFigures(share)}`,
      `corrected = ${inFigures(below.reference)} + ${inFigures(share)} x (${inFigures(above.reference)} - ${inBrackets(below.reference)}) = ${inFigures(answer)} °C`,
      `correction = ${inFigures(answer)} - ${inBrackets(reading)} = ${inFigures(answer - reading)} °C`,
    ];
  },
  examples: [
    {
      cell: "=RETORT.TEMPERATURE.CORRECTED(450, {0.4; 100.9; 422; 664}, {0; 99.6; 419.527; 660.323})",
      gives: 447.38769421487603,
      about: "A thermocouple that read ice, boiling water, zinc and aluminium.",
    },
  ],
  source: "Linear interpolation. Fixed points: ITS-90 (Preston-Thomas, Metrologia 27 (1990) 3).",
  caution: HOT_POINTS,
});
