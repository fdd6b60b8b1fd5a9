import { notGiven } from "../../../src/explanation/saved/notGiven";
import type { NameReading } from "../../../src/sharing/plain/reading/PlainReading";
import type { CellReading, RangeReading } from "../../../src/workbook/Workbook";

const held = (cell: string, value: CellReading["value"], formula = "", further: Partial<CellReading> = {}): CellReading => ({
  ...{ cell, formula, value, shown: String(value ?? ""), error: "", message: "", spill: "" },
  ...further,
});

// 25 g vessel, 35 g moist, 31.5 g dry: (35 - 31.5) / (35 - 25) = 0.35, worked by hand; the second row 0.36 of 25 g.
const WEIGHED = [held("A1", 25), held("B1", 35), held("C1", 31.5), held("A2", 25), held("B2", 50), held("C2", 41)];
const CALL = "RETORT.MOISTURE.WET(A1,B1,C1)";

const sheet = (...cells: readonly CellReading[]): RangeReading => ({ sheet: "Tray", range: "", rows: [[...WEIGHED, ...cells]] });
const found = (cells: readonly CellReading[], names: readonly NameReading[] = []): readonly string[] =>
  notGiven({ sheets: [sheet(...cells)], names }).map(({ cell }) => cell);

describe("a value that its formula does not give", () => {
  test.each<[formula: string, right: CellReading["value"], wrong: CellReading["value"]]>([
    [`=${CALL}`, 0.35, 0.99],
    [`=_xldudf_RETORT_MOISTURE_WET(A1,B1,C1)`, 0.35, 0.3501],
    [`=${CALL}*100`, 35, 35.1],
    [`=IF(B1="","",${CALL})`, 0.35, 0.36],
    [`=IFERROR(${CALL},"bad")`, 0.35, 0.36],
    [`=IF(NOW()>0,${CALL},"")`, "", 0.36],
    [`=ROUND(${CALL},1)`, 0.4, 0.35],
    [`=INDEX(RETORT.MOISTURE.WET(A1:A2,B1:B2,C1:C2),2)`, 0.36, 0.35],
    [`=RETORT.MOISTURE.WET($A$1,Tray!B1,C1)`, 0.35, 0.34],
    [`=RETORT.MOLARMASS("H2O")&" g"`, "18.015 g", "18.02 g"],
    // 22.98976928 + 35.45 = 58.43976928: rounded to the figures that are saved, and not.
    ['=RETORT.MOLARMASS("NaCl")', 58.44, 58.45],
    [`=${CALL}`, 0.35, "0.35"],
  ])("%s: %p is, %p is not", (formula, right, wrong) => {
    expect(found([held("E1", right, formula)])).toEqual([]);
    expect(found([held("E1", wrong, formula)])).toEqual(["E1"]);
  });

  test("in one cell of what an array formula fills", () => {
    const formula = "=RETORT.MOISTURE.WET(A1:A2,B1:B2,C1:C2)";
    const array = (second: number): CellReading[] => [held("E1", 0.35, formula, { spill: "E1:E2" }), held("E2", second)];
    expect(found(array(0.36))).toEqual([]);
    expect(found(array(0.37))).toEqual(["E1"]);
  });

  test("with whole columns, taken as far as any of them is filled", () => {
    const formula = "=RETORT.MOISTURE.WET(A:A,B:B,C:C)";
    expect(found([held("E1", 0.35, formula, { spill: "E1:E2" }), held("E2", 0.36)])).toEqual([]);
    expect(found([held("E1", 0.35, formula, { spill: "E1:E2" }), held("E2", 0.99)])).toEqual(["E1"]);
  });

  test("behind defined names that mean the same everywhere", () => {
    const names = [
      { name: "vessel", formula: "=Tray!$A$1" },
      { name: "water", formula: '=RETORT.MOLARMASS("H2O")' },
      { name: "beside", formula: "=Tray!A1" },
    ];
    expect(found([held("E1", 0.35, "=RETORT.MOISTURE.WET(vessel,B1,C1)"), held("E2", 36.03, "=water*2")], names)).toEqual([]);
    expect(found([held("E1", 0.36, "=RETORT.MOISTURE.WET(vessel,B1,C1)"), held("E2", 36.04, "=water*2")], names)).toEqual(["E1", "E2"]);
    expect(found([held("E1", 0.36, "=RETORT.MOISTURE.WET(beside,B1,C1)")], names)).toEqual([]);
  });

  test("in any row that a formula was filled down to", () => {
    const rows = Array.from({ length: 50 }, (_, index) => index + 3);
    const filled = rows.flatMap((row) => [
      ...[held(`A${row}`, 25), held(`B${row}`, 35), held(`C${row}`, 31.5)],
      held(`D${row}`, row === 40 ? 0.99 : 0.35, `=RETORT.MOISTURE.WET(A${row},B${row},C${row})`),
    ]);
    expect(found(filled)).toEqual(["D40"]);
  });
});

test("what cannot be known here, or is in error, is not accused", () => {
  const unknown = ["=RETORT.MOISTURE.WET(Elsewhere!A1,B1,C1)", `=${CALL}+0*NOW()`, `=IF(NOW()>0,${CALL})`, "=RETORT.MOISTURE.WET([1]Tray!A1,B1,C1)"];
  expect(found(unknown.map((formula, index) => held(`E${index + 1}`, 0.99, formula)))).toEqual([]);
  expect(found([held("E1", "#VALUE!", `=${CALL}`, { error: "#VALUE!" })])).toEqual([]);
});
