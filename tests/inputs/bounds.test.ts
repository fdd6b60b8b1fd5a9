import { readdirSync } from "node:fs";
import path from "node:path";
import type { CellValue } from "../../src/inputs/CellValue";
import type { CellInput } from "../../src/inputs/Input";
import { airDensityInput, airPressure, solidDensity } from "../../src/inputs/kinds/air";
import { lossUncertainty } from "../../src/inputs/kinds/lossUncertainty";
import { furnaceTemperature, heatedTemperature, thermometerReading } from "../../src/inputs/kinds/furnace";
import { boilingPressure, gasDensity, gasMolarMass, gasPressure, peakOverMean, pressureAboveAir, vesselVolumes } from "../../src/inputs/kinds/gases";
import { airChangesPerHour, roomVolume } from "../../src/inputs/kinds/roomAir";
import { dryHeatingValue, specificHeat } from "../../src/inputs/kinds/energy";
import { resultValue } from "../../src/inputs/kinds/result";
import { excessAir, oxygenInAir, oxygenTaken } from "../../src/inputs/kinds/oxygen";
import { positiveNumber } from "../../src/inputs/kinds/positiveNumber";
import { productMass } from "../../src/inputs/kinds/products";
import { ashShare, fraction, massFraction, moistureContent, presentMassFraction, presentMoisture, wetMoisture } from "../../src/inputs/kinds/shares";
import { coverageFactor, significanceLevel, standardDeviation, standardUncertainty, wantedUncertainty } from "../../src/inputs/kinds/statistics";
import { gramsPerDegree, roomTemperature, temperatureDifference } from "../../src/inputs/kinds/temperatures";
import { baseVolume, dilutionFactor, liquidDensity, molarity, titratedSample } from "../../src/inputs/kinds/titration";
import { laterTime, leastMinutes, startTime, timingBound } from "../../src/inputs/kinds/times";
import { balanceDeviation, balanceReading, changeLimit, mass, massLost, readability, signedMass, vesselMass } from "../../src/inputs/kinds/weighings";

/** A value that is taken as it stands, and one a little further on that is refused with this sentence. */
interface Bound {
  readonly at: number;
  readonly beyond: number;
  readonly says: string;
  /** Who says that the bound lies here. */
  readonly source: string;
}

const AS_KELVIN = "is a whole °C in kelvin, by its .15; round it if it is °C.";
const WHOLE_KELVIN = "0 degC is 273.15 K (SI brochure)";

const GIVE = {
  pascals: "Give pascals: 1013.25 hPa is 101325.",
  airDensity: "Give kg/m³, as AIRDENSITY does: 0.0012 g/cm³ is 1.2.",
  solidDensity: "Give kg/m³: 2.7 g/cm³ is 2700.",
  celsius: "Give degrees Celsius: 293.15 K is 20.",
  difference: "Give vessel minus room, from 0 to 100 °C.",
  perDegree: "Give grams per °C: 0.19 mg is 0.00019.",
  oxygen: "Give the mass fraction of oxygen, 0.2314 for dry air.",
  taken: "Give grams of oxygen per gram of fuel; a fuel that takes up none needs no air.",
  excess: "Type 0.15 or 15% for 15 % more air than needed.",
  share: "Type a share from 0 to 1, such as 0.35 or 35%.",
  element: "Type a share of the mass from 0 to 1, such as 0.487 or 48.7%.",
  ash: 'Type a fraction such as 0.012 or 1.2%, or "none".',
  moisture: "Type a fraction such as 0.35 or 35%.",
  wet: "Type a fraction of the moist sample, such as 0.08 or 8%; 0 if dry.",
  present: "Type a fraction of the moist sample, such as 0.08 or 8%.",
  factor: "Give a coverage factor, such as 2 for about 95 %.",
  alpha: "Type 0.05 or 5% for 95 % confidence.",
  wanted: "Type 0.5 % as 0.005 or 0.5%.",
  deviation: "Give a number above 0 in the unit of the values, or leave the argument out.",
  uncertainty: "Give the standard uncertainty in grams, such as 0.0005.",
  minutes: "Give minutes, such as 60.",
  timing: "Give the minutes a time may be off, such as 0.5.",
  time: "Give minutes or clock times, the same for all three.",
  grams: "Give grams.",
  lost: "Give grams, before - after.",
  signed: "Give grams, with a minus sign if below zero.",
  vessel: 'Weigh the empty vessel in grams, or type "tared" if the balance was zeroed with it on.',
  step: "Give the balance's smallest step in grams, such as 0.001.",
  dataSheet: "Give grams, or leave the argument out.",
  limit: "Give a number above 0, or leave the argument out.",
  lossU: "Type 0.2 % as 0.002 or 0.2%.",
  volume: "Give millilitres, such as 27.8.",
  titrated: "Give grams or millilitres, as unit says.",
  molarity: "Give mol/L: 100 mmol/L is 0.1.",
  density: "Give g/mL: 1005 kg/m³ is 1.005.",
  dilution: "Give made-up volume over titrated volume, such as 10.",
  product: 'Give grams, or type "none" if there was none.',
  ratio: "Give a ratio of moles, such as 0.5.",
  furnace: "Give degrees Celsius: 673.15 K is 400, and so is 752 °F.",
  molar: "Give g/mol: 0.018 kg/mol of water is 18.015.",
  volumes: "Divide the gas by the vessel: 13.5 L through 0.1 L is 135.",
  gas: "Give kg/m³ or g/L, which are the same: 7.5 g in 13.56 L is 0.553.",
  above: "Give the pascals above the air's own pressure, such as 10.",
  peak: "Give peak flow over mean flow; 3 to 5 is common practice, no source.",
  room: "Give cubic metres: length x width x height in metres.",
  heating: "Give MJ/kg: 20000 kJ/kg (J/g) is 20.",
  specific: "Give kJ/(kg K): 1400 J/(kg K) is 1.4.",
  changes: 'Give air changes per hour, such as 0.5, or "closed".',
};

const NO_PERCENT = "a share is at most the whole (definition)";
const NEVER_NEGATIVE = "definition";
const SMALL = Number.MIN_VALUE;
const ARITHMETIC = "no quantity of the trade comes near (common practice, no source)";

const zeroUp = (beyond: number, says: string): Bound => ({ at: 0, beyond, says, source: NEVER_NEGATIVE });
/** Where 0 is a blank cell, the smallest number above it is taken. */
const aboveZero = (says: string): Bound => ({ at: SMALL, beyond: -1, says, source: NEVER_NEGATIVE });
const COMMON = "common practice, no source";
const bound = (at: number, beyond: number, says: string, source: string): Bound => ({ at, beyond, says: `x: ${says}`, source });
const sense = (unit: string, advice: string): Bound => ({
  at: 1e15,
  beyond: 1e15 + 1,
  says: `x: 1000000000000000${unit} is beyond 1000000000000000 either way. ${advice}`,
  source: ARITHMETIC,
});

const BOUNDS: Readonly<Record<string, readonly [CellInput<number>, readonly Bound[]]>> = {
  airPressure: [
    airPressure("Pressure [Pa]."),
    [
      {
        at: 30_000,
        beyond: 29_999.9,
        says: `x: 29999.9 Pa is too low for air and looks like hPa, kPa or bar. ${GIVE.pascals}`,
        source: "31.4 kPa on the highest summit, 8849 m (ISO 2533, standard atmosphere)",
      },
      {
        at: 115_000,
        beyond: 115_000.1,
        says: `x: 115000.1 Pa is above 115000 Pa, which air does not reach. ${GIVE.pascals}`,
        source: "the highest at sea level is near 108.5 kPa (from memory)",
      },
      { at: 30_000, beyond: -1, says: `x: -1 Pa is below zero. ${GIVE.pascals}`, source: NEVER_NEGATIVE },
    ],
  ],
  airDensityInput: [
    airDensityInput("Density [kg/m³]."),
    [
      {
        at: 0.4,
        beyond: 0.39999,
        says: `x: 0.39999 kg/m³ is too low for air and looks like g/cm³. ${GIVE.airDensity}`,
        source: "0.47 kg/m3 on the highest summit (ISO 2533)",
      },
      {
        at: 1.7,
        beyond: 1.70001,
        says: `x: 1.70001 kg/m³ is above 1.7 kg/m³, which air does not reach. ${GIVE.airDensity}`,
        source: "1.60 kg/m3 at 108.5 kPa and -37 degC, p / (287.05 J/(kg K) T)",
      },
      { at: 1.2, beyond: -1, says: `x: -1 kg/m³ is below zero. ${GIVE.airDensity}`, source: NEVER_NEGATIVE },
    ],
  ],
  solidDensity: [
    solidDensity("Density [kg/m³]."),
    [
      {
        at: 22.60001,
        beyond: 22.6,
        says: `x: 22.6 kg/m³ is too low for a solid and looks like g/cm³. ${GIVE.solidDensity}`,
        source: "osmium, the densest element, 22.59 g/cm3 (CRC Handbook, from memory)",
      },
      {
        at: 22_600,
        beyond: 22_600.1,
        says: `x: 22600.1 kg/m³ is above 22600 kg/m³, which no material reaches. ${GIVE.solidDensity}`,
        source: "osmium, the densest element, 22 590 kg/m3 (CRC Handbook, from memory)",
      },
      { at: 2700, beyond: -1, says: `x: -1 kg/m³ is below zero. ${GIVE.solidDensity}`, source: NEVER_NEGATIVE },
    ],
  ],
  roomTemperature: [
    roomTemperature("Temperature [°C]."),
    [
      {
        at: 100,
        beyond: 100.1,
        says: `x: 100.1 °C is above 100 °C and looks like kelvin. ${GIVE.celsius}`,
        source: "water boils (common practice, no source)",
      },
      { at: -70, beyond: -70.1, says: `x: -70.1 °C is below -70 °C. ${GIVE.celsius}`, source: "-67.7 degC at Oymyakon in 1933 (from memory)" },
    ],
  ],
  temperatureDifference: [
    temperatureDifference("Difference [°C]."),
    [
      {
        at: 100,
        beyond: 100.1,
        says: `x: 100.1 °C is above 100 °C, too hot for a balance or not a difference. ${GIVE.difference}`,
        source: "common practice, no source",
      },
      zeroUp(-0.1, `x: -0.1 °C is below zero: a vessel colder than the room gathers dew. ${GIVE.difference}`),
    ],
  ],
  gramsPerDegree: [
    gramsPerDegree("Rate [g/°C]."),
    [
      {
        at: 0.01,
        beyond: 0.010001,
        says: `x: 0.010001 g/°C is above 0.01 g/°C and looks like milligrams. ${GIVE.perDegree}`,
        source: "fifty times the largest published, 0.19 mg per degC (Blade); the margin is common practice, no source",
      },
      aboveZero(`x: -1 g/°C is below zero. ${GIVE.perDegree}`),
    ],
  ],
  oxygenInAir: [
    oxygenInAir("Mass fraction."),
    [
      {
        at: 0.22,
        beyond: 0.2199,
        says: `x: 0.2199 is the share by volume, not by mass. ${GIVE.oxygen}`,
        source: "0.2314 by mass dry, less its moisture: 5 % of the mass as vapour leaves 0.2198 (definition of a mixture)",
      },
      { at: 0.22, beyond: 0.2, says: `x: 0.2 is the share by volume, not by mass. ${GIVE.oxygen}`, source: "0.2095 is the mole fraction of dry air" },
      {
        at: 0.05,
        beyond: 0.0499,
        says: `x: 0.0499 is below 0.05, in which nothing burns. ${GIVE.oxygen}`,
        source: "hydrogen burns down to 5 % by volume, 0.057 by mass (limiting oxygen concentrations of NFPA 69, from memory)",
      },
      { at: 0.05, beyond: -1, says: `x: -1 is below zero. ${GIVE.oxygen}`, source: NEVER_NEGATIVE },
      { at: 1, beyond: 1.001, says: `x: 1.001 is above 1 and looks like a percentage. ${GIVE.oxygen}`, source: NO_PERCENT },
    ],
  ],
  oxygenTaken: [oxygenTaken("Oxygen [g/g]."), [aboveZero(`x: -1 g/g is below zero. ${GIVE.taken}`), sense(" g/g", GIVE.taken)]],
  excessAir: [
    excessAir("Excess air."),
    [
      zeroUp(-0.01, `x: -0.01 is below zero. ${GIVE.excess}`),
      { at: 5, beyond: 5.001, says: `x: 5.001 is above 5 and looks like a percentage. ${GIVE.excess}`, source: "common practice, no source" },
    ],
  ],
  fraction: [
    fraction("Share."),
    [
      zeroUp(-0.01, `x: -0.01 is below zero. ${GIVE.share}`),
      { at: 1, beyond: 1.001, says: `x: 1.001 is above 1 and looks like a percentage. ${GIVE.share}`, source: NO_PERCENT },
    ],
  ],
  massFraction: [
    massFraction("Share."),
    [
      zeroUp(-0.01, `x: -0.01 is below zero. ${GIVE.element}`),
      { at: 1, beyond: 1.001, says: `x: 1.001 is above 1 and looks like a percentage. ${GIVE.element}`, source: NO_PERCENT },
    ],
  ],
  presentMassFraction: [
    presentMassFraction("Share."),
    [
      aboveZero(`x: -1 is below zero. ${GIVE.element}`),
      { at: 1, beyond: 1.001, says: `x: 1.001 is above 1 and looks like a percentage. ${GIVE.element}`, source: NO_PERCENT },
    ],
  ],
  ashShare: [
    ashShare("Ash."),
    [
      aboveZero(`x: -1 is below zero. ${GIVE.ash}`),
      {
        at: 0.9999,
        beyond: 1,
        says: `x: 1 is not below 1 and looks like a percentage. ${GIVE.ash}`,
        source: "nothing of a sample of pure ash burns (definition)",
      },
    ],
  ],
  moistureContent: [moistureContent("Moisture."), [zeroUp(-0.01, `x: -0.01 is below zero. ${GIVE.moisture}`), sense("", GIVE.moisture)]],
  wetMoisture: [
    wetMoisture("Moisture."),
    [
      zeroUp(-0.01, `x: -0.01 is below zero. ${GIVE.wet}`),
      {
        at: 0.9999,
        beyond: 1,
        says: `x: 1 is not below 1 and looks like a percentage. ${GIVE.wet}`,
        source: "a sample of water alone leaves nothing to reckon on (definition)",
      },
    ],
  ],
  presentMoisture: [
    presentMoisture("Moisture."),
    [
      aboveZero(`x: -1 is below zero. ${GIVE.present}`),
      { at: 0.9999, beyond: 1, says: `x: 1 is not below 1 and looks like a percentage. ${GIVE.present}`, source: "as wetMoisture" },
    ],
  ],
  coverageFactor: [
    coverageFactor("Factor."),
    [
      {
        at: 1,
        beyond: 0.9999,
        says: `x: 0.9999 is below 1. ${GIVE.factor}`,
        source: "k = 1 is the standard uncertainty itself (GUM, JCGM 100:2008, 6.2)",
      },
      {
        at: 13,
        beyond: 13.01,
        says: `x: 13.01 is above 13 and looks like a confidence level. ${GIVE.factor}`,
        source: "12.71 for 95 % at one degree of freedom (GUM, JCGM 100:2008, table G.2)",
      },
    ],
  ],
  significanceLevel: [
    significanceLevel("Alpha."),
    [
      { at: 1e-6, beyond: 9.9e-7, says: `x: 9.9e-7 is below 0.000001. ${GIVE.alpha}`, source: "common practice, no source" },
      { at: 0.4999, beyond: 0.5, says: `x: 0.5 is not below 0.5 and looks like a confidence level. ${GIVE.alpha}`, source: "the toss of a coin" },
      {
        at: 0.4999,
        beyond: 0.9999,
        says: `x: 0.9999 is not below 0.5 and looks like a confidence level. ${GIVE.alpha}`,
        source: "the toss of a coin",
      },
      { at: 0.4999, beyond: 1, says: `x: 1 is not below 1 and looks like a percentage. ${GIVE.alpha}`, source: NO_PERCENT },
      { at: 1e-6, beyond: -0.05, says: `x: -0.05 is below zero. ${GIVE.alpha}`, source: NEVER_NEGATIVE },
    ],
  ],
  wantedUncertainty: [
    wantedUncertainty("Wanted."),
    [
      {
        at: 1e-9,
        beyond: 9.9e-10,
        says: `x: 9.9e-10 is below 1e-9, finer than any balance tells. ${GIVE.wanted}`,
        source: "common practice, no source",
      },
      { at: 0.1, beyond: 0.1001, says: `x: 0.1001 is above 0.1, too coarse to be of use. ${GIVE.wanted}`, source: "common practice, no source" },
      { at: 0.1, beyond: -0.1, says: `x: -0.1 is below zero. ${GIVE.wanted}`, source: NEVER_NEGATIVE },
    ],
  ],
  standardDeviation: [standardDeviation("s."), [aboveZero(`x: -1 is below zero. ${GIVE.deviation}`), sense("", GIVE.deviation)]],
  standardUncertainty: [standardUncertainty("u [g]."), [aboveZero(`x: -1 g is below zero. ${GIVE.uncertainty}`), sense(" g", GIVE.uncertainty)]],
  leastMinutes: [
    leastMinutes("Time [min]."),
    [
      zeroUp(-1, `x: -1 min is below zero. ${GIVE.minutes}`),
      {
        at: 1,
        beyond: 0.9999,
        says: `x: 0.9999 min is below 1 min and looks like a clock time. ${GIVE.minutes}`,
        source: "a clock time is the fraction of a day that has passed, below 1 (Excel date and time functions)",
      },
      { at: 1, beyond: SMALL, says: `x: 5e-324 min is below 1 min and looks like a clock time. ${GIVE.minutes}`, source: "0 alone means none" },
    ],
  ],
  timingBound: [
    timingBound("Time [min]."),
    [
      aboveZero(`x: -1 min is below zero. ${GIVE.timing}`),
      { at: 15, beyond: 15.01, says: `x: 15.01 min is above 15 min. ${GIVE.timing}`, source: "common practice, no source" },
    ],
  ],
  startTime: [startTime("Time."), [zeroUp(-0.1, `x: -0.1 is below zero. ${GIVE.time}`), sense("", GIVE.time)]],
  laterTime: [laterTime("Time."), [aboveZero(`x: -1 is below zero. ${GIVE.time}`), sense("", GIVE.time)]],
  mass: [mass("Mass [g]."), [aboveZero(`x: -1 g is below zero. ${GIVE.grams}`), sense(" g", GIVE.grams)]],
  vesselMass: [vesselMass("Vessel [g]."), [aboveZero(`x: -1 g is below zero. ${GIVE.vessel}`), sense(" g", GIVE.vessel)]],
  balanceReading: [
    balanceReading("Reading [g]."),
    [
      aboveZero(`x: -1 g is below zero. ${GIVE.grams}`),
      {
        at: 1e9,
        beyond: 1_000_000_001,
        says: `x: 1000000001 g is above 1000000000 g, more than any balance weighs. ${GIVE.grams}`,
        source: ARITHMETIC,
      },
    ],
  ],
  massLost: [
    massLost("Loss [g]."),
    [
      {
        at: 1e9,
        beyond: 1_000_000_001,
        says: `x: 1000000001 g is above 1000000000 g, more than any balance weighs. ${GIVE.lost}`,
        source: ARITHMETIC,
      },
      { at: -1e9, beyond: -1_000_000_001, says: `x: -1000000001 g is below -1000000000 g. ${GIVE.lost}`, source: ARITHMETIC },
    ],
  ],
  signedMass: [
    signedMass("Reading [g]."),
    [
      {
        at: 1e9,
        beyond: 1_000_000_001,
        says: `x: 1000000001 g is above 1000000000 g, more than any balance weighs. ${GIVE.signed}`,
        source: ARITHMETIC,
      },
      { at: -1e9, beyond: -1_000_000_001, says: `x: -1000000001 g is below -1000000000 g. ${GIVE.signed}`, source: ARITHMETIC },
    ],
  ],
  readability: [readability("Step [g]."), [aboveZero(`x: -1 g is below zero. ${GIVE.step}`), sense(" g", GIVE.step)]],
  balanceDeviation: [balanceDeviation("Deviation [g]."), [aboveZero(`x: -1 g is below zero. ${GIVE.dataSheet}`), sense(" g", GIVE.dataSheet)]],
  changeLimit: [changeLimit("Limit."), [aboveZero(`x: -1 is below zero. ${GIVE.limit}`), sense("", GIVE.limit)]],
  productMass: [productMass("Liquids [g]."), [aboveZero(`x: -1 g is below zero. ${GIVE.product}`), sense(" g", GIVE.product)]],
  lossUncertainty: [
    lossUncertainty("u."),
    [
      aboveZero(`x: -1 is below zero. ${GIVE.lossU}`),
      {
        at: 0.1,
        beyond: 0.1001,
        says: `x: 0.1001 is above 0.1, too coarse or a percentage. ${GIVE.lossU}`,
        source: "coarser than a tenth of the sample tells nothing of its loss (common practice, no source)",
      },
    ],
  ],
  baseVolume: [baseVolume("Volume [mL]."), [aboveZero(`x: -1 mL is below zero. ${GIVE.volume}`), sense(" mL", GIVE.volume)]],
  titratedSample: [titratedSample("Sample."), [aboveZero(`x: -1 is below zero. ${GIVE.titrated}`), sense("", GIVE.titrated)]],
  molarity: [
    molarity("Base [mol/L]."),
    [
      aboveZero(`x: -1 mol/L is below zero. ${GIVE.molarity}`),
      {
        at: 20,
        beyond: 20.1,
        says: `x: 20.1 mol/L is above 20 mol/L, stronger than any base sold. ${GIVE.molarity}`,
        source: "caustic soda of 50 % is near 19 mol/L (from memory)",
      },
    ],
  ],
  liquidDensity: [
    liquidDensity("Density [g/mL]."),
    [
      { at: 0.7, beyond: 0.69, says: `x: 0.69 g/mL is below 0.7 g/mL. ${GIVE.density}`, source: "acetone weighs 0.79 g/mL (from memory)" },
      {
        at: 1.3,
        beyond: 1.31,
        says: `x: 1.31 g/mL is above 1.3 g/mL, no wood liquid. ${GIVE.density}`,
        source: "wood tar weighs up to 1.25 g/mL (from memory)",
      },
      { at: 1, beyond: -1, says: `x: -1 g/mL is below zero. ${GIVE.density}`, source: NEVER_NEGATIVE },
    ],
  ],
  dilutionFactor: [
    dilutionFactor("Dilution."),
    [
      { at: 1, beyond: 0.99, says: `x: 0.99 is below 1. ${GIVE.dilution}`, source: "definition" },
      { at: 1, beyond: -1, says: `x: -1 is below zero. ${GIVE.dilution}`, source: NEVER_NEGATIVE },
      sense("", GIVE.dilution),
    ],
  ],
  furnaceTemperature: [
    furnaceTemperature("Temperature [°C]."),
    [
      bound(
        1800,
        1800.1,
        `1800.1 °C is above 1800 °C and looks like kelvin or °F. ${GIVE.furnace}`,
        "heaters of molybdenum disilicide (from memory)",
      ),
      bound(-70, -70.1, `-70.1 °C is below -70 °C, colder than any weather. ${GIVE.furnace}`, "-67.7 degC at Oymyakon in 1933 (from memory)"),
      bound(273.1, 273.15, `273.15 °C ${AS_KELVIN} ${GIVE.furnace}`, WHOLE_KELVIN),
      bound(773.2, 500 + 273.15, `773.15 °C ${AS_KELVIN} ${GIVE.furnace}`, WHOLE_KELVIN),
      bound(272.15, 1801, `1801 °C is above 1800 °C and looks like kelvin or °F. ${GIVE.furnace}`, "below 0 degC in kelvin nothing is told"),
    ],
  ],
  thermometerReading: [
    thermometerReading("Temperature [°C]."),
    [
      bound(1800, 1800.1, `1800.1 °C is above 1800 °C and looks like kelvin or °F. ${GIVE.furnace}`, "as furnaceTemperature"),
      bound(773.15, -70.1, `-70.1 °C is below -70 °C, colder than any weather. ${GIVE.furnace}`, "a hundredth is a reading here"),
    ],
  ],
  heatedTemperature: [
    heatedTemperature("Temperature [°C]."),
    [
      bound(1800, 1800.1, `1800.1 °C is above 1800 °C and looks like kelvin or °F. ${GIVE.furnace}`, "as furnaceTemperature"),
      bound(498.1, 498.15, `498.15 °C ${AS_KELVIN} ${GIVE.furnace}`, WHOLE_KELVIN),
      aboveZero(`x: -1 °C is below zero. ${GIVE.furnace}`),
    ],
  ],
  gasMolarMass: [
    gasMolarMass("Molar mass [g/mol]."),
    [
      bound(1, 0.999, `0.999 g/mol is below 1 g/mol and looks like kg/mol. ${GIVE.molar}`, "hydrogen, the lightest gas, 2.016 g/mol"),
      bound(2000, 2001, `2001 g/mol is above 2000 g/mol, more than any vapour. ${GIVE.molar}`, COMMON),
      bound(18, -1, `-1 g/mol is below zero. ${GIVE.molar}`, NEVER_NEGATIVE),
    ],
  ],
  gasPressure: [
    gasPressure("Pressure [Pa]."),
    [
      bound(
        1200,
        1199,
        `1199 Pa is too low and looks like hPa, kPa or bar. ${GIVE.pascals}`,
        "the highest air pressure at sea level in hPa is 1085 (from memory)",
      ),
      bound(1e9, 1_000_000_001, `1000000001 Pa is above 1000000000 Pa. ${GIVE.pascals}`, COMMON),
      bound(101_325, -1, `-1 Pa is below zero. ${GIVE.pascals}`, NEVER_NEGATIVE),
    ],
  ],
  boilingPressure: [
    boilingPressure("Pressure [Pa]."),
    [
      bound(
        1200,
        1199,
        `1199 Pa is too low for air and looks like hPa, kPa or bar. ${GIVE.pascals}`,
        "the highest air pressure at sea level in hPa is 1085 (from memory)",
      ),
      bound(
        22_064_000,
        22_064_001,
        `22064001 Pa is above 22064000 Pa, where water no longer boils. ${GIVE.pascals}`,
        "critical pressure of water (IAPWS-IF97)",
      ),
      bound(101_325, -1, `-1 Pa is below zero. ${GIVE.pascals}`, NEVER_NEGATIVE),
    ],
  ],
  vesselVolumes: [
    vesselVolumes("Volumes."),
    [bound(1000, 1001, `1001 is above 1000 and looks like a volume. ${GIVE.volumes}`, COMMON), zeroUp(-1, `x: -1 is below zero. ${GIVE.volumes}`)],
  ],
  gasDensity: [
    gasDensity("Density [kg/m³]."),
    [
      bound(0.015, 0.0149, `0.0149 kg/m³ is too low for a gas and looks like g/mL. ${GIVE.gas}`, "hydrogen at 1000 degC, 0.019 kg/m3 (ideal gas)"),
      bound(20, 20.1, `20.1 kg/m³ is above 20 kg/m³, too dense for a hot gas. ${GIVE.gas}`, "300 g/mol at 200 degC, 7.7 kg/m3 (ideal gas)"),
      bound(1, -1, `-1 kg/m³ is below zero. ${GIVE.gas}`, NEVER_NEGATIVE),
    ],
  ],
  pressureAboveAir: [
    pressureAboveAir("Pressure [Pa]."),
    [
      bound(5000, 5001, `5001 Pa is above 5000 Pa, no longer a vented vessel. ${GIVE.above}`, COMMON),
      aboveZero(`x: -1 Pa is below zero. ${GIVE.above}`),
    ],
  ],
  peakOverMean: [
    peakOverMean("Peak factor."),
    [
      bound(1, 0.999, `0.999 is below 1: a peak is no less than the mean. ${GIVE.peak}`, "definition"),
      bound(100, 101, `101 is above 100. ${GIVE.peak}`, COMMON),
      bound(1, -1, `-1 is below zero. ${GIVE.peak}`, NEVER_NEGATIVE),
    ],
  ],
  roomVolume: [
    roomVolume("Volume [m³]."),
    [
      bound(10_000, 10_001, `10001 m³ is above 10000 m³ and looks like litres. ${GIVE.room}`, COMMON),
      aboveZero(`x: -1 m³ is below zero. ${GIVE.room}`),
    ],
  ],
  airChangesPerHour: [
    airChangesPerHour("Air changes [1/h]."),
    [
      bound(600, 601, `601 1/h is above 600 an hour and looks like a flow. ${GIVE.changes}`, COMMON),
      zeroUp(-1, `x: -1 1/h is below zero. ${GIVE.changes}`),
    ],
  ],
  dryHeatingValue: [
    dryHeatingValue("Heating value [MJ/kg]."),
    [
      bound(
        150,
        150.1,
        `150.1 MJ/kg is above 150 MJ/kg and looks like kJ/kg, kcal/kg or Btu/lb. ${GIVE.heating}`,
        "hydrogen, 141.8 MJ/kg (from memory)",
      ),
      aboveZero(`x: -1 MJ/kg is below zero. ${GIVE.heating}`),
    ],
  ],
  specificHeat: [
    specificHeat("Specific heat [kJ/(kg K)]."),
    [
      bound(5, 5.1, `5.1 kJ/(kg K) is above 5 kJ/(kg K) and looks like J/(kg K). ${GIVE.specific}`, "water, 4.18 kJ/(kg K) (from memory)"),
      aboveZero(`x: -1 kJ/(kg K) is below zero. ${GIVE.specific}`),
    ],
  ],
  resultValue: [
    resultValue("Result."),
    [
      bound(1e15, 1e15 + 1, "1000000000000000 is beyond 1000000000000000 either way. Give a number.", ARITHMETIC),
      bound(-1e15, -1e15 - 1, "-1000000000000000 is beyond 1000000000000000 either way. Give a number.", ARITHMETIC),
    ],
  ],
  positiveNumber: [positiveNumber("Ratio.", GIVE.ratio), [aboveZero(`x: -1 is below zero. ${GIVE.ratio}`), sense("", GIVE.ratio)]],
};

const KINDS = path.join(__dirname, "../../src/inputs/kinds");

/** True for what makes an input of one cell that takes some number and no text. */
function readsOneNumber(made: unknown): boolean {
  if (typeof made !== "function") return false;
  const input = (made as (about: string, advice: string) => CellInput<unknown>)("About.", "Advice.");
  const reads = (value: CellValue): unknown => {
    try {
      return input.read(value, "x");
    } catch {
      return undefined;
    }
  };
  // Between them they lie within the bounds of every quantity of the trade; a reader that takes none of them is no reader of numbers.
  const anywhere = [0.001, 0.02, 0.23, 1.2, 20, 2700, 101_325];
  return input.shape === "cell" && anywhere.some((value) => reads(value) === value) && reads("n/a") === undefined;
}

test("every exported reader of one number has its bounds here", () => {
  const exported = readdirSync(KINDS).flatMap((file) => Object.entries(jest.requireActual<Record<string, unknown>>(path.join(KINDS, file))));
  const readers = exported.filter(([, made]) => readsOneNumber(made)).map(([name]) => name);
  expect(readers.sort()).toEqual(Object.keys(BOUNDS).sort());
});

test("a number that is merely above 0 is called so, or as it is told, and carries its unit", () => {
  expect(() => positiveNumber("Ratio.", GIVE.ratio).read("2:1", "x")).toThrow(`x: "2:1" is not a number above 0. ${GIVE.ratio}`);
  const limit = positiveNumber("Load [N].", "Give newtons.", "a load", "N");
  expect(() => limit.read("2:1", "x")).toThrow('x: "2:1" is not a load. Give newtons.');
  expect(() => limit.read(-2, "x")).toThrow("x: -2 N is below zero. Give newtons.");
  expect(limit).toMatchObject({ called: "a load", unit: "N", optional: false });
});

const cases = Object.entries(BOUNDS).flatMap(([name, [input, bounds]]) =>
  bounds.map((bound) => [name, bound.at, bound.beyond, { input, ...bound }] as const),
);

test.each(cases)("%s takes %d and refuses %d with its sentence", (_name, at, beyond, { input, says, source }) => {
  expect(input.read(at, "x")).toBe(at);
  expect(() => input.read(beyond, "x")).toThrow(expect.objectContaining({ name: "InputProblem", argument: "x", message: says }));
  expect(source).not.toBe("");
});

// Whether a 0 is a value or a blank cell decides what a sheet of blank cells answers, so it is pinned reader by reader.
const ZERO_IS_A_VALUE = [
  "roomTemperature",
  "temperatureDifference",
  "excessAir",
  "fraction",
  "massFraction",
  "moistureContent",
  "wetMoisture",
  "leastMinutes",
  "startTime",
  "signedMass",
  "furnaceTemperature",
  "thermometerReading",
  "vesselVolumes",
  "airChangesPerHour",
  "resultValue",
];

test.each(Object.entries(BOUNDS))("%s takes 0 for what it is", (name, [input, bounds]) => {
  const advice = /(?<=\. )[^.].*$/.exec(bounds[0]?.says ?? "")?.[0];
  if (ZERO_IS_A_VALUE.includes(name)) {
    expect(input.read(0, "x")).toBe(0);
    expect(() => input.read("", "x")).toThrow(/^x: nothing here \(blank\)\. /);
  } else {
    expect(() => input.read(0, "x")).toThrow(`x: nothing here (blank or 0). ${advice}`);
    expect(input.isBlank(0)).toBe(true);
  }
});
