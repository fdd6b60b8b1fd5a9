import { branchWithoutCalls } from "../../../../src/sharing/plain/change/branchWithoutCalls";
import { FIXED, isHonest, liveAndPlain } from "../liveAndPlain";

jest.setTimeout(120_000);

const nothing = (): undefined => undefined;
const place = { sheet: "Run", cell: "B9", area: "B9", nameOf: nothing, tableOf: nothing, spillOf: nothing };

test.each([
  ['=IF(A1<3,"",RETORT.DRYING.END(A1:A9,B1:B9))', 'IF(Run!A1<3,"",NA())'],
  ['=IF(A1<3,"",IF(ISNUMBER(A2),A2+1,IFERROR(INDEX(RETORT.DRYING.END(A1:A9,B1:B9),9,2),"")))', 'IF(Run!A1<3,"",IF(ISNUMBER(Run!A2),Run!A2+1,NA()))'],
  ["=RETORT.DRYING.END(A1:A9,B1:B9)", undefined],
  ["=IF(RETORT.DRYING.END(A1:A9,B1:B9)>3,1,2)", undefined],
  ["=IF(A1<3,Moist,2)", "IF(Run!A1<3,NA(),2)"],
  ["=SUM(A1:A3)", undefined],
])("branchWithoutCalls(%s) gives %s", (formula, text) => {
  expect(branchWithoutCalls(formula, place, {})).toBe(text);
});

const CURVE = { A1: 0, A2: 30, A3: 60, A4: 90, A5: 120, B1: 35, B2: 34.2, B3: 33.8, B4: 33.6, B5: 33.5, C1: 25, C2: "wait" };
const END = 'INDEX(RETORT.DRYING.END(A1:A5,B1:B5,C1,0.001,0.001,"of last"),9,2)';

test("a fixed cell that asks none of our functions goes on without saying so, in the engine too, and what asks it with it", async () => {
  const both = await liveAndPlain({
    Sheet1: { ...CURVE, D1: `=IF(C2="wait","",${END})`, D2: '=IF(D1="","nothing yet","told")', D3: `=IF(C2="wait",B5,${END})`, D4: "=D3+1" },
  });
  await both.type("Sheet1", "B2", 34.25);
  const after = await both.shown();
  expect(after.filter(({ plain }) => plain === FIXED)).toEqual([]);
  expect(after.filter((one) => !isHonest(one))).toEqual([]);
  await both.type("Sheet1", "B5", 33.52);
  expect((await both.shown()).filter(({ plain }) => plain === FIXED).map(({ cell }) => cell)).toEqual(["D3", "D4"]);
  await both.type("Sheet1", "C2", "go");
  const asked = await both.shown();
  expect(asked.filter(({ plain }) => plain === FIXED).map(({ cell }) => cell)).toEqual(["D1", "D2", "D3", "D4"]);
  await both.type("Sheet1", "C2", "wait");
  await both.type("Sheet1", "B5", 33.5);
  expect((await both.shown()).filter((one) => one.plain === FIXED || !isHonest(one))).toEqual([]);
  both.close();
});
