import { noNumber } from "../expressions/choices";
import { fn, is } from "../expressions/Expression";
import { vesselStands } from "../formulas/vesselStands";
import type { RunSheet } from "../sheet/RunSheet";
import type { SampleCells } from "../sheet/sampleCells";
import { checkWords } from "../words/checkWords";
import type { Check } from "./Check";

const words = checkWords.material;

/** Whether the vessel's material stands the hottest that oven, kiln and furnace are set to, °C. */
export const materialCheck = (sheet: RunSheet, { charring, ashing }: SampleCells): Check => {
  const { material, oven } = sheet.details;
  const set = [oven, ...(charring === undefined ? [] : [charring.kilnSet]), ...(ashing === undefined ? [] : [ashing.furnaceSet])];
  const [hottest, stands] = [fn("MAX", ...set), vesselStands(sheet)];
  return {
    silentWhile: fn("OR", is(fn("COUNTA", material), "=", 0), noNumber(...set)),
    steps: [
      { when: fn("ISERROR", stands), says: words.notListed },
      { when: is(hottest, ">", stands), says: words.aboveLimit(hottest, stands, material) },
    ],
  };
};
