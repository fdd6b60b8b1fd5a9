import { bookOf } from "./longBook";

const CALLS_IN_A_ROW = 2;
const [VESSEL, DRY, FACTOR] = [25, 51.21, 2];
const FACTORS = 7;

/** A workbook file as people fill it, and what its cells with calls of ours give, row by row. */
export interface MixedBook {
  readonly content: Uint8Array<ArrayBuffer>;
  readonly given: readonly number[];
}

/**
 * A workbook file of many cells with calls of ours in which different formulas take turns down a column, some stand inside functions of the spreadsheet,
 * others read them, and all read another sheet.
 * @param isCalculated false for one that no spreadsheet has calculated yet
 */
export async function mixedBook(calls: number, isCalculated = true): Promise<MixedBook> {
  const rows = Array.from({ length: calls / CALLS_IN_A_ROW }, (_, index) => rowOf(index + 1, index / calls, isCalculated));
  const limits = `<sheetData><row r="1"><c r="A1"><v>${FACTOR}</v></c></row></sheetData>`;
  const content = await bookOf([
    ["Trays", `<sheetData>${rows.map(({ markup }) => markup).join("")}</sheetData>`],
    ["Limits", limits],
  ]);
  return { content, given: rows.flatMap(({ given }) => given) };
}

function rowOf(row: number, share: number, isCalculated: boolean): { readonly markup: string; readonly given: readonly number[] } {
  const wet = 65.2 + share;
  const [onWet, onDry] = [(wet - DRY) / (wet - VESSEL), (wet - DRY) / (DRY - VESSEL)];
  const isRounded = row % 3 === 0;
  const factor = 1 + (row % FACTORS) / FACTORS;
  const arguments_ = `(A${row},B${row},C${row})`;
  const given = [isRounded ? Math.round(onWet * 10_000) / 100 : onWet, onDry * factor] as const;
  const cells: readonly (readonly [formula: string, value: number | string])[] = [
    [isRounded ? `IF(A${row}&gt;0,ROUND(RETORT.MOISTURE.WET${arguments_}*100,2),&quot;&quot;)` : `RETORT.MOISTURE.WET${arguments_}`, given[0]],
    [`RETORT.MOISTURE.DRY${arguments_}*${factor}`, given[1]],
    [`IF(D${row}&gt;1,&quot;percent&quot;,&quot;share&quot;)`, isRounded ? "percent" : "share"],
    [`SUM(B${row},C${row})*Limits!$A$1`, (wet + DRY) * FACTOR],
  ];
  const inputs = [VESSEL, wet, DRY].map((value, column) => `<c r="${"ABC"[column]}${row}"><v>${value}</v></c>`);
  const formulas = cells.map(([formula, value], column) => {
    const type = isCalculated && typeof value === "string" ? ' t="str"' : "";
    return `<c r="${"DEFG"[column]}${row}"${type}><f>${formula}</f>${isCalculated ? `<v>${value}</v>` : ""}</c>`;
  });
  return { markup: `<row r="${row}">${inputs.join("")}${formulas.join("")}</row>`, given };
}
