import { standardUncertainty } from "../../inputs/kinds/statistics";

/** The one uncertainty that LOSSFRACTION.U, SAMPLE.MINIMUM and CHANGE.SIGNIFICANT ask for, in the same words. */
export const weighingUncertaintyInput = standardUncertainty(
  "Standard uncertainty of one weighing [g], as READING.U gives it: its tared TRUE if the balance was zeroed before each weighing.",
);
