import type { CellContent } from "../../../src/workbook/Workbook";
import { FIXED, isHonest, isSame, liveAndPlain, type LiveAndPlain, type ShownTwice, type Typed } from "./liveAndPlain";

jest.setTimeout(60_000);

const run: Record<string, CellContent> = {
  ...{ A1: 25, B1: 35, C1: 31.5, A2: "tared", B2: 10, C2: 6.5, A3: 24.8, B3: 34.1, C3: 30.2, D1: "dr", D2: "y", D3: "wet" },
  ...{ A9: "C6H10O5", B9: "Ca", C9: "CO3" },
  F1: "=RETORT.MOISTURE.WET(A1,B1,C1)*100",
  F2: '=IF(B2="","",RETORT.MOISTURE.WET(A2,B2,C2))',
  F3: '=RETORT.MOISTURE.CONVERT(F1/100,"wet",D1&D2)',
  F4: '=RETORT.MOISTURE.CONVERT(RETORT.MOISTURE.WET(A1,B1,C1),D3,"dry")+RETORT.AIRDEMAND(1.2)',
  F5: "=SUM(RETORT.MOISTURE.WET(A1:A3,B1:B3,C1:C3))",
  F7: "=LET(w,RETORT.MOISTURE.WET(A1,B1,C1),w*w+w)",
  F8: "=RETORT.MOISTURE.WET(Vessel,B1,C1)",
  F9: "=Moist+1",
  H1: "=RETORT.MOISTURE.WET(A1:A3,B1:B3,C1:C3)",
  J1: "=RETORT.PROXIMATE(A1,B1,C1,C1-3,A1+0.1)",
  N1: "=RETORT.MOLARMASS(A9)",
  N2: '=RETORT.MOLARMASS("CaCO3")',
  N3: "=N1*2",
  N4: '=IF(N1>100,"heavy","light")',
  N5: "=SUM(N1:N3)",
  N6: "=COUNT(N1:N3)",
  N7: '=IF(N6=3,"in order","not")',
  N8: "=RETORT.MOLARMASS(B9&C9)",
  N9: "=SUM(A1:C3)",
};
const other: Record<string, CellContent> = {
  B2: "=Sheet1!N1+1",
  B3: "=RETORT.MOISTURE.WET(Sheet1!A1,Sheet1!B1,Sheet1!C1)",
  B4: "=SUM(Sheet1!A1:C3)",
};
const typed: Typed = { Sheet1: run, "It's (a) {b}": other };
const names = [
  { name: "Vessel", formula: "=Sheet1!$A$1" },
  { name: "Moist", formula: "=RETORT.MOISTURE.WET(Sheet1!$A$1,Sheet1!$B$1,Sheet1!$C$1)" },
];

let both: LiveAndPlain;
beforeAll(async () => {
  both = await liveAndPlain(typed, { names });
});
afterAll(() => both.close());

test("the plain workbook shows what the live one shows", async () => {
  const shown = await both.shown();
  expect(shown.length).toBeGreaterThan(40);
  expect(shown.filter(({ live, plain }) => !isSame(live, plain))).toEqual([]);
});

test("no call of ours is left", () => {
  const texts = both.shared.cells.flatMap(({ formulas }) => ("one" in formulas ? [formulas.one] : formulas.each.flat()));
  expect([...texts, ...(both.shared.workings?.cells.map(({ content }) => content) ?? [])].filter((text) => /RETORT/i.test(text))).toEqual([]);
});

test.each([
  ["B1", 250],
  ["C1", "n/a"],
  ["C1", 31.5],
  ["B1", 36],
  ["A9", "CO2"],
  ["A9", "C6H10O5"],
  ["B9", "Mg"],
  ["D2", "x"],
  ["C2", 0.1],
])("after %s becomes %s every cell is as the live one, or says that it is fixed", async (cell, content) => {
  await both.type("Sheet1", cell, content);
  const shown = await both.shown();
  const isError = (value: CellContent): boolean => typeof value === "string" && value.startsWith("#");
  const table = shown.find((one) => one.sheet === "Sheet1" && one.cell === "J1");
  // The numbers of a table in error are blank live, which no formula can be, and the error in the copy.
  const isOfTableInError = (one: ShownTwice): boolean =>
    one.sheet === "Sheet1" && /^[KL][2-6]$/.test(one.cell) && isError(table?.live ?? null) && one.live === null && isError(one.plain);
  expect(shown.filter((one) => !isHonest(one) && !isOfTableInError(one))).toEqual([]);
});

test("what is calculated from a fixed cell says so too, through SUM, COUNT and IF", async () => {
  await both.type("Sheet1", "A9", "CO2");
  const fixed = (await both.shown()).filter(({ plain }) => plain === FIXED).map(({ cell }) => cell);
  expect(fixed).toEqual(expect.arrayContaining(["N1", "N3", "N4", "N5", "N6", "N7"]));
  expect(fixed).not.toEqual(expect.arrayContaining(["N9"]));
});
