import { tokenize, tokenTypes } from "@borgar/fx";
import { formulaTree } from "./formula/formulaTree";
import type { TableInCells, Workings } from "../../functions/inCells/Workings";
import { cellAt, rangeOf } from "../../workbook/cellArea";
import { areaReferred } from "./writing/areaReferred";
import { CannotWrite, checked } from "./writing/CannotWrite";
import { referenceText, sheetText } from "./formula/reference";
import { namedFormula } from "./writing/named";
import type { Scope } from "./writing/Scope";

/** One cell of a sheet of workings. */
export interface WorkingsCell {
  readonly cell: string;
  /** A formula beginning with "=", or a heading. */
  readonly content: string;
}

// Longer series are shared as their values.
const LONGEST_SERIES = 500;
/** A piece of a text that a cell of workings keeps, behind a mark of one character. */
export interface KeptPiece {
  readonly reference: string;
  readonly start: number;
  readonly length: number;
}

export const MARK = "|";
/** Half of what a cell holds, so that a piece and its mark fit (Excel specifications and limits: 32,767 characters). */
const LONGEST_KEPT = 16_384;
// What a block is, in the first column; its cells stand to the right.
const FIRST_COLUMN = 1;

/** A sheet beside the copies on which long forms put their steps, one block under the other. */
export class WorkingsSheet {
  private readonly found: WorkingsCell[] = [];
  private nextRow: number;

  /** @param firstRow counted from 0, below what else the sheet says */
  constructor(
    readonly name: string,
    firstRow = 0,
  ) {
    this.nextRow = firstRow;
  }

  get cells(): readonly WorkingsCell[] {
    return this.found;
  }

  mark(): readonly [cells: number, row: number] {
    return [this.found.length, this.nextRow];
  }

  /** Takes back what a formula put here that could not be written in the end. */
  backTo([cells, row]: readonly [cells: number, row: number]): void {
    this.found.length = cells;
    this.nextRow = row;
  }

  /** The workings for one formula. */
  of(scope: Scope): Workings {
    return {
      block: (about, rows, columns, cells) => this.block(`${sheetText(scope.place.sheet)}!${scope.place.cell}: ${about}`, rows, columns, cells),
      cellsOf: (text) => cellsOf(text, scope),
    };
  }

  /** Formulas under one another; gives the reference of them all. */
  rows(about: string, texts: readonly string[]): string {
    return this.block(about, texts.length, 1, () => texts.map((text) => [text]));
  }

  /** A text too long for a formula, in pieces that cells hold, each behind a mark so that none reads as a formula. @returns the reference of each */
  text(about: string, text: string): readonly KeptPiece[] {
    const pieces: KeptPiece[] = [];
    this.found.push({ cell: cellAt(this.nextRow, 0), content: about });
    for (let start = 0; start < text.length;) {
      const cell = cellAt(this.nextRow++, FIRST_COLUMN);
      // Half of a surrogate pair is no character.
      const piece = text.slice(start, start + LONGEST_KEPT).replace(/[\ud800-\udbff]$/, "");
      this.found.push({ cell, content: `${MARK}${piece}` });
      pieces.push({ reference: `${sheetText(this.name)}!${absolute(cell)}`, start, length: piece.length });
      start += Math.max(piece.length, 1);
    }
    return pieces;
  }

  private block(about: string, rows: number, columns: number, cells: (at: (row: number, column: number) => string) => TableInCells): string {
    const first = this.nextRow;
    this.nextRow += rows;
    const at = (row: number, column: number): string => `${sheetText(this.name)}!${absolute(cellAt(first + row, FIRST_COLUMN + column))}`;
    this.found.push({ cell: cellAt(first, 0), content: about });
    const texts = cells(at);
    if (texts.flat().some(refersToItsOwnSheet)) throw new CannotWrite("argumentForm");
    for (const text of texts.flat()) checked(`=${text}`);
    texts.forEach((row, down) =>
      row.forEach(
        (text, across) => void (text !== "" && this.found.push({ cell: cellAt(first + down, FIRST_COLUMN + across), content: `=${text}` })),
      ),
    );
    const area = rangeOf({ row: first, column: FIRST_COLUMN, rows, columns });
    return `${sheetText(this.name)}!${area.split(":").map(absolute).join(":")}`;
  }
}

/** True where a formula holds a reference to cells that does not name their sheet, which would mean the sheet of workings. */
export function refersToItsOwnSheet(text: string): boolean {
  const tokens = tokenize(text.startsWith("=") ? text : `=${text}`).filter(({ type }) => type !== tokenTypes.WHITESPACE);
  return tokens.some(({ type, value }, at) => {
    const isOfCells = type === tokenTypes.REF_RANGE || type === tokenTypes.REF_BEAM || type === tokenTypes.REF_TERNARY;
    // Behind INDEX(...) a form ends a range at a cell of its own so.
    return isOfCells && !value.includes("!") && !(tokens[at - 1]?.value === ":" && tokens[at - 2]?.value === ")");
  });
}

const absolute = (cell: string): string => cell.replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");

/** The cells of a column or row, each with its sheet, or the items of a list in braces; undefined for anything else. */
function cellsOf(text: string, scope: Scope): readonly string[] | undefined {
  const tree = formulaTree(`=${text}`);
  if (tree === undefined) return undefined;
  try {
    return cellsIn({ ...scope, tree });
  } catch (thrown) {
    if (thrown instanceof CannotWrite) return undefined;
    throw thrown;
  }
}

function cellsIn(scope: Scope): readonly string[] | undefined {
  const { tree } = scope;
  const { root } = tree;
  if (root.type === "ReferenceIdentifier" && root.kind === "name") return cellsIn(namedFormula(tree.textOf(root), scope));
  if (root.type === "ArrayExpression") {
    const items = root.elements.flat().map((item) => tree.textOf(item));
    return root.elements.length === 1 || root.elements[0]?.length === 1 ? items : undefined;
  }
  const { sheet, area } = areaReferred(root, scope);
  const length = Math.max(area.rows, area.columns);
  if (Math.min(area.rows, area.columns) !== 1 || length > LONGEST_SERIES || sheet === undefined) return undefined;
  return Array.from({ length }, (_, index) =>
    referenceText(
      { row: area.row + (area.rows > 1 ? index : 0), column: area.column + (area.rows > 1 ? 0 : index), rows: 1, columns: 1 },
      sheet,
      undefined,
    ),
  );
}
