import type { CellReading } from "../../workbook/Workbook";
import { RUN_CELL_DIFFERS, RUN_CELL_OTHERWISE, typedOverInRun } from "../../problems/workbook/cellNotes";
import { cell, type Cell, type Expression } from "../../runsheet/expressions/Expression";
import { formulaText } from "../../runsheet/expressions/formulaText";
import { checkFound, checkMeanings } from "../../runsheet/words/checkMeanings";
import { checkWords } from "../../runsheet/words/checkWords";
import { areaNamed } from "../../workbook/areaNamed";
import type { RunCellExplanation } from "../CellExplanation";
import { checkAt, nameOf, type CellName } from "./cellNames";
import { placeName, plannedPart, rangeName } from "./rangeNames";
import { conditionText } from "./conditionText";
import { placesIn } from "../../runsheet/expressions/parts";
import { expressionOfFormula } from "./expressionOfFormula";
import { holdsWhatIsWorkedOut } from "./holdsWhatIsWorkedOut";
import { balanceMeaningOf, meaningOf } from "./meanings";
import type { BalanceCheck } from "../../runsheet/sheet/balanceRows";
import type { CheckName } from "../../runsheet/sheet/layout";
import { balanceCheckMeanings } from "../../runsheet/words/balance/balanceMeanings";
import type { Meaning } from "../../runsheet/words/meaningWords";
import type { Plain } from "./Plain";
import { plainText } from "./plainText";
import type { SheetCells } from "./RunCells";
import { waitsFor } from "./waitsFor";
import { resolved, wayThrough, type Way } from "./wayThrough";
import { workingOf } from "./workingOf";
import { workOut } from "./workOut";

/** A calculated cell of a run sheet in words, and what must be said of it besides. */
export interface ExplainedRunCell {
  readonly ofRun: RunCellExplanation;
  readonly notes: readonly string[];
}

/** @returns undefined for a cell in which the sheet calculates nothing */
export function explainRunCell(cells: SheetCells, reading: CellReading): ExplainedRunCell | undefined {
  const { row, column } = areaNamed(reading.cell);
  const at = cell(row + 1, column);
  const planned = cells.planned(at.row, at.column);
  if (planned?.formula === undefined) return undefined;
  const name = nameOf(cells, at);
  if (reading.formula === "") return { ofRun: plainly(cells, at, name, reading), notes: [typedOverInRun(reading.cell)] };
  const expression = expressionOfFormula(reading.formula);
  const isOwn = JSON.stringify(expression) === JSON.stringify(expressionOfFormula(formulaText(planned.formula)));
  const notes = isOwn ? [] : [RUN_CELL_OTHERWISE];
  const worked = expression === undefined ? undefined : workedOut(cells, expression);
  if (expression === undefined || worked === undefined) return { ofRun: plainly(cells, at, name, reading), notes };
  if (!holdsWhatIsWorkedOut(worked.value, reading)) return { ofRun: plainly(cells, at, name, reading), notes: [...notes, RUN_CELL_DIFFERS] };
  return { ofRun: inFull(cells, at, name, reading, worked.way), notes };
}

/** Undefined where only the spreadsheet can work the formula out. */
function workedOut(cells: SheetCells, expression: Expression): { readonly value: Plain; readonly way: Way } | undefined {
  try {
    return { value: workOut(expression, cells.at), way: wayThrough(expression, cells.at) };
  } catch (thrown) {
    // A function that is not worked out here, or a table where one value is wanted: the cell is explained without its arithmetic.
    if (thrown instanceof Error) return undefined;
    throw thrown;
  }
}

const meaningIn = ({ sheet }: SheetCells, { core, block }: CellName): Meaning =>
  sheet.options.kind === "balance" ? balanceMeaningOf(core, block) : meaningOf(core, block);

/** What can be said of a cell without its arithmetic. */
function plainly(cells: SheetCells, at: Cell, name: CellName, reading: CellReading): RunCellExplanation {
  const meaning = meaningIn(cells, name);
  const check = checkOf(cells, at);
  return {
    name: name.text,
    block: name.block,
    about: meaning.about,
    inputs: [],
    moreInputs: 0,
    choices: [],
    working: [],
    result: reading.shown,
    plusMinus: "",
    waitsFor: [],
    source: meaning.source,
    ...(check === undefined ? {} : { check }),
  };
}

// More than the longest line of a table reads; answers read more, and the sheet itself shows them.
const MOST_INPUTS = 16;
const MOST_CHOICES = 12;

function inFull(cells: SheetCells, at: Cell, name: CellName, reading: CellReading, way: Way): RunCellExplanation {
  const leaf = resolved(way.leaf, cells.at);
  const showsNothing = reading.error === "" && (reading.value ?? "") === "";
  const last = way.choices.at(-1)?.condition;
  const of = placesIn(leaf);
  // A sum of choices, such as how many samples are under way, reads what they ask about.
  const meaning = meaningIn(cells, name);
  const check = checkOf(cells, at);
  // A finding that is blank has looked at all that its conditions name, not at what the last of them asks.
  const isBlankFinding = check !== undefined && showsNothing;
  const places = of.length > 0 ? of : isBlankFinding ? [] : placesIn(last ?? way.leaf);
  const isNothingFound = check !== undefined && check.found === checkFound.inOrder;
  return {
    ...plainly(cells, at, name, reading),
    inputs: places.slice(0, MOST_INPUTS).map((place) => inputOf(cells, place)),
    moreInputs: Math.max(0, places.length - MOST_INPUTS),
    choices: choicesOf(cells, way),
    working: showsNothing ? [] : workingOf(cells, at, leaf),
    result: showsNothing ? "" : resultText(cells, at, name, reading),
    plusMinus: hasPlusMinus(reading) ? (meaning.plusMinus ?? "") : "",
    waitsFor: showsNothing && !isNothingFound ? waitsFor(cells, way) : [],
  };
}

/** In words, each once: what is asked of several reasons or rows may read alike. */
function choicesOf(cells: SheetCells, { choices, leaf }: Way): RunCellExplanation["choices"] {
  const told = [...choices, ...choicesWithin(leaf, cells)].map(({ condition, holds }) => ({ asked: conditionText(cells, condition), holds }));
  return told.filter(({ asked, holds }, index) => told.findIndex((one) => one.asked === asked && one.holds === holds) === index).slice(-MOST_CHOICES);
}

/** What the terms of a sum ask that count something, 1 or 0 each. */
function choicesWithin(leaf: Expression, cells: SheetCells): Way["choices"] {
  if (typeof leaf !== "object" || leaf.kind !== "infix") return [];
  if (leaf.operator !== "+") return [];
  return [leaf.left, leaf.right].flatMap((term) => {
    const isChoice = typeof term === "object" && term.kind === "call" && term.name === "IF";
    return isChoice ? wayThrough(term, cells.at).choices : choicesWithin(term, cells);
  });
}

/** A number of its own, or a sentence that names one: what is withheld has none. */
const hasPlusMinus = ({ value, error }: CellReading): boolean => error === "" && (typeof value === "number" || String(value ?? "").includes("±"));

function inputOf(cells: SheetCells, place: ReturnType<typeof placesIn>[number]): RunCellExplanation["inputs"][number] {
  const from = placeName(cells, place);
  if (place.kind === "cell") {
    const { text, unit } = nameOf(cells, place);
    return { name: text, value: plainText(cells.at(place.row, place.column), unit, cells.planned(place.row, place.column)), from };
  }
  const { text, unit } = rangeName(cells, place);
  const values: string[] = [];
  const { from: first, to: last } = plannedPart(cells, place);
  const isOfOneKind = nameOf(cells, first).core === nameOf(cells, last).core;
  for (let row = first.row; row <= last.row; row++)
    for (let column = first.column; column <= last.column; column++) {
      const value = cells.at(row, column);
      if (value === null || value === "") continue;
      // What stands beside or below may be of another unit.
      const own = isOfOneKind ? unit : nameOf(cells, cell(row, column)).unit;
      values.push(plainText(value, own, cells.planned(row, column)));
    }
  return { name: text, value: values.length === 0 ? "all blank" : listed(values), from };
}

// A column is shown by its first values and its last; the sheet itself shows the rest.
const SHOWN_OF_A_RANGE = 4;
const listed = (values: readonly string[]): string =>
  values.length <= SHOWN_OF_A_RANGE ? values.join(", ") : `${values.slice(0, SHOWN_OF_A_RANGE - 1).join(", ")} … ${values.at(-1) ?? ""}`;

function resultText(cells: SheetCells, { row, column }: Cell, { unit }: CellName, { value, error, shown }: CellReading): string {
  if (error !== "") return error;
  return typeof value === "number" ? plainText(value, unit, cells.planned(row, column)) : shown;
}

// A sign and a space.
const MARK_LENGTH = 2;

/** What a check looks at, what it found and what to do: the first sentence of its finding and the others. */
function checkOf(cells: SheetCells, at: Cell): RunCellExplanation["check"] {
  const found = checkAt(cells, at);
  if (found === undefined) return undefined;
  const [verdict, finding] = [cells.at(at.row, 1), cells.at(at.row, 2)];
  const isBalance = cells.sheet.options.kind === "balance";
  const looksAt = isBalance ? balanceCheckMeanings[found.check as BalanceCheck] : checkMeanings[found.check as CheckName];
  if (typeof finding !== "string" || finding === "")
    return { looksAt, found: verdict === checkWords.verdicts.notYet ? checkFound.notYet : checkFound.inOrder, remedy: "" };
  // The mark before a finding ends no sentence.
  const begin = /^\S /.test(finding) ? MARK_LENGTH : 0;
  const end = finding.slice(begin).search(/[.?!] /);
  if (end === -1) return { looksAt, found: finding, remedy: "" };
  return { looksAt, found: finding.slice(0, begin + end + 1), remedy: finding.slice(begin + end + 2) };
}
