import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";
import { positiveNumber } from "./positiveNumber";

/** A volume of base in millilitres, above 0. */
export const baseVolume = (about: string): CellInput<number> => positiveNumber(about, "Give millilitres, such as 27.8.", "a volume", "mL");

// The strongest caustic soda sold is near 19 mol/L (50 %, from memory).
const STRONGEST = 20;

/** The concentration of a base, above 0 to 20 mol/L. A figure in mmol/L or per cent of a normal solution is told apart and refused. */
export const molarity = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "mol/L",
    called: "a concentration",
    advice: "Give mol/L: 100 mmol/L is 0.1.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { above: STRONGEST, says: `above ${STRONGEST} mol/L, stronger than any base sold` }],
  });

/** A sample that is titrated, in the unit that another input names, above 0. */
export const titratedSample = (about: string): CellInput<number> => positiveNumber(about, "Give grams or millilitres, as unit says.", "a sample");

// Acetone weighs 0.79 and wood tar up to 1.25 g/mL (handbooks, from memory). It catches kg/m³, and 1.500, once printed for 1.005.
const LIGHTEST = 0.7;
const DENSEST = 1.3;

/** The density of a watery liquid or a tar, 0.7 to 1.3 g/mL. */
export const liquidDensity = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g/mL",
    called: "a density",
    advice: "Give g/mL: 1005 kg/m³ is 1.005.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { below: LIGHTEST, says: `below ${LIGHTEST} g/mL` }, { above: DENSEST, says: `above ${DENSEST} g/mL, no wood liquid` }],
  });

/** How many times what was titrated a made-up sample is, from 1. */
export const dilutionFactor = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a dilution",
    advice: "Give made-up volume over titrated volume, such as 10.",
    zeroIsBlank: true,
    bounds: [BELOW_ZERO, { below: 1, says: "below 1" }],
  });
