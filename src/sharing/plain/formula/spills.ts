import { tokenize, tokenTypes, type Token } from "@borgar/fx";
import { lettersOf, type CellArea } from "../../../workbook/cellArea";

const CALLED = /^(?:_xlfn\.)?ANCHORARRAY$/i;

/** True where a formula may refer to a spill, as a quick look tells. */
export const mayReferToSpill = (formula: string): boolean => formula.includes("#") || /ANCHORARRAY/i.test(formula);

/**
 * A formula with something else in place of each spill that it refers to: A33# as typed, ANCHORARRAY(A33) as files hold it. On its tokens, so that
 * the rest stays as it was written.
 * @param put what stands for the spill that begins at a cell or a name; undefined leaves it
 */
export function withSpills(formula: string, put: (anchor: string) => string | undefined): string {
  if (!mayReferToSpill(formula)) return formula;
  const tokens = tokenize(formula.startsWith("=") ? formula : `=${formula}`);
  const texts: string[] = [];
  for (let index = 0; index < tokens.length; index++) {
    const found = spillAt(tokens, index);
    const text = found === undefined ? undefined : put(found.anchor);
    texts.push(found === undefined || text === undefined ? (tokens[index]?.value ?? "") : text);
    if (found !== undefined && text !== undefined) index += found.length - 1;
  }
  const written = texts.join("");
  return formula.startsWith("=") ? written : written.slice(1);
}

function spillAt(tokens: readonly Token[], index: number): { readonly anchor: string; readonly length: number } | undefined {
  const token = tokens[index];
  if (token === undefined) return undefined;
  if (isReference(token)) return tokens[index + 1]?.value === "#" ? { anchor: token.value, length: 2 } : undefined;
  if (token.type !== tokenTypes.FUNCTION || !CALLED.test(token.value)) return undefined;
  const end = tokens.findIndex(({ value }, at) => at > index && value === ")");
  const inside = tokens.slice(index + 2, end).filter(({ type }) => type !== tokenTypes.WHITESPACE);
  const [anchor] = inside;
  return end === -1 || inside.length !== 1 || anchor === undefined || !isReference(anchor)
    ? undefined
    : { anchor: anchor.value, length: end - index + 1 };
}

const isReference = ({ type }: Token): boolean => type === tokenTypes.REF_RANGE || type === tokenTypes.REF_NAMED;

/** The area that begins at a cell, fixed in rows and columns where the cell is, on the sheet that the cell names. */
export function areaFrom(anchor: string, { row, column, rows, columns }: CellArea): string {
  const sheet = anchor.slice(0, anchor.lastIndexOf("!") + 1);
  const [, fixedColumn = "", fixedRow = ""] = /^(\$?)[A-Z]+(\$?)\d+$/i.exec(anchor.slice(sheet.length)) ?? [];
  const cell = (down: number, across: number): string => `${fixedColumn}${lettersOf(across)}${fixedRow}${down + 1}`;
  const first = cell(row, column);
  return `${sheet}${rows * columns === 1 ? first : `${first}:${cell(row + rows - 1, column + columns - 1)}`}`;
}
