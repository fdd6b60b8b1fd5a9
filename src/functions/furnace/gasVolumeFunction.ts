import { ATMOSPHERE, GAS_CONSTANT, gasVolume, ZERO_CELSIUS } from "../../furnace/gasVolume";
import { furnaceTemperature } from "../../inputs/kinds/furnace";
import { gasMolarMass, gasPressure } from "../../inputs/kinds/gases";
import { mass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { closedVessel, LOW_PRESSURE } from "../../problems/functions/furnaceProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { VENTED_VESSEL } from "./cautions";

// Below this a working pump is needed, and a pressure in another unit is likelier. Common practice, no source.
const VACUUM = 20_000;
const PER_KILO = 1000;

export const gasVolumeFunction = cellFunction({
  name: "GASVOLUME",
  summary: "Volume of the gas or vapour that a mass turns into, as an ideal gas [L].",
  inputs: {
    mass: { ...mass("Mass that leaves as gas [g]."), detail: "The loss on heating, or the mass of liquid that boils away." },
    molarMass: {
      ...gasMolarMass("Mean molar mass of the gas [g/mol]: water 18.015, carbon dioxide 44.009."),
      detail: "The vapours of pine wood, water among them, had 35.1 g/mol in the mean (MaCFP materials database, NIST data).",
    },
    temperature: furnaceTemperature("Temperature of the gas [°C]."),
    pressure: optional(gasPressure("Pressure of the gas [Pa]: 1013.25 hPa is 101325."), "101325"),
  },
  result: { about: "Volume of gas", unit: "L" },
  compute: ({ mass: grams, molarMass, temperature, pressure }) => gasVolume(grams, molarMass, temperature, pressure),
  working: ({ mass: grams, molarMass, temperature, pressure = ATMOSPHERE }) => {
    const volume = gasVolume(grams, molarMass, temperature, pressure);
    const kelvin = temperature + ZERO_CELSIUS;
    return [
      `amount n = ${inFigures(grams)} / ${inFigures(molarMass)} = ${inFigures(grams / molarMass)} mol`,
      `T = ${inFigures(temperature)} + 273.15 = ${inFigures(kelvin)} K`,
      `volume = 1000 x ${inFigures(grams / molarMass)} x ${GAS_CONSTANT} x ${inFigures(kelvin)} / ${inFigures(pressure)} = ${inFigures(volume)} L`,
      closedVessel((volume * pressure) / PER_KILO),
      ...(pressure < VACUUM ? [LOW_PRESSURE] : []),
    ];
  },
  inCells: ({ mass: grams, molarMass, temperature, pressure }) =>
    `1000*${operand(grams)}/${operand(molarMass)}*${GAS_CONSTANT}*(${operand(temperature)}+${ZERO_CELSIUS})/${numberInCells(pressure, ATMOSPHERE)}`,
  examples: [
    { cell: "=RETORT.GASVOLUME(1, 18.015, 100)", gives: 1.6996783875962123, about: "1 g of water as steam, some 1700 times its liquid volume." },
    {
      cell: "=RETORT.GASVOLUME(7.5, 35.1, 500, 101325)",
      gives: 13.556122347077926,
      about: "7.5 g of vapours of wood: 136 volumes of a 100 mL crucible.",
    },
  ],
  source:
    "Ideal gas, V = n R T / p, R = 8.314462618 J/(mol K) (SI brochure, 9th edition). Steam at 100 °C is 1.6 % less (steam tables, from memory).",
  caution: VENTED_VESSEL,
});
