import { GridError, type GridValue, type HostFunction } from "../../src/workbook/grid/calling/HostFunction";
import { FIRST_SHEET, openHeadlessWorkbook, type HeadlessWorkbook } from "./headlessWorkbook";

jest.setTimeout(30_000);

const parameter = (name: string) => ({ name, about: name, optional: true });
const received: { given: unknown; address: string }[] = [];
const probe: HostFunction = {
  fullName: "PROBE.GIVEN",
  about: "Keeps what it is given.",
  parameters: ["a", "b", "c"].map(parameter),
  call: (given, address) => {
    received.push({ given, address });
    return [["kept"]];
  },
};
const table: readonly (readonly GridValue[])[] = [
  ["{1,2}", "5%", "TRUE"],
  [true, 0.1, new GridError("#N/A", "reading: none yet. Weigh again.")],
];
const spilling: HostFunction = { fullName: "PROBE.TABLE", about: "A table.", parameters: [], call: () => table.map((row) => [...row]) };
const failing: HostFunction = {
  fullName: "PROBE.FAILING",
  about: "Fails for its argument.",
  parameters: [parameter("a")],
  call: ([a]) => [[new GridError("#VALUE!", `a: ${String(a?.[0]?.[0])} will not do. Give another.`)]],
};

let open: HeadlessWorkbook;
beforeEach(async () => {
  open = await openHeadlessWorkbook([probe, spilling, failing]);
  received.length = 0;
});
afterEach(() => open.close());

async function typed(cells: Readonly<Record<string, string | number | boolean>>): Promise<void> {
  for (const [cell, content] of Object.entries(cells)) await open.type(FIRST_SHEET, cell, content);
  await open.settled();
}
const values = async (range: string) => (await open.workbook.read(FIRST_SHEET, range)).rows.map((row) => row.map(({ value }) => value));
const reading = async (cell: string) => (await open.workbook.read(FIRST_SHEET, cell)).rows[0]?.[0];

describe("arguments reach a function", () => {
  test("from a range with numbers, text, TRUE, a blank cell and an error as themselves", async () => {
    await typed({ A1: 1.5, A2: "'007", A3: true, A5: "=NA()", C1: "=PROBE.GIVEN(A1:A5)" });
    expect(received).toEqual([{ given: [[[1.5], ["007"], [true], [null], [new GridError("#N/A")]]], address: `${FIRST_SHEET}!C1` }]);
  });

  test("an argument left empty as undefined, a blank cell as a blank cell", async () => {
    await typed({ C1: "=PROBE.GIVEN(1,,A1)" });
    expect(received).toEqual([{ given: [[[1]], undefined, [[null]]], address: `${FIRST_SHEET}!C1` }]);
  });

  test("in any letter case of the function's name", async () => {
    await typed({ C1: "=probe.Given(2)" });
    expect(received).toEqual([{ given: [[[2]]], address: `${FIRST_SHEET}!C1` }]);
    expect((await reading("C1"))?.value).toBe("kept");
  });
});

describe("answers", () => {
  test("spill with text that looks like something else, TRUE, numbers and errors unchanged", async () => {
    await typed({ B2: "=PROBE.TABLE()" });
    expect(await values("B2:D3")).toEqual([
      ["{1,2}", "5%", "TRUE"],
      [true, 0.1, "#N/A"],
    ]);
    expect(await reading("B2")).toMatchObject({ formula: "=PROBE.TABLE()", spill: "B2:D3", error: "" });
    expect(await reading("D3")).toEqual({
      cell: "D3",
      formula: "",
      value: "#N/A",
      shown: "#N/A",
      error: "#N/A",
      message: "reading: none yet. Weigh again.",
      spill: "",
    });
  });

  test("that cannot spill show #SPILL! and appear once the way is free", async () => {
    await typed({ C2: "in the way", B2: "=PROBE.TABLE()" });
    expect(await reading("B2")).toMatchObject({ value: "#SPILL!", error: "#SPILL!", spill: "" });
    expect((await reading("C2"))?.value).toBe("in the way");
    await typed({ C2: "" });
    expect((await reading("C2"))?.value).toBe("5%");
  });

  test("keep the sentence behind an error, also inside another formula, and lose it when mended", async () => {
    await typed({ A1: 3, B1: "=PROBE.FAILING(A1)", B2: "=1+PROBE.FAILING(7)" });
    expect((await reading("B1"))?.message).toBe("a: 3 will not do. Give another.");
    expect((await reading("B2"))?.message).toBe("a: 7 will not do. Give another.");
    await typed({ A1: 4 });
    expect((await reading("B1"))?.message).toBe("a: 4 will not do. Give another.");
    await typed({ B1: 12 });
    expect(await reading("B1")).toMatchObject({ value: 12, error: "", message: "" });
  });

  test("an error passed on from another cell has no sentence of its own", async () => {
    await typed({ B1: "=PROBE.FAILING(1)", B2: "=B1*2" });
    expect(await reading("B2")).toMatchObject({ error: "#VALUE!", message: "" });
  });

  test("an unknown name in the namespace gives #NAME?", async () => {
    await typed({ B1: "=RETORT.NOSUCHTHING(1)" });
    expect(await reading("B1")).toMatchObject({ value: "#NAME?", error: "#NAME?", message: "" });
  });
});

test("two workbooks open at once do not calculate in each other", async () => {
  const other = await openHeadlessWorkbook();
  await typed({ A1: 2, B1: "=A1*10" });
  await other.type(FIRST_SHEET, "A1", 5);
  await other.type(FIRST_SHEET, "B1", "=A1*10");
  expect((await other.workbook.read(FIRST_SHEET, "B1")).rows[0]?.[0]?.value).toBe(50);
  expect(await values("B1")).toEqual([[20]]);
  other.close();
});

describe("the engine's defects are mended", () => {
  test("SORT leaves its range as it is for other formulas", async () => {
    await typed({ A1: 3, A2: 1, A3: 2, C1: "=SORT(A1:A3,1,-1)", D1: "=INDEX(A1:A3,1)", E1: "=SLOPE(A1:A3,{1;2;3})" });
    expect(await values("C1:C3")).toEqual([[3], [2], [1]]);
    expect(await values("D1:E1")).toEqual([[3, -0.5]]);
  });

  test("1.0, 0.10 and 1E-3 in a formula are numbers", async () => {
    await typed({ A1: 1, B1: "=A1>=1.0", B2: "=0.10+0", B3: "=1E-3", B4: "=ISNUMBER(1.50)", B5: '="1.0"' });
    expect(await values("B1:B5")).toEqual([[true], [0.1], [0.001], [true], ["1.0"]]);
  });
});
