import type { OutlierQuestion } from "./OutlierQuestion";

/** The chance in the tail on one side: half of alpha when either end may be the outlier. */
export const tailOf = ({ alpha, sides }: OutlierQuestion): number => (sides === "two" ? alpha / 2 : alpha);
