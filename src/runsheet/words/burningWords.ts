import { text, type Expression } from "../expressions/Expression";
import type { BoxWords } from "./BoxWords";
import { sheetWords } from "./sheetWords";

const fraction = (label: string, element: string): BoxWords => ({
  label,
  title: `${element} in the dry sample`,
  prompt:
    "From an ultimate analysis of the dry sample, ash included in the sample, without the moisture: 0.488 or 48.8%. Leave blank when a formula is given.",
  refusal: "Type a fraction from 0 to 1, such as 0.488 or 48.8%.",
});

/** Words of the comparison with open burning. */
export const burningWords = {
  heading: "Closed charring against open burning",
  formula: {
    label: "Formula of what burns",
    title: "Formula of what burns",
    prompt:
      "The part that burns, without ash, such as C6H10O5 for cellulose or CH1.44O0.66 for wood. Or leave it blank and give the fractions below.",
    refusal: "",
  },
  fractions: {
    carbon: fraction("Carbon (fraction of dry)", "Carbon"),
    hydrogen: fraction("Hydrogen (fraction of dry)", "Hydrogen"),
    oxygen: fraction("Oxygen (fraction of dry)", "Oxygen"),
    nitrogen: fraction("Nitrogen (fraction of dry)", "Nitrogen"),
    sulfur: fraction("Sulfur (fraction of dry)", "Sulfur"),
  },
  column: "For the weighed sample",
  comparison: {
    dry: "Dry sample (g)",
    charLeft: "Closed: char left (g)",
    vapourLeft: "Closed: left as vapour (g)",
    oxygenTaken: "Open: oxygen taken up (g)",
    air: "Open: air that brings it (g)",
    ashLeft: "Open: ash left (g)",
    gases: "Open: gases leaving (g)",
    notCovered: "Open: not in the analysis (g)",
    massIn: "Open: sample and oxygen, in (g)",
    massOut: "Open: all together, out (g)",
  },
  note: (sample: number, note: Expression) => text`${sheetWords.sample(sample)}: ${note}`,
} as const;
