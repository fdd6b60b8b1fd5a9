import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import type { CellContent } from "../../../src/workbook/Workbook";
import { openHeadlessWorkbook, type HeadlessWorkbook } from "../../workbench/headlessWorkbook";
import { isSame } from "./liveAndPlain";

jest.setTimeout(60_000);

const WET = "RETORT.MOISTURE.WET(A1:A3,B1:B3,C1:C3)";
const LEFT = "RETORT.AIRLEFT";
/** Calls of ours within a function that is handed a LAMBDA, or in one kept under a name, and the same without any. */
const SAME: readonly (readonly [string, string])[] = [
  ["=SUM(MAP(A1:A3,B1:B3,C1:C3,LAMBDA(a,b,c,RETORT.MOISTURE.WET(a,b,c))))", `=SUM(${WET})`],
  ["=SUM(BYROW(A1:C3,LAMBDA(r,RETORT.MOISTURE.WET(INDEX(r,1),INDEX(r,2),INDEX(r,3)))))", `=SUM(${WET})`],
  ["=SUM(BYCOL(A1:B3,LAMBDA(c,RETORT.AIRLEFT(AVERAGE(c)/20))))", `=${LEFT}(AVERAGE(A1:A3)/20)+${LEFT}(AVERAGE(B1:B3)/20)`],
  ["=REDUCE(0,A1:A3,LAMBDA(s,v,s+RETORT.AIRLEFT(v/20)))", `=SUM(${LEFT}(A1:A3/20))`],
  ["=MAX(SCAN(0,A1:A3,LAMBDA(s,v,s+RETORT.AIRLEFT(v/20))))", `=SUM(${LEFT}(A1:A3/20))`],
  ["=SUM(MAKEARRAY(2,1,LAMBDA(r,c,RETORT.AIRLEFT(r))))", `=${LEFT}(1)+${LEFT}(2)`],
  ["=LET(a,A1,f,LAMBDA(a,RETORT.MOISTURE.WET(a,B1,C1)),f(a+1))", "=RETORT.MOISTURE.WET(A1+1,B1,C1)"],
  ["=LET(f,LAMBDA(a,b,c,RETORT.MOISTURE.WET(a,b,c)),SUM(MAP(A1:A3,B1:B3,C1:C3,f))+f(A1,B1,C1))", `=SUM(${WET})+RETORT.MOISTURE.WET(A1,B1,C1)`],
  ["=SUM(MAP(A1:A3,B1:B3,C1:C3,WETSHARE))", `=SUM(${WET})`],
  ["=LET(x,2,g,LAMBDA(y,RETORT.AIRLEFT(x*y)),LET(y,3,g(y+0)*y))", `=${LEFT}(6)*3`],
  ["=SUM(MAP(A1:A3,LAMBDA(x,LET(k,2,RETORT.AIRLEFT(x/25*k)))))", `=SUM(${LEFT}(A1:A3/25*2))`],
  ["=LET(w,RETORT.MOISTURE.WET(A1:A3,B1:B3,C1:C3),SUM(w)/COUNT(w))", `=SUM(${WET})/COUNT(${WET})`],
  ["=LET(f,LAMBDA(s,v,s+RETORT.AIRLEFT(v/20)),REDUCE(0,A1:A3,f))", `=SUM(${LEFT}(A1:A3/20))`],
  ["=SUM(RETORT.AIRLEFT(SEQUENCE(2)))", `=${LEFT}(1)+${LEFT}(2)`],
];
const FORMULAS = SAME.map(([formula]) => formula);
const WETSHARE = "=LAMBDA(a,b,c,RETORT.MOISTURE.WET(a,b,c))";
const place = {
  ...{ sheet: "Sheet1", cell: "K5", area: "K5", tableOf: () => undefined, spillOf: () => undefined },
  nameOf: (name: string) => (name === "WETSHARE" ? WETSHARE : undefined),
};
const newer = (formula: string): string => {
  const found = plainFormula(formula, place, { newerFunctions: true });
  return found.kind === "formula" ? found.formula : found.kind;
};

let book: HeadlessWorkbook;
beforeAll(async () => {
  book = await openHeadlessWorkbook();
  const masses: Record<string, CellContent> = { A1: 25, B1: 35, C1: 31.5, A2: 25, B2: 36, C2: 30, A3: 25, B3: 37, C3: 33 };
  for (const [cell, content] of Object.entries(masses)) await book.type("Sheet1", cell, content);
  for (const [index, [formula, same]] of SAME.entries()) {
    await book.type("Sheet1", `H${index + 1}`, newer(formula));
    await book.type("Sheet1", `I${index + 1}`, same);
  }
});
afterAll(() => book.close());

async function differing(): Promise<unknown[]> {
  await book.settled();
  const values = new Map((await book.workbook.readUsed("Sheet1")).rows.flat().map(({ cell, value }) => [cell, value]));
  const pairs = SAME.map(([formula], index) => [formula, values.get(`H${index + 1}`) ?? null, values.get(`I${index + 1}`) ?? null] as const);
  return pairs.filter(([, plain, live]) => live === null || !isSame(live, plain));
}

test("where newer functions are allowed they are kept around what is written of ours", async () => {
  expect(FORMULAS.map(newer).filter((text) => !text.startsWith("=") || text.includes("RETORT"))).toEqual([]);
  expect(await differing()).toEqual([]);
});

test.each<[string, CellContent]>([
  ["B2", 41],
  ["A3", 24],
])("after %s becomes %s every cell is as the live one", async (cell, content) => {
  await book.type("Sheet1", cell, content);
  expect(await differing()).toEqual([]);
});

const kindOf = (formula: string, newerFunctions: boolean): string => plainFormula(formula, place, { newerFunctions }).kind;

test.each([
  ...FORMULAS,
  "=LET(f,LAMBDA(v,RETORT.AIRLEFT(v)),f(A1))",
  "=LAMBDA(v,RETORT.AIRLEFT(v))(A1)",
  "=LET(a,1,LET(f,LAMBDA(a,RETORT.AIRLEFT(a)),f(a)))",
  "=LET(x,RAND(),RETORT.AIRLEFT(x))",
  "=LET(k,A1,LAMBDA(k,RETORT.AIRLEFT(k))(k)+RETORT.AIRLEFT(k))",
  "=WETSHARE(A1,B1,C1)",
])("to allow newer functions never fixes %s where it was written without", (formula) => {
  if (kindOf(formula, false) !== "none") expect(kindOf(formula, true)).toBe(kindOf(formula, false));
  else expect(["formula", "none"]).toContain(kindOf(formula, true));
});

test("what a LAMBDA is handed is known within it alone, so no step of it stands on another sheet", () => {
  const inMap = "=SUM(MAP(A1:A3,LAMBDA(x,INDEX(RETORT.PROXIMATE(x,35,31.5,28,25.2),2,2))))";
  expect(plainFormula(inMap, place, { newerFunctions: true })).toMatchObject({ kind: "none" });
});
