import { sampleColumnCell } from "../bySample";
import { detailBox } from "../constantWeightArguments";
import type { Share } from "../quantities";
import { sampleCells } from "../sampleCells";
import { weighingUncertaintyCell } from "../weighingUncertaintyCell";
import { IN_ORDER, type CheckFormula } from "./Check";

/** Whether the moist sample, and later the dry one, is large enough for the wanted uncertainty; if not, how much would be. */
export const balanceCheck: CheckFormula = (rows, sample) => {
  const { vessel, moist, dry } = sampleCells(rows, sample);
  const [u, wanted] = [weighingUncertaintyCell(rows), detailBox(rows, "wanted")];
  const judged = (from: string, loss: string, kind: string, otherwise: string): string => {
    const least = `RETORT.SAMPLE.MINIMUM(${u},${wanted},${loss})`;
    // Up to two figures, so that the printed mass is enough.
    const roundedUp = `ROUNDUP(${least},1-INT(LOG10(${least})))`;
    return `IF(${from}-${vessel}<${least},"too coarse for the wanted uncertainty: weigh out "&${roundedUp}&" g or more of ${kind} sample",${otherwise})`;
  };
  const share = (result: Share): string => sampleColumnCell(rows.results.get(result) as number, sample);
  const ofDry = rows.results.has("volatile")
    ? `IF(COUNT(${dry},${share("volatile")})<2,${IN_ORDER},${judged(dry, share("volatile"), "dry", IN_ORDER)})`
    : IN_ORDER;
  // Not yet known, the loss is taken at its least favourable, which 0 stands for.
  const loss = `IF(COUNT(${share("moistureWet")})=0,0,${share("moistureWet")})`;
  return `IF(COUNT(${u},${wanted},${vessel},${moist})<4,"",IF(${moist}<=${vessel},"",${judged(moist, loss, "moist", ofDry)}))`;
};
