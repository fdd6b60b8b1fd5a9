import { notGiven } from "../../../src/explanation/saved/notGiven";
import type { CellReading, RangeReading } from "../../../src/workbook/Workbook";

type Value = CellReading["value"];
const held = (cell: string, value: Value, formula = "", further: Partial<CellReading> = {}): CellReading => ({
  ...{ cell, formula, value, shown: String(value ?? ""), error: "", message: "", spill: "" },
  ...further,
});
const failed = (cell: string, code: string, formula = ""): CellReading => held(cell, code, formula, { error: code });

// A1 to A3 weighings; B the names of pans; C1 a share, C2 an error, C3 TRUE, C4 a text; D1 stays blank.
const CELLS = [
  ...[held("A1", 24), held("A2", 36), held("A3", 31.5), held("B1", "tin"), held("B2", "pan"), held("B3", "dish")],
  ...[held("C1", 0.35), failed("C2", "#N/A"), held("C3", true), held("C4", "12")],
];
const OTHER: RangeReading = { sheet: "Tin1", range: "", rows: [[held("A1", 6)]] };
const LAST: RangeReading = { sheet: "Tin2", range: "", rows: [[held("A1", 8)]] };

const accused = (value: Value, formula: string, further: Partial<CellReading> = {}): boolean =>
  notGiven({
    sheets: [{ sheet: "T", range: "", rows: [[...CELLS, held("F1", value, formula, further)]] }, OTHER, LAST],
    names: [{ name: "limit", formula: "=T!$A$1" }],
    tables: [
      {
        ...{ name: "Pans", sheet: "T", headingRows: 0, totalsRows: 0, columns: ["mass", "pan"] },
        area: { row: 0, column: 0, rows: 3, columns: 2 },
      },
    ],
  }).length > 0;

describe("a formula of built-in functions whose value is from before", () => {
  test.each<[formula: string, right: Value, wrong: Value]>([
    ["=A1+10", 34, 35],
    ["=-A1%", -0.24, 0.24],
    ["=2^A1/2^20", 16, 17],
    ['=IF(C1>0.36,"too wet","in order")', "in order", "too wet"],
    ['=IF(D1="","",C1)', "", 0.35],
    ["=IF(C1>1,5)", false, 5],
    ['=IF(AND(C1>0.3,A1<25),"both","not")', "both", "not"],
    ['=IFERROR(C2,"none")', "none", 0.35],
    ['=IFNA(C1,"none")', 0.35, "none"],
    ["=CHOOSE(2,A1,A2)", 36, 24],
    ["=SUM(A1:A3,C1)", 91.85, 91],
    ["=AVERAGE(A1:A3)", 30.5, 30],
    ["=MEDIAN(A1:A3)", 31.5, 30.5],
    ["=MAX(A:A)-MIN(A:A)", 12, 11],
    ["=COUNT(A1:C2)", 3, 4],
    ["=COUNTA(A1:B3,D1)", 6, 7],
    ["=STDEV.S(A1,A2)", Math.sqrt(72), 12],
    ["=SUMPRODUCT(A1:A2,A1:A2)", 1872, 60],
    ["=SUMPRODUCT(A1:A3*2)", 183, 48],
    ["=ROUND(A1/7,2)", 3.43, 3.42],
    ["=ROUNDUP(A1/7,0)", 4, 3],
    ["=INT(-A1/7)", -4, -3],
    ["=MOD(A1,7)", 3, 4],
    ["=SQRT(A2)", 6, 36],
    ["=LARGE(A1:A3,2)", 31.5, 36],
    ['=INDEX(A1:A3,MATCH("PAN",B1:B3,0))', 36, 24],
    ["=VLOOKUP(36,A1:B3,2,FALSE)", "pan", "tin"],
    ['=SUMIF(B1:B3,"pan",A1:A3)', 36, 24],
    ['=COUNTIF(A1:A3,">30")', 2, 3],
    ['=AVERAGEIFS(A1:A3,A1:A3,">30",B1:B3,"dish")', 31.5, 36],
    ['="Moisture "&TEXT(C1,"0.0%")', "Moisture 35.0%", "Moisture 34.8%"],
    ['=A1&" g "&B1', "24 g tin", "25 g tin"],
    ['=LEFT(B1,2)&LEN(B3)&UPPER("g")', "ti4G", "ti3G"],
    ["=ISNUMBER(C1)", true, false],
    ["=limit*2", 48, 50],
    ["=SUM(Pans[mass])", 91.5, 90],
    ["=SUM('Tin1:Tin2'!A1)", 14, 6],
    ["=SUM(Tin1:Tin2!A1)", 14, 8],
    ["=Tin1!A1*2", 12, 13],
    ["=D1", 0, 1],
  ])("%s: %p is right, %p is not", (formula, right, wrong) => {
    expect(accused(right, formula)).toBe(false);
    expect(accused(wrong, formula)).toBe(true);
  });

  test("an error that nothing gives any more", () => {
    expect(accused("#DIV/0!", "=A1*2", { error: "#DIV/0!" })).toBe(true);
    expect(accused("#DIV/0!", "=A1/D1", { error: "#DIV/0!" })).toBe(false);
    expect(accused(0, "=A1/D1")).toBe(true);
    expect(accused("#N/A", "=C2+1", { error: "#N/A" })).toBe(false);
  });
});

// Each differs among spreadsheets, languages, days or last digits, or is taken over one cell in an older file.
test.each<[formula: string, saved: Value]>([
  ["=NOW()", 45_000],
  ["=RAND()*A1", 12],
  ["=TODAY()-A1", 1],
  ['=TEXT(A1,"dd.mm.yyyy")', "24.01.1900"],
  ['=TEXT(C1,"0.0%")', "35,0%"],
  ["=C1&B1", "0,35tin"],
  ["=C3&B1", "WAHRtin"],
  ["=1/3&B1", "0.33333tin"],
  ["=ROUND(C1*10,0)", 3],
  ["=ROUND(C1*10,0)", 4],
  ["=INT(0.29*100)", 29],
  ["=IF(0.1+0.2=0.3,1,2)", 2],
  ["=IF(0.1+0.2=0.3,1,2)", 1],
  ["=1/(0.1+0.2-0.3)", 7],
  ['=IF(B1>"ding",1,2)', 2],
  ["=C4+1", 1],
  ["=SUM(C3:C4)", 1],
  ["=SUM(A1:A2*2)", 48],
  ["=A1:A3*2", 72],
  ["=VLOOKUP(30,A1:B3,2)", "pan"],
  ['=COUNTIF(C1:C4,">5")', 1],
  ['=COUNTIF(B1:B3,"?in")', 7],
  ["=(-8)^(1/3)", -2],
  ["=0^0", 1],
  ["=SUM(A1:A2 A2:A3)", 1],
  ['=INDIRECT("A1")', 7],
  ["=[1]Sheet1!A1", 7],
  ["=UNHEARD(A1)", 7],
  ["=limit2", 7],
])("%s with %p is not accused", (formula, saved) => expect(accused(saved, formula)).toBe(false));
