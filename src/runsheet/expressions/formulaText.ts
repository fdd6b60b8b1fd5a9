import { cellAt } from "../../workbook/cellArea";
import { quotedSheet } from "../../workbook/quotedSheet";
import { fn, joined, reckon, type Call, type Cell, type Expression, type Infix, type Joined, type Range } from "./Expression";

/** A cell formula in English notation, "=" included. */
export const formulaText = (expression: Expression): string => `=${written(expression)}`;

/** "B7", "E33:E40": where something stands, without the marks that fix a reference. */
export const placeOf = (at: Cell | Range): string => {
  const isOneCell = at.kind === "range" && at.from.row === at.to.row && at.from.column === at.to.column;
  return written(isOneCell ? at.from : at).replaceAll("$", "");
};

const cornerText = ({ row, column, fixed }: Cell): string =>
  `${fixed === "both" ? "$" : ""}${letters(column)}${fixed === "nothing" ? "" : "$"}${row}`;

/** "'It''s dry'!": always quoted, for a name may look like a cell or hold a mark. */
const onSheet = ({ sheet }: Cell): string => (sheet === undefined ? "" : `${quotedSheet(sheet)}!`);

/** The letters of a column counted from 0. */
const letters = (column: number): string => cellAt(0, column).slice(0, -1);

function written(expression: Expression): string {
  if (typeof expression === "string") return `"${expression.replaceAll('"', '""')}"`;
  if (typeof expression === "number") return String(expression);
  if (typeof expression === "boolean") return expression ? "TRUE" : "FALSE";
  switch (expression.kind) {
    case "cell":
      return `${onSheet(expression)}${cornerText(expression)}`;
    case "range":
      return `${written(expression.from)}:${cornerText(expression.to)}`;
    case "call":
      return isOfCell(expression)
        ? `SUM(${expression.given.map(written).join("")})`
        : `${expression.name}(${expression.given.map(written).join(",")})`;
    case "infix":
      return operation(expression);
    case "bracketed":
      return `(${written(expression.inner)})`;
    case "joined":
      return expression.parts.map((part) => (isInfix(part) ? `(${written(part)})` : written(part))).join("&");
  }
}

/** N of a cell is an error in Gnumeric where the cell is blank; its SUM is the same number in every spreadsheet, and texts count as 0 in both. */
const isOfCell = ({ name, given: [of] }: Call): boolean => name === "N" && typeof of === "object" && of.kind === "cell";

const isInfix = (expression: Expression): expression is Infix => typeof expression === "object" && expression.kind === "infix";

/** How tightly an operator binds; the joining of texts stands between comparison and sum. */
const JOINS = 1;
const BINDS = { "=": 0, "<": 0, "<=": 0, ">": 0, ">=": 0, "+": 2, "-": 2, "*": 3, "/": 3, "^": 4 } as const;

/** Brackets only where the order of reckoning needs them: a-(b+c), (a+b)*c, (a<1)=(b<1), but a*b/c for a*(b/c). */
function operation({ left, operator, right }: Infix): string {
  const own = BINDS[operator];
  const isPower = operator === "^";
  // Of comparisons and powers in a row a spreadsheet works out the first before the second; a reader should not have to know.
  const mustStandApart = operator === "-" || operator === "/" || isPower || own === BINDS["="];
  const before = binds(left) < own || (binds(left) === own && (isPower || own === BINDS["="])) ? `(${written(left)})` : written(left);
  const after = binds(right) < own || (mustStandApart && binds(right) === own) ? `(${written(right)})` : written(right);
  return `${before}${operator}${after}`;
}

function binds(operand: Expression): number {
  if (isInfix(operand)) return BINDS[operand.operator];
  return typeof operand === "object" && operand.kind === "joined" ? JOINS : Infinity;
}

/** "C16" of a cell in a column, by the row that it stands in now: words that name a cell keep right when rows are put in above it. */
export const nameOf = (at: Cell): Joined => joined(letters(at.column), fn("ROW", at));

/** The same for a cell so many rows below another. */
export const nameBelow = (at: Cell, rows: Expression): Joined => joined(letters(at.column), reckon(fn("ROW", at), "+", rows));
