import { tokenize, tokenTypes } from "@borgar/fx";
import { everyFunction, NAMESPACE } from "../functions/catalogue";
import { gridErrorNote, moreUnknownNames, noSuchFunction } from "../problems/workbook/cellNotes";
import { catalogueName } from "../sharing/catalogueName";
import { findCalls } from "../sharing/findCalls";
import { definitionOf } from "./formula/calledFunction";

const UNKNOWN_NAME = "#NAME?";
// Whoever has mistyped more than these sees the pattern.
const MOST_SPELT_OUT = 5;

/**
 * What is wrong with the names in a cell formula: functions that this version does not have, with the nearest it has; else, in
 * a cell that shows #NAME?, that a name is not known. Empty where the names are right, so that only loading can be at fault.
 * @param error the code the cell shows, "" for none
 */
export function nameNotes(cellFormula: string, error: string): string[] {
  const found = findCalls(cellFormula).map(({ name }) => `${NAMESPACE}.${name}`);
  const ours = found.filter((name) => definitionOf(name) === undefined);
  const meant = error === UNKNOWN_NAME ? outsideNamespace(cellFormula) : [];
  const unknown = [...new Set([...ours, ...meant])];
  const spelt = unknown.slice(0, MOST_SPELT_OUT).map((name) => noSuchFunction(name, nearestFunctions(name)));
  if (unknown.length > MOST_SPELT_OUT) return [...spelt, moreUnknownNames(unknown.length - MOST_SPELT_OUT)];
  if (spelt.length > 0 || error !== UNKNOWN_NAME) return spelt;
  const hasOtherNames = found.length === 0 || tokenize(cellFormula).some(({ type }) => type === tokenTypes.REF_NAMED);
  return hasOtherNames && cellFormula !== "" ? [gridErrorNote(error)].filter((note) => note !== undefined) : [];
}

/** Functions called without the namespace, or with it misspelt, whose names are near one of ours. */
function outsideNamespace(cellFormula: string): string[] {
  const functions = tokenize(cellFormula).filter(({ type, value }) => type === tokenTypes.FUNCTION && catalogueName(value) === undefined);
  return [...new Set(functions.map(({ value }) => value.toUpperCase()))].filter((name) => nearestFunctions(name).length > 0);
}

// Beyond this share of its letters a name is another word, not a slip of the hand; own choice.
const LETTERS_A_SLIP = 4;
const MOST_OFFERED = 3;

const NAMESPACE_BEFORE = new RegExp(`^${NAMESPACE}[._]?`);

/**
 * The names of the catalogue nearest to a function name as written, with the namespace, best first; none where nothing is near.
 * A name that begins or ends with the written word counts as near: MOISTURE finds MOISTURE.WET.
 */
function nearestFunctions(written: string): string[] {
  const capitals = written.toUpperCase();
  const bare = capitals.replace(NAMESPACE_BEFORE, "");
  const near = everyFunction
    .map(({ name }) => ({ name: `${NAMESPACE}.${name}`, slips: slipsBetween(capitals, bare, name) }))
    .filter(({ slips }) => slips <= bare.length / LETTERS_A_SLIP)
    .sort((one, other) => one.slips - other.slips);
  // Where the namespace alone is misspelt, MOLARMASS is meant and not MOLARMASS.U.
  const wholeName = near.filter(({ name, slips }) => slips === 0 || capitals.endsWith(name.slice(NAMESPACE.length)));
  const best = wholeName.length > 0 ? wholeName : near;
  return best.slice(0, MOST_OFFERED).map(({ name }) => name);
}

// Half a slip: nearer than any misspelling, further than the very name.
const PART_OF_NAME = 0.5;

function slipsBetween(capitals: string, bare: string, name: string): number {
  if (bare === name) return 0;
  // A spreadsheet's own CONVERT is no slip for MOISTURE.CONVERT, so an ending counts behind the namespace only.
  const isPart = name.startsWith(`${bare}.`) || (capitals !== bare && name.endsWith(`.${bare}`));
  // Each letter that one word has more is a slip, so words of other lengths need no comparing.
  if (!isPart && Math.abs(bare.length - name.length) > bare.length / LETTERS_A_SLIP + NAMESPACE.length + 1) return Infinity;
  return isPart ? PART_OF_NAME : Math.min(editDistance(bare, name), editDistance(capitals, `${NAMESPACE}.${name}`));
}

/** Letters put in, left out or exchanged between two words (Levenshtein distance). */
function editDistance(one: string, other: string): number {
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (const letter of one) {
    const line = [(above[0] as number) + 1];
    for (let column = 0; column < other.length; column++) {
      const exchanged = (above[column] as number) + (letter === other[column] ? 0 : 1);
      line.push(Math.min((above[column + 1] as number) + 1, (line[column] as number) + 1, exchanged));
    }
    above = line;
  }
  return above[other.length] as number;
}
