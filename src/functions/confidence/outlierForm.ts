import { countedReplicates, type Replicate } from "../../confidence/countedReplicates";
import { type OutlierAssessment, type OutlierQuestion, outlierVerdict, SIDES } from "../../confidence/outlierAssessment";
import { choice } from "../../inputs/choice";
import type { Read } from "../../inputs/Input";
import { significanceLevel } from "../../inputs/kinds/statistics";
import { optional } from "../../inputs/optional";
import type { Shown } from "../cellFunction";
import { inFigures } from "../inFigures";
import { replicateInputs } from "./replicateInputs";

/** What GRUBBS and DIXON both ask for. */
export const outlierInputs = {
  values: replicateInputs.values,
  alpha: optional(significanceLevel("Significance level, above 0 and below 0.5."), "0.05"),
  sides: optional(choice('"two": either end. "largest" or "smallest": one-sided, the end chosen before looking.', SIDES), "two"),
  zeros: replicateInputs.zeros,
  readability: replicateInputs.readability,
};

/** What each statistic is called in the table. */
export const STATISTIC_OF_GRUBBS = "G = |suspect - mean| / s";
export const STATISTIC_OF_DIXON = "Q = gap / range (r10)";

/** The level that published tables give first. */
export const USUAL_ALPHA = 0.05;

/** The inputs as the assessments take them. */
export function outlierQuestion(read: Read<typeof outlierInputs>): readonly [readonly Replicate[], OutlierQuestion] {
  return [
    countedReplicates(read.values, read.zeros),
    { alpha: read.alpha ?? USUAL_ALPHA, sides: read.sides ?? "two", readability: read.readability },
  ];
}

/** How the critical value was asked for: "two-sided, alpha 0.05". */
export const askedAs = ({ alpha, sides }: Pick<OutlierQuestion, "alpha" | "sides">): string =>
  `${sides === "two" ? "two-sided" : `one-sided (${sides})`}, alpha ${inFigures(alpha)}`;

/** The table that both spill. */
export const outlierTable = (statistic: string, of: OutlierAssessment, question: OutlierQuestion): readonly (readonly Shown[])[] => [
  ["Quantity", "Value"],
  ["Results, n", of.count],
  ["Suspect", of.suspect.value],
  ["Row of the suspect in values", of.suspect.row],
  [statistic, of.statistic],
  [`Critical value, ${askedAs(question)}`, of.critical],
  ["Verdict", outlierVerdict(of)],
];
