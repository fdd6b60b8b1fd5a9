import { emptyAfterDrying, weighingsOutOfOrder } from "../../problems/sharing/plainCellProblems";
import { roundingSlack } from "../../weighing/roundingSlack";
import { numberInCells } from "../numberInCells";
import { operand } from "../operand";
import type { RefusalInCells } from "./RefusalInCells";

/** A nanogram, below which two weighings are the same. */
export const SLACK = String(roundingSlack).toUpperCase();

/**
 * The order that heating forces on the weighings of one vessel (`weighing/weighingsInOrder`), in a cell formula.
 * @param texts of the arguments under the names the user knows them by: vessel, then the loaded vessel, then the heated one
 */
export function orderInCells(texts: Readonly<Record<string, string>>): RefusalInCells {
  const names = Object.keys(texts);
  const [vessel = "", loaded = "", heated = ""] = names.map((name) => texts[name]);
  const [empty, before, after] = [numberInCells(vessel, 0), operand(loaded), operand(heated)];
  const when = `(${before}-${empty}<=${SLACK})+(${after}>${before})+(${after}<${empty})`;
  return { when, says: weighingsOutOfOrder([names[0] ?? "", names[2] ?? "", names[1] ?? ""]) };
}

/** The same for drying, which always leaves something. */
export function driedInCells({ vessel, moist, dry }: Readonly<Record<"vessel" | "moist" | "dry", string>>): readonly RefusalInCells[] {
  return [orderInCells({ vessel, moist, dry }), { when: `${operand(dry)}-${numberInCells(vessel, 0)}<=${SLACK}`, says: emptyAfterDrying }];
}
