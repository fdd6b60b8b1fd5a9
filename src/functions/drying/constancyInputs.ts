import { choice } from "../../inputs/choice";
import { column, rowCounted } from "../../inputs/column";
import { leastMinutes, minutes } from "../../inputs/kinds/times";
import { changeLimit, readability, vesselMass, weighing } from "../../inputs/kinds/weighings";
import { omittable, optional } from "../../inputs/optional";
import { CONSTANCY_CRITERIA } from "../../weighing/constancyCriteria";

const CRITERIA_IN_WORDS = [
  "absolute (g)",
  "of last, of initial, of total loss (fraction of the newer weighing, the first, the loss so far)",
  "per gram (g per g of sample taken, the same as of initial)",
  "per hour (fraction of the newer weighing)",
  "readability (display steps)",
].join("; ");

/** What CONSTANTWEIGHT and CONSTANTWEIGHT.STEPS are given. */
export const constancyInputs = {
  weights: {
    ...rowCounted(column("Weighings in the order taken [g]: with the vessel if vessel is given, else of the sample alone.", weighing)),
    detail: "A vessel left in hides the change: give it as vessel, or give net weighings.",
  },
  limit: {
    ...omittable(changeLimit('Largest change that counts as constant, in the unit of the criterion. Left out: 0.001 "of last".')),
    detail: "The unit is g, a fraction, a fraction per hour or display steps, as the criterion says.",
  },
  criterion: {
    ...omittable(choice("What the limit is measured in, one of seven words. Left out: of last.", CONSTANCY_CRITERIA)),
    detail: `${CRITERIA_IN_WORDS}.`,
  },
  times: optional(rowCounted(minutes("Time of each weighing [min]."))),
  vessel: omittable(vesselMass('Empty vessel [g], or "tared". Left out: the weighings are net.')),
  readability: omittable(readability("Smallest display step of the balance [g]. Left out: taken as fine enough.")),
  interval: optional(leastMinutes("Least time between two weighings that are compared [min]; needs times. Left out: neighbours.")),
};
