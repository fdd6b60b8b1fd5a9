import { unquotedSheet } from "../../workbook/quotedSheet";
import type { AstExpression } from "@borgar/fx";
import { nameCalled, variablesIn } from "../../sharing/plain/formula/parts";
import { namesOf } from "../../sharing/plain/reading/ReadSheets";
import type { DefinedName } from "../../workbook/CellsBeside";
import { WorkbookProblem, type Workbook } from "../../workbook/Workbook";
import { everyPart } from "../formula/everyPart";
import { expressionOf } from "../formula/expressionOf";
import { referencesIn, type RangeReference } from "../formula/references";
import { isFixedName } from "../saved/isFixedName";
import type { Source, TracingSurroundings } from "./Traced";

// Names that stand for names.
const MOST_NAMES_DEEP = 8;

/** What the defined names of a cell formula stand for. */
export interface NamesKnown {
  readonly formulaOf: TracingSurroundings["nameFormula"];
  /** Each of them with its formula, and those that they use. */
  readonly sources: readonly Source[];
  /** The cells that they refer to. */
  readonly references: readonly RangeReference[];
}

export const NO_NAMES: NamesKnown = { formulaOf: () => undefined, sources: [], references: [] };

/** A defined name as written: the sheet before it, where there is one, and the name. */
function nameParts(text: string): { readonly sheet: string | undefined; readonly name: string } {
  const mark = text.lastIndexOf("!");
  if (mark === -1) return { sheet: undefined, name: text };
  const before = text.slice(0, mark);
  return { sheet: unquotedSheet(before), name: text.slice(mark + 1) };
}

/** Names that neither LET nor LAMBDA gives. Spreadsheets write their own functions in capitals, so that others are names of LAMBDAs. */
function freeNames(whole: AstExpression | undefined): readonly string[] {
  const found = new Set<string>();
  const own = new Set<string>();
  for (const part of everyPart(whole)) {
    for (const name of variablesIn(part)) own.add(name.toLowerCase());
    if (part.type === "ReferenceIdentifier" && part.kind === "name") found.add(part.value);
    if (part.type === "CallExpression" && /[a-z]/.test(nameCalled(part)) && !/retort/i.test(nameCalled(part))) found.add(nameCalled(part));
  }
  return [...found].filter((name) => !own.has(name.toLowerCase()));
}

/** Asks the workbook for the names that a cell formula uses; nothing is asked where it uses none. */
export async function namesUsed(workbook: Partial<Pick<Workbook, "cellsBeside">>, formula: string, homeSheet: string): Promise<NamesKnown> {
  const wanted = freeNames(expressionOf(formula));
  if (wanted.length === 0 || workbook.cellsBeside === undefined) return NO_NAMES;
  const sheets = [...new Set([homeSheet, ...wanted.flatMap((text) => nameParts(text).sheet ?? [])])];
  const names: DefinedName[] = [];
  for (const sheet of sheets) names.push(...(await namesBeside(workbook as Pick<Workbook, "cellsBeside">, sheet)));
  const formulaNamed = namesOf(names);
  const formulaOf = (text: string): string | undefined => {
    const { sheet, name } = nameParts(text);
    const meant = formulaNamed(name, sheet ?? homeSheet);
    return meant !== undefined && isFixedName(meant) ? meant : undefined;
  };
  const sources = new Map<string, Source>();
  const references: RangeReference[] = [];
  let ahead: readonly string[] = wanted;
  for (let depth = 0; depth < MOST_NAMES_DEEP && ahead.length > 0; depth++) {
    const meant = ahead.flatMap((name): Source[] => {
      const of = formulaOf(name);
      return of === undefined || sources.has(name.toLowerCase()) ? [] : [{ name, formula: of }];
    });
    for (const source of meant) sources.set(source.name.toLowerCase(), source);
    const expressions = meant.map((source) => expressionOf(source.formula));
    references.push(...expressions.flatMap((expression) => referencesIn(expression, homeSheet)));
    ahead = expressions.flatMap(freeNames);
  }
  return { formulaOf, sources: [...sources.values()], references };
}

/** None where the workbook cannot tell, as for a sheet that is not there: then a name stays what only the spreadsheet knows. */
async function namesBeside(workbook: Pick<Workbook, "cellsBeside">, sheet: string): Promise<readonly DefinedName[]> {
  try {
    return (await workbook.cellsBeside(sheet)).names;
  } catch (thrown) {
    if (thrown instanceof WorkbookProblem) return [];
    throw thrown;
  }
}
