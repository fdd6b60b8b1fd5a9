// The same times in the local workbook: its engine finds what the formulas say on plain values.
import { cell } from "../../src/runsheet/expressions/Expression";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import { openRunSheet } from "./openRunSheet";
import { isAsSaid, slipsOfEachTable } from "./timeSlips";

const everySheet = [...new Set(slipsOfEachTable.map(({ options }) => JSON.stringify(options)))];

test.each(everySheet)("on a sheet made with %s", async (made) => {
  const slips = slipsOfEachTable.filter(({ options }) => JSON.stringify(options) === made);
  const sheet = await openRunSheet(slips[0]?.options ?? (JSON.parse(made) as never));
  for (const { title, typed, check, says } of slips) {
    for (const [at, content] of typed) await sheet.type(at, content);
    const row = sheet.sheet.rows.checks.lines.find((line) => line.check === check)?.row ?? 0;
    const { value, error } = await sheet.read(cell(row, CLOCK + 1));
    expect([title, error, isAsSaid(value, says) ? says : value]).toEqual([title, "", says]);
    for (const [at] of typed) await sheet.type(at, "");
  }
  sheet.close();
});
