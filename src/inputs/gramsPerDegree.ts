import { numberInput } from "./numberInput";
import type { CellInput } from "./Input";

// Fifty times the largest published figure, 0.19 mg per degC (Blade); a figure in mg lies above.
const MOST = 0.01;

/** An error of weighing for each degree that the vessel is too warm. A figure in milligrams is told apart and refused. */
export const gramsPerDegree = (about: string): CellInput<number> =>
  numberInput(about, {
    unit: "g/°C",
    called: "a rate",
    advice: "Give grams per °C: 0.19 mg is 0.00019.",
    zeroIsBlank: true,
    broken: (value) => (value < 0 ? "below zero" : value > MOST ? `above ${MOST} g/°C and looks like milligrams` : undefined),
  });
