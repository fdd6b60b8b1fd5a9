import type { BoxRule } from "../../runsheet/blocks/Block";
import { placeOf } from "../../runsheet/expressions/formulaText";
import { cell, type Cell, type Expression, type Range } from "../../runsheet/expressions/Expression";
import { waitWords } from "../../runsheet/words/waitWords";
import { nameOf } from "./cellNames";
import { placesIn } from "../../runsheet/expressions/parts";
import { isError } from "./Plain";
import { isBox, type SheetCells } from "./RunCells";
import { wayThrough, type Way } from "./wayThrough";

// A cell of the answer rests on boxes through three or four others.
const DEEPEST = 6;

/** What a cell that shows nothing waits for: blank boxes by label and cell, and calculated cells that have no number yet. */
export function waitsFor(cells: SheetCells, way: Way): readonly string[] {
  const told: Told[] = [];
  const seen = new Set<string>();
  askedOf(way).forEach((condition) => look(cells, condition, { told, seen, depth: 0 }));
  // Of boxes one below the other the first is the next to fill.
  const isFirst = ({ at, over }: Told): boolean =>
    over === undefined || !told.some((other) => other.over === over && other.at.column === at.column && other.at.row < at.row);
  return told
    .filter(isFirst)
    .sort((one, other) => one.at.row - other.at.row || one.at.column - other.at.column)
    .map(({ words }) => words);
}

interface Told {
  readonly at: Cell;
  readonly words: string;
  /** The rule of a blank box. */
  readonly over?: BoxRule | undefined;
}

/** What held on the way, and what was asked last. */
const askedOf = ({ choices }: Way): readonly Expression[] =>
  choices.filter(({ holds }, index) => holds || index === choices.length - 1).map(({ condition }) => condition);

interface Search {
  readonly told: Told[];
  readonly seen: Set<string>;
  readonly depth: number;
}

function look(cells: SheetCells, expression: Expression, search: Search): void {
  for (const place of placesIn(expression)) {
    const at = place.kind === "cell" ? place : firstBlank(cells, place);
    if (at !== undefined) lookAt(cells, at, search);
  }
}

function lookAt(cells: SheetCells, at: Cell, search: Search): void {
  const key = placeOf(at);
  if (search.seen.has(key)) return;
  search.seen.add(key);
  const [planned, value] = [cells.planned(at.row, at.column), cells.at(at.row, at.column)];
  const { text } = nameOf(cells, at);
  if (isError(value)) search.told.push({ at, words: waitWords.shows(text, key, value.code) });
  else if (isBox(planned) && value === null) search.told.push({ at, words: waitWords.blank(text, key), over: cells.ruleOver(at.row, at.column) });
  else if (planned?.formula === undefined || typeof value === "number") return;
  else if (typeof value === "string" && value !== "") search.told.push({ at, words: waitWords.shows(text, key, value) });
  else if (search.depth < DEEPEST)
    askedOf(wayThrough(planned.formula, cells.at)).forEach((condition) => look(cells, condition, { ...search, depth: search.depth + 1 }));
}

/** The next box of a range: the first blank one after the last that is filled; of calculated cells the first without a number. */
function firstBlank(cells: SheetCells, { from, to }: Range): Cell | undefined {
  let next: Cell | undefined;
  for (let row = from.row; row <= to.row; row++)
    for (let column = from.column; column <= to.column; column++) {
      const planned = cells.planned(row, column);
      if (!isBox(planned) && planned?.formula === undefined) continue;
      const value = cells.at(row, column);
      if (isError(value)) return cell(row, column);
      const isFilled = value !== null && value !== "";
      if (isBox(planned) && isFilled) next = undefined;
      else if (!isFilled) next ??= cell(row, column);
    }
  return next;
}
