import { lookedAt, type LookedAt } from "../../../src/explanation/saved/notGiven";
import type { WhatIfTable } from "../../../src/explanation/saved/whatIfTables";
import type { NameReading } from "../../../src/sharing/plain/reading/PlainReading";
import { areaNamed } from "../../../src/workbook/areaNamed";
import { cellsOfArea } from "../../../src/workbook/cellArea";
import type { CellReading, RangeReading } from "../../../src/workbook/Workbook";

type Value = CellReading["value"];
const held = (cell: string, value: Value, formula = "", spill = ""): CellReading => ({
  ...{ cell, formula, value, shown: String(value ?? ""), error: "", message: "", spill },
});

// (moist - dry) / (moist - vessel) of 25 g vessels: 3.5/10 = 0.35, 9/25 = 0.36, 12/40 = 0.3, worked by hand.
const ROWS = [["1", 35, 31.5, 0.35, "tin"], ["2", 50, 41, 0.36, "pan"], ["3", 65, 53, 0.3, "dish"]] as const; // prettier-ignore
const CALL = "RETORT.MOISTURE.WET(A1:A3,B1:B3,C1:C3)";
const ONE = "RETORT.MOISTURE.WET(A1,B1,C1)";
const WEIGHED = ROWS.flatMap(([row, moist, dry, share, pan]) => [
  ...[held(`A${row}`, 25), held(`B${row}`, moist), held(`C${row}`, dry), held(`E${row}`, pan)],
  held(`D${row}`, share, row === "1" ? `=${CALL}` : "", row === "1" ? "D1:D3" : ""),
]);
const NAMES: readonly NameReading[] = [
  { name: "shares", formula: "=Tray!$D$1#" },
  { name: "anchored", formula: "=ANCHORARRAY(Tray!$D$1)" },
  { name: "first", formula: "=Tray!$D$1" },
  { name: "\\pan", formula: "=Tray!$A$1" },
  { name: "größe1", formula: "=Tray!$B$1" },
  { name: "doubled", formula: `=LET(w,RETORT.MOISTURE.WET(Tray!$A$1,Tray!$B$1,Tray!$C$1),w*2)` },
  { name: "WETOF", formula: "=LAMBDA(moist,dry,RETORT.MOISTURE.WET(25,moist,dry))" },
  { name: "again", formula: "=doubled" },
  // A damaged file may hold any name.
  { name: "a-b€(", formula: `=${ONE}` },
  { name: "noEnd", formula: "=LAMBDA(x,noEnd(x)+noEnd(x))" },
];
const TABLES = [
  {
    ...{ name: "Pots", sheet: "Tray", headingRows: 0, totalsRows: 0, columns: ["vessel", "moist", "dry", "share", "pan"] },
    area: { row: 0, column: 0, rows: 3, columns: 5 },
  },
];

/** What is said of cells that a formula fills from G1 on. */
function said(
  formula: string,
  values: readonly (readonly Value[])[],
  on = "Tray",
): { readonly wrong: readonly string[]; readonly untold: readonly string[] } {
  const area = { row: 0, column: 6, rows: values.length, columns: values[0]?.length ?? 1 };
  const range = cellsOfArea(area);
  const spill = values.flat().length === 1 ? "" : `${range[0]?.[0]}:${range.at(-1)?.at(-1)}`;
  const filled = values.flatMap((line, row) =>
    line.map((value, column) => held(range[row]?.[column] ?? "", value, row + column === 0 ? formula : "", row + column === 0 ? spill : "")),
  );
  const sheets: RangeReading[] = [{ sheet: "Tray", range: "", rows: [[...WEIGHED, ...(on === "Tray" ? filled : [])]] }];
  if (on !== "Tray") sheets.push({ sheet: on, range: "", rows: [filled] });
  const found = lookedAt({ sheets, names: NAMES, tables: TABLES }, { areOverArrays: (_, cell) => cell === "G1" && spill !== "", areFilled: true });
  return { wrong: found.notGiven.map(({ cell }) => cell), untold: found.unchecked.map(({ cell }) => cell) };
}

const column = (...values: readonly Value[]): Value[][] => values.map((value) => [value]);

/** The same with the last value changed. */
const stale = (values: readonly (readonly Value[])[]): Value[][] =>
  values.map((line, row) =>
    line.map((value, at) => (row === values.length - 1 && at === line.length - 1 ? (typeof value === "number" ? value + 0.01 : "other") : value)),
  );

describe("the saved value of a formula over what calls of ours fill is believed where it is right, and accused where it is not", () => {
  test.each<[formula: string, right: readonly (readonly Value[])[]]>([
    ["=SUM(D1#)", [[1.01]]],
    ["=SUM(ANCHORARRAY(D1))", [[1.01]]],
    ["=SUM(Tray!$D$1#)", [[1.01]]],
    ["=-SUM(D1#)", [[-1.01]]],
    ["=D1#*100", column(35, 36, 30)],
    ["=-D1#", column(-0.35, -0.36, -0.3)],
    ["=SUM(D1#*100)", [[101]]],
    ["=ROUND(D1#,2)", column(0.35, 0.36, 0.3)],
    ['=IF(D1#>0.34,"wet","dry")', column("wet", "wet", "dry")],
    ['=E1:E3&" "&TEXT(D1#,"0.0%")', column("tin 35.0%", "pan 36.0%", "dish 30.0%")],
    ["=MAX(IFERROR(D1#,0))", [[0.36]]],
    ["=SORT(D1#)", column(0.3, 0.35, 0.36)],
    ["=SORT(D1:D3,,-1)", column(0.36, 0.35, 0.3)],
    ["=SORTBY(E1:E3,D1#)", column("dish", "tin", "pan")],
    ["=SORTBY(E1:E3,D1#,-1)", column("pan", "tin", "dish")],
    ["=FILTER(D1#,D1#>0.34)", column(0.35, 0.36)],
    ['=FILTER(E1:E3,D1#<0.31,"none")', [["dish"]]],
    ['=FILTER(E1:E3,D1#>1,"none")', [["none"]]],
    ["=UNIQUE(ROUNDUP(D1#,1))", column(0.4, 0.3)],
    ["=TAKE(D1#,2)", column(0.35, 0.36)],
    ["=TAKE(D1#,-1)", [[0.3]]],
    ["=DROP(D1#,1)", column(0.36, 0.3)],
    ["=VSTACK(D1#,D1#*2)", column(0.35, 0.36, 0.3, 0.7, 0.72, 0.6)],
    ["=HSTACK(E1:E3,D1#)", [["tin", 0.35], ["pan", 0.36], ["dish", 0.3]]], // prettier-ignore
    ["=TRANSPOSE(D1#)", [[0.35, 0.36, 0.3]]],
    ["=TOROW(D1#)", [[0.35, 0.36, 0.3]]],
    ["=CHOOSEROWS(D1#,3,1)", column(0.3, 0.35)],
    ["=INDEX(D1#,2)", [[0.36]]],
    ["=INDEX(SORT(D1#),1)", [[0.3]]],
    ["=INDEX(HSTACK(E1:E3,D1#),2,0)", [["pan", 0.36]]],
    ["=ROWS(D1#)+COUNT(D1#)", [[6]]],
    ["=SUMPRODUCT(D1#,B1:B3)", [[49.75]]],
    ["=SUMPRODUCT((D1#>0.34)*B1:B3)", [[85]]],
    ['=XLOOKUP("pan",E1:E3,D1#)', [[0.36]]],
    ['=XLOOKUP("pot",E1:E3,D1#,"no such pan")', [["no such pan"]]],
    ["=XLOOKUP(MAX(D1#),D1#,E1:E3)", [["pan"]]],
    ['=XLOOKUP({"pan","dish"},TRANSPOSE(E1:E3),TRANSPOSE(D1#))', [[0.36, 0.3]]],
    ["=SINGLE(D1:D3)", [[0.35]]],
    ["=SINGLE(ANCHORARRAY(D1))*2", [[0.7]]],
    ["=@D1:D3", [[0.35]]],
    ["=@D1#", [[0.35]]],
    [`=SINGLE(${CALL})`, [[0.35]]],
    [`=LET(w,${ONE},w*2)`, [[0.7]]],
    [`=LET(w,${CALL},SUM(w)/COUNT(w))`, [[1.01 / 3]]],
    [`=LET(w,${ONE},LET(x,w*2,x+w))`, [[1.05]]],
    ["=LET(s,D1#,best,MAX(s),XLOOKUP(best,s,E1:E3))", [["pan"]]],
    [`=LET(f,LAMBDA(b,c,RETORT.MOISTURE.WET(25,b,c)),f(B2,C2))`, [[0.36]]],
    [`=LAMBDA(b,c,RETORT.MOISTURE.WET(25,b,c))(B3,C3)`, [[0.3]]],
    ["=MAP(B1:B3,C1:C3,LAMBDA(b,c,RETORT.MOISTURE.WET(25,b,c)))", column(0.35, 0.36, 0.3)],
    ["=MAP(D1#,LAMBDA(w,w*100))", column(35, 36, 30)],
    ["=BYROW(A1:C3,LAMBDA(r,RETORT.MOISTURE.WET(INDEX(r,1),INDEX(r,2),INDEX(r,3))))", column(0.35, 0.36, 0.3)],
    ["=BYCOL(D1#,LAMBDA(c,MAX(c)))", [[0.36]]],
    ["=BYCOL(D1#,SUM)", [[1.01]]],
    ["=REDUCE(0,B1:B3,LAMBDA(a,b,a+RETORT.MOISTURE.WET(25,b,C1)))", [[0.35 + 18.5 / 25 + 33.5 / 40]]],
    ["=SCAN(0,D1#,LAMBDA(a,w,a+w))", column(0.35, 0.71, 1.01)],
    ["=MAKEARRAY(2,1,LAMBDA(r,c,INDEX(D1#,r)))", column(0.35, 0.36)],
    ["=SUM(shares)", [[1.01]]],
    ["=SUM(anchored)", [[1.01]]],
    ["=SUM(first#)", [[1.01]]],
    ["=doubled", [[0.7]]],
    ["=again+1", [[1.7]]],
    ["=WETOF(B2,C2)", [[0.36]]],
    ["=MAP(B1:B3,C1:C3,WETOF)", column(0.35, 0.36, 0.3)],
    ["=RETORT.MOISTURE.WET(\\pan,größe1,C1)", [[0.35]]],
    ["=RETORT.MOISTURE.WET(größe1-10,\\pan+10,C1)", [[0.35]]],
    ["=SUM(Pots[share])", [[1.01]]],
    ["=RETORT.MOISTURE.WET(Pots[[#This Row],[vessel]],Pots[[#This Row],[moist]],Pots[[#This Row],[dry]])", [[0.35]]],
    ['=IFS(MAX(D1#)>0.5,"wet",MAX(D1#)>0.2,"damp",TRUE,"dry")', [["damp"]]],
    ['=SWITCH(INDEX(E1:E3,2),"tin",1,"pan",D1,0)', [[0.35]]],
  ])("%s", (formula, right) => {
    expect(said(formula, right)).toEqual({ wrong: [], untold: [] });
    expect(said(formula, stale(right)).wrong).toEqual(["G1"]);
  });

  test("on another sheet", () => {
    for (const formula of ["=SUM(Tray!D1#)", "=SUM(ANCHORARRAY(Tray!D1))", "=SUM(SORT(Tray!D1:D3))"]) {
      expect(said(formula, [[1.01]], "Sum")).toEqual({ wrong: [], untold: [] });
      expect(said(formula, [[1.02]], "Sum").wrong).toEqual(["G1"]);
    }
  });

  test("with a blank cell, an order of texts, or a LAMBDA without an end nothing is accused", () => {
    for (const formula of ["=SORT(D1:D4)", "=SORT(E1:E3)", "=UNIQUE(D1:D4)", "=noEnd(1)", "=SUM(D9#)"])
      expect(said(formula, [[7]]).wrong).toEqual([]);
  });
});

describe("what can neither be shown nor accused", () => {
  test.each([`=${ONE}+0*NOW()`, "=UNHEARD(D1)", "=PERCENTRANK(D1#,D2)", "=UNHEARD(INDIRECT(E1))", "=RETORT.MOISTURE.WET(A1,UNHEARD(B1),C1)"])(
    "%s is told, being calculated from a call of ours",
    (formula) => expect(said(formula, [[0.99]])).toEqual({ wrong: [], untold: ["G1"] }),
  );

  test.each(["=UNHEARD(B1)", "=B1*TODAY()", "=nothing", "=[1]Sheet1!A1*D1", "=RETORT.MOISTURE.WET([1]Sheet1!A1,B1,C1)"])(
    "%s is left alone: no call of ours, or a cell of another workbook",
    (formula) => expect(said(formula, [[0.99]])).toEqual({ wrong: [], untold: [] }),
  );

  test("a range behind an operator, which an older program takes one cell of, is no reason to accuse", () => {
    expect(said("=MAX(Pots[share]*100)", [[36]])).toEqual({ wrong: [], untold: [] });
    expect(said("=MAX(Pots[share]*100)", [[37]])).toEqual({ wrong: [], untold: ["G1"] });
  });

  test("what may be given shows a value to be right where programs differ", () => {
    expect(said('=D1/3&" of 1"', [["0.116666666666667 of 1"]])).toEqual({ wrong: [], untold: [] });
    expect(said('=D1/3&" of 1"', [["0.126666666666667 of 1"]])).toEqual({ wrong: [], untold: ["G1"] });
  });
});

describe("a number in a text", () => {
  // 12/41 = 0.292682926829268292…, worked by long division; spreadsheets write 15 figures, the text here 16 or 17.
  const CALLED = '=RETORT.MOISTURE.WET(24,65,53)&" of 1"';
  test.each(["0.292682926829268 of 1", "0.29268292682926828 of 1", "0.2926829268292683 of 1", "0,292682926829268 of 1"])(
    "%s is what the call gives",
    (right) => expect(said(CALLED, [[right]])).toEqual({ wrong: [], untold: [] }),
  );
  test.each(["0.292682926829368 of 1", "0.2927 of 1", "0.29268292682926 of 1", "0.292682926829268 of 2", "0.292682926829268"])("%s is not", (wrong) =>
    expect(said(CALLED, [[wrong]]).wrong).toEqual(["G1"]),
  );
});

describe("what-if tables", () => {
  const table = (answers: readonly Value[], formula = "=RETORT.MOISTURE.WET(A1,B1,C1)", asked = 0.35): RangeReading["rows"] => [
    [...WEIGHED.slice(0, 3), held("G1", asked, formula), held("F2", 50), held("F3", 45)],
    answers.map((value, row) => held(`G${row + 2}`, value)),
  ];
  // 31.5 g dry of 50 g and 45 g moist in 25 g: 18.5/25 = 0.74 and 13.5/20 = 0.675, worked by hand.
  const oneInput = { sheet: "Tray", area: areaNamed("G2:G3"), column: "B1" };
  const found = (rows: RangeReading["rows"], whatIf: WhatIfTable = oneInput): LookedAt =>
    lookedAt({ sheets: [{ sheet: "Tray", range: "", rows }] }, { whatIf: [whatIf] });

  test("of one input, in a column and in a row", () => {
    expect(found(table([0.74, 0.675]))).toEqual({ notGiven: [], unchecked: [] });
    expect(found(table([0.74, 0.7])).notGiven).toEqual([{ sheet: "Tray", cell: "G3", lacking: [] }]);
    const across = (last: number): RangeReading["rows"] => [
      [...WEIGHED.slice(0, 3), held("H4", 50), held("I4", 45)],
      [held("G5", 0.35, "=RETORT.MOISTURE.WET(A1,B1,C1)"), held("H5", 0.74), held("I5", last)],
    ];
    const inRow = { sheet: "Tray", area: areaNamed("H5:I5"), row: "$B$1" };
    expect(found(across(0.675), inRow).notGiven).toEqual([]);
    expect(found(across(0.6), inRow).notGiven.map(({ cell }) => cell)).toEqual(["I5"]);
  });

  test("through cells in between", () => {
    const between = (last: number): RangeReading["rows"] => [
      ...table([74, last], "=H1*100", 35),
      [held("H1", 0.35, "=RETORT.MOISTURE.WET(A1,B1,C1)")],
    ];
    expect(found(between(67.5)).notGiven).toEqual([]);
    expect(found(between(67)).notGiven.map(({ cell }) => cell)).toEqual(["G3"]);
  });

  test("of two inputs, whichever is the row's", () => {
    // Dry 31.5 g and 30 g down, moist 50 g and 45 g across: 18.5/25, 13.5/20, 20/25 and 15/20.
    const rows = (last: number): RangeReading["rows"] => [
      [...WEIGHED.slice(0, 3), held("G1", 0.35, "=RETORT.MOISTURE.WET(A1,B1,C1)"), held("H1", 50), held("I1", 45)],
      [held("G2", 31.5), held("H2", 0.74), held("I2", 0.675)],
      [held("G3", 30), held("H3", 0.8), held("I3", last)],
    ];
    for (const inputs of [
      { row: "B1", column: "C1" },
      { row: "C1", column: "B1" },
    ]) {
      // prettier-ignore
      const whatIf = { sheet: "Tray", area: areaNamed("H2:I3"), ...inputs };
      expect(found(rows(0.75), whatIf).notGiven).toEqual([]);
      expect(found(rows(0.76), whatIf).notGiven.map(({ cell }) => cell)).toContain("I3");
    }
  });

  test("whose formula cannot be worked out here", () => {
    expect(found(table([0.74, 0.7], "=RETORT.MOISTURE.WET(A1,B1,C1)+0*NOW()")).unchecked).toEqual([
      { sheet: "Tray", cell: "G1" },
      { sheet: "Tray", cell: "G2" },
      { sheet: "Tray", cell: "G3" },
    ]);
  });
});
