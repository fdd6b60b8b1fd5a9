import { outOfBoundsInForm } from "../../problems/paneProblems";
import { inDegrees } from "../../runsheet/options/degrees";
import { optionBounds } from "../../runsheet/options/optionBounds";
import type { WrongEntry } from "./WrongEntry";

export type Degrees = "C" | "F";

const FAHRENHEIT_PER_CELSIUS = 1.8;
const FREEZING_FAHRENHEIT = 32;
// Residue of binary rounding: 107.2 °C is 224.96 °F, not 224.96000000000001.
const FIGURES = 10;

export const asDegrees = (chosen: string): Degrees => (chosen === "F" ? "F" : "C");

export const ovenLabel = (degrees: Degrees): string => `Oven (°${degrees})`;

/** A temperature as typed, in °C: F = 1.8 C + 32. */
export const inCelsius = (typed: number, degrees: Degrees): number =>
  degrees === "C" ? typed : (typed - FREEZING_FAHRENHEIT) / FAHRENHEIT_PER_CELSIUS;

/** What is wrong with an oven's temperature in degrees Fahrenheit, which the options' own messages do not speak. */
export function ovenProblem(typed: number | undefined, degrees: Degrees): WrongEntry<"ovenCelsius"> | undefined {
  const { atLeast, atMost } = inDegrees(optionBounds.oven, degrees);
  if (typed === undefined || degrees === "C" || (typed >= atLeast && typed <= atMost)) return undefined;
  return { problem: outOfBoundsInForm(ovenLabel(degrees), typed, atLeast, atMost, "°F"), field: "ovenCelsius" };
}

/** Whether a box holds a temperature or a rate, whose degrees have no zero point. */
export type Holds = "temperature" | "rate";

/**
 * Follows the unit that is chosen: what was typed in one is written in the other, and comes back as it was typed when the choice does.
 * What is no number is left for its message.
 */
export function followDegrees(
  boxes: readonly { readonly control: { value: string }; readonly holds: Holds }[],
  start: Degrees,
): (now: Degrees) => void {
  let degrees = start;
  const before = new Map<(typeof boxes)[number], { readonly shown: string; readonly typed: string }>();
  return (now) => {
    if (now === degrees) return;
    for (const box of boxes) {
      const typed = box.control.value;
      const kept = before.get(box);
      const shown = kept?.shown === typed ? kept.typed : converted(typed, box.holds, now);
      before.set(box, { shown, typed });
      box.control.value = shown;
    }
    degrees = now;
  };
}

function converted(typed: string, holds: Holds, to: Degrees): string {
  const value = Number(typed.trim().replace(",", "."));
  if (typed.trim() === "" || !Number.isFinite(value)) return typed;
  const zero = holds === "temperature" ? FREEZING_FAHRENHEIT : 0;
  const other = to === "F" ? value * FAHRENHEIT_PER_CELSIUS + zero : (value - zero) / FAHRENHEIT_PER_CELSIUS;
  return String(Number(other.toPrecision(FIGURES)));
}
