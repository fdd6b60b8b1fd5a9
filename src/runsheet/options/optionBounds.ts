import { runOptionOutOfBounds } from "../../problems/runsheet/runSheetProblems";

/** Bounds of what a run sheet can be made for. Those without a source are our own: more would not fit a bench or a page. */
export const optionBounds = {
  weighIns: { name: "weigh-ins", atLeast: 3, atMost: 60, unit: "" },
  replicates: { name: "replicates", atLeast: 1, atMost: 6, unit: "" },
  /** Four firings side by side still fit a page with their weighings. */
  charFirings: { name: "char firings", atLeast: 1, atMost: 4, unit: "" },
  ashFirings: { name: "ash firings", atLeast: 1, atMost: 4, unit: "" },
  receivers: { name: "receivers", atLeast: 1, atMost: 4, unit: "" },
  stages: { name: "stages", atLeast: 2, atMost: 12, unit: "" },
  /** Up to a day. */
  interval: { name: "interval", atLeast: 1, atMost: 1440, unit: "min" },
  /** From a microbalance to a platform scale. */
  readability: { name: "readability", atLeast: 0.000001, atMost: 100, unit: "g" },
  /** What ovens, not kilns, are set to. */
  oven: { name: "oven temperature", atLeast: 20, atMost: 300, unit: "°C" },
  /** Between a warm room and the hottest laboratory kilns. */
  kiln: { name: "kiln temperature", atLeast: 20, atMost: 1800, unit: "°C" },
  /** From a balance in a cold shed to a vessel straight from the kiln. */
  balance: { name: "temperature at the balance", atLeast: -20, atMost: 1800, unit: "°C" },
  /** Up to thirty days. */
  dryingHours: { name: "drying time", atLeast: 0, atMost: 720, unit: "h" },
  /** Above 95 % a twentieth would be left, and water vapour, not char, is what the run makes. */
  expectedMoisture: { name: "expected moisture", atLeast: 0, atMost: 0.95, unit: "" },
  expectedLoss: { name: "expected loss", atLeast: 0, atMost: 1, unit: "" },
  /** From hydrogen to heavy tar. */
  molarMass: { name: "mean molar mass", atLeast: 2, atMost: 300, unit: "g/mol" },
  /** From fluff to dense minerals; kg/m³ typed for g/mL lies above. */
  bulkDensity: { name: "bulk density", atLeast: 0.01, atMost: 5, unit: "g/mL" },
  heatingRate: { name: "heating rate", atLeast: 0.01, atMost: 1000, unit: "°C/min" },
  holdMinutes: { name: "hold", atLeast: 0, atMost: 43_200, unit: "min" },
  /** A large kiln takes days. */
  coolingHours: { name: "cooling", atLeast: 0, atMost: 240, unit: "h" },
  /** A time of day, in minutes after midnight. */
  beginAt: { name: "begin", atLeast: 0, atMost: 1439, unit: "min" },
  /** Ten percentage points of the sample: coarser tells nothing, and a percentage typed as a plain number lands above. */
  wanted: { name: "wanted uncertainty", atLeast: 0.00001, atMost: 0.1, unit: "" },
} as const;

export interface OptionBounds {
  readonly name: string;
  readonly atLeast: number;
  readonly atMost: number;
  /** "" for a plain count or fraction. */
  readonly unit: string;
}

/** @throws InputProblem when the value is not a number within the bounds */
export function bounded({ name, atLeast, atMost, unit }: OptionBounds, value: number): void {
  if (!(value >= atLeast && value <= atMost)) throw runOptionOutOfBounds(name, value, atLeast, atMost, unit);
}
