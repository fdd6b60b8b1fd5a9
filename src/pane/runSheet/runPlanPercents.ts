import { outOfBoundsInForm, percentOrFraction } from "../../problems/paneProblems";
import { readNumbers } from "./readNumbers";
import type { PlanFieldName } from "./planFieldName";
import type { WrongEntry } from "./WrongEntry";

type PercentName = "wantedUncertainty" | "expectedMoisture" | "expectedLoss" | "methodScatter";

/** Fractions. */
interface Shares {
  readonly wantedUncertainty: number;
  readonly moisture: number;
  readonly expectedLoss?: number;
  readonly methodScatter?: number;
}

/**
 * As planRun's bounds, in percent: its own message would quote a fraction that nobody typed. What is above 0 and below `doubted`
 * may be a fraction: shares of half a percent and uncertainties of a twentieth are hardly planned for; own bounds, no source.
 */
const PERCENTS: Readonly<Record<PercentName, { readonly atLeast: number; readonly atMost: number; readonly doubted: number }>> = {
  wantedUncertainty: { atLeast: 0.001, atMost: 10, doubted: 0.1 },
  expectedMoisture: { atLeast: 0, atMost: 95, doubted: 1 },
  expectedLoss: { atLeast: 0, atMost: 100, doubted: 1 },
  methodScatter: { atLeast: 0.0001, atMost: 10, doubted: 0.1 },
};

const PERCENT = 100;

/**
 * The boxes in percent, as fractions. A number so small that it may be a fraction is refused with both readings; typed with its
 * sign, "0.71 %", it is taken as it stands.
 */
export function readPercents(
  labels: Readonly<Record<PlanFieldName, string>>,
  form: Readonly<Record<PercentName, string>>,
): Shares | WrongEntry<PercentName> {
  const bare = (name: PercentName): string => (isSigned(form[name]) ? form[name].trim().slice(0, -1) : form[name]);
  const read = readNumbers(
    {
      wantedUncertainty: { label: labels.wantedUncertainty, example: "0.5" },
      expectedMoisture: { label: labels.expectedMoisture, example: "50" },
      expectedLoss: { label: labels.expectedLoss },
      methodScatter: { label: labels.methodScatter },
    },
    {
      wantedUncertainty: bare("wantedUncertainty"),
      expectedMoisture: bare("expectedMoisture"),
      expectedLoss: bare("expectedLoss"),
      methodScatter: bare("methodScatter"),
    },
  );
  if ("problem" in read) return read;
  for (const name of Object.keys(PERCENTS) as PercentName[]) {
    const value = read.numbers[name];
    if (value === undefined) continue;
    const { atLeast, atMost, doubted } = PERCENTS[name];
    if (value > 0 && value < doubted && !isSigned(form[name])) return { problem: percentOrFraction(labels[name], value), field: name };
    if (value < atLeast || value > atMost) return { problem: outOfBoundsInForm(labels[name], value, atLeast, atMost, "%"), field: name };
  }
  const { wantedUncertainty, expectedMoisture, expectedLoss, methodScatter } = read.numbers;
  return {
    wantedUncertainty: wantedUncertainty / PERCENT,
    moisture: expectedMoisture / PERCENT,
    ...(expectedLoss === undefined ? {} : { expectedLoss: expectedLoss / PERCENT }),
    ...(methodScatter === undefined ? {} : { methodScatter: methodScatter / PERCENT }),
  };
}

const isSigned = (typed: string): boolean => typed.trim().endsWith("%");
