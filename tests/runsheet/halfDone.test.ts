// Sentences of sheets half-way and of samples that are not averaged. The runs are invented.
import { cell } from "../../src/runsheet/expressions/Expression";
import { openRunSheet } from "./openRunSheet";
import { plainRun, USUAL, type PlainRun } from "./plainRun";

jest.setTimeout(60_000);

const TWO = [41.86, 38.12] as const;
const NET = [
  [30, 22, 20.01, 20],
  [30, 24, 21.01, 21],
] as const;
const CHAR = [
  [7.01, 6],
  [7.5, 6.82],
] as const;

function two(kind: "charring" | "drying" | "staged", rounds: number, firings = 0, samplesAre: "different" | "repeats" = "different"): PlainRun {
  const run = plainRun({ kind, replicates: 2, samplesAre });
  for (const [index, vessel] of TWO.entries()) {
    run.vessel(vessel, index + 1);
    run.weigh(
      (NET[index] ?? []).slice(0, rounds).map((grams) => vessel + grams),
      index + 1,
    );
    if (firings > 0) run.fire("charring", (CHAR[index] ?? []).slice(0, firings).map((grams) => vessel + grams), index + 1); // prettier-ignore
  }
  return run;
}

describe("Different materials are averaged nowhere, half-way neither", () => {
  test.each([
    [2, 0, "Drying. Lost so far 23.3 % of the moist weight of all together, and not shown dry: no answer yet."],
    [4, 0, "Dry. 30.0 to 33.3 % of the moist weight was water. Not charred yet."],
    [4, 1, "At least 64.3 to 65.0 % of the dry sample has left as vapour so far; charring is not shown finished."],
  ])("after %i rounds and %i firings", (rounds, firings, answer) => {
    const run = two("charring", rounds, firings);
    expect(run.head()[1]).toBe(answer);
    expect(run.head()[3]).toBe("The ± will cover the weighings of each sample; never how well they stand for their heaps.");
  });

  test("repeats have their mean", () => {
    // 1 - 20 / 30 and 1 - 21 / 30: (33.33 + 30) / 2
    // Two that lie 3.3 % apart in water are in doubt, as every row with a value together is.
    expect(two("charring", 4, 0, "repeats").head()[1]).toBe("? In doubt: Dry. 31.7 % of the moist weight was water. Not charred yet.");
  });
});

describe("What the ± covers", () => {
  test("is said of the kind of run, and not while the answer has none", () => {
    const run = plainRun({ kind: "drying" });
    run.vessel(40);
    run.weigh([70, 60.01, 60]);
    const told =
      "The ± covers the weighings alone (rounding only), not the scatter of repeats, how the heap was sampled, what else left or loss yet to come.";
    expect(run.head()[3]).toBe(told);
    run.type(run.sheet.drying.box(12, 1), 39);
    expect([run.head()[1], run.head()[3]]).toEqual([
      "▲ Answer withheld: two weights contradict each other. Put right what the next line names.",
      "The ± will cover the weighings; never how well the samples stand for the whole heap.",
    ]);
  });

  test("is that of each sample where repeats have no common answer", () => {
    const run = plainRun({ kind: "drying", replicates: 2 });
    run.vessel(40, 1);
    run.vessel(40, 2);
    run.weigh([70, 60.01, 60], 1);
    run.weigh([70, 65.01, 65], 2);
    expect(run.head()[1]).toBe("? Samples disagree: 33.3 %, 16.7 % of the moist weight was water. No common answer.");
    expect(run.head()[3]).toBe(
      "The ± covers the weighings of each sample (rounding only), not how each heap was sampled, what else left or loss yet to come.",
    );
  });
});

test("a stage put in by hand has no line in the results, and the sheet says so", async () => {
  const run = await openRunSheet({ ...USUAL, kind: "staged", stages: 2 });
  await run.vessel(40);
  for (const [index, grams] of [70, 60.01, 60].entries()) await run.round(index + 1, 0.375 + index / 48, grams);
  const { stages } = run.sheet;
  if (stages === undefined) throw new Error("no stages");
  const { total } = stages.rows;
  const row = (run.sheet.rows.checks.lines.find(({ check }) => check === "rows")?.row ?? 0) + 1;
  const before = await run.check("rows");
  run.engine.book.getSheetByName(run.name)?.insertRowsBefore(total - 1, 1);
  await run.engine.settled();
  const after = (await run.read(cell(row, 2))).shown;
  run.close();
  expect([before[1], after]).toEqual([
    "",
    `? Row ${total}: a stage put in by hand has no line in the results. Undo it, and add the stage in the task pane.`,
  ]);
});
