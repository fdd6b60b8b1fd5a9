import { correlations, USUAL_CORRELATION } from "../energy/higherHeatingValue";
import { airDemand } from "../chemistry/burning/airDemand";
import { oxygenFactors } from "../chemistry/burning/oxygenDemandUltimate";
import { analysisAboveOne, nothingLeftAsVapour, vapourShort } from "../problems/functions/liquidProblems";

// An analysis may overshoot by its own error. Common practice, no source.
export const LARGEST_SUM = 1.02;
/** Balances of elements that differ by less differ by rounding alone. */
export const SLACK = 1e-9;

/** Carbon, hydrogen and oxygen, fractions of a dry mass. */
export interface Elements {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
}

/** One gram of feed, char or vapour. */
export interface Composition extends Elements {
  /** g per g of dry feed */
  readonly amount: number;
  /** O2 for its clean burning, g/g; below 0 where it carries more than it needs. */
  readonly oxygenDemand: number;
  /** Dry air that brings it, g/g; 0 where none is needed. */
  readonly air: number;
  /** Higher heating value by the correlation, MJ/kg. */
  readonly heatingValue: number;
  /** Share of the feed's energy; undefined where the feed's heating value comes out at 0 or below. */
  readonly energyShare: number | undefined;
  /** Elements that lie outside what the correlation was fitted to. */
  readonly outside: readonly (keyof Elements)[];
}

export const ELEMENTS: readonly (keyof Elements)[] = ["carbon", "hydrogen", "oxygen"];

// Sulfur, nitrogen and ash are left out: what the vapour holds of them is not known.
const { factors, range = {} } = correlations[USUAL_CORRELATION];
const PERCENT = 100;
/** What the correlation was fitted over, as fractions. */
export const fitted = (element: keyof Elements): readonly [least: number, most: number] => {
  const [least, most] = range[element] ?? [0, PERCENT];
  return [least / PERCENT, most / PERCENT];
};

/** Feed, char and vapour. */
export interface VapourComposition {
  readonly feed: Composition;
  readonly char: Composition;
  readonly vapour: Composition;
}

/**
 * What left a charred feed: x(vapour) = (x(feed) - Y x(char)) / (1 - Y) for carbon, hydrogen and oxygen, Y the char yield, all on the dry
 * basis. Conservation of each element; everything that is not char counts as vapour, tar and gas included. Oxygen to burn it as
 * OXYGENDEMAND.ULTIMATE. The heating values are by one correlation that is linear in the elements, so char and vapour share the feed's energy.
 * @param charYield char per dry feed, fraction
 * @throws InputProblem for a yield of 1, an analysis above 1.02, and an element of which the char holds more than the feed brought
 */
export function vapourComposition(feed: Elements, char: Elements, charYield: number): VapourComposition {
  if (charYield >= 1) throw nothingLeftAsVapour(charYield);
  for (const [name, elements] of [["feed", feed] as const, ["char", char] as const]) {
    const sum = ELEMENTS.reduce((total, element) => total + elements[element], 0);
    if (sum > LARGEST_SUM) throw analysisAboveOne(`${name}Carbon`, name, sum, LARGEST_SUM);
  }
  const left = (element: keyof Elements): number => {
    const grams = feed[element] - charYield * char[element];
    if (grams < -SLACK) throw vapourShort(element, feed[element], charYield * char[element]);
    return Math.max(0, grams) / (1 - charYield);
  };
  const vapour = { carbon: left("carbon"), hydrogen: left("hydrogen"), oxygen: left("oxygen") };
  const whole = heatingValue(feed);
  return { feed: burned(feed, 1, whole), char: burned(char, charYield, whole), vapour: burned(vapour, 1 - charYield, whole) };
}

/** MJ/kg for the whole of an element. */
export const heatingFactor = (element: keyof Elements): number => (factors[element] ?? 0) * PERCENT;

const heatingValue = (elements: Elements): number =>
  ELEMENTS.reduce((sum, element) => sum + (factors[element] ?? 0) * PERCENT * elements[element], 0);

function burned(elements: Elements, amount: number, whole: number): Composition {
  const factors = oxygenFactors();
  const oxygenDemand = factors.carbon * elements.carbon + factors.hydrogen * elements.hydrogen - elements.oxygen;
  const value = heatingValue(elements);
  return {
    ...elements,
    amount,
    oxygenDemand,
    air: airDemand(Math.max(0, oxygenDemand)),
    heatingValue: value,
    energyShare: whole > 0 ? (amount * value) / whole : undefined,
    outside: ELEMENTS.filter((element) => elements[element] < fitted(element)[0] || elements[element] > fitted(element)[1]),
  };
}
