import type { FormulaSources } from "../../sharing/plain/change/FormulaSources";
import { sourcesOf } from "../../sharing/plain/change/precedents";
import { formulaTree } from "../../sharing/plain/formula/formulaTree";
import { anyPart } from "../../sharing/plain/formula/parts";
import type { ReadFormula, ReadSheets } from "../../sharing/plain/reading/ReadSheets";
import type { Surroundings } from "../../sharing/plain/reading/Surroundings";
import { SavedCells } from "./SavedCells";
import { SavedFormula } from "./SavedFormula";

const INDIRECT = "INDIRECT";
/** Characters of a text in a formula (Excel specifications and limits). */
const LONGEST_TEXT = 255;

/**
 * For formulas whose text does not show what they refer to, what they referred to as the workbook was saved, where that is certain: a text that
 * INDIRECT is given is worked out as far as every spreadsheet gives the same. The cells that it is put together from count as well, so that one of them
 * in doubt puts the formula in doubt. What cannot be told stays as it is: it may refer to any cell.
 */
export function seenSources(read: ReadSheets, nameOf: Surroundings["nameOf"]): (formula: ReadFormula, sources: FormulaSources) => FormulaSources {
  const savedFormula = SavedFormula.in({ sheets: read, cells: new SavedCells(read), nameOf });
  const textGiven = (formula: ReadFormula, part: string): string | undefined => {
    const asked = { ...formula, reading: { ...formula.reading, formula: `=${part}` } };
    const given = savedFormula(asked).certainIn(asked);
    const [[value] = []] = given ?? [];
    return given?.length === 1 && given[0]?.length === 1 && typeof value === "string" && value.length <= LONGEST_TEXT ? value : undefined;
  };
  return (formula, sources) => {
    if (!sources.isUnseen) return sources;
    const told = sources.asRead === undefined ? withTextsGiven(formula.reading.formula, (part) => textGiven(formula, part)) : undefined;
    const seen = told === undefined ? sources : sourcesOf(told, read.around(formula, nameOf), read.names, read.order);
    return seen.asRead === undefined
      ? sources
      : { ...sources, precedents: [...sources.precedents, ...seen.precedents, ...seen.asRead], isUnseen: false };
  };
}

/** A formula with texts in place of what its calls of INDIRECT are given; undefined where none is certain. */
function withTextsGiven(formula: string, textGiven: (part: string) => string | undefined): string | undefined {
  // As files store newer functions, parts stand elsewhere than in the tree.
  const tree = formula.includes("_xl") ? undefined : formulaTree(formula);
  if (tree === undefined) return undefined;
  const given: { readonly from: number; readonly to: number; readonly text: string }[] = [];
  anyPart(tree.root, (part) => {
    const [told] = part?.type === "CallExpression" && part.callee.name?.toUpperCase() === INDIRECT ? part.arguments : [];
    const typed = told ? tree.textOf(told) : "";
    const text = typed === "" || typed.startsWith('"') ? undefined : textGiven(typed);
    const [from, to] = told?.loc ?? [];
    if (text !== undefined && from !== undefined && to !== undefined) given.push({ from, to, text: `"${text.replaceAll('"', '""')}"` });
    return false;
  });
  if (given.length === 0) return undefined;
  // From the last on, so that places before it stay; one within another goes with the outer one.
  let [told, end] = [formula, formula.length];
  for (const { from, to, text } of given.sort((one, other) => other.to - one.to || one.from - other.from)) {
    if (to > end) continue;
    told = `${told.slice(0, from)}${text}${told.slice(to)}`;
    end = from;
  }
  return told;
}
