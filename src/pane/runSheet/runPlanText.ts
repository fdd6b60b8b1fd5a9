import { farBetween, longerThanDrying } from "../../problems/paneProblems";
import { plainNumber, SIZE_FIGURES } from "../../problems/quoted";
import { has } from "../../runsheet/kinds";
import { degreesFrom } from "../../runsheet/options/degrees";
import { USUAL_MOLAR_MASS } from "../../runsheet/planning/gasLitres";
import { durationText } from "./durationText";
import { clockAfter } from "./runPlanClock";
import { type PlanMade, type PlanOutcome, planLabels, START_CELSIUS } from "./runPlanForm";
import { FIELD_LABELS } from "./runSheetForm";

// A standard deviation of one display step, beside two roundings of d/sqrt(12), makes u and with it the sample sqrt(7) = 2.6 times as large.
const SCATTER = "The display's rounding alone asks for that; where repeat weighings scatter by one display step, take three times as much.";

const SET_BY = {
  rounding: "The display's rounding asks for that, more than the repeatability.",
  repeatability: "The balance's repeatability asks for that, more than its display.",
  scatter: "The scatter between samples asks for that, more than the balance: more samples help further than more of each.",
} as const;

/** What a plan comes to, a sentence or two a line; or the one line that says what is in its way. */
export function runPlanText(outcome: PlanOutcome): string[] {
  if ("problem" in outcome) return [outcome.field === undefined ? outcome.problem : "Mend the marked entry to see the plan."];
  const { wanted, plan } = outcome;
  return [
    ...interval(outcome),
    `Weigh in at least ${grams(plan.moistGrams)} of moist sample${wanted.samples === 1 ? "" : ` into each of ${wanted.samples} vessels`}: ` +
      `about ${grams(plan.dryGrams)} when dry.${filled(outcome)} ${why(outcome)}`,
    `${plan.weighIns} weigh-ins, ${durationText(wanted.intervalMinutes)} apart, take ${durationText(plan.dryingMinutes)}: ` +
      "the moist one, one after each interval until dry, and one more to confirm.",
    ...tooHot(outcome),
    ...firing(outcome),
  ];
}

// Weighings farther apart are planned for, and are seconds more often; own bound, no source.
const FAR_APART = 480;

/** What is asked of minutes between weighings that are unlikely beside the drying time, or at all. */
function interval({ wanted: { intervalMinutes, dryingHours }, degrees }: PlanMade): string[] {
  const label = FIELD_LABELS.intervalMinutes;
  if (intervalMinutes > FAR_APART) return [farBetween(label, intervalMinutes)];
  if (dryingHours === 0 || intervalMinutes <= dryingHours * MINUTES_PER_HOUR) return [];
  return [longerThanDrying(label, intervalMinutes, planLabels(degrees).dryingHours, dryingHours)];
}

/** To three figures, as the balance cannot be told from a sentence. */
const grams = (mass: number): string => `${plainNumber(mass, SIZE_FIGURES)}\u00a0g`;

function why({ wanted, plan }: PlanMade): string {
  const setBy = wanted.repeatability === undefined && plan.setBy === "rounding" ? SCATTER : SET_BY[plan.setBy];
  if (plan.repeats === undefined) return setBy;
  const { factor, times } = plan.repeats;
  const more = times > 1 ? ` That is ${plainNumber(times, 2)} times what one sample alone would need.` : "";
  return `${setBy} The ± of ${wanted.samples} repeats takes the factor ${factor.toFixed(2)} (Student's t), met in 95 of 100 runs.${more}`;
}

const filled = ({ plan }: PlanMade): string =>
  plan.millilitres === undefined ? "" : ` Loosely filled that is about ${plainNumber(plan.millilitres, 2)}\u00a0mL in each vessel.`;

function tooHot({ plan, degrees }: PlanMade): string[] {
  if (plan.tooHot === undefined) return [];
  const { material, celsius } = plan.tooHot;
  const shown = (one: number): string => `${degreesFrom(one, degrees)}\u00a0°${degrees}`;
  return [`▲ ${shown(celsius)} is above the ${shown(material.standsCelsius)} that ${material.name} stands. Change vessel or programme.`];
}

function firing({ wanted, plan, degrees, beginAt }: PlanMade): string[] {
  if (plan.programmeMinutes === undefined) return [];
  const { charFirings = 1, coolingHours, expectedLoss, molarMass } = wanted;
  const start = `${degreesFrom(START_CELSIUS, degrees)}\u00a0°${degrees}`;
  const runs = `The kiln runs for ${durationText(Math.round(plan.programmeMinutes))} from ${start} to the end of its programme`;
  const ashing = has(wanted.kind, "ashing") ? " Ashing comes on top." : "";
  const done =
    plan.totalMinutes === undefined || coolingHours === undefined
      ? `${runs}. Cooling comes on top, and each firing again as long.`
      : `${runs}, with ${durationText(coolingHours * MINUTES_PER_HOUR)} to cool: ${charFirings} firing${charFirings === 1 ? "" : "s"} and the drying take ` +
        `${durationText(Math.round(plan.totalMinutes))}.${beginAt === undefined ? "" : ` Begun at ${clockAfter(beginAt, 0)}, done about ${clockAfter(beginAt, plan.totalMinutes)}.`}`;
  const mass =
    molarMass === undefined ? `${USUAL_MOLAR_MASS}\u00a0g/mol, common practice, no source` : `${plainNumber(molarMass)}\u00a0g/mol as given`;
  const litres = plainNumber(plan.gasLitres ?? 0, 2);
  return [
    done + ashing,
    `Expect ${expectedLoss === undefined ? "up to" : "about"} ${litres} litres of hot, toxic, flammable gas at that temperature (ideal gas of ${mass}). Vents are not sized here.`,
  ];
}

const MINUTES_PER_HOUR = 60;
