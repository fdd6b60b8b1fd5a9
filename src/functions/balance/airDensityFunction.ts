import { AIR_FORMULAS, AIR_RANGES, AIR_STATE, airDensity, type AirFormula } from "../../balance/airDensity";
import {
  COMPRESSIBILITY,
  compressibility,
  DRY_AIR,
  ENHANCEMENT,
  GAS_CONSTANT,
  SATURATION,
  vapourFraction,
  WATER,
  zeroCelsius,
} from "../../balance/cipmAirDensity";
import { OIML } from "../../balance/oimlAirDensity";
import { choice } from "../../inputs/choice";
import { airPressure } from "../../inputs/kinds/air";
import { fraction } from "../../inputs/kinds/shares";
import { roomTemperature } from "../../inputs/kinds/temperatures";
import { optional } from "../../inputs/optional";
import { outsideAirFormula } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { put } from "../inCells/typedInCells";
import { inFigures } from "../inFigures";
import { operand } from "../operand";
import { wordInCells } from "../wordInCells";

export const airDensityFunction = cellFunction({
  name: "AIRDENSITY",
  summary: "Density of the air in the weighing room from its temperature, pressure and humidity [kg/m³].",
  inputs: {
    temperature: roomTemperature("Air temperature [°C]; neither formula reaches 0 °C."),
    pressure: airPressure("Air pressure [Pa] at the balance, not reduced to sea level: 1013.25 hPa is 101325."),
    humidity: fraction("Relative humidity [fraction]: 50 % is 0.5, dry air 0."),
    formula: {
      ...optional(choice("Which formula.", AIR_FORMULAS), "CIPM-2007"),
      detail: "CIPM-2007: 15 to 27 °C, 60000 to 110000 Pa. OIML: 10 to 30 °C, 90000 to 110000 Pa, humidity to 0.8.",
    },
  },
  result: { about: "Air density", unit: "kg/m³" },
  compute: ({ temperature, pressure, humidity, formula }) => airDensity(temperature, pressure, humidity, formula),
  working: ({ temperature, pressure, humidity, formula }) => {
    const answer = `air density = ${inFigures(airDensity(temperature, pressure, humidity, formula))} kg/m³`;
    if (formula === "OIML") return ["(0.34848 p - 0.009 h exp(0.061 t)) / (273.15 + t), p in hPa, h in percent", answer];
    const vapour = vapourFraction(temperature, pressure, humidity);
    return [
      `mole fraction of water vapour = ${inFigures(vapour)}`,
      `compressibility Z = ${inFigures(compressibility(temperature, pressure, vapour))}`,
      `p M / (Z R T) x (1 - 0.378 x vapour): ${answer}`,
    ];
  },
  refusesInCells: ({ formula, ...texts }) => {
    const outside = (which: AirFormula): string =>
      AIR_STATE.map((name) => {
        const [least, most] = AIR_RANGES[which][name];
        return `(${operand(texts[name])}<${least})+(${operand(texts[name])}>${most})`;
      }).join("+");
    return [{ when: wordInCells(formula, [["OIML", outside("OIML")]], outside("CIPM-2007")), says: outsideAirFormula }];
  },
  inCells: ({ formula, ...texts }) => {
    const [t, p, h] = [operand(texts.temperature), operand(texts.pressure), operand(texts.humidity)];
    return wordInCells(formula, [["OIML", oimlInCells(t, p, h)]], cipmInCells(t, p, h));
  },
  examples: [
    { cell: "=RETORT.AIRDENSITY(20, 101325, 0.5)", gives: 1.1993138954744933 },
    { cell: '=RETORT.AIRDENSITY(28, 101325, 0.5, "OIML")', gives: 1.1642513645281405 },
  ],
  source:
    "CIPM-2007: Picard and others, Metrologia 45 (2008) 149, with 400 ppm of carbon dioxide. OIML: R 111-1, equation E.3-1 (from memory, with its range); the two agree within 2 parts in 10 000.",
});

/** CIPM-2007 with built-in functions; t in degC, p in Pa, h a fraction, each the text of one operand. */
function cipmInCells(t: string, p: string, h: string): string {
  const kelvin = `(${t}+${zeroCelsius})`;
  const { A, B, C, D } = SATURATION;
  const { alpha, beta, gamma } = ENHANCEMENT;
  const saturation = `EXP(${put(A)}*${kelvin}^2+${put(B)}*${kelvin}+${put(C)}+${put(D)}/${kelvin})`;
  const vapour = `(${h}*(${alpha}+${put(beta)}*${p}+${put(gamma)}*${t}^2)*${saturation}/${p})`;
  const { a0, a1, a2, b0, b1, c0, c1, d, e } = COMPRESSIBILITY;
  const first = `(${put(a0)}+${put(a1)}*${t}+${put(a2)}*${t}^2+(${put(b0)}+${put(b1)}*${t})*${vapour}+(${put(c0)}+${put(c1)}*${t})*${vapour}^2)`;
  const z = `(1-${p}/${kelvin}*${first}+(${p}/${kelvin})^2*(${put(d)}+${put(e)}*${vapour}^2))`;
  return `${p}*${put(DRY_AIR)}/(${z}*${GAS_CONSTANT}*${kelvin})*(1-${vapour}*${put(1 - WATER / DRY_AIR)})`;
}

/** The simplified formula of OIML R 111-1 with built-in functions; arguments as above. */
const oimlInCells = (t: string, p: string, h: string): string =>
  `(${OIML.pressure}*${p}/100-${OIML.humidity}*100*${h}*EXP(${OIML.exponent}*${t}))/(${zeroCelsius}+${t})`;
