import { parse, tokenize, tokenTypes, type AstExpression, type Token } from "@borgar/fx";
import { withSpills } from "./spills";

/** A cell formula taken apart. */
export interface FormulaTree {
  readonly root: AstExpression;
  /** The text of a reference, a name or a literal as it was typed: the parser has seen it with texts and sheet names blanked out. */
  readonly textOf: (part: AstExpression) => string;
  /** What stands before a function's name, such as a link to another workbook: `[2]!`; "" mostly. */
  readonly linkOf: (start: number | undefined) => string;
}

const TEXT_COLUMN_OR_SHEET = /"(?:[^"]|"")*"|\[(?:'.|[^[\]'])*\]|'(?:[^']|'')*'/g;
// How files store functions and variables newer than the format.
const STORED_PREFIX = /^(?:_xlfn\.(?:_xlws\.)?|_xlpm\.)/i;
const CALLED = "(";

/**
 * The tree of a cell formula in English notation, as typed or as stored in a file; undefined where it cannot be read. Texts, quoted sheet
 * names and links before functions may confuse the parser, so it gets them blanked out at the same length and the text is looked up by place.
 */
export function formulaTree(formula: string): FormulaTree | undefined {
  const text = withoutPrefixes(formula);
  if (text === undefined) return undefined;
  // Behind @ the parser takes A33# for no reference.
  return treeOfText(text) ?? (text.includes("#") ? treeOfText(withSpills(text, (anchor) => `ANCHORARRAY(${anchor})`)) : undefined);
}

function treeOfText(text: string): FormulaTree | undefined {
  try {
    const links = new Map<number, string>();
    const root = parse(tokenize(withoutLinks(withoutSheetNames(text), text, links), { withLocation: true }), {
      permitArrayCalls: true,
      looseRefCalls: true,
    });
    return {
      root,
      textOf: ({ loc }) => (loc === undefined ? "" : text.slice(loc[0], loc[1])),
      linkOf: (start) => links.get(start ?? -1) ?? "",
    };
  } catch {
    return undefined;
  }
}

/** The formula with every text and quoted sheet name blanked out; columns of tables stay. */
const withoutSheetNames = (text: string): string =>
  text.replace(TEXT_COLUMN_OR_SHEET, (found) => {
    const mark = found.charAt(0);
    return mark === "[" ? found : `${mark}${"x".repeat(found.length - 2)}${mark}`;
  });

function withoutPrefixes(formula: string): string | undefined {
  if (!formula.includes("_xl")) return formula;
  try {
    const tokens = tokenize(withoutSheetNames(formula), { withLocation: true });
    return tokens.map((token) => formula.slice(...placeOf(token)).replace(isNamed(token) ? STORED_PREFIX : /^$/, "")).join("");
  } catch {
    return undefined;
  }
}

const isNamed = ({ type, value }: Token): boolean => (type === tokenTypes.FUNCTION || type === tokenTypes.REF_NAMED) && value.startsWith("_");

const placeOf = ({ loc }: Token): [number, number] => [loc?.[0] ?? 0, loc?.[1] ?? 0];

/** The same with each link before a function's name replaced by spaces, and noted under the place of the name. */
function withoutLinks(masked: string, text: string, links: Map<number, string>): string {
  if (!masked.includes("!")) return masked;
  let without = masked;
  for (const found of masked.matchAll(/[A-Za-z_][\w.]*/g)) {
    const name = found.index;
    if (masked[name - 1] !== "!" || masked[name + found[0].length] !== CALLED) continue;
    const start = startOfLink(masked, name - 1);
    if (start === undefined) continue;
    links.set(name, text.slice(start, name));
    without = `${without.slice(0, start)}${" ".repeat(name - start)}${without.slice(name)}`;
  }
  return without;
}

/** Where the link begins that ends at an exclamation mark: `'C:/x.xla'!` or `[2]!` or `Sheet1!`. */
function startOfLink(masked: string, end: number): number | undefined {
  const before = masked.slice(0, end);
  if (before.endsWith("'")) return before.lastIndexOf("'", end - 2);
  if (before.endsWith("]")) return before.lastIndexOf("[");
  let start = end;
  while (/[\w.]/.test(before[start - 1] ?? "")) start--;
  return start === end ? undefined : before[start - 1] === "]" ? before.lastIndexOf("[") : start;
}
