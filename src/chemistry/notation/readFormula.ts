import { oxidationStateGiven } from "../../problems/functions/formulaProblems";
import { InputProblem } from "../../problems/InputProblem";
import type { Formula } from "../Formula";
import { totalAtoms } from "./counts/AtomCounts";
import { formulaNotes } from "./formulaNotes";
import { mendNotation } from "./mendNotation";
import { readChargeAndState } from "./readChargeAndState";
import { readComponents } from "./readComponents";
import { Reading } from "./Reading";
import { refuseCaseSlip } from "./refusals/refuseCaseSlip";
import { bareOxidationState } from "./refusals/oxidationState";
import { refuseLostBracket } from "./refusals/refuseLostBracket";
import { refuseLostDot } from "./refusals/refuseLostDot";
import { refuseMassNumber } from "./refusals/refuseMassNumber";
import { refuseSplitSymbol } from "./refusals/refuseSplitSymbol";
import { refuseTypingSlip } from "./refusals/refuseTypingSlip";
import { alsoWords } from "./refusals/words/capitalFormulas";
import { abbreviationProblem, refuseWord } from "./refusals/words/refuseWord";

// One formula is read at a time, so one reading serves them all and leaves no garbage.
const reading = new Reading();

/**
 * Reads one formula in one pass over the user's own text; every character is accounted for or refused. A text in another notation of
 * print is read once more in ours, with a note, and the first problem stands where that does not help.
 * @param argument the name that problems open with
 * @throws InputProblem with the place and the mending of what cannot be read
 */
export function readFormula(text: string, argument: string): Formula {
  try {
    return readOnce(text, argument);
  } catch (problem) {
    if (!(problem instanceof InputProblem)) throw problem;
    const abbreviation = abbreviationProblem(argument, text);
    if (abbreviation !== undefined) throw abbreviation;
    const mended = mendNotation(text);
    if (mended === undefined) throw problem;
    const { atoms, charge, notes } = readMended(mended.text, argument, problem);
    return { text, atoms, charge, notes: [...mended.notes, ...notes] };
  }
}

function readMended(text: string, argument: string, first: unknown): Formula {
  try {
    return readOnce(text, argument);
  } catch (problem) {
    throw problem instanceof InputProblem ? first : problem;
  }
}

function readOnce(text: string, argument: string): Formula {
  reading.begin(text, argument);
  readComponents(reading);
  const charge = readChargeAndState(reading);
  const atoms = totalAtoms(reading);
  refuseSlips(atoms, charge);
  noteMeanings(text, atoms);
  const { notes } = reading;
  const read = (other: string): ReadonlyMap<string, number> | undefined => atomsOf(other, argument);
  refuseLostDot({ text, argument }, atoms, charge, read);
  refuseLostBracket({ text, argument }, atoms, charge, read);
  return { text, atoms, charge, notes };
}

function atomsOf(text: string, argument: string): ReadonlyMap<string, number> | undefined {
  try {
    return readOnce(text, argument).atoms;
  } catch (problem) {
    if (problem instanceof InputProblem) return undefined;
    throw problem;
  }
}

/** What reads and almost certainly says something else: each rule stands in a file of its own. */
function refuseSlips(atoms: ReadonlyMap<string, number>, charge: number): void {
  const state = bareOxidationState(reading.text);
  if (state !== undefined) throw oxidationStateGiven(reading.spot(reading.text.indexOf(state)), state);
  refuseWord(reading, atoms, charge);
  refuseCaseSlip(reading, atoms, charge);
  refuseSplitSymbol(reading, atoms, charge);
  // Co60 alone is an isotope; K20 beside others holds a digit for a letter.
  const isAlone = atoms.size === 1;
  if (isAlone) refuseMassNumber(reading, atoms, charge);
  refuseTypingSlip(reading, atoms);
  if (!isAlone) refuseMassNumber(reading, atoms, charge);
}

const LONGEST_ALSO = 3;

/** Notes what stands in the text for an element few mean by it. */
function noteMeanings(text: string, atoms: ReadonlyMap<string, number>): void {
  if (atoms.has("D") && /D(?![a-z])/.test(text)) reading.note(formulaNotes.heavyHydrogen("D", "deuterium (hydrogen-2)"));
  if (atoms.has("T") && /T(?![a-z])/.test(text)) reading.note(formulaNotes.heavyHydrogen("T", "tritium (hydrogen-3)"));
  if (text.length <= LONGEST_ALSO && alsoWords.has(text)) reading.note(formulaNotes.alsoAWord(text));
}
