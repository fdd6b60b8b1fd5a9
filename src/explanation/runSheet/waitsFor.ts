import { placeOf } from "../../runsheet/expressions/formulaText";
import { cell, type Cell, type Expression, type Range } from "../../runsheet/expressions/Expression";
import { waitWords } from "../../runsheet/words/waitWords";
import { nameOf } from "./cellNames";
import { placesIn } from "./conditionText";
import { isError } from "./Plain";
import { isBox, type RunCells } from "./RunCells";
import { wayThrough, type Way } from "./wayThrough";

// A cell of the answer rests on boxes through three or four others.
const DEEPEST = 6;

/** What a cell that shows nothing waits for: blank boxes by label and cell, and calculated cells that have no number yet. */
export function waitsFor(cells: RunCells, way: Way): readonly string[] {
  const told = new Set<string>();
  const seen = new Set<string>();
  askedOf(way).forEach((condition) => look(cells, condition, { told, seen, depth: 0 }));
  return [...told];
}

/** What held on the way, and what was asked last. */
const askedOf = ({ choices }: Way): readonly Expression[] =>
  choices.filter(({ holds }, index) => holds || index === choices.length - 1).map(({ condition }) => condition);

interface Search {
  readonly told: Set<string>;
  readonly seen: Set<string>;
  readonly depth: number;
}

function look(cells: RunCells, expression: Expression, search: Search): void {
  for (const place of placesIn(expression)) {
    const at = place.kind === "cell" ? place : firstBlank(cells, place);
    if (at !== undefined) lookAt(cells, at, search);
  }
}

function lookAt(cells: RunCells, at: Cell, search: Search): void {
  const key = placeOf(at);
  if (search.seen.has(key)) return;
  search.seen.add(key);
  const [planned, value] = [cells.planned(at.row, at.column), cells.at(at.row, at.column)];
  const { text } = nameOf(cells, at);
  if (isError(value)) search.told.add(waitWords.shows(text, key, value.code));
  else if (isBox(planned) && value === null) search.told.add(waitWords.blank(text, key));
  else if (planned?.formula === undefined || typeof value === "number") return;
  else if (typeof value === "string" && value !== "") search.told.add(waitWords.shows(text, key, value));
  else if (search.depth < DEEPEST)
    askedOf(wayThrough(planned.formula, cells.at)).forEach((condition) => look(cells, condition, { ...search, depth: search.depth + 1 }));
}

/** The next box of a range: the first blank one after the last that is filled; of calculated cells the first without a number. */
function firstBlank(cells: RunCells, { from, to }: Range): Cell | undefined {
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
