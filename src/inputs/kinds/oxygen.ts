import type { CellInput } from "../Input";
import { BELOW_ZERO, numberInput } from "../number";
import { positiveNumber } from "./positiveNumber";

// Dry air holds 0.2314 by mass, room air with its moisture down to 0.22, older books say 0.23 or 0.232. What is asked
// for is the mass fraction; 0.2095 and 0.21, the mole fraction, would give a tenth too much air.
const LEAST_OF_AIR = 0.22;
const LEAST_MOLE_FRACTION = 0.2;
// Hydrogen, which burns in the least, stops at about 5 % by volume in nitrogen (limiting oxygen concentrations of NFPA 69, from
// memory), 0.057 by mass.
const NOTHING_BURNS = 0.05;

/**
 * Mass fraction of oxygen in the air, 0.05 to 1: vitiated air to pure oxygen. A percentage is told apart and refused, and so is what
 * lies from 0.2 to 0.22, the mole fraction of ordinary air.
 */
export const oxygenInAir = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a mass fraction",
    advice: "Give the mass fraction of oxygen, 0.2314 for dry air.",
    zeroIsBlank: true,
    bounds: [
      BELOW_ZERO,
      { below: NOTHING_BURNS, says: `below ${NOTHING_BURNS}, in which nothing burns` },
      { from: LEAST_MOLE_FRACTION, below: LEAST_OF_AIR, says: "the share by volume, not by mass" },
      { above: 1, says: "above 1 and looks like a percentage" },
    ],
  });

/** Oxygen that burning takes up, in grams per gram of fuel. A sample that takes up none needs no air, so 0 is taken as a blank cell. */
export const oxygenTaken = (about: string): CellInput<number> =>
  positiveNumber(about, "Give grams of oxygen per gram of fuel; a fuel that takes up none needs no air.", "a mass of oxygen", "g/g");

// Open fires draw in a few times the air they need; five times more than needed is past any fire that stays alight.
// Common practice, no source. It catches 15 typed for 15 %.
const MOST_EXCESS = 5;

/** Air beyond the air needed, as a share of the air needed, 0 to 5. 0 is a real value, so a blank cell counts as 0. */
export const excessAir = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "",
    called: "a share of the air needed",
    advice: "Type 0.15 or 15% for 15 % more air than needed.",
    zeroIsBlank: false,
    bounds: [BELOW_ZERO, { above: MOST_EXCESS, says: `above ${MOST_EXCESS} and looks like a percentage` }],
  });
