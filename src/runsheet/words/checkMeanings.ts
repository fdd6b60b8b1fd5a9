import type { checkWords } from "./checkWords";

/** What each check looks at. */
export const checkMeanings: Readonly<Record<keyof (typeof checkWords)["names"], string>> = {
  vessel: "Whether each empty vessel was weighed and its moist sample stands above it, by a hundredth of the vessel at least (common practice).",
  times: "Whether clock boxes hold times, rounds and firings follow one another, and no round lies far from the plan.",
  rows: "Whether every weight is a number, no row is left out above a filled one, each weight has its time, and no sample repeats another in every box.",
  gain: "Whether any weighing is heavier than the one before it by more than two readings explain; and whether two samples stand crosswise.",
  order: "Whether vessel, char, dry and moist weights stand in the order in which they can be.",
  dryness:
    "Whether each sample can be judged and was shown dry before it was charred, by a limit that lets pass no more than 0.2 % of the moist sample (own bound); and whether weights have all the figures that the balance shows.",
  opened:
    "Whether lit, quiet and opened are in order, and the vessel stayed closed as long as the settings ask; not yet while a firing that was weighed lacks its times.",
  charDone: "Whether the last two weighings of the char agree within the limit, after a firing as hot as before and held.",
  ashDone: "Whether the last two weighings of the ash agree within the limit, after a firing as hot as before and held.",
  heatDone: "Whether the last two weighings after heating agree within the limit, the last of them as hot as before and held.",
  theory:
    "Whether the formulas can be read and the residue can come from the salt, and what left is neither more nor less than theory says, beyond the ±.",
  rising: "Whether each stage is set no lower than the one before, has a temperature, and was measured near what was set.",
  stageHeld: "Whether a stage that was held again, as hot and as long, lost nothing more.",
  caught: "Whether all that was weighed empty is weighed again, in grams, and nothing but the receivers' liquid changed.",
  ledger: "Whether the products add up: percentages are such, water is not less than was fed, and little is unaccounted for.",
  air: "Whether char gained between firings, white edges were seen, or less char stayed than untreated plants leave.",
  vesselAgain:
    "Whether the vessel of each sample was weighed again or of none, lost nothing and gained no more than scale plausibly is: a half of a hundredth of the dry sample (own bound).",
  agree:
    "Whether repeats agree, in every row with a value together, within the wanted ±, and the answer's within the method's own scatter; one stands apart by Dixon's r10, two-sided 95 %.",
  fine: "Whether the balance is fine enough, and the sample large enough, for the wanted ±.",
  range: "Whether water, char and ash lie in the ranges of untreated plants (common practice).",
  material:
    "Whether each firing was measured near what was set, and the vessel's material stands the hottest temperature noted, and none is out of what ovens, charring and ashing have (common practice).",
  analysis: "Whether the analysis with the ash adds up to the dry sample, within 3 %, or the formula can be read.",
  zeros: "Whether each row has both pan zeros or neither.",
  warmth: "Whether samples were as cold as the room when weighed.",
  typedOver:
    "Whether no row of boxes was deleted, no column moved, and every calculated cell still holds its formula. One that the answer is calculated from withholds it, any other marks it.",
};

/** What a check found that found nothing. */
export const checkFound = {
  inOrder: "In order: nothing is wrong there.",
  notYet: "Nothing to look at yet.",
} as const;
