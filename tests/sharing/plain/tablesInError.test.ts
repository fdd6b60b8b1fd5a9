import type { CellContent } from "../../../src/workbook/Workbook";
import { isSame, liveAndPlain, type LiveAndPlain } from "./liveAndPlain";

jest.setTimeout(60_000);

const table = "RETORT.PROXIMATE(A1,B1,C1,D1,E1)";
const nested: Record<string, CellContent> = {
  G1: `=IF(ISERROR(INDEX(${table},2,2)),"weigh again","in order")`,
  G2: `=IF(INDEX(${table},2,2)>0.3,"too moist","in order")`,
  G3: `=SUM(INDEX(${table},0,2))`,
  G4: `=MIN(INDEX(${table},0,2))`,
  G5: `=N(INDEX(${table},5,2))`,
  G6: `=MAX(0,INDEX(${table},2,2))`,
  G7: `=IFERROR(INDEX(${table},5,2),"refused")`,
  G8: `=ROWS(${table})`,
  G9: `=COLUMNS(INDEX(${table},2,0))`,
  G10: `=COUNT(${table})`,
  G11: `=IFERROR(VLOOKUP("Ash",${table},2,FALSE),"no ash")`,
  G12: `=INDEX(${table},2,1)&": "&INDEX(${table},2,2)`,
  G13: `=IFERROR(ROWS(${table})+0,"no table")`,
  G14: `=ISNUMBER(INDEX(${table},3,2))`,
};
// What stands in cells of the sheet is blank in them where the call is in error, the first cell left aside.
const beside: Record<string, CellContent> = {
  N1: '=IF(K2>0.3,"too moist","in order")',
  N2: "=SUM(K2:K6)",
  N3: "=K2*100",
  N4: '=IF(J2="","nothing",J2)',
  N5: "=COUNT(K2:K6)",
};
const weighed = { A1: 10, B1: 20, C1: 18, D1: 12, E1: 10.5 };

let both: LiveAndPlain;
beforeAll(async () => {
  both = await liveAndPlain({ Sheet1: { ...weighed, ...nested, J1: `=${table}`, ...beside } });
});
afterAll(() => both.close());

const shownIn = async (cells: readonly string[]): Promise<CellContent[]> => {
  const shown = await both.shown();
  return cells.map((cell) => shown.find((one) => one.cell === cell)?.plain ?? null);
};

test.each<[string, CellContent]>([
  ["C1", 18],
  ["C1", 20.5],
  ["C1", "n/a"],
  ["C1", ""],
  ["C1", 19],
  ["B1", "20"],
  ["B1", 20],
])("with %s %p a table within another function is one error wherever the call is one", async (cell, content) => {
  await both.type("Sheet1", cell, content);
  const shown = (await both.shown()).filter((one) => one.cell.startsWith("G"));
  expect(shown).toHaveLength(Object.keys(nested).length);
  expect(shown.filter(({ live, plain }) => !isSame(live, plain))).toEqual([]);
});

test("what is calculated from the cells of a table in error is never a number or a verdict, and its labels are empty", async () => {
  await both.type("Sheet1", "C1", 18);
  expect(await shownIn(["K2", ...Object.keys(beside)])).toEqual([0.2, "in order", 2, 20, "Moisture", 5]);
  await both.type("Sheet1", "C1", 21);
  const ERROR = "#VALUE!";
  expect(await shownIn(["J1", "J2", "K2", "L6"])).toEqual([ERROR, "", ERROR, ERROR]);
  expect(await shownIn(Object.keys(beside))).toEqual([ERROR, ERROR, ERROR, "nothing", 0]);
});
