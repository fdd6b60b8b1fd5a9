import { plainFormula } from "../../../src/sharing/plain/plainFormula";
import { plainSheets } from "../../../src/sharing/plain/plainSheets";
import { sourcesOf } from "../../../src/sharing/plain/change/precedents";
import type { Surroundings } from "../../../src/sharing/plain/reading/Surroundings";
import { rangeOf } from "../../../src/workbook/cellArea";
import type { CellReading } from "../../../src/workbook/Workbook";

const NAMES: Readonly<Record<string, string>> = { vessel: "=Run!$A$1", more: "=LAMBDA(a,a+1)", left: "=LAMBDA(a,RETORT.AIRLEFT(a))" };
const place: Surroundings = {
  ...{ sheet: "Run", cell: "E2", area: "E2" },
  nameOf: (name) => NAMES[name.toLowerCase()],
  tableOf: () => ({
    ...{ name: "Runs", sheet: "Run", area: { row: 0, column: 0, rows: 9, columns: 2 }, headingRows: 1, totalsRows: 0 },
    columns: ["Dry'g", "Ves[sel]"],
  }),
  spillOf: () => undefined,
};
const SHEETS = ["Run", "Other", "It's (a) [b]"];

const airLeft = (cell: string): string =>
  `IF(IF(ISNUMBER(${cell})>ISLOGICAL(${cell}),(${cell}<0)+(${cell}>1E3),1),IF(ISERROR(${cell}),${cell},VALUE("volumes: blank, not of the right kind, or out of bounds")),EXP(-${/^\w+$/.test(cell) ? cell : `(${cell})`}))`;

const plain = (formula: string): string => {
  const found = plainFormula(formula, place);
  return found.kind === "formula" ? found.formula : found.kind === "none" ? `none: ${found.why}` : found.kind;
};

test.each<[string, string]>([
  ["=RETORT.AIRLEFT('It''s (a) [b]'!A1)", `=${airLeft("'It''s (a) [b]'!A1")}`],
  ["=RETORT.AIRLEFT('[Book.xlsx]It''s'!A1)", `=${airLeft("'[Book.xlsx]It''s'!A1")}`],
  ["=LET(f,LAMBDA(v,RETORT.AIRLEFT(v)),f(A1))", `=((${airLeft("A1")}))`.replace("=((", "=(((").replace(/\)\)$/, ")))")],
  ["=more(RETORT.AIRLEFT(A1))", `=(((${airLeft("A1")}))+1)`],
  ["=left(A1)", `=((${airLeft("A1")}))`],
  ["=RETORT.AIRLEFT(@A:A)", `=${airLeft("(A2)").replace("EXP(-((A2)))", "EXP(-(A2))")}`],
  ["=@A1:A9+RETORT.AIRLEFT(1)", "=A2+(EXP(-1))"],
  ["=@A5:A9+RETORT.AIRLEFT(1)", "=#VALUE!+(EXP(-1))"],
  ["=LET(f,A1,f(RETORT.AIRLEFT(1)))", "none: newerFunction"],
  ["=RETORT.AIRLEFT (A1)", "none: unknownName"],
  ["=MAP(A1:A3,RETORT.AIRLEFT)", "none: newerFunction"],
])("%s is written %s", (formula, written) => expect(plain(formula)).toBe(written));

test.each<[string, string, string]>([
  ["=RETORT.AIRLEFT('It''s (a) [b]'!A1)", "It's (a) [b]!A1", "isOurs"],
  ["=RETORT.AIRLEFT('Not here'!A1)", "", "isOurs,isBeyond"],
  ["=RETORT.AIRLEFT (A1)", "Run!A1", "isOurs,isUnseen"],
  ["=MAP(A1:A3,RETORT.AIRLEFT)", "Run!A1:A3", "isOurs,isUnseen"],
  ["=left(A2)", "Run!A2", "isOurs"],
  ["=SUM(vessel,nobody)", "Run!A1", "isUnseen"],
  ["=LET(x,A1,x+1)", "Run!A1", ""],
  ["=RETORT.AIRLEFT(Runs[Dry''g])", "Run!A2:A9", "isOurs"],
  ["=RETORT.AIRLEFT(Runs[[#This Row],[Ves'[sel']]])", "Run!B2", "isOurs"],
  ["=RETORT.NEVERMADE(A1)", "Run!A1", "isOurs"],
])("%s is calculated from %s (%s)", (formula, areas, flags) => {
  const { precedents, ...said } = sourcesOf(formula, place, SHEETS);
  expect({ areas: precedents.map(({ sheet, area }) => `${sheet}!${rangeOf(area)}`).join(" "), flags: Object.keys(said).filter((one) => said[one as keyof typeof said]).join(",") }).toEqual({ areas, flags }); // prettier-ignore
});

test("a fixed cell whose inputs its text does not show vouches for nothing", () => {
  const cell = (at: string, formula: string, value: number): CellReading => ({
    cell: at,
    formula,
    value,
    shown: "",
    error: "",
    message: "",
    spill: "",
  });
  const rows = [[cell("A1", "", 2), cell("B1", '=RETORT.AIRLEFT(INDIRECT("A1"))', 0.135), cell("C1", "=RETORT.NEVERMADE(A1)", 7)]];
  const { flags } = plainSheets({ sheets: [{ sheet: "S", range: "A1:C1", rows }] }, { date: "2027-01-15" });
  const flagOf = (at: string): string | undefined => flags[0]?.cells.find((one) => one.cell === at)?.content;
  expect(flagOf("B1")).toBe("=2");
  expect(flagOf("C1")).toMatch(/^=IF\(MAX\('?S changes'?!A1\)>0,2,0\)$/);
});
