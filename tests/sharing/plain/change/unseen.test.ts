import { fixedUnfollowed } from "../../../../src/problems/sharing/plainCellProblems";
import type { CellContent } from "../../../../src/workbook/Workbook";
import { DATE, FIXED, isHonest, liveAndPlain, type LiveAndPlain } from "../liveAndPlain";

jest.setTimeout(60_000);

// A drying run made up by 20 + 10 exp(-t/30); where it ends is fixed in D1.
const WEIGHINGS = [30, 25.13, 22.64, 21.35, 20.69, 20.36, 20.18, 20.09, 20.05];
const run: Record<string, CellContent> = Object.fromEntries(
  WEIGHINGS.flatMap((mass, index) => [
    [`A${index + 1}`, index * 20],
    [`B${index + 1}`, mass],
  ]),
);
const END = "=INDEX(RETORT.DRYING.END(A1:A9,B1:B9),1,2)";

const unseen: Record<string, CellContent> = {
  F1: '=IF(SUM(INDIRECT("D"&1))<19.9,"dry enough","go on")',
  F2: '=SUM(INDIRECT("D1:D2"))',
  F3: "=SUM(OFFSET(A1,0,3,2,1))",
  F4: '=MAX(INDIRECT("Run!D1:D2"))',
  F5: '=IFERROR(INDIRECT("D1")/2,0)',
  F6: "=SUM(C1:INDEX(C1:E9,1,2))",
  F7: "=SUM(Over)",
  F8: "=F1&F7",
  F9: '=SUMIF(A1:A2,">=0",C8)',
  F10: "=COUNT(Over)",
};
const names = [{ name: "Over", formula: "=OFFSET(Run!$A$1,0,3)" }];
const elsewhere = { G1: '=SUM(INDIRECT("Run!D"&G2))', G2: 1 };

let both: LiveAndPlain;
afterEach(() => both.close());

const saying = async (said: string): Promise<string[]> =>
  (await both.shown()).filter(({ plain }) => plain === said).map(({ sheet, cell }) => (sheet === "Run" ? cell : `${sheet}!${cell}`));

test("what does not show that it refers to a fixed cell says so once an input of that changed, in another sheet too", async () => {
  both = await liveAndPlain({ Sheet1: { A1: "x" }, Run: { ...run, D1: END, D8: END, ...unseen, H1: "=SUM(A1:A9)" }, Other: elsewhere }, { names });
  expect((await both.shown()).filter((one) => !isHonest(one))).toEqual([]);
  expect(await saying(FIXED)).toEqual([]);
  await both.type("Run", "B9", 20.3);
  expect((await saying(FIXED)).sort()).toEqual(["D1", "D8", ...Object.keys(unseen), "Other!G1"].filter((cell) => cell !== "F9").sort());
  expect((await both.shown()).filter((one) => !isHonest(one))).toEqual([]);
  await both.type("Run", "B9", 20.05);
  expect(await saying(FIXED)).toEqual([]);
});

test("SUMIF takes as many cells as its first range has, whatever its last one shows", async () => {
  const cells = { ...run, D2: END, F1: '=SUMIF(A1:A2,">=0",D1)', F2: '=SUMIF(A1:A2,">=0",C1)', F3: "=LOOKUP(20,A1:A2,D1:D1)" };
  both = await liveAndPlain({ Sheet1: { A1: "x" }, Run: cells });
  await both.type("Run", "B9", 20.3);
  expect((await saying(FIXED)).sort()).toEqual(["D2", "F1", "F3"]);
});

test("what a form holds for, picked by OFFSET, is followed by what it picks", async () => {
  const cells = {
    A1: "CaCO3",
    A2: "C6H10O5",
    B1: 1,
    C1: "=OFFSET(A1,B1-1,0)",
    D1: "=RETORT.MOLARMASS(C1)",
    F1: '=INDIRECT("D1")*2+N(C1)*0',
    G1: "=C1&D1",
  };
  both = await liveAndPlain({ Sheet1: { A1: "x" }, Run: cells });
  expect((await both.shown()).filter((one) => !isHonest(one))).toEqual([]);
  await both.type("Run", "A1", "MgCO3");
  expect((await saying(FIXED)).sort()).toEqual(["D1", "F1", "G1"]);
  await both.type("Run", "A1", "CaCO3");
  expect(await saying(FIXED)).toEqual([]);
  await both.type("Run", "B1", 2);
  expect((await saying(FIXED)).sort()).toEqual(["D1", "F1", "G1"]);
});

test("what may go round in a circle is fixed, and says that it cannot be followed", async () => {
  const cells = {
    ...{ A1: "CaCO3", A2: "C6H10O5", C1: "=OFFSET(A1,0,0)", C2: "=OFFSET(A2,0,0)" },
    ...{ D1: "=RETORT.MOLARMASS(C1)", D2: "=RETORT.MOLARMASS(C2)", E1: "=D1+D2" },
  };
  both = await liveAndPlain({ Sheet1: { A1: "x" }, Run: cells });
  expect(both.shared.cells.filter(({ kind }) => kind === "fixed").map(({ cell, why }) => [cell, why])).toEqual([
    ["C1", "unseen"],
    ["C2", "unseen"],
  ]);
  expect((await saying(fixedUnfollowed(DATE))).sort()).toEqual(["C1", "C2", "D1", "D2", "E1"]);
});

test("a volatile input that is itself calculated from something fixed makes no circle", async () => {
  const cells = { ...run, D1: END, C1: "=TODAY()*0+D1", C2: '=C1&""', F1: "=RETORT.DRYING.END(A1:A9,B1:B9,C1*0.001)" };
  both = await liveAndPlain({ Sheet1: { A1: "x" }, Run: cells });
  expect(await saying(FIXED)).toEqual([]);
  await both.type("Run", "B9", 20.3);
  expect(await saying(FIXED)).toEqual(expect.arrayContaining(["D1", "C1", "C2", "F1"]));
});

test("without anything fixed nothing is asked", async () => {
  both = await liveAndPlain({ Sheet1: { A1: "x" }, Run: { A1: 35, B1: "=RETORT.AIRLEFT(3)", F1: '=SUM(INDIRECT("B1"))' } });
  expect([both.shared.flags, both.shared.workings]).toEqual([[], undefined]);
});
