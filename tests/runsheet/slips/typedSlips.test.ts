// Times in order and not, and runs otherwise than planned, on plain values: what cannot be is named, and nothing else is accused.
import { everyBlock } from "../../../src/runsheet/buildRunSheet";
import { cell } from "../../../src/runsheet/expressions/Expression";
import { checkOptions } from "../../../src/runsheet/options/checkOptions";
import { CLOCK } from "../../../src/runsheet/sheet/Columns";
import { runSheet } from "../../../src/runsheet/sheet/RunSheet";
import { plainCells } from "../plainCells";
import { planSlips } from "../planning/planSlips";
import { isAsSaid, timeSlips } from "./timeSlips";

test.each([...timeSlips, ...planSlips].map((slip) => [slip.title, slip] as const))("%s", (_, { options, typed, check, says }) => {
  const sheet = runSheet(checkOptions(options));
  const plain = plainCells(everyBlock(sheet).cells);
  for (const [at, content] of typed) plain.type(at, content);
  const row = sheet.rows.checks.lines.find((line) => line.check === check)?.row ?? 0;
  const finding = plain.value(cell(row, CLOCK + 1));
  expect(isAsSaid(finding, says) ? says : finding).toBe(says);
});
