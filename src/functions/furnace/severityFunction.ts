import { ZERO_CELSIUS } from "../../furnace/gasVolume";
import { heldOrdinate, type Ramp, rampOrdinate, REFERENCE, SCALE, severity } from "../../furnace/severity";
import type { Read } from "../../inputs/Input";
import { furnaceTemperature, heatedTemperature } from "../../inputs/kinds/furnace";
import { positiveNumber } from "../../inputs/kinds/positiveNumber";
import { leastMinutes } from "../../inputs/kinds/times";
import { optional } from "../../inputs/optional";
import { BEYOND_STEAM, noHoldNoRamp, perhapsKelvin, rampNotBelow, rampWithoutFrom, rampWithoutRate } from "../../problems/functions/furnaceProblems";
import { neitherHoldNorRamp, rampDoesNotRise, rampIncomplete } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { HOT_FURNACE } from "./cautions";

const inputs = {
  temperature: heatedTemperature("Temperature held, or reached by the ramp [°C]."),
  minutes: optional(leastMinutes("Time held there [min]."), "a ramp alone"),
  from: {
    ...optional(furnaceTemperature("Where a steady ramp before the hold began [°C]."), "no ramp"),
    detail: "Ramp and hold add up. Give it with rate.",
  },
  rate: optional(
    positiveNumber("Rate of that ramp [°C/min].", "Give °C per minute, above 0: 180 an hour is 3.", "a ramp's rate", "°C/min"),
    "no ramp",
  ),
};

type Asked = Read<typeof inputs>;

// Where the index was fitted, degC, from the reference of 100 on.
const FITTED_TO = 260;

/** In kelvin the temperature would lie where the index was fitted; in degC it lies above. */
const isPerhapsKelvin = (temperature: number): boolean =>
  temperature > FITTED_TO && temperature - ZERO_CELSIUS >= REFERENCE && temperature - ZERO_CELSIUS <= FITTED_TO;

/** @throws InputProblem where neither hold nor whole ramp is given */
function rampOf({ temperature, minutes, from, rate }: Asked): Ramp | undefined {
  if (rate === undefined) {
    // A blank cell may arrive as 0; a ramp from 0 needs its rate all the same.
    if (from !== undefined && from !== 0) throw rampWithoutRate();
    if (minutes === undefined) throw noHoldNoRamp();
    return undefined;
  }
  if (from === undefined) throw rampWithoutFrom();
  if (from >= temperature) throw rampNotBelow(from, temperature);
  return { from, rate };
}

const severityOf = (asked: Asked): number => severity(asked.temperature, asked.minutes ?? 0, rampOf(asked));

export const severityFunction = cellFunction({
  name: "SEVERITY",
  summary:
    "Severity of a heat treatment, log10 R0 with R0 in minutes, from temperature and time, and from the ramp before: a number to compare runs by.",
  inputs,
  result: { about: "Severity, log10 R0", unit: "" },
  compute: severityOf,
  working: (asked) => {
    const { temperature, minutes = 0 } = asked;
    const ramp = rampOf(asked);
    const held = heldOrdinate(temperature, minutes);
    const ramped = ramp === undefined ? 0 : rampOrdinate(ramp.from, temperature, ramp.rate);
    return [
      `exponent = (${inFigures(temperature)} - 100) / 14.75 = ${inFigures((temperature - 100) / 14.75)}`,
      ...(minutes > 0 ? [`R0 of the hold: ${inFigures(minutes)} min times e to that power, ${inFigures(held)} min`] : []),
      ...(ramp === undefined ? [] : [`R0 of the ramp from ${inFigures(ramp.from)} °C: ${inFigures(ramped)} min`]),
      `R0 = ${inFigures(held)} + ${inFigures(ramped)} = ${inFigures(held + ramped)} min`,
      `severity: log10 of it, ${inFigures(severityOf(asked))}`,
      ...(temperature > FITTED_TO || temperature < REFERENCE ? [BEYOND_STEAM] : []),
      ...(isPerhapsKelvin(temperature) ? [perhapsKelvin(temperature, temperature - ZERO_CELSIUS)] : []),
    ];
  },
  refusesInCells: ({ temperature, minutes, from, rate }) => {
    const [ramp, begins] = [isGivenInCells(rate), isGivenInCells(from, true)];
    const start = numberInCells(from, 0);
    return [
      { when: `IF(${ramp},${begins}=0,${isGivenInCells(from)})`, says: rampIncomplete },
      { when: `IF(${ramp},0,${isGivenInCells(minutes)}=0)`, says: neitherHoldNorRamp },
      { when: rate === "" ? "0" : `IF(${ramp},${start}>=${operand(temperature)},0)`, says: rampDoesNotRise },
    ];
  },
  inCells: ({ temperature, minutes, from, rate }) => {
    const held = `${numberInCells(minutes, 0)}*EXP((${operand(temperature)}-${REFERENCE})/${SCALE})`;
    if (rate === "") return `LOG10(${held})`;
    const per = numberInCells(rate, 0);
    const ends = `(EXP((${operand(temperature)}-${REFERENCE})/${SCALE})-EXP((${operand(from)}-${REFERENCE})/${SCALE}))`;
    return `LOG10(${held}+IF(${per}=0,0,${SCALE}/IF(${per}=0,1,${per})*${ends}))`;
  },
  examples: [
    { cell: "=RETORT.SEVERITY(225, 13)", gives: 4.794405063351344 },
    { cell: "=RETORT.SEVERITY(450, 30)", gives: 11.782414045644282 },
    { cell: '=RETORT.SEVERITY(450, "", 100, 10)', gives: 10.474084811217299, about: "A ramp of 10 °C a minute alone." },
  ],
  source:
    "Overend and Chornet, Phil. Trans. R. Soc. A 321 (1987) 523: R0 = t exp((T - 100) / 14.75), fitted to steam treatment at about 100 to 260 °C; a ramp by its integral. Beyond that range an index only.",
  caution: HOT_FURNACE,
});
