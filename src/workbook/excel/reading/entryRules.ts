import { tokenize, tokenTypes } from "@borgar/fx";
import { areaNamed } from "../../areaNamed";
import { rangeOf, COLUMNS_OF_A_SHEET, ROWS_OF_A_SHEET, type CellArea } from "../../cellArea";
import { inRequests, QUESTIONS_A_REQUEST } from "../inRequests";
import { withoutSheet } from "./readCells";
import { isFormulaText, type RulesThere, type RuleThere } from "./RuleThere";

const EVERYWHERE = "A:XFD";
// Excel tells a rule of cells that share it, so that areas with several rules are asked for again in parts (Excel.DataValidation).
const PARTS = 8;
const MOST_QUESTIONS = QUESTIONS_A_REQUEST;

/**
 * Asks for the rules of a sheet for entries. A sheet without any is told in this one question (ExcelApi 1.8); else the cells with rules are asked
 * for (ExcelApi 1.9), among those in use alone, since over a whole sheet that takes Excel for Windows minutes (OfficeDev/office-js issue 4245), and
 * then the rule of each area of them. So many questions at most: rules strewn over a very large sheet are not all found, and that is told.
 */
export function askForEntryRules(context: Excel.RequestContext, worksheet: Excel.Worksheet): () => Promise<RulesThere> {
  const everywhere = worksheet.getRange(EVERYWHERE).dataValidation.load("type");
  return async () => {
    if (everywhere.type === Excel.DataValidationType.none) return { rules: [], areAll: true };
    const used = worksheet.getUsedRangeOrNullObject(false).load("address");
    const special = used.getSpecialCellsOrNullObject(Excel.SpecialCellType.dataValidations).load("areas/items/address");
    await context.sync();
    const extent = used.isNullObject ? undefined : areaNamed(withoutSheet(used.address));
    const within = extent === undefined || special.isNullObject ? [] : special.areas.items.map(({ address }) => areaNamed(withoutSheet(address)));
    return rulesIn(context, worksheet, [...within, ...outside(extent)]);
  };
}

async function rulesIn(context: Excel.RequestContext, worksheet: Excel.Worksheet, areas: readonly CellArea[]): Promise<RulesThere> {
  const rules: RuleThere[] = [];
  let left = MOST_QUESTIONS;
  for (let ahead = areas; ahead.length > 0;) {
    if (ahead.length > left) return { rules: joined(rules), areAll: false };
    left -= ahead.length;
    const asked = await inRequests(context, ahead, { limit: QUESTIONS_A_REQUEST, weigh: () => 1 }, (area) => ({
      area,
      validation: worksheet.getRange(rangeOf(area)).dataValidation.load("type,rule"),
    }));
    const several: CellArea[] = [];
    for (const { area, validation } of asked) {
      if (isSeveral(validation)) several.push(...partsOf(area));
      else if (validation.type !== Excel.DataValidationType.none) rules.push(...ruleOf(area, validation));
    }
    ahead = several;
  }
  return { rules: joined(rules), areAll: true };
}

const isTheSameEverywhere = (formula: string): boolean =>
  tokenize(formula).every(({ type, value }) => !REFERENCES.includes(type) || ABSOLUTE.test(value.slice(value.lastIndexOf("!") + 1)));

const REFERENCES: readonly string[] = [tokenTypes.REF_RANGE, tokenTypes.REF_BEAM, tokenTypes.REF_TERNARY];
const ABSOLUTE = /^(?:\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?|\$[A-Z]+:\$[A-Z]+|\$\d+:\$\d+)$/i;

/** Pieces of a rule that means the same in every cell, as one. */
function joined(pieces: readonly RuleThere[]): RuleThere[] {
  const byFormulas = new Map<string, RuleThere[]>();
  for (const [place, piece] of pieces.entries()) {
    const { formulas, isList } = piece.rule;
    const key = formulas.every(isTheSameEverywhere) ? JSON.stringify([formulas, isList]) : String(place);
    byFormulas.set(key, [...(byFormulas.get(key) ?? []), piece]);
  }
  return [...byFormulas.values()].map((alike) => {
    const [first] = alike as [RuleThere];
    return {
      rule: { ...first.rule, areas: alike.flatMap(({ rule: { areas } }) => areas).reduce(withArea, []) },
      put: (now) => alike.forEach(({ put }) => put(now)),
      takeOut: () => alike.forEach(({ takeOut }) => takeOut()),
    };
  });
}

/** One area more, joined to one that it continues downwards. */
function withArea(areas: readonly string[], one: string): string[] {
  const area = areaNamed(one);
  const above = areas.findIndex((other) => {
    const { row, column, rows, columns } = areaNamed(other);
    return column === area.column && columns === area.columns && row + rows === area.row;
  });
  if (above === -1) return [...areas, one];
  const { rows, ...top } = areaNamed(areas[above] ?? one);
  return areas.map((other, place) => (place === above ? rangeOf({ ...top, rows: rows + area.rows }) : other));
}

const isSeveral = ({ type }: Excel.DataValidation): boolean =>
  type === Excel.DataValidationType.inconsistent || type === Excel.DataValidationType.mixedCriteria;

function ruleOf(area: CellArea, validation: Excel.DataValidation): RuleThere[] {
  const { rule: held } = validation;
  const formulas = Object.values(held).flatMap(formulasOf);
  if (formulas.length === 0) return [];
  return [
    {
      rule: { kind: "entry", areas: [rangeOf(area)], formulas, ...(validation.type === Excel.DataValidationType.list && { isList: true }) },
      put: (now) => void (validation.rule = withFormulas(held, now)),
      takeOut: () => validation.clear(),
    },
  ];
}

// One of "Excel.DataValidationRule": bounds, a list or a condition, each under a name of its own.
type Criteria = Readonly<Record<string, unknown>> | null | undefined;
const FORMULAS = ["formula", "source", "formula1", "formula2"] as const;

const formulasOf = (criteria: Criteria): string[] => FORMULAS.map((name) => criteria?.[name]).filter(isFormulaText);

function withFormulas(rule: Excel.DataValidationRule, now: readonly string[]): Excel.DataValidationRule {
  const ahead = [...now];
  const written = (criteria: NonNullable<Criteria>): object => ({
    ...criteria,
    ...Object.fromEntries(FORMULAS.flatMap((name) => (isFormulaText(criteria[name]) ? [[name, ahead.shift() ?? criteria[name]]] : []))),
  });
  return Object.fromEntries(
    Object.entries(rule as Record<string, Criteria>).flatMap(([kind, criteria]) =>
      criteria === null || criteria === undefined ? [] : [[kind, written(criteria)]],
    ),
  );
}

/** An area in bands along its longer side. */
function partsOf(area: CellArea): CellArea[] {
  const { row, column, rows, columns } = area;
  const isHigh = rows >= columns;
  const step = Math.ceil((isHigh ? rows : columns) / PARTS);
  return Array.from({ length: Math.ceil((isHigh ? rows : columns) / step) }, (_, index) =>
    isHigh
      ? { ...area, row: row + index * step, rows: Math.min(step, rows - index * step) }
      : { ...area, column: column + index * step, columns: Math.min(step, columns - index * step) },
  );
}

/** What lies around the cells in use: a rule may stand on blank ones. */
function outside(used: CellArea | undefined): CellArea[] {
  if (used === undefined) return [{ row: 0, column: 0, rows: ROWS_OF_A_SHEET, columns: COLUMNS_OF_A_SHEET }];
  const { row, column, rows, columns } = used;
  const [below, right] = [row + rows, column + columns];
  return [
    { row: 0, column: 0, rows: row, columns: COLUMNS_OF_A_SHEET },
    { row: below, column: 0, rows: ROWS_OF_A_SHEET - below, columns: COLUMNS_OF_A_SHEET },
    { row, column: 0, rows, columns: column },
    { row, column: right, rows, columns: COLUMNS_OF_A_SHEET - right },
  ].filter((area) => area.rows > 0 && area.columns > 0);
}
