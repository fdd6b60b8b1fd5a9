import { explainCell } from "../../src/explanation/explainCell";
import type { CallExplanation, CellExplanation } from "../../src/explanation/CellExplanation";
import { everyFunction } from "../../src/functions/catalogue";
import { SheetInMemory, type WrittenCell } from "./SheetInMemory";

const explain = (
  cells: Record<string, WrittenCell>,
  cell: string,
  others: Record<string, Record<string, WrittenCell>> = {},
): Promise<CellExplanation> => explainCell(new SheetInMemory({ Run: cells, ...others }), { sheet: "Run", cell });

const onlyCall = ({ calls }: CellExplanation): CallExplanation => {
  expect(calls).toHaveLength(1);
  return calls[0] as CallExplanation;
};

const rows = (call: CallExplanation): string[] => call.inputs.map(({ name, value, from }) => `${name} | ${value} | ${from}`);

describe("explainCell(workbook, address) on a cell that calls one function", () => {
  const weighings = { B5: 25, B6: 35, B7: 28 };

  test("gives every input with its value, unit and cell, the arithmetic, the result and the source", async () => {
    const explained = await explain({ ...weighings, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", value: 0.7 } }, "B9");
    const call = onlyCall(explained);
    expect(explained.opening).toBe("B9 calls a Retort function.");
    expect(rows(call)).toEqual(["vessel | 25 g | B5", "before | 35 g | B6", "after | 28 g | B7"]);
    expect(call.working.length).toBeGreaterThan(0);
    expect(call.working.join("\n")).toMatch(/35.*28.*25/s);
    expect(call.result).toBe("0.7 (70 %)");
    expect(call.resultAbout).toBe("Volatile fraction");
    expect(call.source).toMatch(/ASTM E872/);
    expect(call.caution).toMatch(/toxic and flammable/);
    expect(explained.notes).toEqual([]);
  });

  // Weighed in a vessel of 25 g; the change from 33.95 g to 33.9 g is 0.05 g of 8.9 g, so nothing is constant at 0.1 %.
  test.each(['""', "", ' "" '])("takes %j before another argument for left out", async (nothing) => {
    const formula = `=RETORT.CONSTANTWEIGHT({35; 34.2; 33.95; 33.9}, 0.001, ${nothing}, ${nothing}, 25)`;
    const call = onlyCall(await explain({ B9: { formula, value: 0 } }, "B9"));
    expect(
      rows(call)
        .slice(1, 5)
        .map((row) => row.replace(/^\w+ /, "")),
    ).toEqual(["| 0.001 | typed in the formula", "| left out | ", "| left out | ", "| 25 g | typed in the formula"]);
  });

  test("gives the whole message of what is wrong and marks the argument it names", async () => {
    const wrong = { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", error: "#VALUE!" };
    const call = onlyCall(await explain({ ...weighings, B7: 36.2, B9: wrong }, "B9"));
    expect(call.problem).toEqual({
      code: "#VALUE!",
      message: "after: 36.2 g is more than before, 35 g. Check for swapped cells or regained moisture.",
    });
    expect(call.inputs.filter(({ atFault }) => atFault).map(({ name }) => name)).toEqual(["after"]);
    expect(call.working).toEqual([]);
    expect(call.result).toBe("");
  });

  test("says which cell shows an error that passes through", async () => {
    const call = onlyCall(
      await explain({ ...weighings, B7: { error: "#N/A" }, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", error: "#N/A" } }, "B9"),
    );
    expect(call.inputs[2]).toMatchObject({ value: "shows #N/A", from: "B7", atFault: true });
    expect(call.problem?.message).toBe("after: the cell given here shows #N/A. Mend that cell first.");
  });

  test("calls a blank cell blank, though hosts hand it over as 0", async () => {
    const call = onlyCall(await explain({ B5: 25, B6: 35, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", error: "#VALUE!" } }, "B9"));
    expect(call.inputs[2]).toMatchObject({ value: "blank", from: "B7", atFault: true });
    expect(call.problem?.message).toBe("after: nothing here (blank or 0). Give grams.");
  });

  test("says of a blank or a 0 in an optional input that it counts as left out, and of a 0 that is a value no such thing", async () => {
    const buoyancy = { formula: "=RETORT.BUOYANCY(2,2700,A1,A2)", value: 2.0005891507336595 };
    expect(rows(onlyCall(await explain({ A2: 0, B9: buoyancy }, "B9"))).slice(2)).toEqual([
      "airDensity | blank, the same as left out | A1",
      "referenceDensity | 0 kg/m³, the same as left out | A2",
    ]);
    const drift = { formula: "=RETORT.ZERODRIFT(31.5,0.002,0.006,A1,2,5)", value: 31.4964 };
    expect(rows(onlyCall(await explain({ A1: 0, B9: drift }, "B9")))[3]).toBe("timeBefore | 0 | A1");
    const series = { formula: "=RETORT.CONSTANTWEIGHT(B1:B2,A3,A3,B4:B5,A1)", error: "#VALUE!" };
    const { inputs, problem } = onlyCall(await explain({ B1: 35, B2: 34, A1: 0, B9: series }, "B9"));
    expect(inputs.map(({ value }) => value).slice(1, 5)).toEqual([
      "blank, the same as left out",
      "blank, the same as left out",
      "2 cells, all blank",
      "0 g",
    ]);
    expect(problem?.message).toMatch(/^vessel: nothing here \(blank or 0\)\..* type "tared"/);
  });

  test("takes a blank cell as 0 or as nothing, whichever the host of this cell did", async () => {
    const converted = { formula: '=RETORT.MOISTURE.CONVERT(A1,"wet","dry")' };
    const asZero = await explain({ B9: { ...converted, value: 0 } }, "B9");
    expect(onlyCall(asZero).result).toBe("0 (0 %)");
    expect(asZero.notes).toEqual([]);
    const asNothing = await explain({ B9: { ...converted, error: "#VALUE!" } }, "B9");
    expect(onlyCall(asNothing).problem?.message).toBe("moisture: nothing here (blank). Type a fraction such as 0.35 or 35%.");
    expect(asNothing.notes).toEqual([]);
  });

  test("works arguments out from numbers, dollar signs, quoted sheet names and arithmetic", async () => {
    const formula = "=RETORT.VOLATILEFRACTION(-(-20)-B1%,$B$6,('Oven 2''s tin'!C3+1)*2^2/2&\"\")";
    const explained = await explain({ B1: -500, B6: 35, B9: { formula, error: "#VALUE!" } }, "B9", { "Oven 2's tin": { C3: 13 } });
    const call = onlyCall(explained);
    expect(rows(call)).toEqual(["vessel | 25 g | -(-20)-B1%", "before | 35 g | B6", "after | \"28\" | ('Oven 2''s tin'!C3+1)*2^2/2&\"\""]);
    expect(call.problem?.message).toBe('after: "28" is text, not a number. Retype it as a number.');
  });

  test("names the other sheet of a reference and the numbers typed in the formula", async () => {
    const formula = '=RETORT.VOLATILEFRACTION("tared",Balance!C2,7)';
    const call = onlyCall(await explain({ B9: { formula, value: 0.3 } }, "B9", { Balance: { C2: 10 } }));
    expect(rows(call)).toEqual(['vessel | "tared" | typed in the formula', "before | 10 g | Balance!C2", "after | 7 g | typed in the formula"]);
    expect(call.result).toBe("0.3 (30 %)");
  });

  test("reads each range once, all of them together, within where a run sheet would stand", async () => {
    const workbook = new SheetInMemory({ Run: { ...weighings, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7+B5-B5)", value: 0.7 } } });
    await explainCell(workbook, { sheet: "Run", cell: "B9" });
    expect(workbook.asked).toEqual(["Run!A1:Z400"]);
  });

  test("takes an input too large to be read for worked out in the cell, and says so", async () => {
    const workbook = new SheetInMemory({ Run: { C1: { formula: '=RETORT.CONSTANTWEIGHT(A:A,0.01,"absolute")', value: 3 } } });
    workbook.readInputs = async (address) => ({ again: await workbook.look(address), ranges: [undefined] });
    const explained = await explainCell(workbook, { sheet: "Run", cell: "C1" });
    expect(onlyCall(explained).inputs[0]).toMatchObject({ value: "worked out in the cell", from: "A:A" });
    expect(onlyCall(explained).result).toBe("3 (as the cell shows it)");
    expect(explained.notes).toEqual([
      "A:A holds more cells than are read here at once, so what is worked out from it is given as the cell shows it.",
    ]);
  });

  test("says that the cell kept changing while it was read", async () => {
    const workbook = new SheetInMemory({ Run: { ...weighings, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", value: 0.7 } } });
    const read = workbook.readInputs;
    let reads = 0;
    workbook.readInputs = async (address, wanted) => {
      workbook.sheets.Run = { ...workbook.sheets.Run, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", value: 0.7, shown: `${reads++}` } };
      return read(address, wanted);
    };
    const explained = await explainCell(workbook, { sheet: "Run", cell: "B9" });
    expect(explained.notes).toEqual([
      "The cell or its inputs changed while they were read. What follows explains the last look; select the cell again.",
    ]);
  });

  test("reads the stored form of a call like the typed one", async () => {
    const stored = { formula: "=_xldudf_RETORT_VOLATILEFRACTION(B5,B6,B7)", error: "#NAME?" };
    const explained = await explain({ ...weighings, B9: stored }, "B9");
    expect(onlyCall(explained).result).toBe("0.7 (70 %)");
    expect(explained.notes).toEqual([
      "The cell shows #NAME?: the add-in had not loaded when the sheet was calculated. With the add-in loaded, open the cell for editing and press Enter.",
    ]);
  });

  // A cell keeps 15 digits, so a value that differs in the 13th is another one.
  test.each([
    [0.7 * (1 + 2e-13), false],
    [0.7 + 2e-11, true],
    [0.7 - 2e-11, true],
  ])("tells a rounding in the last digits from another value: %d", async (value, differs) => {
    const explained = await explain({ ...weighings, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", value } }, "B9");
    expect(explained.notes).toHaveLength(differs ? 1 : 0);
  });

  test("says so when the cell shows another value than its formula gives now", async () => {
    const explained = await explain({ ...weighings, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", value: 0.65 } }, "B9");
    expect(explained.notes).toEqual([
      "The cell shows 0.65, which is not what its formula gives for these inputs now. Recalculate the sheet; if it stays, the cell was saved by another version.",
    ]);
  });

  test.each<[string, WrittenCell, WrittenCell]>([
    ["a value where its inputs are wrong now", { value: 0.7 }, 36],
    ["an error where its inputs are right now", { error: "#N/A" }, 28],
    ["another error than its inputs give now", { error: "#N/A" }, 36],
  ])("says so when the cell shows %s", async (_what, shown, after) => {
    const cells = { ...weighings, B7: after, B9: { formula: "=RETORT.VOLATILEFRACTION(B5,B6,B7)", ...(shown as object) } };
    expect((await explain(cells, "B9")).notes).toEqual([expect.stringMatching(/^The cell shows .*, which is not what its formula gives/)]);
  });

  test.each(["=RETORT.NOSUCHTHING(1)", "=_xldudf_RETORT_NOSUCHTHING(1)"])(
    "names the function in %s, which this version does not have",
    async (formula) => {
      const explained = await explain({ B9: { formula, error: "#NAME?" } }, "B9");
      expect(explained.calls).toEqual([]);
      expect(explained.opening).toBe("B9 calls a function that this version of Retort does not have.");
      expect(explained.notes).toEqual(["RETORT.NOSUCHTHING: there is no such function in this version. Look it up in the Functions tab."]);
    },
  );

  test.each([
    ['=RETORT.MOLARMAS("CaCO3")', "RETORT.MOLARMAS: there is no such function in this version. Nearest name: RETORT.MOLARMASS."],
    ["=CONSTANTWEIGHT(A1:A9,0.01)", "CONSTANTWEIGHT: there is no such function in this version. Nearest name: RETORT.CONSTANTWEIGHT."],
    ['=MOLARMASS("CaCO3")', "MOLARMASS: there is no such function in this version. Nearest name: RETORT.MOLARMASS."],
    ['=1+RETROT.MOLARMASS("CaCO3")', "RETROT.MOLARMASS: there is no such function in this version. Nearest name: RETORT.MOLARMASS."],
    [
      "=RETORT.MOISTURE(1,2,3)",
      "RETORT.MOISTURE: there is no such function in this version. Nearest names: RETORT.MOISTURE.WET, RETORT.MOISTURE.DRY, RETORT.MOISTURE.CONVERT.",
    ],
    [
      "=MOISTURE(1,2,3)",
      "MOISTURE: there is no such function in this version. Nearest names: RETORT.MOISTURE.WET, RETORT.MOISTURE.DRY, RETORT.MOISTURE.CONVERT.",
    ],
  ])("offers the nearest names for the function in %s and does not blame the add-in", async (formula, note) => {
    expect((await explain({ B9: { formula, error: "#NAME?" } }, "B9")).notes).toEqual([note]);
  });

  test.each(["=KILNS(1,2)", "=RETORT.MOLARMASS(CaO)", "=CONVERT(oven,1)"])("says of %s that a name is not known", async (formula) => {
    expect((await explain({ B9: { formula, error: "#NAME?" } }, "B9")).notes).toEqual([
      "A name in this formula is not known here. Check its spelling; Retort's functions begin with RETORT. and text stands in double quotes.",
    ]);
  });

  test("says nothing of a function outside the namespace that gives its value, though its name is near one of ours", async () => {
    expect((await explain({ B9: { formula: "=BURN.PRODUCT(1)", value: 1 } }, "B9")).notes).toEqual([]);
  });

  test("says how many arguments a function takes when more are given, whatever the cell makes of them", async () => {
    const message = "RETORT.MOISTURE.WET: 4 arguments given; it takes 3 at most. Use a decimal point, and commas only between the arguments.";
    const explained = await explain({ B9: { formula: "=RETORT.MOISTURE.WET(25,35,31,5)", error: "#VALUE!", value: "#VALUE!" } }, "B9");
    expect(onlyCall(explained)).toMatchObject({ problem: { code: "#VALUE!", message }, result: "", working: [] });
    expect(explained.notes).toEqual([]);
    expect(onlyCall(await explain({ B9: { formula: "=1*RETORT.MOISTURE.WET(25,35,31,5)", error: "#VALUE!" } }, "B9")).problem).toEqual({
      code: "#VALUE!",
      message,
    });
  });

  test("says that semicolons stand where this spreadsheet wants commas, and leaves those of an array and of a text alone", async () => {
    for (const formula of ["=RETORT.MOISTURE.WET(25;35;31.5)", "=RETORT.MOISTURE.WET(25;35,31.5)", "=RETORT.MOISTURE.WET({25;26},35;31.5)"]) {
      const mistyped = await explain({ B9: { formula, error: "#VALUE!" } }, "B9");
      expect(onlyCall(mistyped).problem?.message).toBe(
        "RETORT.MOISTURE.WET: semicolons stand between the arguments. Cell formulas here take commas: type a comma in place of each.",
      );
    }
    const array = await explain({ B9: { formula: "=RETORT.MOISTURE.WET(25,35,SUM({31;0.5}))", value: 0.35, shown: "0.35" } }, "B9");
    expect(onlyCall(array).problem).toBeUndefined();
    const text = await explain({ B9: { formula: '=RETORT.MOLARMASS("H2O; ice")', error: "#VALUE!" } }, "B9");
    expect(onlyCall(text).problem?.message).not.toMatch(/semicolons/);
  });
});

describe("explainCell(workbook, address) on calls inside other formulas", () => {
  test("explains the call that a test for blanks guards, and says that the cell waits", async () => {
    const formula = '=IF(COUNT(B5:B7)<3,"",RETORT.VOLATILEFRACTION(B5,B6,B7))';
    const explained = await explain({ B5: 25, B6: 35, B9: { formula, value: "" } }, "B9");
    expect(onlyCall(explained).problem?.message).toBe("after: nothing here (blank or 0). Give grams.");
    expect(onlyCall(explained).waiting).toBe(true);
    expect(explained.notes).toEqual(["The cell shows nothing yet: its formula waits until the inputs it tests for are there."]);
  });

  test("leaves to the cell an argument that only the spreadsheet can work out", async () => {
    const formula = "=RETORT.VOLATILEFRACTION(OFFSET(B4,1,0),B6,B7)";
    const explained = await explain({ B5: 25, B6: 35, B7: 28, B9: { formula, value: 0.7 } }, "B9");
    const call = onlyCall(explained);
    expect(call.inputs[0]).toMatchObject({ value: "worked out in the cell", from: "OFFSET(B4,1,0)" });
    expect(call.result).toBe("0.7 (as the cell shows it)");
    expect(call.working).toEqual([]);
    expect(explained.notes).toEqual([]);
  });

  test("takes the cell's own value for a guarded call whose arguments it cannot work out", async () => {
    const formula = '=IF(COUNT(B5:B7)<3,"",RETORT.VOLATILEFRACTION(OFFSET(B4,1,0),B6,B7))';
    const explained = await explain({ B5: 25, B6: 35, B7: 28, B9: { formula, value: 0.7 } }, "B9");
    expect(onlyCall(explained)).toMatchObject({ result: "0.7 (as the cell shows it)", waiting: false });
    expect(explained.notes).toEqual([]);
  });

  test("gives the sentence that the cell itself keeps when the call cannot be worked out here", async () => {
    const shown = {
      formula: "=RETORT.VOLATILEFRACTION(OFFSET(B4,1,0),B6,B7)",
      error: "#VALUE!",
      message: "after: nothing here (blank or 0). Give grams.",
    };
    const call = onlyCall(await explain({ B5: 25, B6: 35, B9: shown }, "B9"));
    expect(call.problem).toEqual({ code: "#VALUE!", message: "after: nothing here (blank or 0). Give grams." });
    expect(call.inputs[2]).toMatchObject({ name: "after", atFault: true });
  });

  test("explains a call inside a call, the outer one first", async () => {
    const formula = "=RETORT.VOLATILEFRACTION(B5,B6,B5+10*(1-RETORT.VOLATILEFRACTION(B5,B6,B7)))";
    const explained = await explain({ B5: 25, B6: 35, B7: 28, B9: { formula, value: 0.7 } }, "B9");
    expect(explained.opening).toBe("B9 makes 2 Retort calls.");
    expect(explained.calls.map(({ inputs }) => inputs[2]?.from)).toEqual(["B5+10*(1-RETORT.VOLATILEFRACTION(B5,B6,B7))", "B7"]);
    expect(explained.calls[0]?.inputs[2]?.value).toBe("28 g");
    expect(explained.notes).toEqual([]);
  });
});

describe("explainCell(workbook, address) on a column of answers", () => {
  const formula = "=RETORT.VOLATILEFRACTION(B2,C2:C4,D2:D4)";
  const cells = {
    B2: 25, C2: 35, C3: 36, C4: null, D2: 28, D3: 30.5, D4: null,
    E2: { formula, value: 0.7, spill: "E2:E4" }, E3: 0.5, E4: "",
  }; // prettier-ignore

  test("explains the first row for the formula cell", async () => {
    const call = onlyCall(await explain(cells, "E2"));
    expect(call.extent).toBe("row 1 of 3");
    expect(rows(call)).toEqual(["vessel | 25 g | B2", "before | 35 g | C2", "after | 28 g | D2"]);
  });

  test("names the formula cell and explains the row of a cell that it fills", async () => {
    const explained = await explain(cells, "E3");
    const call = onlyCall(explained);
    expect(explained.opening).toBe("E3 is filled by the formula in E2.");
    expect(explained.cellFormula).toBe(formula);
    expect(call.extent).toBe("row 2 of 3");
    expect(rows(call)).toEqual(["vessel | 25 g | B2", "before | 36 g | C3", "after | 30.5 g | D3"]);
    expect(call.result).toBe("0.5 (50 %)");
    expect(explained.notes).toEqual([]);
  });

  test("takes a row of answers across like a column of answers down", async () => {
    const across = {
      B1: 35,
      C1: 36,
      B2: 28,
      C2: 30.5,
      B3: { formula: "=RETORT.VOLATILEFRACTION(25,B1:C1,B2:C2)", value: 0.7, spill: "B3:C3" },
      C3: 0.5,
    };
    const explained = await explain(across, "C3");
    expect(explained.opening).toBe("C3 is filled by the formula in B3.");
    expect(onlyCall(explained).extent).toBe("column 2 of 2");
    expect(rows(onlyCall(explained))).toEqual(["vessel | 25 g | typed in the formula", "before | 36 g | C1", "after | 30.5 g | C2"]);
    expect(explained.notes).toEqual([]);
  });

  test("explains a single call within a spill that is larger than its answer", async () => {
    const part = { formula: "=C2:D3*RETORT.VOLATILEFRACTION(25,35,28)", value: 24.5, spill: "E2:F3" };
    const explained = await explain({ C2: 35, D2: 1, C3: 36, D3: 2, E2: part, F2: 0.7, E3: 25.2, F3: 1.4 }, "F3");
    expect(onlyCall(explained)).toMatchObject({ result: "0.7 (70 %)", extent: "" });
    expect(onlyCall(explained).working.length).toBeGreaterThan(0);
    expect(explained.notes).toEqual([]);
  });

  test("says of a row without inputs that nothing has been entered", async () => {
    const explained = await explain(cells, "E4");
    expect(onlyCall(explained).result).toBe("nothing yet: this row is blank");
    expect(explained.notes).toEqual([]);
  });

  test("takes a spill that is referred to by its formula cell", async () => {
    const spilled = { C2: { formula: "=F2:F3", value: 35, spill: "C2:C3" }, C3: 36 };
    const call = onlyCall(await explain({ B2: 25, ...spilled, D2: 28, E2: { formula: "=RETORT.VOLATILEFRACTION(B2,C2#,D2)", value: 0.7 } }, "E2"));
    expect(call.extent).toBe("row 1 of 2");
    expect(call.result).toBe("0.7 (70 %)");
  });

  test("takes whole columns and rows of a sheet that is used from further in only", async () => {
    const masses = { C3: 10, C4: 9.2, C5: 9.194, E3: { formula: '=RETORT.CONSTANTWEIGHT(C:C,0.01,"absolute")', value: 5 } };
    const down = onlyCall(await explain(masses, "E3"));
    expect(down.inputs[0]).toMatchObject({ value: "3 filled, 2 blank: 10, 9.2, 9.194 g", from: "C:C" });
    const across = { C3: 10, D3: 9.2, E3: 9.194, B5: { formula: '=RETORT.CONSTANTWEIGHT(3:3,0.01,"absolute")', value: 5 } };
    expect(onlyCall(await explain(across, "B5")).inputs[0]).toMatchObject({ value: "3 filled, 2 blank: 10, 9.2, 9.194 g", from: "3:3" });
  });

  test("takes whole columns as far as the sheet is used", async () => {
    const call = onlyCall(
      await explain({ C1: 35, C2: 36, D1: 28, D2: 30.5, E1: { formula: "=RETORT.VOLATILEFRACTION(25,C:C,D:D)", value: 0.7, spill: "E1:E2" } }, "E1"),
    );
    expect(call.inputs[1]).toMatchObject({ value: "35 g" });
    expect(call.result).toBe("0.7 (70 %)");
  });
});

describe("explainCell(workbook, address) on functions of whole columns and tables", () => {
  const weights = { A1: 10, A2: 9.2, A3: 9.194, A4: null };

  test("gives a column by its first values, its unit and how many cells are blank", async () => {
    const call = onlyCall(await explain({ ...weights, C1: { formula: '=RETORT.CONSTANTWEIGHT(A1:A4,0.01,"absolute")', value: 3 } }, "C1"));
    expect(call.inputs[0]).toMatchObject({ value: "3 filled, 1 blank: 10, 9.2, 9.194 g", from: "A1:A4" });
    expect(call.result).toBe("3");
    expect(call.working.join("\n")).toMatch(/9\.194 - 9\.2 = -0\.006/);
  });

  test.each([
    [4, "4 filled: 10, 9, 8, 7 g"],
    [5, "5 filled: 10, 9, 8 … 6 g"],
    [9, "9 filled: 10, 9, 8 … 2 g"],
  ])("shows of %d weighings the first ones and the last", async (count, value) => {
    const cells = Object.fromEntries(Array.from({ length: count }, (_, row) => [`A${row + 1}`, 10 - row]));
    const call = onlyCall(await explain({ ...cells, C1: { formula: `=RETORT.CONSTANTWEIGHT(A1:A${count},0.01,"absolute")`, value: 0 } }, "C1"));
    expect(call.inputs[0]).toMatchObject({ value, from: `A1:A${count}` });
  });

  test("says of a column in which nothing stands that all of it is blank", async () => {
    const call = onlyCall(await explain({ C1: { formula: '=RETORT.CONSTANTWEIGHT(A1:A3,0.01,"absolute")', error: "#VALUE!" } }, "C1"));
    expect(call.inputs[0]).toMatchObject({ value: "3 cells, all blank", from: "A1:A3", atFault: true });
  });

  test("gives the rows of a table, and the table's own sentence for a cell that it fills", async () => {
    const anchor = { formula: '=RETORT.CONSTANTWEIGHT.STEPS(A1:A4,0.01,"absolute")', value: "Weighing", spill: "C1:G4" };
    const explained = await explain({ ...weights, C1: anchor, G4: "steady" }, "G4");
    const { table, result } = onlyCall(explained);
    expect(explained.opening).toBe("G4 is filled by the formula in C1.");
    expect(table).toMatchObject({ firstRow: 1, rowCount: 4 });
    expect(table?.rows[3]).toEqual(["3", "9.194", "-0.006", "0.01", "steady"]);
    expect(result).toBe("");
    expect(explained.notes).toEqual([]);
  });

  test("shows the rows of a long table up to the selected one", async () => {
    const masses = Object.fromEntries(Array.from({ length: 40 }, (_, row) => [`A${row + 1}`, 20 - row / 10]));
    const anchor = { formula: '=RETORT.CONSTANTWEIGHT.STEPS(A1:A40,0.01,"absolute")', value: "Weighing", spill: "C1:G41" };
    const { table } = onlyCall(await explain({ ...masses, C1: anchor, C31: 30 }, "C31"));
    expect(table).toMatchObject({ firstRow: 12, rowCount: 41 });
    expect(table?.rows).toHaveLength(20);
    expect(table?.rows.at(-1)?.[0]).toBe("30");
  });

  test("shows the whole table that INDEX takes one cell from", async () => {
    const formula = '=INDEX(RETORT.CONSTANTWEIGHT.STEPS(A1:A3,0.01,"absolute"),4,5)';
    const explained = await explain({ ...weights, C1: { formula, value: "steady" } }, "C1");
    expect(onlyCall(explained).table?.rows[3]?.[4]).toBe("steady");
    expect(explained.notes).toEqual([]);
  });
});

describe("explainCell(workbook, address) on every example of the catalogue", () => {
  const examples = everyFunction.flatMap(({ name, examples }) => examples.map(({ cell, gives }) => [name, cell, gives] as const));

  test.each(examples)("works %s out as the cell does: %s", async (name, formula, gives) => {
    const spilled = Array.isArray(gives);
    const value = spilled ? gives[0]?.[0] : gives;
    const explained = await explain({ J9: { formula, value, spill: spilled ? "J9:Z99" : "" } }, "J9");
    expect(explained.calls.map((call) => call.name)).toContain(`RETORT.${name}`);
    expect(explained.calls.filter(({ problem }) => problem !== undefined)).toEqual([]);
    expect(explained.calls.every(({ result, table }) => result !== "" || table !== undefined)).toBe(true);
    expect(explained.notes).toEqual([]);
    expect(explained.calls.flatMap(({ working }) => working).join("")).not.toMatch(/NaN|undefined|Infinity/);
  });
});

describe("explainCell(workbook, address) on cells without a Retort call", () => {
  test.each<[string, WrittenCell, string]>([
    ["a blank cell", null, "B2 is blank."],
    ["a number", 35, "B2 holds a number that was typed in, not a formula."],
    ["text", "lidded tin", "B2 holds text that was typed in, not a formula."],
    ["an error", { value: "#N/A", error: "#N/A" }, "B2 holds the error #N/A that was typed in, not a formula."],
    ["TRUE", true, "B2 holds TRUE or FALSE that was typed in, not a formula."],
    [
      "a formula of the spreadsheet's own",
      { formula: "=SUM(A1:A9)", value: 3 },
      "B2 holds a formula of the spreadsheet's own functions; no Retort function is in it.",
    ],
    [
      "a call that is only quoted",
      { formula: '="RETORT.VOLATILEFRACTION(1,2,3)"', value: "x" },
      "B2 holds a formula of the spreadsheet's own functions; no Retort function is in it.",
    ],
  ])("says in words what %s is", async (_what, held, sentence) => {
    const explained = await explain({ B2: held }, "B2");
    expect(explained.opening).toBe(sentence);
    expect(explained.calls).toEqual([]);
    expect(explained.notes).toEqual([]);
  });

  test("rejects with the workbook's own message when the sheet is gone", async () => {
    await expect(explainCell(new SheetInMemory({}), { sheet: "Gone", cell: "A1" })).rejects.toThrow('There is no sheet "Gone". Choose another.');
  });
});
