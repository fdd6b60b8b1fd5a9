import { NOTHING, noNumber, orNothing, when } from "../expressions/choices";
import { fn, is, type Call, type Cell } from "../expressions/Expression";
import type { RunSheet } from "../sheet/RunSheet";
import { heatingWords } from "../words/heatingWords";

/** The temperature that the chosen vessel material stands, °C, looked up at the foot of the sheet; an error while none is chosen. */
export const vesselStands = ({ details, materials }: RunSheet): Call =>
  fn("INDEX", materials.stand, fn("MATCH", details.material, materials.names, 0));

/** For beside a temperature that kiln or furnace is set to: a caution when the vessel's material does not stand it, else nothing. */
export function overheated(sheet: RunSheet, set: Cell): Call {
  const stands = vesselStands(sheet);
  const caution = when(is(set, ">", stands), heatingWords.overheated(stands, sheet.details.material), NOTHING);
  return when(noNumber(set), NOTHING, orNothing(caution));
}
