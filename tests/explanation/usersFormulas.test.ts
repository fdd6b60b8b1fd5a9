// Formulas that people write around our functions: names, choices, and functions that take a whole column of answers.
import { explainCell } from "../../src/explanation/explainCell";
import type { CallExplanation, CellExplanation } from "../../src/explanation/CellExplanation";
import type { DefinedName } from "../../src/workbook/CellsBeside";
import { SheetInMemory, type WrittenCell } from "./SheetInMemory";

const VAPOUR = "RETORT.VOLATILEFRACTION";
// Three samples in one vessel: 7 of 10 g, 5.5 of 11 g and 6 of 12 g left.
const CELLS = { A1: 3, B2: 25, C2: 35, C3: 36, C4: 37, D2: 28, D3: 30.5, D4: 31, B5: 25, B6: 35, B7: 28 };
const NAMES: readonly DefinedName[] = [
  { name: "vessel", formula: "=Run!$B$5" },
  { name: "vessel", sheet: "2026-11", formula: "='2026-11'!$B$2" },
  { name: "heated", formula: "=Run!$B$5+10" },
  { name: "again", formula: "=heated" },
  { name: "moving", formula: "=Run!B5" },
  { name: "vapour", formula: `=LAMBDA(before,after,${VAPOUR}(vessel,before,after))` },
];

async function explain(formula: string, held: WrittenCell = { value: 0.7 }, cell = "E9"): Promise<CellExplanation> {
  const workbook = new SheetInMemory({ Run: { ...CELLS, E9: { formula, ...(held as object) } }, "2026-11": { B2: 26 } });
  workbook.names = NAMES;
  return explainCell(workbook, { sheet: "Run", cell });
}

const inputs = ({ calls }: CellExplanation, call = 0): string[] =>
  (calls[call] as CallExplanation).inputs.map(({ value, from }) => `${value} | ${from}`);

describe("explainCell(workbook, address) on names", () => {
  const arguments3 = ["25 g | B5", "35 g | B6", "28 g | B7"];

  test.each<[string, string[]]>([
    [`=LET(v,B5,full,B6,${VAPOUR}(v,full,B7))`, ["25 g | v = B5", "35 g | full = B6", "28 g | B7"]],
    [`=LET(v,B5,full,v+10,${VAPOUR}(v,full,B7))`, ["25 g | v = B5", "35 g | full = v+10", "28 g | B7"]],
    [`=LET(v,B5,w,v,${VAPOUR}(w,B6,B7))`, ["25 g | w = v = B5", "35 g | B6", "28 g | B7"]],
    [`=LET(V,B5,LET(v,B6,${VAPOUR}(B5,v,B7)))`, ["25 g | B5", "35 g | v = B6", "28 g | B7"]],
    [`=LAMBDA(x,${VAPOUR}(B5,B6,x))(B7)`, ["25 g | B5", "35 g | B6", "28 g | x = B7"]],
    [`=LET(f,LAMBDA(x,y,${VAPOUR}(B5,x,y)),f(B6,B7))`, ["25 g | B5", "35 g | x = B6", "28 g | y = B7"]],
    [`=${VAPOUR}(vessel,B6,B7)`, ["25 g | vessel = B5", "35 g | B6", "28 g | B7"]],
    [`=${VAPOUR}(VESSEL,heated,B7)`, ["25 g | VESSEL = B5", "35 g | heated = Run!B5+10", "28 g | B7"]],
    [`=${VAPOUR}(B5,again,B7)`, ["25 g | B5", "35 g | again = heated", "28 g | B7"]],
    [`=${VAPOUR}('2026-11'!vessel-1,B6,B7)`, ["25 g | '2026-11'!vessel-1", "35 g | B6", "28 g | B7"]],
    [
      `=${VAPOUR}(INDEX(B2:B7,4),INDEX(B5:C5,1)+10,INDEX(D2:D4,1,1))`,
      ["25 g | B5, by INDEX(B2:B7,4)", "35 g | INDEX(B5:C5,1)+10", "28 g | D2, by INDEX(D2:D4,1,1)"],
    ],
    [`=${VAPOUR}(MIN(B5:B6),MAX(B5:B7),SMALL(B5:B7,2))`, ["25 g | MIN(B5:B6)", "35 g | MAX(B5:B7)", "28 g | SMALL(B5:B7,2)"]],
  ])("resolves the arguments of %s", async (formula, wanted) => {
    const explained = await explain(formula);
    expect(inputs(explained)).toEqual(wanted);
    expect(explained.calls[0]?.result).toBe("0.7 (70 %)");
    expect(explained.calls[0]?.working.length).toBeGreaterThan(0);
    expect(explained.notes).toEqual([]);
  });

  test("reads a name of another sheet there", async () => {
    const explained = await explain(`=${VAPOUR}('2026-11'!vessel,B6,B7)`, { value: 7 / 9 });
    expect(inputs(explained)[0]).toBe("26 g | '2026-11'!vessel = 2026-11!B2");
    expect(explained.notes).toEqual([]);
  });

  test("finds the call that a named LAMBDA makes, and says so", async () => {
    const explained = await explain("=vapour(B6,B7)");
    expect(explained.opening).toBe("E9 calls a Retort function by the name vapour.");
    expect(inputs(explained)).toEqual(["25 g | vessel = B5", "35 g | before = B6", "28 g | after = B7"]);
    expect(explained.calls[0]).toMatchObject({ result: "0.7 (70 %)", extent: "the call in the name vapour" });
    expect((await explain('=IF(A1>5,vapour(B6,B7),"later")', { value: "later" })).calls).toEqual([]);
  });

  test("leaves to the cell a name that moves with the cell, and one that is not known", async () => {
    for (const name of ["moving", "unheard"]) {
      const explained = await explain(`=${VAPOUR}(${name},B6,B7)`);
      expect(inputs(explained)[0]).toBe(`worked out in the cell | ${name}`);
      expect(explained.calls[0]?.result).toBe("0.7 (as the cell shows it)");
      expect(explained.notes).toEqual([]);
    }
  });

  test("asks for names only where the formula has any that LET or LAMBDA do not give", async () => {
    const asked = async (formula: string): Promise<readonly string[]> => {
      const workbook = new SheetInMemory({ Run: { ...CELLS, E9: { formula, value: 0.7 } }, "2026-11": {} });
      await explainCell(workbook, { sheet: "Run", cell: "E9" });
      return workbook.askedBeside;
    };
    expect(await asked(`=LET(v,B5,${VAPOUR}(v,B6,B7))`)).toEqual([]);
    expect(await asked("=SUM(B5:B7)*1E3")).toEqual([]);
    expect(await asked(`=${VAPOUR}(vessel,'2026-11'!vessel,B7)`)).toEqual(["Run", "2026-11"]);
  });

  test.each([`=LET(v,B5,full,B6,${VAPOUR}(v,full,B7))`, `=LAMBDA(x,${VAPOUR}(B5,B6,x))(B7)`])(
    "says of %s when the cell shows another value",
    async (formula) => {
      expect((await explain(formula, { value: 0.6, shown: "0.6" })).notes).toEqual([
        expect.stringMatching(/^The cell shows 0\.6, which is not what/),
      ]);
    },
  );

  test("the cells that LET and LAMBDA refer to are read like any other", async () => {
    expect(inputs(await explain(`=${VAPOUR}(B5,B6,B7)`))).toEqual(arguments3);
    const workbook = new SheetInMemory({
      Run: { E9: { formula: `=LET(v,Sheet2!B5,LAMBDA(x,${VAPOUR}(v,Sheet2!B6,x))(Sheet2!B7))`, value: 0.7 } },
      Sheet2: CELLS,
    });
    expect(inputs(await explainCell(workbook, { sheet: "Run", cell: "E9" }))).toEqual([
      "25 g | v = Sheet2!B5",
      "35 g | Sheet2!B6",
      "28 g | x = Sheet2!B7",
    ]);
  });
});

describe("explainCell(workbook, address) on choices", () => {
  const [taken, other] = [`${VAPOUR}(B5,B6,B7)`, `${VAPOUR}(B5,C3,D3)`];
  const isTaken = `Taken: ${taken}. Not taken: ${other}.`;

  test.each<[string, string]>([
    [`=IF(A1>2,${taken},${other})`, `IF asks A1>2, which is TRUE with A1 = 3. ${isTaken}`],
    [`=IF(A1<2,${other},${taken})`, `IF asks A1<2, which is FALSE with A1 = 3. ${isTaken}`],
    [`=IF(AND(A1>2,B5<B6),${taken},${other})`, `IF asks AND(A1>2,B5<B6), which is TRUE with A1 = 3, B5 = 25, B6 = 35. ${isTaken}`],
    [`=IF(F1="",${taken},${other})`, `IF asks F1="", which is TRUE with F1 = blank. ${isTaken}`],
    [`=IFS(A1>5,${other},A1>2,${taken})`, `IFS asks A1>2, which is TRUE with A1 = 3. ${isTaken}`],
    [`=CHOOSE(A1-1,${other},${taken})`, `CHOOSE asks A1-1, which is 2 with A1 = 3. ${isTaken}`],
    [`=SWITCH(A1,1,${other},3,${taken})`, `SWITCH asks A1, which is 3. ${isTaken}`],
    [`=SWITCH(A1,1,${other},${taken})`, `SWITCH asks A1, which is 3. ${isTaken}`],
    [`=IFERROR(${taken},${other})`, `IFERROR: ${taken} gives no error, so it is taken. Not taken: ${other}.`],
    [`=LET(n,A1,IF(n>2,${taken},${other}))`, `IF asks n>2, which is TRUE with n = 3. ${isTaken}`],
  ])("says of %s which branch is taken, and of the call in the other that it is not worked out", async (formula, way) => {
    const explained = await explain(formula);
    expect(explained.ways).toEqual([way]);
    const [[yes], [no]] = [
      explained.calls.filter(({ passedOver }) => passedOver === undefined),
      explained.calls.filter((one) => one.passedOver !== undefined),
    ];
    expect(yes).toMatchObject({ result: "0.7 (70 %)" });
    expect(yes?.working.length).toBeGreaterThan(0);
    expect(no).toMatchObject({ result: "", working: [], passedOver: `Not worked out in this cell: ${way}` });
    expect(no?.inputs.map(({ value }) => value)).toEqual(["25 g", "36 g", "30.5 g"]);
    expect(explained.notes).toEqual([]);
  });

  test("of a branch not taken a wrong input is no problem", async () => {
    const explained = await explain(`=IF(A1>5,${VAPOUR}(B5,B7,B6),"later")`, { value: "later" });
    expect(explained.calls[0]).toMatchObject({ result: "", working: [], passedOver: expect.stringContaining('Taken: "later".') });
    expect(explained.calls[0]?.problem).toBeUndefined();
    expect(explained.notes).toEqual([]);
  });

  test("tells the error that another answer stands for", async () => {
    const explained = await explain(`=IFERROR(${VAPOUR}(B5,B7,B6),0)`, { value: 0 });
    expect(explained.ways).toEqual([`IFERROR: ${VAPOUR}(B5,B7,B6) gives #VALUE!, so 0 is taken.`]);
    expect(explained.calls[0]?.problem?.message).toMatch(/^after: 35 g is more than before/);
    expect(explained.notes).toEqual([]);
  });

  test("says which way an argument went, and the cell it came to", async () => {
    const explained = await explain(`=${VAPOUR}(IF(A1>2,B5,B2),IFS(A1>5,C2,TRUE,B6),SWITCH(A1,1,D3,3,B7))`);
    expect(inputs(explained)).toEqual(["25 g | B5, by IF(A1>2,B5,B2)", "35 g | B6, by IFS(A1>5,C2,TRUE,B6)", "28 g | B7, by SWITCH(A1,1,D3,3,B7)"]);
    expect(explained.ways).toEqual([
      "IF asks A1>2, which is TRUE with A1 = 3. Taken: B5. Not taken: B2.",
      "IFS asks TRUE. Taken: B6. Not taken: C2.",
      "SWITCH asks A1, which is 3. Taken: B7. Not taken: D3.",
    ]);
  });

  test("where only the spreadsheet knows the condition, both branches are explained and none is called taken", async () => {
    const explained = await explain(`=IF(INFO("release")>"1",${taken},${other})`);
    expect([explained.ways, explained.calls.map(({ passedOver }) => passedOver), explained.notes]).toEqual([[], [undefined, undefined], []]);
  });

  test("goes by the row of the cell where each row asks for itself", async () => {
    const formula = `=IF(C2:C4>35,${VAPOUR}(B2,C2:C4,D2:D4),0)`;
    const cells = { ...CELLS, E2: { formula, value: 0, spill: "E2:E4" }, E3: 0.5, E4: 0.5 };
    const at = (cell: string): Promise<CellExplanation> => explainCell(new SheetInMemory({ Run: cells }), { sheet: "Run", cell });
    expect((await at("E2")).calls[0]?.passedOver).toMatch(/IF asks C2:C4>35, which is FALSE in row 1\. Taken: 0\./);
    expect((await at("E3")).calls[0]).toMatchObject({ extent: "row 2 of 3", result: "0.5 (50 %)" });
    expect((await at("E3")).notes).toEqual([]);
  });
});

describe("explainCell(workbook, address) on a column of answers that another function takes", () => {
  const column = `${VAPOUR}(B2,C2:C4,D2:D4)`;

  test.each<[string, number, string]>([
    [`=SUM(${column})`, 1.7, "SUM({0.7; 0.5; 0.5}) = 1.7"],
    [`=100*MAX(${column})`, 70, "100*MAX({0.7; 0.5; 0.5}) = 70"],
    [`=LET(all,${column},MEDIAN(all))`, 0.5, "MEDIAN({0.7; 0.5; 0.5}) = 0.5"],
    [`=INDEX(${column},2)`, 0.5, "INDEX({0.7; 0.5; 0.5},2) = 0.5"],
    [`=COUNT(${column})+A1`, 6, "COUNT({0.7; 0.5; 0.5})+3 = 6"],
  ])("tells every row of %s", async (formula, value, around) => {
    const explained = await explain(formula, { value });
    const [call] = explained.calls;
    expect(call?.extent).toBe("all 3 rows, taken together");
    expect(inputs(explained)).toEqual(["25 g | B2", "3 filled: 35, 36, 37 g | C2:C4", "3 filled: 28, 30.5, 31 g | D2:D4"]);
    expect(call?.table?.rows).toEqual([["0.7"], ["0.5"], ["0.5"]]);
    for (const row of [1, 2, 3]) expect(call?.working.filter((line) => line.startsWith(`row ${row}: `)).length).toBeGreaterThan(0);
    expect([explained.around, explained.notes]).toEqual([around, []]);
  });

  test("tells the sentence of a row that is wrong, and of more rows than six how many", async () => {
    const rows = Object.fromEntries(
      Array.from({ length: 9 }, (_, row) => [
        [`C${row + 2}`, 35],
        [`D${row + 2}`, row === 1 ? 40 : 28],
      ]).flat(),
    );
    const workbook = new SheetInMemory({ Run: { B2: 25, ...rows, E9: { formula: `=SUM(${VAPOUR}(B2,C2:C10,D2:D10))`, error: "#VALUE!" } } });
    const { calls } = await explainCell(workbook, { sheet: "Run", cell: "E9" });
    expect(calls[0]?.working).toContain("row 2: #VALUE! after: 40 g is more than before, 35 g. Check for swapped cells or regained moisture.");
    expect(calls[0]?.working.at(-1)).toBe("and so on for 3 more rows");
  });

  test("says which time it is where a LAMBDA is called for each cell, and what the others gave", async () => {
    const mapped = `MAP(C2:C4,D2:D4,LAMBDA(x,y,${VAPOUR}(B2,x,y)))`;
    const [sum] = (await explain(`=SUM(${mapped})`, { value: 1.7 })).calls;
    expect(sum?.extent).toBe("time 1 of 3, which gave 0.7, 0.5, 0.5");
    const cells = { ...CELLS, E2: { formula: `=${mapped}`, value: 0.7, spill: "E2:E4" }, E3: 0.5, E4: 0.5 };
    const second = await explainCell(new SheetInMemory({ Run: cells }), { sheet: "Run", cell: "E3" });
    expect(inputs(second)).toEqual(["25 g | B2", "36 g | x = row 2 of C2:C4", "30.5 g | y = row 2 of D2:D4"]);
    expect(second.notes).toEqual([]);
  });
});

describe("explainCell(workbook, address).around", () => {
  test.each<[string, number, string]>([
    [`=${VAPOUR}(B5,B6,B7)`, 0.7, ""],
    [`=${VAPOUR}(B5,B6,B7)*100`, 70, "0.7*100 = 70"],
    [`=A1*ROUND(${VAPOUR}(B5,B6,B7),1)`, 2.1, "3*ROUND(0.7,1) = 2.1"],
    [`=IF(A1>2,A1+${VAPOUR}(B5,B6,B7),1)`, 3.7, "3+0.7 = 3.7"],
    [`=LET(f,LAMBDA(x,${VAPOUR}(B5,B6,x)),f(B7)*100)`, 70, "0.7*100 = 70"],
    [`=${VAPOUR}(B5,B6,B7)*INFO("x")`, 70, ""],
    [`=${VAPOUR}(B5,B6,B7)*100`, 71, ""],
  ])("of %s in a cell that shows %d is %j", async (formula, value, around) => {
    expect((await explain(formula, { value })).around).toBe(around);
  });
});
