import type { OutlierQuestion } from "../../confidence/OutlierQuestion";
import { inFigures } from "../inFigures";

/** How the critical value was asked for: "two-sided, alpha 0.05". */
export const askedAs = ({ alpha, sides }: OutlierQuestion): string =>
  `${sides === "two" ? "two-sided" : `one-sided (${sides})`}, alpha ${inFigures(alpha)}`;
