import { NOTHING, when } from "../expressions/choices";
import { cell, is, joined, range, reckon, type Cell, type Expression, type Range } from "../expressions/Expression";
import { formulaText } from "../expressions/formulaText";
import {
  areasWithoutFormula,
  firstWithoutFormula,
  MOST_LOTS,
  namesWithoutFormula,
  unlessRearranged,
  watchCells,
  withoutFormula,
  type Watched,
} from "../formulas/slips/typedOver";
import { CLOCK, LABEL } from "../sheet/Columns";
import type { Sheet } from "../sheet/RunSheet";
import { sheetWords } from "../words/sheetWords";
import { calculatedAreas, wordAreas } from "./calculatedAreas";
import { calculatedFor } from "./calculatedFor";
import { calculatedRule, wordsRule } from "./entries";
import { ofCells, together, working, workingLabel, type Block, type BlockCell } from "./Block";

/** What the watch of a sheet has to know of it. */
export interface Watching {
  /** Rows above which rows are put in by hand. */
  readonly totals: readonly number[];
  /** Cells that the answer asks and that decide nothing of its number, such as the checks that mark it. */
  readonly isAside: (at: Cell) => boolean;
  /** Those of them that decide whether there is an answer. */
  readonly decides: readonly Cell[];
}

/**
 * A sheet whose calculated cells are all watched, and its words under a rule: each of them under one that refuses whatever is typed, and told where a spreadsheet let it
 * pass, as it does what is pasted: apart those that the answer is calculated from.
 */
export function watched(sheet: Sheet & Watched, block: Block, { totals, isAside, decides }: Watching): Block {
  const watch = watchCells(sheet);
  const isLine = ({ at }: BlockCell): boolean => at.row === sheet.rows.head.checks && at.column === LABEL;
  const calculated = block.cells.filter(({ formula }) => formula !== undefined);
  const [later, earlier] = [true, false].map((rests) => calculated.filter((one) => restsOnTheCheck(sheet, one) === rests)) as [
    BlockCell[],
    BlockCell[],
  ];
  const fed = calculatedFor(cell(sheet.rows.head.answer, LABEL), block.cells, isAside);
  const isFed = (one: BlockCell): boolean => fed.has(one) || decides.some((at) => at.row === one.at.row && at.column === one.at.column);
  const [feeding, others] = [true, false].map((is) => calculatedAreas(earlier.filter((one) => isFed(one) === is))) as [Range[], Range[]];
  const [ofFeeding, ofOthers] = [inLots(feeding), inLots(others)];
  const hasLots = ofFeeding.length + ofOthers.length <= MOST_LOTS;
  const lots = hasLots ? [...ofFeeding, ...ofOthers] : [];
  // A spreadsheet that takes single cells alone asks those, where they are not too many.
  const lotsSay = (of: readonly Cell[]): Expression => (hasLots ? when(is(joined(...of), "=", NOTHING), 0, 1) : reckon(0, "-", 1));
  const [own, further] = [watch.lots.slice(0, ofFeeding.length), watch.lots.slice(ofFeeding.length, lots.length)];
  const every = calculatedAreas(earlier);
  const told = ofCells(
    workingLabel(sheet, watch.row, sheetWords.workings.typedOver),
    working(watch.feeding, unlessRearranged(...landmarks(sheet, block.cells), withoutFormula(feeding, totals, lotsSay(own)))),
    working(watch.others, withoutFormula(others, totals, lotsSay(further))),
    ...watch.first.map((at, index) => working(at, firstWithoutFormula(every, totals, watch.first[index - 1] ?? 0))),
    ...watch.lots.map((at, index): BlockCell =>
      lots[index] ? working(at, areasWithoutFormula(lots[index])) : { at, content: "", style: "runWorking" },
    ),
  );
  const ofHead = [...later.filter((one) => !isLine(one)), ...told.cells.filter(({ formula }) => formula !== undefined)].map(({ at }) => at);
  const all = together(block, told, ofCells(working(watch.head, namesWithoutFormula(ofHead))));
  const words = wordAreas(all.cells, sheet.columns.verdict + 1);
  return together(all, { cells: [], entryRules: [...calculatedAreas(all.cells).map(calculatedRule), ...words.map(wordsRule)] });
}

/** A row of headings, how wide the sheet is with its workings, and the rows of boxes but those of notes. */
function landmarks({ columns }: Sheet, cells: readonly BlockCell[]): [heading: number, width: number, rows: readonly number[]] {
  const rowsOf = (of: readonly BlockCell[]): ReadonlySet<number> => new Set(of.map(({ at }) => at.row));
  const isBox = ({ style }: BlockCell): boolean => style.startsWith("runBox");
  const reckoned = rowsOf(cells.filter(({ formula }) => formula !== undefined));
  const apart = rowsOf(cells.filter((one) => one.at.column <= CLOCK && (one.formula !== undefined || (one.at.column === LABEL && isBox(one)))));
  const headings = cells.filter(({ at, style }) => style.includes("Band") && !reckoned.has(at.row)).map(({ at }) => at.row);
  const labelled = rowsOf(cells.filter(({ at, content }) => at.column === LABEL && content !== undefined));
  const boxes = [...rowsOf(cells.filter(isBox))].filter((row) => labelled.has(row) && !apart.has(row));
  return [Math.min(...headings), columns.elapsed + 1, boxes.sort((one, other) => one - other)];
}

/** The check of what was typed over, the marks in the results that follow from the checks, and the lines at the top. */
function restsOnTheCheck({ rows, columns }: Sheet & Watched, { at, style }: BlockCell): boolean {
  if (at.column > columns.verdict) return false;
  const isHead = at.row <= Math.max(...Object.values(rows.head));
  return isHead || (style === "runMark" && at.column === CLOCK) || at.row === watchCells({ rows, columns }).row;
}

// A cell holds 8,192 characters, a function takes 255 arguments (Excel specifications and limits). In a file the name of ISFORMULA is longer, as of
// every function newer than the format (ECMA-376 files by Excel), and what holds cells to that length there reads the longer one.
const LONGEST = 8100;
const STORED = "_xlfn.ISFORMULA";
const MOST_CELLS = 250;

/** Areas in as many lots as cells are needed to ask for each of their cells. */
function inLots(areas: readonly Range[]): Range[][] {
  const lots: Range[][] = [];
  let room = 0;
  for (const area of areas.flatMap(ofFewRows)) {
    const length = formulaText(areasWithoutFormula([area])).replaceAll("ISFORMULA", STORED).length;
    if (length > room) {
      lots.push([]);
      room = LONGEST;
    }
    lots.at(-1)?.push(area);
    room -= length;
  }
  return lots;
}

function ofFewRows({ from, to }: Range): Range[] {
  const rows = Math.floor(MOST_CELLS / (to.column - from.column + 1));
  return Array.from({ length: Math.ceil((to.row - from.row + 1) / rows) }, (_, index) =>
    range(cell(from.row + index * rows, from.column), cell(Math.min(to.row, from.row + (index + 1) * rows - 1), to.column)),
  );
}
