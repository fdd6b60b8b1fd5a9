import { heatingRate, type HeatingRate } from "../../furnace/heatingRate";
import { rateVerdict } from "../../furnace/rateVerdict";
import type { Read } from "../../inputs/Input";
import { heatedTemperature } from "../../inputs/kinds/furnace";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { temperaturesInOrder } from "../../inputs/kinds/series";
import { minutes } from "../../inputs/kinds/times";
import { optional } from "../../inputs/optional";
import { counted } from "../../problems/quoted";
import { tableFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { HOT_FURNACE } from "./cautions";
import { heatingRateInCells } from "./heatingRateInCells";
import { HEADINGS, LABELS } from "./heatingRateLabels";

const inputs = {
  times: minutes("Times since the start [min], rising."),
  temperatures: { ...temperaturesInOrder("Temperature read at each time [°C]."), detail: "Of the sample rather than of the kiln: the kiln leads." },
  set: optional(
    positiveNumber("Rate that was set [°C/min].", "Give °C per minute, above 0: 180 an hour is 3.", "a set rate", "°C/min"),
    "not compared",
  ),
  from: optional(heatedTemperature("Lowest temperature that counts [°C]."), "from the first reading"),
  to: optional(heatedTemperature("Highest temperature that counts [°C]."), "to the last reading"),
};

const rateOf = ({ times, temperatures, from, to }: Read<typeof inputs>): HeatingRate => heatingRate(times, temperatures, { from, to });

export const heatingRateFunction = tableFunction({
  name: "HEATINGRATE",
  summary: "Table of the rate at which a furnace or sample really heated, with its uncertainty and how far it is from the rate that was set.",
  inputs,
  result: { about: "One quantity a row, with its value and unit", unit: "" },
  computeTable: (read) => {
    const of = rateOf(read);
    return [
      HEADINGS,
      [LABELS.rate, of.rate, "°C/min"],
      [LABELS.u, of.u, "°C/min"],
      [LABELS.halfWidth, of.halfWidth, "°C/min"],
      [LABELS.count, of.count, ""],
      [LABELS.scatter, of.scatter, "°C"],
      [LABELS.firstHalf, of.halves?.[0] ?? "", "°C/min"],
      [LABELS.secondHalf, of.halves?.[1] ?? "", "°C/min"],
      [LABELS.deviation, read.set === undefined ? "" : Math.abs(of.rate) / read.set - 1, "fraction"],
      [LABELS.verdict, rateVerdict(of, read.set), ""],
    ];
  },
  inManyCells: heatingRateInCells,
  working: (read) => {
    const of = rateOf(read);
    const { set } = read;
    return [
      `slope of the line through ${of.count} readings: ${inFigures(of.rate)} °C/min`,
      `u = s / sqrt(sum (t - mean t)^2): ${inFigures(of.u)} °C/min, with s of ${inFigures(of.scatter)} °C and ${counted(of.count - 2, "degree")} of freedom`,
      `per hour = 60 x ${inFigures(of.rate)} = ${inFigures(60 * of.rate)} °C/h`,
      ...(set === undefined
        ? []
        : [`deviation from the set rate = |${inFigures(of.rate)}| / ${inFigures(set)} - 1 = ${inFigures(Math.abs(of.rate) / set - 1)}`]),
      rateVerdict(of, set),
    ];
  },
  examples: [
    {
      cell: "=RETORT.HEATINGRATE({0; 10; 20; 30; 40; 50}, {20; 50.2; 80.1; 109.8; 140.3; 169.9}, 3)",
      gives: [
        ["Quantity", "Value", "Unit"],
        ["Rate", 2.9985714285714287, "°C/min"],
        ["its standard uncertainty", 0.004948716593054046, "°C/min"],
        ["its 95 % uncertainty, plus or minus", 0.013739839961796018, "°C/min"],
        ["Readings, n", 6, ""],
        ["Scatter about the line", 0.20701966780271092, "°C"],
        ["Rate of the first half", 3.005, "°C/min"],
        ["Rate of the second half", 3.005, "°C/min"],
        ["Deviation from the set rate", -0.0004761904761904079, "fraction"],
        ["Verdict", "within 5 % of the set rate", ""],
      ],
      about: "A kiln set to 3 °C a minute.",
    },
  ],
  source:
    "Least squares; Student's t with n - 2 degrees of freedom (ISO 11358-1, from memory, asks for the measured rate). Scatter is taken as independent from reading to reading; a bend makes u too small, so both halves are shown. 5 % and a fifth are common practice, no source.",
  caution: HOT_FURNACE,
});
