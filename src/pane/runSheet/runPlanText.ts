import { plainNumber } from "../../problems/quoted";
import { durationText } from "./durationText";
import { START_CELSIUS, type PlanOutcome } from "./runPlanForm";

// A standard deviation of one display step, beside two roundings of d/sqrt(12), makes u and with it the sample sqrt(7) = 2.6 times as large.
const SCATTER = "where repeat weighings scatter by one display step, take three times as much.";

/** What a plan comes to, a sentence or two a line; or the one line that says what is in its way. */
export function runPlanText(outcome: PlanOutcome): string[] {
  if ("problem" in outcome) return [outcome.field === undefined ? outcome.problem : "Mend the marked entry to see the plan."];
  const { wanted, plan } = outcome;
  const grams = plainNumber(roundedUp(plan.smallestSampleGrams, wanted.readability));
  return [
    `Weigh in at least ${grams}\u00a0g of sample. The display's rounding alone asks for that; ${SCATTER}`,
    `${plan.weighIns} weigh-ins, ${durationText(wanted.intervalMinutes)} apart, take ${durationText(plan.dryingMinutes)}: ` +
      "the moist one, one after each interval until dry, and one more to confirm.",
    ...(plan.programmeMinutes === undefined
      ? []
      : [
          `The kiln runs for ${durationText(Math.round(plan.programmeMinutes))} from ${START_CELSIUS}\u00a0°C to the end of its programme. Cooling comes on top.`,
        ]),
  ];
}

const DIGITS = 3;
// What binary rounding adds to a quotient that should be whole.
const RESIDUE = 1e-9;

/** A mass rounded up to three digits, or to the balance's own step where that is coarser: 5.0279 g becomes 5.03 g. */
export function roundedUp(grams: number, readability: number): number {
  const step = Math.max(10 ** (Math.floor(Math.log10(grams)) + 1 - DIGITS), readability);
  return Math.ceil(grams / step - RESIDUE) * step;
}
