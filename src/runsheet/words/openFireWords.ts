import { text, type Expression } from "../expressions/Expression";

const element = (label: string, title: string) => ({
  label,
  title,
  prompt:
    "From an ultimate analysis of the dry sample, ash included in the sample, moisture left out, in percent: 48.6. Leave blank when a formula is given.",
});

const FORMULA_NEEDS = "The formula needs Retort:";

/** Words of the comparison with open burning. */
export const openFireWords = {
  heading: "OPEN FIRE",
  ofDry: "Of dry, %",
  about: "from an analysis, or type a formula",
  grams: (sample: number): string => `${sample} grams`,
  boxes: {
    carbon: element("Carbon, %", "Carbon in the dry sample"),
    hydrogen: element("Hydrogen, %", "Hydrogen in the dry sample"),
    oxygen: element("Oxygen, %", "Oxygen in the dry sample"),
    nitrogen: element("Nitrogen, %", "Nitrogen in the dry sample"),
    sulfur: element("Sulfur, %", "Sulfur in the dry sample"),
  },
  shareRefusal: (atLeast: number, atMost: number): string =>
    `Type percent of the dry sample as a number from ${atLeast} to ${atMost}, such as 48.6 for 48.6 %.`,
  exactness: {
    label: "Each known to ±, %",
    title: "Each known to ±",
    prompt:
      "How far each share may be off, percent of the dry sample at 95 %: 0.5 is common practice, no source; your laboratory knows better. Blank: the analysis is taken as exact.",
    refusal: "Type percent of the dry sample as a number from 0 to 5, such as 0.5.",
  },
  formula: {
    label: "Formula instead",
    title: "Formula of what burns",
    prompt: "The part that burns, without ash, such as C6H10O5 for cellulose or CH1.44O0.66 for wood. Then leave the analysis blank.",
    refusal: "",
  },
  compared: {
    oxygenTaken: "oxygen taken up",
    air: "air that brings it",
    gases: "gases sent away",
    ashLeft: "ash left",
    notCovered: "not in the analysis",
    vapourLeft: "closed: left as vapour",
    charLeft: "closed: char left",
  },
  both: (formula: Expression, first: Expression, last: Expression) =>
    text`? A formula and an analysis are both given: clear ${formula}, or ${first} to ${last}.`,
  /** What that sentence begins with, and no other. */
  formulaNeeds: FORMULA_NEEDS,
  formulaUnread: (formula: Expression, first: Expression, last: Expression) =>
    text`${FORMULA_NEEDS} clear ${formula} and type the analysis into ${first} to ${last} instead.`,
  retortMissing: "Open burning needs Retort, which is not here. The third line of the sheet says what to do.",
  nitrogenOfAir: "Complete burning; the nitrogen that comes with the air is not counted among the gases.",
} as const;
