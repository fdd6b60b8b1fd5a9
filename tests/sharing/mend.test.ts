import { calculationRecord } from "../../src/sharing/record/calculationRecord";
import { everyFormulaCell } from "../../src/sharing/formulaCells";
import { cellsToMend, hasLost, typedAgain } from "../../src/sharing/mend";
import { formulasIn, recordedFormulas } from "../../src/sharing/record/recordedFormulas";
import { cellAt } from "../../src/workbook/cellArea";
import type { SheetPlan } from "../../src/workbook/SheetPlan";
import type { CellReading, RangeReading } from "../../src/workbook/Workbook";
import { MemoryWorkbook, reading } from "./MemoryWorkbook";

const unknown = (cell: string, formula: string): CellReading => reading(cell, { formula, value: "#NAME?", error: "#NAME?" });
const showing = (cell: string, formula: string, value: number | string = 0.35): CellReading => reading(cell, { formula, value });
const sheetOf = (...cells: CellReading[]): RangeReading => ({ sheet: "Tin", range: "A1:Z99", rows: [cells] });

describe("typedAgain(formula)", () => {
  it.each([
    ["=_xldudf_RETORT_MOISTURE_WET(A1,A2,A3)", "=RETORT.MOISTURE.WET(A1,A2,A3)"],
    ["=_xldudf_retort_molarmass(A1)", "=RETORT.MOLARMASS(A1)"],
    ["=[2]!RETORT.MOLARMASS(A1)", "=RETORT.MOLARMASS(A1)"],
    ["='C:/add in/x.xla'!_xldudf_RETORT_MOLARMASS(A1)", "=RETORT.MOLARMASS(A1)"],
    ['=IF(A1="_xldudf_RETORT_MOLARMASS(",1,_xldudf_RETORT_MOLARMASS(A1))', '=IF(A1="_xldudf_RETORT_MOLARMASS(",1,RETORT.MOLARMASS(A1))'],
    ["=_xlfn.LET(_xlpm.m,RETORT.MOLARMASS(A1),_xlpm.m*2)", "=LET(m,RETORT.MOLARMASS(A1),m*2)"],
    ["=SUM(_xlfn._xlws.FILTER(A1:A9,A1:A9>0),RETORT.MOLARMASS(B1))", "=SUM(FILTER(A1:A9,A1:A9>0),RETORT.MOLARMASS(B1))"],
    ['=RETORT.MOLARMASS("_xlfn.")', '=RETORT.MOLARMASS("_xlfn.")'],
  ])("%s is typed %s", (held, typed) => {
    expect(typedAgain(held)).toBe(typed);
  });
});

describe("cellsToMend(reading, recorded)", () => {
  it.each([
    ["a stored name, whatever it shows", showing("B1", "=_xldudf_RETORT_MOLARMASS(A1)"), "=RETORT.MOLARMASS(A1)"],
    ["a broken link, whatever it shows", showing("B1", "=[1]!RETORT.MOLARMASS(A1)"), "=RETORT.MOLARMASS(A1)"],
    ["a call that shows #NAME?", unknown("B1", "=RETORT.MOLARMASS(A1)*2"), "=RETORT.MOLARMASS(A1)*2"],
    ["a call in small letters that shows #NAME?", unknown("B1", "=retort.molarmass(A1)"), "=RETORT.MOLARMASS(A1)"],
    ["a newer function under a file's name that shows #NAME?", unknown("B1", "=_xlfn.XLOOKUP(A1,C:C,D:D)"), "=XLOOKUP(A1,C:C,D:D)"],
  ])("enters again %s", (_, cell, formula) => {
    expect(cellsToMend(sheetOf(cell))).toEqual({ cells: [{ cell: "B1", held: cell.formula, formula, from: "cell" }], beyond: [] });
  });

  it.each([
    ["a call that works", showing("B1", "=RETORT.MOLARMASS(A1)")],
    ["a call that shows another error, which may be meant", reading("B1", { formula: "=RETORT.MOLARMASS(A1)", value: "#VALUE!", error: "#VALUE!" })],
    ["somebody's own unknown name", unknown("B1", "=KILNLOSS(A1)")],
    ["what is calculated from a broken cell, which comes back by itself", unknown("B1", "=B2*2")],
    ["a newer function that this spreadsheet does not know, and whose value is all there is", showing("B1", "=_xlfn.XLOOKUP(A1,C:C,D:D)")],
    ["a text that reads like the error", reading("B1", { value: "#NAME?" })],
    ["a text that reads like a stored call", reading("B1", { value: "=_xldudf_RETORT_MOLARMASS(A1)" })],
    ["the word in quotation marks", showing("B1", '="_xldudf_RETORT_MOLARMASS(A1)"')],
    ["an error typed into a cell, with nothing recorded of it", reading("B1", { value: "#N/A", error: "#N/A" })],
  ])("leaves alone %s", (_, cell) => {
    expect(cellsToMend(sheetOf(cell))).toEqual({ cells: [], beyond: [] });
  });

  const recorded = new Map([
    ["B1", "=RETORT.MOLARMASS(A1)"],
    ["B2", "=RETORT.MOLARMASS(A2)"],
    ["B9", "=RETORT.MOLARMASS(A9)"],
  ]);

  it("takes from the record what is lost, and nothing over a value or another formula", () => {
    const cells = [
      reading("B1", { value: "#NAME?", error: "#NAME?" }),
      unknown("B2", "=#NAME?(A2)"),
      reading("B3", { value: "#NAME?", error: "#NAME?" }),
      reading("B9", { value: 84.3 }),
    ];
    expect(cellsToMend(sheetOf(...cells), recorded)).toEqual({
      cells: [
        { cell: "B1", held: "#NAME?", formula: "=RETORT.MOLARMASS(A1)", from: "record" },
        { cell: "B2", held: "=#NAME?(A2)", formula: "=RETORT.MOLARMASS(A2)", from: "record" },
      ],
      beyond: ["B3"],
    });
    expect(hasLost(sheetOf(...cells))).toBe(true);
    expect(hasLost(sheetOf(unknown("B1", "=RETORT.MOLARMASS(A1)")))).toBe(false);
  });

  it("enters a spill again in its first cell alone, and names a function that this version does not have", () => {
    const spilled = { ...unknown("B1", "=_xldudf_RETORT_VOLATILEFRACTION(A1:A2,C1:C2,D1:D2)"), spill: "B1:B2" };
    const cells = [spilled, reading("B2", { value: "#NAME?", error: "#NAME?" }), unknown("B3", "=RETORT.LATERFUNCTION(A1)")];
    const { cells: found, beyond } = cellsToMend(sheetOf(...cells));
    expect([found.map(({ cell }) => cell), beyond]).toEqual([["B1"], ["B3"]]);
  });
});

/** A record as it reads back from its sheet. */
function readBack(plan: SheetPlan): RangeReading {
  const held = new Map(plan.cells.map(({ cell, content }) => [cell, content ?? null] as const));
  const rows = Array.from({ length: 1200 }, (_, row) =>
    Array.from({ length: 8 }, (_cell, column) => reading(cellAt(row, column), { value: held.get(cellAt(row, column)) ?? null })),
  );
  return { sheet: plan.name, range: "A1:H1200", rows };
}

describe("formulasIn(record, sheet)", () => {
  const record = (cells: readonly CellReading[]): RangeReading => {
    const formulaCells = everyFormulaCell({ sheet: "Tin", range: "A1:Z2000", rows: cells.map((cell) => [cell]) });
    return readBack(calculationRecord({ sheet: "Tin", copy: "Tin values", date: "2027-01-15", formulaCells }, "Tin record"));
  };

  it("finds each formula of the sheet that the record is about, and none for another sheet", () => {
    const long = `=RETORT.MOLARMASS(A1)${"+B12".repeat(400)}`;
    const found = formulasIn(record([showing("B1", "=RETORT.MOLARMASS(A1)"), showing("B2", long), showing("C3", "=B1*2")]), "Tin");
    expect(found).toEqual(
      new Map([
        ["B1", "=RETORT.MOLARMASS(A1)"],
        ["B2", long],
        ["C3", "=B1*2"],
      ]),
    );
    expect(formulasIn(record([showing("B1", "=RETORT.MOLARMASS(A1)")]), "Other")).toEqual(new Map());
    expect(formulasIn(sheetOf(reading("A1", { value: "Tin" })), "Tin")).toEqual(new Map());
  });

  it("slides a formula that was filled down", () => {
    const many = Array.from({ length: 1001 }, (_, index) => showing(`B${index + 1}`, `=RETORT.MOLARMASS(A${index + 1},$C$1)`));
    const found = formulasIn(record(many), "Tin");
    expect([found.size, found.get("B777")]).toEqual([1001, "=RETORT.MOLARMASS(A777,$C$1)"]);
  });

  it("moves the references held by $ that the record names, and no others", () => {
    const shares = ["C", "D", "E"].map((column) => showing(`${column}43`, `=RETORT.MOISTURE.WET($${column}$11,$${column}$12,$B$2)`));
    const losses = [12, 13, 14].map((row) => showing(`F${row}`, `=RETORT.MOISTURE.WET($B$2,C${row},$C$${row + 1})`));
    const formulaCells = everyFormulaCell({ sheet: "Tin", range: "A1:Z99", rows: [...losses.map((cell) => [cell]), shares] });
    const plan = calculationRecord({ sheet: "Tin", copy: "Tin values", date: "2027-01-15", formulaCells }, "Tin record");
    expect(plan.cells.filter(({ content }) => content === "moving too")).toHaveLength(2);
    expect(formulasIn(readBack(plan), "Tin")).toEqual(new Map([...losses, ...shares].map(({ cell, formula }) => [cell, formula])));
  });

  it("takes a spill for one formula, and the rule of a cell for none", () => {
    const spilled = { ...showing("B4", "=RETORT.MOISTURE.WET(B1,B2:B3,C2:C3)"), spill: "B4:B5" };
    const formulaCells = everyFormulaCell(sheetOf(spilled, showing("D1", "=RETORT.MOLARMASS(A1)")));
    const rule = { kind: "colouring", sheet: "Tin values", areas: ["D1"], formulas: ["=RETORT.MOLARMASS(A9)>1"], why: "ruleForm" } as const;
    const shared = { sheet: "Tin", copy: "Tin values", date: "2027-01-15", formulaCells, put: { rules: [rule], namesWritten: [], namesGone: [] } };
    expect(formulasIn(readBack(calculationRecord(shared, "Tin record")), "Tin")).toEqual(
      new Map([
        ["B4", "=RETORT.MOISTURE.WET(B1,B2:B3,C2:C3)"],
        ["D1", "=RETORT.MOLARMASS(A1)"],
      ]),
    );
  });

  it("finds the formulas of what a run sheet says, which are not printed", () => {
    const cells = everyFormulaCell(sheetOf(showing("A2", '="Dry: "&B6', "Dry: 1"), showing("A3", '="Dry: "&B7', "Dry: 2"), showing("B6", "=1", 1)));
    const formulaCells = cells.map((cell) => ({ ...cell, step: "HEAD" }));
    const plan = calculationRecord({ sheet: "Tin", copy: "Tin values", date: "2027-01-15", formulaCells }, "Tin record");
    expect(Object.fromEntries(formulasIn(readBack(plan), "Tin"))).toEqual({ A2: '="Dry: "&B6', A3: '="Dry: "&B7', B6: "=1" });
  });

  it("reads a record of version 0.2, which had eight columns", () => {
    const lines = [
      ["Calculation record"],
      ["Sheet", "Tin"],
      [
        "Cell",
        "On the sheet",
        "Cell formula as typed",
        "Value",
        "Unit of the function",
        "What the function is",
        "Its source",
        "With built-in functions only",
      ],
      ["Drying"],
      ["B4", "", "=RETORT.MOLARMASS(A1)", 1, "", "RETORT.MOLARMASS: a mass", "a source", "=1"],
      ["", "", "+B1*2"],
      ["D1:D3", "", "=RETORT.MOLARMASS(C1,$E$1)", 1, "", "Filled down; formula and value are those of the first cell. RETORT.MOLARMASS: a mass"],
      ["Rules and names"],
      ["D2", "colours cells", "=RETORT.MOLARMASS(A9)>1", "", "", "No cell", "", "taken out: no form"],
    ];
    const rows = lines.map((line, row) => line.map((value, column) => reading(cellAt(row, column), { value })));
    expect(Object.fromEntries(formulasIn({ rows }, "Tin"))).toEqual({
      B4: "=RETORT.MOLARMASS(A1)+B1*2",
      D1: "=RETORT.MOLARMASS(C1,$E$1)",
      D2: "=RETORT.MOLARMASS(C2,$E$1)",
      D3: "=RETORT.MOLARMASS(C3,$E$1)",
    });
  });

  it("takes none of two that differ", async () => {
    const workbook = new MemoryWorkbook("Tin", []);
    const records = [
      ["Tin record", "=RETORT.MOLARMASS(A1)"],
      ["Tin record (2)", "=RETORT.MOLARMASS(A2)"],
    ] as const;
    const readings = new Map(
      records.map(([name, formula]) => [name as string, record([showing("B1", formula), showing("B2", "=RETORT.MOLARMASS(A9)")])]),
    );
    workbook.sheetNames = async () => ["Tin", ...readings.keys(), "recording"];
    workbook.readUsed = async (name) => readings.get(name) ?? sheetOf();
    expect(await recordedFormulas(workbook, "Tin")).toEqual(new Map([["B2", "=RETORT.MOLARMASS(A9)"]]));
  });
});
