import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import type { PlainOptions, Surroundings, TablePlace } from "../../../src/sharing/plain/reading/Surroundings";
import { WorkingsSheet } from "../../../src/sharing/plain/WorkingsSheet";

const RUNS: TablePlace = {
  name: "Runs",
  sheet: "Run",
  area: { row: 9, column: 0, rows: 4, columns: 3 },
  headingRows: 1,
  totalsRows: 0,
  columns: ["Vessel", "Moist, g", "Dry"],
};
const NAMES: Readonly<Record<string, string>> = {
  Vessel: "=Run!$A$1",
  Tins: "=Run!$A$1:$A$3",
  Pi: "=3.14",
  Moist: "=RETORT.MOISTURE.WET(Run!$A$1,Run!$B$1,Run!$C$1)",
};

const around = (more: Partial<Surroundings> = {}): Surroundings => ({
  sheet: "Run",
  cell: "E11",
  area: "E11",
  nameOf: (name) => NAMES[name],
  tableOf: (name) => (name === "" || name.toLowerCase() === "runs" ? RUNS : undefined),
  spillOf: (_sheet, cell) => (cell === "A33" ? "A33:A35" : undefined),
  ...more,
});

/** The plain form without its sentences and guards of errors, to be read. */
function plain(formula: string, more: Partial<Surroundings> = {}, options: PlainOptions = {}): string {
  const found = plainFormula(formula, around(more), options);
  if (found.kind === "none") return `none: ${found.why}`;
  return found.kind === "formula" ? `${found.isArray ? "array " : ""}${found.formula}` : JSON.stringify(found.formulas);
}

const AIR = (cell: string): string =>
  `IF(IF(ISNUMBER(${cell})>ISLOGICAL(${cell}),(${cell}<=0)+(${cell}>1E15),1),IF(ISERROR(${cell}),${cell},VALUE("oxygen: blank, not of the right kind, or out of bounds")),${cell}/0.2314)`;

describe("plainFormula(formula, place)", () => {
  it.each([
    ["=RETORT.AIRDEMAND(B2)", `=${AIR("B2")}`],
    ["=retort.airdemand( $B$2 )", `=${AIR("$B$2")}`],
    ["=_xldudf_RETORT_AIRDEMAND(B2)", `=${AIR("B2")}`],
    ["=-[2]!_xldudf_RETORT_AIRDEMAND(B2)^2", `=-(${AIR("B2")})^2`],
    ["='C:\\Docs\\A & B (2)\\[x.xla]It''s'!RETORT.AIRDEMAND(B2)", `=${AIR("B2")}`],
    ["=RETORT.AIRDEMAND(Vessel)", `=${AIR("Vessel")}`],
    ["=@RETORT.AIRDEMAND(B2:B9)", `=(${AIR("B2")})`],
    ["=SINGLE(RETORT.AIRDEMAND(B2:B9))", `=(${AIR("B2")})`],
    ["=RETORT.AIRDEMAND([@Dry])", `=${AIR("[@Dry]").replace(",[@Dry]/", ",([@Dry])/")}`],
    ["=LET(w,B2,RETORT.AIRDEMAND(w)+w)", `=((${AIR("B2")})+(B2))`],
  ])("writes %s", (formula, expected) => {
    expect(plain(formula)).toBe(expected);
  });

  it("keeps quoted names of sheets with apostrophes and brackets", () => {
    expect(plain("=RETORT.AIRDEMAND('It''s (a) {b}'!A1)+'RETORT.X(1)'!B2")).toMatch(/'It''s \(a\) \{b\}'!A1\)?\/0\.2314\)?\)\+'RETORT\.X\(1\)'!B2$/);
  });

  it("keeps brackets where an operator needs them, and texts as they are", () => {
    expect(plain('=(A1+B1)*2-(A1-(B1-C1))&"RETORT.X(1), ""ok"""&-(A1^2)')).toBe('=(A1+B1)*2-(A1-(B1-C1))&"RETORT.X(1), ""ok"""&-(A1^2)');
  });

  it("keeps a LET where newer functions are allowed", () => {
    expect(plain("=LET(w,B2,RETORT.AIRDEMAND(w)+w)", {}, { newerFunctions: true })).toBe(`=LET(w,B2,(${AIR("w")})+w)`);
    expect(plain("=_xlfn.LET(_xlpm.w,B2,RETORT.AIRDEMAND(_xlpm.w))", {}, { newerFunctions: true })).toBe(`=LET(w,B2,(${AIR("w")}))`);
  });

  it("puts the argument of a LAMBDA called on the spot in the place of its parameter", () => {
    expect(plain("=LAMBDA(x,RETORT.AIRDEMAND(x))(B2)")).toBe(`=((${AIR("B2")}))`);
  });

  it("writes a call over a range as one array formula over what it fills, rows not filled in staying empty", () => {
    const written = plain("=RETORT.AIRDEMAND(B2:B4)", { cell: "E2", area: "E2:E4" });
    expect(written).toMatch(/^array =IF\(IF\(ISNUMBER\(B2:B4\),B2:B4=0,TRIM\(B2:B4\)=""\),"",/);
    expect(plain("=SUM(RETORT.AIRDEMAND(B2:B4))")).toMatch(/^array =SUM\(\(IF\(/);
    expect(plain("=RETORT.AIRDEMAND(Tins)", { area: "E2:E4", cell: "E2" })).toMatch(/^array =IF\(IF\(ISNUMBER\(Tins\)/);
    expect(plain("=RETORT.AIRDEMAND(Runs[Dry])", { area: "E2:E4", cell: "E2" })).toContain("Runs[Dry])/0.2314");
  });

  it("ends whole columns where the spill does, and takes the area of a spill for A33#", () => {
    expect(plain("=RETORT.AIRDEMAND(B:B)", { cell: "E1", area: "E1:E7" })).toContain("B1:B7/0.2314");
    expect(plain("=RETORT.AIRDEMAND(A33#)", { cell: "E1", area: "E1:E3" })).toContain("A33:A35/0.2314");
  });

  it("refuses ranges of different sizes as the function does", () => {
    expect(plain("=RETORT.BLANKCORRECTED(A1:A3,B1:B2)")).toBe('=VALUE("the ranges differ in size: give ranges of one size")');
  });

  it.each([
    ["=RETORT.AIRDEMAND(Nowhere)", "unknownName"],
    ["=RETORT.AIRDEMAND(Other[Dry])", "unknownName"],
    ["=RETORT.AIRDEMAND(Sheet1:Sheet3!A1)", "severalSheets"],
    ["=RETORT.AIRDEMAND(OFFSET(A1,1,1))", "unseen"],
    ["=RETORT.AIRDEMAND(RAND())", "random"],
    ["=RETORT.AIRDEMAND(XLOOKUP(1,A:A,B:B))", "newerFunction"],
    ["=RETORT.AIRDEMAND(B1:INDEX(B:B,3))", "unknownSize"],
    ["=RETORT.GONE(1)", "unknownFunction"],
    ["=RETORT.FORMULA.CHECK(A1)", "argumentForm"],
    ['=RETORT.DRYING.FIT(A1:A9,B1:B9,"Page",C1)', "noForm"],
    ["=RETORT.MOLARMASS(A1)", "argumentForm"],
    ['=RETORT.MOLARMASS("Ca"&"CO3")', "argumentForm"],
    ["=RETORT.AIRDEMAND(1,2,3)", "argumentForm"],
    ["=RETORT.AIRDEMAND(A1", "unreadable"],
  ])("has no form for %s (%s)", (formula, why) => {
    expect(plain(formula)).toBe(`none: ${why}`);
  });

  it("calculates a long argument once, in a cell of the workings", () => {
    const workings = new WorkingsSheet("Workings");
    const formula = '=RETORT.MOISTURE.CONVERT(RETORT.MOISTURE.WET(A1,B1,C1),"wet","dry")';
    const found = plainFormula(formula, around(), {}, workings);
    expect(found).toMatchObject({ kind: "formula" });
    expect(found.kind === "formula" && found.formula).toContain("Workings!$B$1/(1-Workings!$B$1)");
    expect(workings.cells.map(({ cell }) => cell)).toEqual(["A1", "B1"]);
    expect(workings.cells[1]?.content).toContain("(Run!B1-Run!C1)/(Run!B1-IF(ISNUMBER(Run!A1),Run!A1,0))");
  });

  it("leaves nothing on the workings for a formula that cannot be written in the end", () => {
    const workings = new WorkingsSheet("Workings");
    const formula = '=RETORT.MOISTURE.CONVERT(RETORT.MOISTURE.WET(A1,B1,C1),"wet","dry")+RETORT.MOLARMASS(A1)';
    expect(plainFormula(formula, around(), {}, workings).kind).toBe("none");
    expect(workings.cells).toEqual([]);
  });

  it("says that a formula is too long rather than writing what no cell holds", () => {
    const nested = (depth: number): string => (depth === 0 ? "A1" : `RETORT.MOISTURE.CONVERT(${nested(depth - 1)},"wet","dry")`);
    expect(plain(`=${nested(6)}`)).toBe("none: tooLong");
  });

  it("reads a sum of thousands of terms, or says that it cannot", () => {
    const sum = `=RETORT.AIRDEMAND(B2)+${Array.from({ length: 4000 }, () => "1").join("+")}`;
    expect(plain(sum)).toMatch(/^(none: |=)/);
  });
});
