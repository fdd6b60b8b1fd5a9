import { tokenize, tokenTypes } from "@borgar/fx";
import { everyFunction, NAMESPACE } from "../functions/catalogue";
import { gridErrorNote, noSuchFunction } from "../problems/cellNotes";
import { catalogueName } from "../sharing/catalogueName";
import { findCalls } from "../sharing/findCalls";
import { definitionOf } from "./formula/calledFunction";

const UNKNOWN_NAME = "#NAME?";

/**
 * What is wrong with the names in a cell formula: functions that this version does not have, with the nearest it has; else, in
 * a cell that shows #NAME?, that a name is not known. Empty where the names are right, so that only loading can be at fault.
 * @param error the code the cell shows, "" for none
 */
export function nameNotes(cellFormula: string, error: string): string[] {
  const found = findCalls(cellFormula).map(({ name }) => `${NAMESPACE}.${name}`);
  const ours = found.filter((name) => definitionOf(name) === undefined);
  const meant = error === UNKNOWN_NAME ? outsideNamespace(cellFormula) : [];
  const unknown = [...new Set([...ours, ...meant])].map((name) => noSuchFunction(name, nearestFunctions(name)));
  if (unknown.length > 0 || error !== UNKNOWN_NAME) return unknown;
  const hasOtherNames = found.length === 0 || tokenize(cellFormula).some(({ type }) => type === tokenTypes.REF_NAMED);
  return hasOtherNames && cellFormula !== "" ? [gridErrorNote(error)].filter((note) => note !== undefined) : [];
}

/** Functions called without the namespace, or with it misspelt, whose names are near one of ours. */
const outsideNamespace = (cellFormula: string): string[] =>
  tokenize(cellFormula)
    .filter(({ type, value }) => type === tokenTypes.FUNCTION && catalogueName(value) === undefined && nearestFunctions(value).length > 0)
    .map(({ value }) => value.toUpperCase());

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
  const best = near[0]?.slips === 0 ? near.filter(({ slips }) => slips === 0) : near;
  return best.slice(0, MOST_OFFERED).map(({ name }) => name);
}

// Half a slip: nearer than any misspelling, further than the very name.
const PART_OF_NAME = 0.5;

function slipsBetween(capitals: string, bare: string, name: string): number {
  if (bare === name) return 0;
  // A spreadsheet's own CONVERT is no slip for MOISTURE.CONVERT, so an ending counts behind the namespace only.
  const isPart = name.startsWith(`${bare}.`) || (capitals !== bare && name.endsWith(`.${bare}`));
  return isPart ? PART_OF_NAME : Math.min(editDistance(bare, name), editDistance(capitals, `${NAMESPACE}.${name}`));
}

/** Letters put in, left out or exchanged between two words (Levenshtein distance). */
function editDistance(one: string, other: string): number {
  const first = Array.from({ length: other.length + 1 }, (_, column) => column);
  const last = [...one].reduce(
    (above, letter) =>
      [...other].reduce<number[]>(
        (line, another, column) => [
          ...line,
          Math.min((above[column + 1] ?? 0) + 1, (line[column] ?? 0) + 1, (above[column] ?? 0) + (letter === another ? 0 : 1)),
        ],
        [(above[0] ?? 0) + 1],
      ),
    first,
  );
  return last[other.length] ?? 0;
}
