import { emptyBracket, nestedTooDeep, notClosed, oxidationStateGiven, wrongBracket } from "../../problems/formulaProblems";
import { closingKind, openingKind } from "./bracketKinds";
import { closeGroup } from "./closeGroup";
import { oxidationState } from "./oxidationState";
import { readBracketedIsotope } from "./readBracketedIsotope";
import { readComponents } from "./readComponents";
import { readCount } from "./readCount";
import type { Reading } from "./Reading";

// Deeper than any compound is written; a limit of sense, chosen here.
const DEEPEST = 20;

/**
 * Reads a bracket, what is in it, its partner and its count.
 * @throws InputProblem
 */
export function readGroup(reading: Reading): void {
  const { text, atoms, at: open } = reading;
  const opening = text.charAt(open);
  const first = atoms.length;
  const state = oxidationState(text, open);
  if (state !== undefined) throw oxidationStateGiven(reading.spot(open), state);
  if (reading.depth === DEEPEST) throw nestedTooDeep(reading.spot(open), opening, DEEPEST);
  reading.depth++;
  reading.at++;
  reading.skipSpaces();
  if (reading.at >= text.length) throw notClosed(reading.spot(open), opening);
  if (!readBracketedIsotope(reading, opening)) {
    refuseEmpty(reading, open);
    readComponents(reading);
  }
  closeGroup(reading, open);
  reading.depth--;
  const count = readCount(reading, opening, first);
  if (count !== 1) atoms.multiply(first, count);
}

function refuseEmpty(reading: Reading, open: number): void {
  const { text, at } = reading;
  const kind = closingKind(text.charCodeAt(at));
  if (at >= text.length || kind < 0) return;
  const [opening, closing] = [text.charAt(open), text.charAt(at)];
  if (kind !== openingKind(text.charCodeAt(open))) throw wrongBracket(reading.spot(at), closing, opening);
  throw emptyBracket(reading.spot(open), opening + closing);
}
