import { headWords } from "../../../src/runsheet/words/headWords";
import { nextAsTold, readHead } from "../../../src/runsheet/reading/readHead";
import type { CellReading } from "../../../src/workbook/Workbook";

const cell = (shown: string): CellReading => ({ cell: "", formula: "", value: shown, shown, error: "", message: "", spill: "" });

test("the head of a run sheet is its next step from D1 and the lines that begin its rows, without blank ones", () => {
  const rows = [["Drying", "", "", "► Next: round 2, row 13"], ["Drying. One round."], ["✓ Checks"], [""], ["Open burning"]].map((row) =>
    row.map(cell),
  );
  expect(readHead({ sheet: "Run", range: "A1:D5", rows })).toEqual(["► Next: round 2, row 13", "Drying. One round.", "✓ Checks", "Open burning"]);
  expect(readHead({ sheet: "Run", range: "", rows: [] })).toEqual([]);
});

test("what is next names what is wrong itself, where no third line of the sheet stands beside it", () => {
  const checks = "▲ 2 of 13 checks: Sample 1: C12 is not above the empty vessel, C11. Weigh again.";
  const told = "► First put right: Sample 1: C12 is not above the empty vessel, C11. Weigh again.";
  expect(nextAsTold(headWords.next.mend, checks)).toBe(told);
  expect(nextAsTold(headWords.next.mend, "▲ Retort is not here")).toBe(headWords.next.mend);
  expect(nextAsTold("► Next: round 2, row 13", checks)).toBe("► Next: round 2, row 13");
  const rows = [["Drying", "", "", headWords.next.mend], ["▲ Answer withheld."], [checks]].map((row) => row.map(cell));
  expect(readHead({ sheet: "Run", range: "A1:D5", rows })).toEqual([told, "▲ Answer withheld.", checks]);
});
