// The same times in the local workbook: its engine finds what the formulas say on plain values.
import { cell } from "../../src/runsheet/expressions/Expression";
import { CLOCK } from "../../src/runsheet/sheet/Columns";
import { openRunSheet } from "./openRunSheet";
import { planSlips } from "./planning/planSlips";
import { isAsSaid, slipsOfEachTable } from "./timeSlips";

const every = [...slipsOfEachTable, ...planSlips];
const everySheet = [...new Set(every.map(({ options }) => JSON.stringify(options)))];

test.each(everySheet)("on a sheet made with %s", async (made) => {
  const slips = every.filter(({ options }) => JSON.stringify(options) === made);
  const sheet = await openRunSheet(slips[0]?.options ?? (JSON.parse(made) as never));
  for (const { title, typed, check, says } of slips) {
    const before = await Promise.all(typed.map(async ([at]) => sheet.read(at)));
    for (const [at, content] of typed) await sheet.type(at, content);
    const row = sheet.sheet.rows.checks.lines.find((line) => line.check === check)?.row ?? 0;
    const { value, error } = await sheet.read(cell(row, CLOCK + 1));
    expect([title, error, isAsSaid(value, says) ? says : value]).toEqual([title, "", says]);
    for (const [index, [at]] of typed.entries()) await sheet.type(at, before[index]?.formula || (before[index]?.value ?? ""));
  }
  sheet.close();
});
