// Plain cells of calls and formulas over arrays, behind names and of spills, calculated anew by two independent spreadsheets.
import { ARRAY_FORMULAS, arrayBook } from "../sharing/plain/arrayFormulas";
import { NAMED_FORMULAS, namedBook } from "../sharing/plain/namedFormulas";
import { plainCopyWithoutAnswers } from "./plainCopy";
import { PROGRAMS, recalculatedBy } from "./recalculated";

jest.setTimeout(300_000);

test.each(PROGRAMS)("%s comes to the same over arrays as the functions do", async (program) => {
  const sheet = (await recalculatedBy(program, await plainCopyWithoutAnswers(arrayBook()))).getWorksheet("Tray");
  const now = Object.keys(ARRAY_FORMULAS).map((cell): [string, unknown] => [cell, sheet?.getCell(cell).result]);
  for (const [cell, result] of now) expect([cell, result]).toEqual([cell, expect.closeTo(ARRAY_FORMULAS[cell]?.value ?? NaN, 11)]);
});

test.each(PROGRAMS)("%s comes to the same through names and spills as the functions do", async (program) => {
  const sheet = (await recalculatedBy(program, await plainCopyWithoutAnswers(namedBook()))).getWorksheet("Tray");
  const now = Object.keys(NAMED_FORMULAS).map((cell): [string, unknown] => [cell, sheet?.getCell(cell).result]);
  const wanted = (cell: string): unknown => {
    const { value } = NAMED_FORMULAS[cell] ?? {};
    if (typeof value === "number") return expect.closeTo(value, 11);
    return value ?? { error: expect.any(String) as string };
  };
  for (const [cell, result] of now) expect([cell, result]).toEqual([cell, wanted(cell)]);
});
