import { engineKnows, isNotCalculated } from "../../../../src/workbench/xlsx/reading/notCalculated";

const NAMES = [
  { name: "shadow", refersTo: "T!$A$2", sheet: undefined },
  { name: "Shadow", refersTo: "T!$A$3", sheet: "T" },
  { name: "shadow", refersTo: "S2!$A$1", sheet: "S2" },
  { name: "own", refersTo: "T!$A$4", sheet: "T" },
  { name: "total", refersTo: "T!$A$1+T!$A$2", sheet: undefined },
  { name: "relative", refersTo: "T!A1", sheet: undefined },
  { name: "behind", refersTo: "shadow*2", sheet: undefined },
  { name: "crossed", refersTo: "T!$A$1:$B$2 T!$B$2:$B$3", sheet: undefined },
  { name: "plus1", refersTo: "LAMBDA(x,x+1)", sheet: undefined },
  { name: "round", refersTo: "round+1", sheet: undefined },
];
const engine = engineKnows(NAMES, (name) => ["SUM", "IFERROR", "COUNT", "INDEX", "IF", "LET", "LAMBDA", "OFFSET"].includes(name));

test.each([
  "=SUM(S2:S3!A1)",
  "=SUM(Sheet2:Sheet3!$A:$A)",
  "=IFERROR(SUM('S 2:S 3'!A1:B2),0)",
  "=COUNT('Odd ! name'!A1)",
  "=IFERROR(A1:B2 B2:B3,0)",
  "=SUM(A1:B2 B1:B3)",
  "=COUNT((A1:A2,B1))",
  "=SUM(INDEX((A1:A2,C1),1,1,2))",
  "=SUM(A1:A2:B3)",
  "=SUM(A1:OFFSET(A1,1,0))",
  "=SUM(3:3)",
  "=SUM($1:$2)",
  "=A1%%",
  "=IFERROR(NOSUCH(1),5)",
  "=IF(A1>1,nosuch(A1),0)",
  "=shadow+1",
  "=IFERROR(SHADOW,0)",
  "=T!shadow",
  "=IFERROR(-total,0)",
  "=2*+own",
  "=LAMBDA(x,COUNT(-x))(2)",
  "=relative*2",
  "=SUM(behind)",
  "=SUM(crossed)",
  "=LET(x,shadow,x+1)",
])("%s is one that the engine misreads", (formula) => {
  expect(isNotCalculated(formula, "T", engine)).toBe(true);
});

test.each([
  "=SUM(A1:B2)+SUM(A:B)*2%",
  "=SUM(A1:INDEX(B1:B9,2))",
  "=SUM(INDEX(A1:A9,2):B9)",
  "='O''Neil''s (b)'!A1",
  '=IF(A1="S2:S3!A1 %% NOSUCH(1)",(A1+B1)*2,-(A1))',
  "=own",
  "=S2!own",
  "=10-total",
  "=-A1^2",
  "=T!own+T!total",
  "=total*2",
  "=plus1(A1)",
  "=LET(shadow,A1,shadow+1)",
  "=LET(f,LAMBDA(x,x*2),f(A1))",
  "=round",
  "=unknown+1",
  "=SUM({1,2;3,4})",
])("%s is none", (formula) => {
  expect(isNotCalculated(formula, "T", engine)).toBe(false);
});

test("of a name of one sheet the last is taken whichever sheet asks", () => {
  expect(["T", "S2", "S3"].map((sheet) => isNotCalculated("=shadow", sheet, engine))).toEqual([true, false, true]);
});

test("a function is none of those that are not known where that is not asked", () => {
  expect(isNotCalculated("=NOSUCH(1)", "T", engineKnows(NAMES))).toBe(false);
});
