import { dryingCriteria, type DryingCriterion } from "../drying/constantWeight/dryingCriteria";
import { escaped, table } from "./markup";

/** What standards and pharmacopoeias call constant weight, as the arguments of CONSTANTWEIGHT would be typed. */
export const criteriaTable = (): string =>
  [
    `<h2>When a sample counts as dry</h2>`,
    `<p>Standards disagree, and one series of weighings can pass some and fail others: name your criterion on the sheet. Limits are compared on the sample alone, without the vessel.</p>`,
    table(
      ["Standard", "Sample", "Temperature", "At least between weighings", "limit", "criterion", "How far to rely on this row"],
      dryingCriteria.map(row),
    ),
  ].join("\n");

const row = ({ standard, sample, oven, intervalMinutes, limit, criterion, mark }: DryingCriterion): string[] =>
  [standard, sample, oven, intervalMinutes === undefined ? "" : `${intervalMinutes} min`, String(limit), criterion, mark].map(escaped);
