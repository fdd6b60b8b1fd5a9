import type { NameReading } from "../../../src/sharing/plain/reading/PlainReading";
import { plainSheets } from "../../../src/sharing/plain/plainSheets";
import { areaFrom, withSpills } from "../../../src/sharing/plain/formula/spills";
import { areaNamed } from "../../../src/workbook/areaNamed";
import type { CellReading } from "../../../src/workbook/Workbook";

test.each<[string, string]>([
  ["=SUM(L1#)", "=SUM(<L1>)"],
  ["=@L1#", "=@<L1>"],
  ["=SUM('My run'!$L$1#)*wets#", "=SUM(<'My run'!$L$1>)*<wets>"],
  ["=INDEX( ANCHORARRAY( P1 ) ,2,2)", "=INDEX( <P1> ,2,2)"],
  ["_xlfn.ANCHORARRAY(T!$L$1)", "<T!$L$1>"],
  ['=IF(A1="L1#",COUNT(L1#),#N/A)', '=IF(A1="L1#",COUNT(<L1>),#N/A)'],
  ["=ANCHORARRAY(OFFSET(L1,0,0))", "=ANCHORARRAY(OFFSET(L1,0,0))"],
  ["=L1&L2", "=L1&L2"],
])("the spills of %s are found: %s", (formula, marked) => expect(withSpills(formula, (anchor) => `<${anchor}>`)).toBe(marked));

test.each<[string, string]>([
  ["L1", "L1:M3"],
  ["$L$1", "$L$1:$M$3"],
  ["L$1", "L$1:M$3"],
  ["'It''s'!$L1", "'It''s'!$L1:$M3"],
])("the area from %s is %s", (anchor, area) => expect(areaFrom(anchor, areaNamed("L1:M3"))).toBe(area));

const reading = (cell: string, formula: string, value: CellReading["value"], spill = ""): CellReading => ({
  ...{ cell, formula, value, spill, shown: "", error: "", message: "" },
});

const names: readonly NameReading[] = [
  { name: "wets", formula: "=T!$L$1#" },
  { name: "anchor", formula: "=T!$L$1" },
  { name: "table", formula: "=ANCHORARRAY(T!$P$1)" },
  { name: "others", formula: "=T!$N$1#" },
];

/** A spill of ours, a table of ours, one of a single cell, one that stays, and what refers to them. */
function plainOf(formulas: readonly string[]): readonly (string | undefined)[] {
  const rows = [
    ["A1", "A2"].map((cell) => reading(cell, "", 25)),
    [
      reading("L1", "=RETORT.AIRLEFT(A1:A2/10)", 0.1, "L1:L2"),
      reading("N1", "=A1:A2*2", 50, "N1:N2"),
      reading("O1", "=RETORT.AIRLEFT(A1/10)", 0.1),
      reading("P1", "=RETORT.PROXIMATE(25,35,31.5,28,25.2)", "Share", "P1:R6"),
    ],
    [reading("L2", "", 0.1), reading("N2", "", 50)],
    formulas.map((formula, index) => reading(`T${index + 1}`, formula, 1)),
  ];
  const { cells } = plainSheets({ sheets: [{ sheet: "T", range: "", rows }], names }, { date: "2027-01-15" });
  return formulas.map((_, index) => {
    const found = cells.find(({ cell }) => cell === `T${index + 1}`)?.formulas;
    return found === undefined ? undefined : "one" in found ? found.one : "each";
  });
}

test.each<[string, string | undefined]>([
  ["=SUM(L1#)", "=SUM(L1:L2)"],
  ['=IF(MAX($L$1#)>0.3,"moist","ok")', '=IF(MAX($L$1:$L$2)>0.3,"moist","ok")'],
  ["=INDEX(P1#,2,2)", "=INDEX(P1:R6,2,2)"],
  ["=IFERROR(SUM(ANCHORARRAY(T!L1)),0)", "=IFERROR(SUM(T!L1:L2),0)"],
  ["=@L1#", "=@L1:L2"],
  ["=SUM(anchor#)", "=SUM(T!$L$1:$L$2)"],
  ["=SUM(O1#)", "=SUM(O1)"],
  ["=SUM(L1#,N1#)", "=SUM(L1:L2,N1#)"],
  ["=SUM(N1#)", undefined],
  ["=SUM(L2#)", undefined],
  ["=SUM(wets)", undefined],
  ["=SUM(L1:L2)", undefined],
])("%s becomes %s beside a spill that is written anew", (formula, written) => expect(plainOf([formula])).toEqual([written]));

test("a name for a spill that is written anew stands for its area, one for a spill that stays as it is does not", () => {
  const rows = [[reading("L1", "=RETORT.AIRLEFT(A1:A2/10)", 0.1, "L1:L2"), reading("N1", "=A1:A2*2", 50, "N1:N2")]];
  const plain = plainSheets({ sheets: [{ sheet: "T", range: "", rows }], names }, { date: "2027-01-15" });
  expect(plain.names).toEqual([{ name: "wets", formula: "=T!$L$1:$L$2" }]);
});

test("what refers to a spill stays over arrays where it was, and behind its guard", () => {
  const rows = [
    [reading("A1", "", 1), reading("B1", "=RETORT.NEVERMADE(A1)", 7), reading("C1", "=B1+A1:A2", 8, "C1:C2"), reading("C2", "", 7)],
    [reading("D1", "=C1#*2", 16, "D1:D2"), reading("D2", "", 14), reading("E1", "=SUM(C1#)", 15)],
  ];
  const { cells } = plainSheets({ sheets: [{ sheet: "T", range: "", rows }] }, { date: "2027-01-15" });
  const behind = (flag: string, text: string): string => `=IF('T changes'!${flag}=2,"fixed on 2027-01-15: inputs changed",${text})`;
  expect(cells.filter(({ kind }) => kind === "watched").map(({ area, formulas }) => [area, formulas])).toEqual([
    ["C1:C2", { one: behind("C1", "B1+A1:A2"), isArray: true }],
    ["D1:D2", { one: behind("D1", "C1:C2*2"), isArray: true }],
    ["E1", { one: behind("E1", "SUM(C1:C2)"), isArray: false }],
  ]);
});
