import { RATE_UNITS, schedule, type Schedule } from "../../furnace/scheduleTime";
import { choice } from "../../inputs/choice";
import type { Read } from "../../inputs/Input";
import { heatingRates, holdingTimes, temperaturesInOrder } from "../../inputs/kinds/series";
import { fastSchedule, slowSchedule } from "../../problems/functions/furnaceProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { HOT_FURNACE } from "./cautions";
import { scheduleInCells } from "./scheduleInCells";

// Where a working line asks whether the other unit was meant: no kiln climbs 60 degC a minute, few firings take a week. Common practice, no source.
const FAST_PER_MINUTE = 60;
const SLOW_DAYS = 7;
const MINUTES_PER_HOUR = 60;
const MINUTES_PER_DAY = 1440;

const inputs = {
  temperatures: {
    ...temperaturesInOrder("Temperatures in order, the start first [°C]."),
    detail: "All in °F with the rates in °F gives the same time. For a start at 0 type 0.01, since a 0 looks like a blank cell.",
  },
  rates: {
    ...heatingRates("Heating or cooling rate of each step, above 0; none beside the start."),
    detail: "One cell for each step, or as many cells as temperatures with the first left empty.",
  },
  holds: holdingTimes("Time held at each temperature [min], whatever the rates are counted for."),
  rateUnit: choice('Whether the rates are "per hour" or "per minute".', RATE_UNITS),
};

type ReadSchedule = Read<typeof inputs>;

const scheduleOf = ({ temperatures, rates, holds, rateUnit }: ReadSchedule): Schedule => schedule(temperatures, rates, holds, rateUnit);

export const scheduleTimeFunction = cellFunction({
  name: "SCHEDULE.TIME",
  summary: "Time that a firing schedule takes as programmed: ramps and holds from temperature to temperature [min].",
  inputs,
  result: { about: "Time of the schedule", unit: "min" },
  compute: (read) => scheduleOf(read).minutes,
  inManyCells: scheduleInCells,
  working: (read) => {
    const { firstHold, steps, minutes } = scheduleOf(read);
    const perHour = read.rateUnit === "per hour";
    const fastest = Math.max(...steps.map(({ rate }) => (perHour ? rate / MINUTES_PER_HOUR : rate)));
    const [times, unit] = perHour ? ["60 x ", "h"] : ["", "min"];
    return [
      ...(firstHold > 0 ? [`held at the start: ${inFigures(firstHold)} min`] : []),
      ...steps.map(
        ({ from, to, rate, rampMinutes, holdMinutes }) =>
          `${inFigures(from)} to ${inFigures(to)} at ${inFigures(rate)} per ${unit}, ramp = ${times}|${inFigures(to)} - ${signed(from)}| / ${inFigures(rate)} = ${inFigures(rampMinutes)} min${holdMinutes > 0 ? `, then held ${inFigures(holdMinutes)} min` : ""}`,
      ),
      `time = ${[firstHold, ...steps.flatMap((step) => [step.rampMinutes, step.holdMinutes])]
        .filter((part) => part > 0)
        .map(inFigures)
        .join(" + ")} = ${inFigures(minutes)} min`,
      ...(fastest > FAST_PER_MINUTE ? [fastSchedule(fastest)] : []),
      ...(minutes > SLOW_DAYS * MINUTES_PER_DAY ? [slowSchedule(minutes / MINUTES_PER_DAY)] : []),
    ];
  },
  examples: [
    {
      cell: '=RETORT.SCHEDULE.TIME({20; 105; 600}, {5; 3}, {120; 60}, "per minute")',
      gives: 362,
      about: "Drying at 105 °C for two hours, then an hour at 600 °C.",
    },
    { cell: '=RETORT.SCHEDULE.TIME({20; 600}, {100}, {60}, "per hour")', gives: 408 },
  ],
  source: "Sum of |step| / rate + holds. As programmed: a kiln at its limit climbs slower and cools slower; HEATINGRATE shows what it did.",
  caution: HOT_FURNACE,
});

const signed = (value: number): string => (value < 0 ? `(${inFigures(value)})` : inFigures(value));
