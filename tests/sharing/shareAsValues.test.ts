import { shareAsValues } from "../../src/sharing/shareAsValues";
import type { CellReading } from "../../src/workbook/Workbook";
import { MemoryWorkbook, reading } from "./MemoryWorkbook";

const DAY = "2026-03-14";
const moisture = reading("B4", { formula: "=RETORT.MOISTURE.WET(B1,B2,B3)", value: 0.35, shown: "35.0%" });
const inputs = [reading("B1", { value: 25 }), reading("B2", { value: 35 }), reading("B3", { value: 31.5 })];

const shared = async (readings: readonly CellReading[], sheet = "Tin 3") => {
  const workbook = new MemoryWorkbook(sheet, readings);
  return { workbook, ...(await shareAsValues(workbook, sheet, DAY)) };
};
const refusal = async (readings: readonly CellReading[]) => {
  const workbook = new MemoryWorkbook("Tin 3", readings);
  const problem = await shareAsValues(workbook, "Tin 3", DAY).then(
    () => undefined,
    (thrown: Error) => thrown,
  );
  return { problem: [problem?.name, problem?.message], calls: workbook.calls };
};

describe("shareAsValues(workbook, sheet, date)", () => {
  it("puts values in place of cell formulas on a copy and leaves the sheet as it was", async () => {
    const { workbook, copy, frozenCells } = await shared([...inputs, moisture]);
    expect([copy, frozenCells]).toEqual(["Tin 3 values", 1]);
    expect(workbook.sheets.get(copy)?.get("B4")).toEqual(reading("B4", { value: 0.35 }));
    expect(workbook.sheets.get(copy)?.get("B2")).toEqual(inputs[1]);
    expect(workbook.sheets.get("Tin 3")?.get("B4")).toEqual(moisture);
  });

  it("reads everything, twice, before it makes the copy", async () => {
    const { workbook } = await shared([...inputs, moisture]);
    expect(workbook.calls).toEqual(["read Tin 3", "read Tin 3", "copy Tin 3 to Tin 3 values", "freeze 2 areas of Tin 3 values", "add Tin 3 record"]);
  });

  it("freezes built-in cell formulas too", async () => {
    const { workbook, copy, frozenCells } = await shared([...inputs, reading("B5", { formula: "=B2-B1", value: 10 }), moisture]);
    expect([workbook.sheets.get(copy)?.get("B5")?.value, frozenCells]).toEqual([10, 2]);
  });

  it("moves a spill as a whole", async () => {
    const spill = [
      reading("D1", { formula: "=RETORT.ATOMS(B1)", value: "Element", spill: "D1:E2" }),
      reading("E1", { value: "Count" }),
      reading("D2", { value: "C" }),
      reading("E2", { value: 8 }),
    ];
    const { workbook, copy, frozenCells } = await shared(spill);
    expect(frozenCells).toBe(4);
    expect(["D1", "E1", "D2", "E2"].map((cell) => workbook.sheets.get(copy)?.get(cell)?.value)).toEqual(["Element", "Count", "C", 8]);
    expect(workbook.sheets.get(copy)?.get("D1")?.formula).toBe("");
  });

  it.each(["=1+1", "+ more", "-0.5 g", "@home", "'quoted"])("hands on text %s unchanged, to be kept as text", async (text) => {
    const { workbook, copy } = await shared([reading("A1", { formula: '=CONCATENATE("","x")', value: text })]);
    expect(workbook.sheets.get(copy)?.get("A1")?.value).toBe(text);
  });

  it("keeps 0, FALSE and blank apart", async () => {
    const formula = "=A9";
    const { workbook, copy } = await shared([
      reading("A1", { formula, value: 0 }),
      reading("A2", { formula, value: false }),
      reading("A3", { formula, value: "" }),
    ]);
    expect(["A1", "A2", "A3"].map((cell) => workbook.sheets.get(copy)?.get(cell)?.value)).toEqual([0, false, null]);
  });

  it("cuts long sheet names to what a workbook takes", async () => {
    const { copy, record } = await shared([moisture], "Prunings of the west orchard 26");
    expect([copy, record]).toEqual(["Prunings of the west orc values", "Prunings of the west orc record"]);
  });

  it("numbers the copy and the record where their names are taken, and says the copy's own name on the record", async () => {
    const workbook = new MemoryWorkbook("Tin 3", [...inputs, moisture]);
    workbook.sheets.set("tin 3 VALUES", new Map());
    workbook.sheets.set("Tin 3 record", new Map());
    const { copy, record } = await shareAsValues(workbook, "Tin 3", DAY);
    expect([copy, record]).toEqual(["Tin 3 values (2)", "Tin 3 record (2)"]);
    expect(JSON.stringify(workbook.plans[0]?.cells)).toContain('\\"Tin 3 values (2)\\"');
    expect(workbook.sheets.get("tin 3 VALUES")?.size).toBe(0);
  });

  it.each(["#BUSY!", "#CALC!", "#GETTING_DATA"])("refuses while a cell shows %s, and leaves nothing behind", async (code) => {
    const busy = reading("B7", { formula: "=B4*2", value: code, error: code });
    expect(await refusal([moisture, busy])).toEqual({
      problem: ["InputProblem", `sheet: B7 on "Tin 3" is not calculated yet (${code}). Wait until it shows a value, then share again.`],
      calls: ["read Tin 3", "read Tin 3"],
    });
  });

  it("names up to three cells that are in the way", async () => {
    const busy = ["B7", "B8", "B9", "B10", "B11"].map((cell) => reading(cell, { formula: "=B4*2", value: "#BUSY!", error: "#BUSY!" }));
    expect((await refusal(busy)).problem[1]).toBe(
      'sheet: B7, B8 and B9 (and 2 more) on "Tin 3" are not calculated yet (#BUSY!). Wait until each shows a value, then share again.',
    );
  });

  it("refuses a Retort call in error", async () => {
    const wrong = reading("B4", { formula: "=IF(B1>0,RETORT.MOISTURE.WET(B1,B2,B3),0)", value: "#VALUE!", error: "#VALUE!" });
    expect((await refusal([wrong])).problem).toEqual([
      "InputProblem",
      'sheet: B4 on "Tin 3" is in error (#VALUE!). Select the cell to read why under This cell, mend it, then share again.',
    ]);
  });

  it("refuses an error inside the spill of a Retort call, naming the cell that shows it", async () => {
    const spill = [
      reading("D1", { formula: "=RETORT.MOLARMASS(A1:A2)", value: 18.015, spill: "D1:D2" }),
      reading("D2", { value: "#VALUE!", error: "#VALUE!" }),
    ];
    expect((await refusal(spill)).problem[1]).toBe(
      'sheet: D2 on "Tin 3" is in error (#VALUE!). Select the cell to read why under This cell, mend it, then share again.',
    );
  });

  it("explains #NAME? where the functions are not loaded", async () => {
    const unknown = reading("B4", { formula: "=_xldudf_RETORT_MOISTURE_WET(B1,B2,B3)", value: "#NAME?", error: "#NAME?" });
    expect((await refusal([unknown])).problem[1]).toBe(
      `sheet: B4 on "Tin 3" is shown as #NAME?: the workbook has not loaded Retort's functions. Enter the cell formula again, then share again.`,
    );
  });

  it("lets an error of the sheet's own, without a Retort call, stand", async () => {
    const { workbook, copy } = await shared([moisture, reading("B9", { formula: "=1/0", value: "#DIV/0!", error: "#DIV/0!" })]);
    expect(workbook.sheets.get(copy)?.get("B9")?.value).toBe("#DIV/0!");
  });

  it("shares cells in error as they are where the user says so, and never what is still on its way", async () => {
    const failed = reading("B5", { formula: "=RETORT.MOISTURE.WET(B1,B2,B9)", value: "#VALUE!", error: "#VALUE!" });
    const workbook = new MemoryWorkbook("Tin 3", [...inputs, moisture, failed]);
    const { copy } = await shareAsValues(workbook, "Tin 3", DAY, { withErrors: true });
    expect(["B4", "B5"].map((cell) => workbook.sheets.get(copy)?.get(cell)?.value)).toEqual([0.35, "#VALUE!"]);
    const busy = new MemoryWorkbook("Tin 3", [...inputs, { ...failed, value: "#BUSY!", error: "#BUSY!" }]);
    await expect(shareAsValues(busy, "Tin 3", DAY, { withErrors: true })).rejects.toThrow("not calculated yet");
  });
});
