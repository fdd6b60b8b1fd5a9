import { sampleCells } from "../sampleCells";
import { IN_ORDER, type CheckFormula } from "./Check";

/** Whether the weighings fall from moist to dry, char, ash and vessel, as far as they are made. */
export const orderCheck: CheckFormula = (rows, sample) => {
  const cells = sampleCells(rows, sample);
  const { vessel, moist, dry } = cells;
  const [char, ash] = [cells.heating("char"), cells.heating("ash")];
  const ashing = onceWeighed(ash, [`${ash}>${char}`, "ash above char"], [`${ash}<${vessel}`, "ash below the empty vessel"], IN_ORDER);
  const charring = onceWeighed(char, [`${char}>${dry}`, "char above the dry sample"], [`${char}<${vessel}`, "char below the empty vessel"], ashing);
  return `IF(COUNT(${vessel},${moist},${dry})<3,"",IF(${dry}>${moist},"dry above moist",IF(${dry}<=${vessel},"dry sample not above the empty vessel",${charring})))`;
};

type Finding = readonly [condition: string, words: string];

/** The first of two findings that holds, or what comes next; in order while not weighed, or where the run does not go that far. */
const onceWeighed = (weighed: string, [one, words]: Finding, [other, otherWords]: Finding, next: string): string =>
  weighed === "" ? IN_ORDER : `IF(COUNT(${weighed})=0,${IN_ORDER},IF(${one},"${words}",IF(${other},"${otherWords}",${next})))`;
