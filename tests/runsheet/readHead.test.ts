import { readHead } from "../../src/runsheet/reading/readHead";
import type { CellReading } from "../../src/workbook/Workbook";

const cell = (shown: string): CellReading => ({ cell: "", formula: "", value: shown, shown, error: "", message: "", spill: "" });

test("the head of a run sheet is its next step from D1 and the lines that begin its rows, without blank ones", () => {
  const rows = [["Drying", "", "", "► Next: round 2, row 13"], ["Drying. One round."], ["✓ Checks"], [""], ["Open burning"]].map((row) =>
    row.map(cell),
  );
  expect(readHead({ sheet: "Run", range: "A1:D5", rows })).toEqual(["► Next: round 2, row 13", "Drying. One round.", "✓ Checks", "Open burning"]);
  expect(readHead({ sheet: "Run", range: "", rows: [] })).toEqual([]);
});
