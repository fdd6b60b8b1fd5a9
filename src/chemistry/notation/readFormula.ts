import type { Formula } from "../Formula";
import { totalAtoms } from "./counts/AtomCounts";
import { readChargeAndState } from "./readChargeAndState";
import { readComponents } from "./readComponents";
import { Reading } from "./Reading";
import { refuseTypingSlip } from "./refusals/refuseTypingSlip";

// One formula is read at a time, so one reading serves them all and leaves no garbage.
const reading = new Reading();

/**
 * Reads one formula in one pass over the user's own text; every character is accounted for or refused.
 * @param argument the name that problems open with
 * @throws InputProblem with the place and the mending of what cannot be read
 */
export function readFormula(text: string, argument: string): Formula {
  reading.begin(text, argument);
  readComponents(reading);
  const charge = readChargeAndState(reading);
  const atoms = totalAtoms(reading);
  refuseTypingSlip(reading, atoms);
  return { text, atoms, charge, notes: reading.notes };
}
