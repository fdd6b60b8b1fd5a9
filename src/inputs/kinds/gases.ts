import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";

// The lightest gas is hydrogen, 2.016 g/mol; in kg/mol no vapour of the trade reaches 1. Above 2000 nothing boils undecomposed.
const LIGHTEST = 1;
const HEAVIEST = 2000;

/** The molar mass of a gas or vapour in g/mol, 1 to 2000. A figure in kg/mol is told apart and refused. */
export const gasMolarMass = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g/mol",
    called: "a molar mass",
    advice: "Give g/mol: 0.018 kg/mol of water is 18.015.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: LIGHTEST, says: `below ${LIGHTEST} g/mol and looks like kg/mol` },
      { above: HEAVIEST, says: `above ${HEAVIEST} g/mol, more than any vapour` },
    ],
  });

// The air in hPa (1013), mmHg (760), kPa (101) and bar lies below, also on a day of record pressure; vacuum pumps at a retort leave more.
const LEAST_PRESSURE = 1200;
// Ten thousand atmospheres: no gas of a bench. Common practice, no source.
const MOST_PRESSURE = 1e9;

/** The pressure of a gas in pascals, 1200 to 1e9. Figures in hPa, mmHg, kPa and bar are told apart and refused. */
export const gasPressure = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "Pa",
    called: "a gas pressure",
    advice: "Give pascals: 1013.25 hPa is 101325.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: LEAST_PRESSURE, says: "too low and looks like hPa, kPa or bar" },
      { above: MOST_PRESSURE, says: `above ${MOST_PRESSURE} Pa` },
    ],
  });

// Critical pressure of water, Pa: IAPWS-IF97, equation 31, ends there.
const CRITICAL = 22_064_000;

/** The pressure over boiling water in pascals, 1200 to the critical 22 064 000: below, the air in hPa, mmHg and kPa lies. */
export const boilingPressure = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "Pa",
    called: "a pressure over water",
    advice: "Give pascals: 1013.25 hPa is 101325.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: LEAST_PRESSURE, says: "too low for air and looks like hPa, kPa or bar" },
      { above: CRITICAL, says: `above ${CRITICAL} Pa, where water no longer boils` },
    ],
  });

// 7.5 g of vapours are 136 volumes of their crucible; a figure in millilitres lies above. Common practice, no source.
const MOST_VOLUMES = 1000;

/** How many times its own volume has flowed through a vessel, 0 to 1000. 0 is a real value, so a blank cell counts as 0. */
export const vesselVolumes = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a number of vessel volumes",
    advice: "Divide the gas by the vessel: 13.5 L through 0.1 L is 135.",
    zeroIsBlank: false,
    bounds: [BELOW_ZERO, { above: MOST_VOLUMES, says: `above ${MOST_VOLUMES} and looks like a volume` }],
  });

// Hydrogen at 1000 degC has 0.019 kg/m3, tar vapour of 300 g/mol at 200 degC 7.7 (ideal gas); g/cm3 and g/mL lie below, liquids above.
const THINNEST = 0.015;
const DENSEST = 20;

/** The density of a hot gas in kg/m3, the same as g/L, 0.015 to 20. A figure in g/mL is told apart and refused. */
export const gasDensity = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "kg/m³",
    called: "a gas density",
    advice: "Give kg/m³ or g/L, which are the same: 7.5 g in 13.56 L is 0.553.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: THINNEST, says: "too low for a gas and looks like g/mL" },
      { above: DENSEST, says: `above ${DENSEST} kg/m³, too dense for a hot gas` },
    ],
  });

// A vessel that is vented stays near the pressure of the air; a twentieth above is a pressure vessel. Common practice, no source. It catches
// the pressure of the air itself typed for the pressure above it.
const MOST_ABOVE_AIR = 5000;

/** By how much the pressure in a vented vessel may exceed that of the air, above 0 to 5000 Pa. */
export const pressureAboveAir = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "Pa",
    called: "a pressure above the air",
    advice: "Give the pascals above the air's own pressure, such as 10.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: MOST_ABOVE_AIR, says: `above ${MOST_ABOVE_AIR} Pa, no longer a vented vessel` }],
  });

// A peak is at least the mean; above a hundred times the mean a mean says nothing.
const MOST_PEAK = 100;

/** How many times the mean flow the greatest flow is, 1 to 100. A share such as 0.3 is refused. */
export const peakOverMean = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a peak factor",
    advice: "Give peak flow over mean flow; 3 to 5 is common practice, no source.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { below: 1, says: "below 1: a peak is no less than the mean" }, { above: MOST_PEAK, says: `above ${MOST_PEAK}` }],
  });
