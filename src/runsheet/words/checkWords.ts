import { joined, text, type Expression } from "../expressions/Expression";
import { sheetWords } from "./sheetWords";

/** Words of the checks: the name of each, and what it finds. Values stand where they are worked out. */
export const checkWords = {
  heading: "Checks",
  inOrder: "in order",
  names: {
    tare: "Vessel and sample",
    order: "Order of weights",
    gain: "Gain while drying",
    steady: "Steady",
    balance: "Balance fine enough",
    range: "Typical range",
    material: "Vessel and temperature",
    closure: "Closure against open burning",
    zeros: "Pan zeros",
    warmth: "Cold when weighed",
  },
  /** What is said of one sample of several, and which others have something to look at too. */
  ofSample: (sample: number, finding: Expression, others: readonly Expression[]) => joined(sheetWords.sample(sample), ": ", finding, ...others),
  alsoSample: (sample: number): string => `; also sample ${sample}`,
  tare: {
    noVessel: "empty vessel not weighed",
    notAbove: "moist weighing not above the empty vessel: typed without the vessel, or cells swapped",
    barelyAbove: "moist weighing barely above the empty vessel: wrong vessel, or cells swapped",
  },
  order: {
    dryAboveMoist: "dry above moist",
    dryNotAboveVessel: "dry sample not above the empty vessel",
    charAboveDry: "char above the dry sample",
    charBelowVessel: "char below the empty vessel",
    ashAboveChar: "ash above char",
    ashBelowVessel: "ash below the empty vessel",
  },
  gain: {
    heavier: (weighIn: Expression) => text`weigh-in ${weighIn} is heavier than the one before: damp taken up, a draught, or swapped cells`,
  },
  steady: {
    charredBefore: "charred before it was shown steady",
    seeTable: "see the weigh-in table",
    notYet: "not steady yet",
    notShown: (verdict: Expression) => text`not shown steady: ${verdict}`,
  },
  balance: {
    moreMoist: (grams: Expression) => text`too coarse for the wanted uncertainty: weigh out ${grams} g or more of moist sample`,
    moreDry: (grams: Expression) => text`too coarse for the wanted uncertainty: weigh out ${grams} g or more of dry sample`,
  },
  range: { nothingLeft: (share: string): string => `no ${share} at all: check the weighings` },
  material: {
    notListed: "this material is not in the list at the foot of the sheet",
    aboveLimit: (set: Expression, stands: Expression, material: Expression) =>
      text`set to ${set} °C, above the ${stands} °C that ${material} stands: change vessel or programme`,
  },
  closure: {
    waits: (percent: Expression, least: string) => text`fractions and ash add up to ${percent} % so far: the comparison waits for ${least} %`,
    seeComparison: "see the comparison with open burning",
    notClosed: "what goes in and what comes out differ by more than a display step",
    unexplained: (percent: Expression) => text`analysis and ash leave ${percent} % of the dry sample unexplained`,
  },
  zeros: { oneMissing: "one of the two zeros is missing: that weighing is not corrected" },
  warmth: {
    readsLight: (weighIn: Expression, degrees: Expression, milligrams: Expression) =>
      text`weigh-in ${weighIn} was ${degrees} °C above the room and reads light: this vessel by an unknown amount; the published case, a 17 g porcelain crucible, by up to ${milligrams} mg`,
    readsHeavy: "weighed colder than the room: it reads heavy, and damp settles on it",
  },
} as const;
