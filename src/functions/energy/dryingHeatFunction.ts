import { BOILING, HOTTEST, type DryingHeat, dryingHeat, EVAPORATION, EVAPORATION_PER_DEGREE, WATER_HEAT, WOOD } from "../../energy/dryingHeat";
import type { Read } from "../../inputs/Input";
import { specificHeat } from "../../inputs/kinds/energy";
import { heatedTemperature } from "../../inputs/kinds/furnace";
import { roomTemperature } from "../../inputs/kinds/temperatures";
import { mass } from "../../inputs/kinds/weighings";
import { optional } from "../../inputs/optional";
import { LEAST_HEAT } from "../../problems/functions/energyProblems";
import { iceAtTheStart, notHeatedHere, ovenTooHot, vesselIncomplete, waterGoneAlready } from "../../problems/sharing/plainCellProblems";
import { cellFunction } from "../cellFunction";
import { inFigures } from "../inFigures";
import { isGivenInCells, numberInCells } from "../numberInCells";
import { operand } from "../operand";
import { OVEN_HEAT } from "./cautions";

const inputs = {
  dry: mass("Dry matter [g]."),
  water: mass("Water to be dried off [g]."),
  from: roomTemperature("Temperature at the start [°C]."),
  to: heatedTemperature("Temperature of the oven [°C], to 300."),
  solidHeat: {
    ...optional(specificHeat("Specific heat of the dry matter [kJ/(kg K)]: 1400 J/(kg K) is 1.4."), "dry wood"),
    detail: "Dry wood 0.1031 + 0.003867 T with T in K, at the middle of the two temperatures.",
  },
  vesselMass: optional(mass("Vessel that is heated with it [g]."), "none"),
  vesselHeat: optional(specificHeat("Specific heat of the vessel [kJ/(kg K)]."), "none, and then without vesselMass"),
};

const heatOf = (read: Read<typeof inputs>): DryingHeat => dryingHeat(read);

export const dryingHeatFunction = cellFunction({
  name: "DRYINGHEAT",
  summary: "Heat that drying takes at the least: warming the solid, its water and the vessel, and evaporating the water [kJ].",
  inputs,
  result: { about: "Heat to dry, at the least", unit: "kJ" },
  compute: (read) => heatOf(read).sum,
  working: (read) => {
    const { dry, water, from, to, vesselMass = 0, vesselHeat = 0 } = read;
    const of = heatOf(read);
    const rise = `(${inFigures(to)} - ${inFigures(from)})`;
    return [
      `solid = ${inFigures(dry)} x ${inFigures(of.solidHeat)} x ${rise} / 1000 = ${inFigures(of.solid)} kJ`,
      `water, warmed = ${inFigures(water)} x ${WATER_HEAT} x (${inFigures(of.evaporatesAt)} - ${inFigures(from)}) / 1000 = ${inFigures(of.warming)} kJ`,
      `water, evaporated at ${inFigures(of.evaporatesAt)} °C = ${inFigures(water)} x ${inFigures(of.latent)} / 1000 = ${inFigures(of.evaporating)} kJ`,
      ...(vesselMass === 0 ? [] : [`vessel = ${inFigures(vesselMass)} x ${inFigures(vesselHeat)} x ${rise} / 1000 = ${inFigures(of.vessel)} kJ`]),
      `heat = ${inFigures(of.solid)} + ${inFigures(of.warming)} + ${inFigures(of.evaporating)} + ${inFigures(of.vessel)} = ${inFigures(of.sum)} kJ`,
      `per gram of water = ${inFigures(of.sum)} / ${inFigures(water)} = ${inFigures(of.sum / water)} kJ/g`,
      LEAST_HEAT,
    ];
  },
  refusesInCells: ({ from, to, vesselMass, vesselHeat }) => {
    const [start, end] = [operand(from), operand(to)];
    return [
      { when: `${start}<0`, says: iceAtTheStart },
      { when: `${start}>=${BOILING}`, says: waterGoneAlready },
      { when: `${end}<=${start}`, says: notHeatedHere },
      { when: `${end}>${HOTTEST}`, says: ovenTooHot },
      { when: vesselMass + vesselHeat === "" ? "0" : `${isGivenInCells(vesselMass)}<>${isGivenInCells(vesselHeat)}`, says: vesselIncomplete },
    ];
  },
  inCells: ({ dry, water, from, to, solidHeat, vesselMass, vesselHeat }) => {
    const [start, end] = [operand(from), operand(to)];
    const rise = `(${end}-${start})`;
    const wood = `(${WOOD.constant}+${WOOD.perKelvin}*((${start}+${end})/2+273.15))`;
    const heat =
      solidHeat === ""
        ? wood
        : Number.isFinite(Number(solidHeat))
          ? solidHeat
          : `IF(ISNUMBER(${solidHeat}),IF(${solidHeat}=0,${wood},${solidHeat}),${wood})`;
    const evaporatesAt = `IF(${end}<${BOILING},${end},${BOILING})`;
    const ofWater = `${operand(water)}*(${WATER_HEAT}*(${evaporatesAt}-${start})+${EVAPORATION}+${EVAPORATION_PER_DEGREE}*(${BOILING}-${evaporatesAt}))`;
    return `(${operand(dry)}*${heat}*${rise}+${ofWater}+${numberInCells(vesselMass, 0)}*${numberInCells(vesselHeat, 0)}*${rise})/1000`;
  },
  examples: [
    { cell: "=RETORT.DRYINGHEAT(6, 4, 20, 105)", gives: 11.080139860500001, about: "10 g of moist wood with 4 g of water." },
    { cell: '=RETORT.DRYINGHEAT(6, 4, 20, 105, "", 50, 0.49)', gives: 13.1626398605, about: "The same in a steel tin of 50 g." },
  ],
  source:
    "Sensible and latent heat; water 4.18 kJ/(kg K), 2257 kJ/kg at 100 °C and 2.439 more for each degree below (steam tables, from memory); dry wood: Wood Handbook (USDA), chapter 4. The last water of wood is bound and takes more.",
  caution: OVEN_HEAT,
});
