// The same times in the local workbook: its engine finds what the formulas say on plain values.
import { buildRunSheet } from "../../../src/runsheet/buildRunSheet";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { placeOf } from "../../../src/runsheet/expressions/formulaText";
import type { RunSheetOptions } from "../../../src/runsheet/options/RunSheetOptions";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { openRunSheet } from "../openRunSheet";
import { planSlips } from "../planning/planSlips";
import { isAsSaid, slipsOfEachTable } from "./timeSlips";

// Every entry calculates the sheet anew, beside whatever else the machine does.
jest.setTimeout(240_000);

const every = [...slipsOfEachTable, ...planSlips];
const everySheet = [...new Set(every.map(({ options }) => JSON.stringify(options)))];

test.each(everySheet)("on a sheet made with %s", async (made) => {
  const slips = every.filter(({ options }) => JSON.stringify(options) === made);
  const planned = new Map(buildRunSheet(JSON.parse(made) as RunSheetOptions).cells.map(({ cell, formula, content }) => [cell, formula ?? content]));
  const sheet = await openRunSheet(JSON.parse(made) as RunSheetOptions);
  for (const { title, typed, check, says } of slips) {
    for (const [at, content] of typed) await sheet.type(at, content);
    const row = sheet.sheet.rows.checks.lines.find((line) => line.check === check)?.row ?? 0;
    const { value, error } = await sheet.read(cell(row, CLOCK + 1));
    expect([title, error, isAsSaid(value, says) ? says : value]).toEqual([title, "", says]);
    for (const [at] of typed) await sheet.type(at, planned.get(placeOf(at)) ?? "");
  }
  sheet.close();
});
