// Filled sheets of the further kinds through the local workbook's engine, held against the formulas worked out on plain values.
import { balanceBlocks } from "../../src/runsheet/blocks/balance/planBalanceSheet";
import { everyBlock } from "../../src/runsheet/buildRunSheet";
import { CellProblem } from "../../src/cells/CellProblem";
import { placeOf } from "../../src/runsheet/expressions/formulaText";
import { checkOptions } from "../../src/runsheet/options/checkOptions";
import { balanceSheet } from "../../src/runsheet/sheet/BalanceSheet";
import { runSheet } from "../../src/runsheet/sheet/RunSheet";
import { filledKinds } from "./filledKinds";
import { plainCells } from "./plainCells";

jest.setTimeout(120_000);

test.each(Object.keys(filledKinds))("a %s is calculated by the local workbook as its formulas read", async (name) => {
  const sheet = await filledKinds[name]?.();
  if (sheet === undefined) throw new Error(`no ${name}`);
  const options = checkOptions(sheet.options);
  const { cells } = options.kind === "balance" ? balanceBlocks(balanceSheet(options)) : everyBlock(runSheet(options));
  const plain = plainCells(cells);
  for (const [at, content] of sheet.typed) plain.type(at, content);
  const shown = new Map((await sheet.workbook.readUsed(sheet.name)).rows.flat().map((reading) => [reading.cell, reading]));
  sheet.close();
  const formulas = cells.filter(({ formula }) => formula !== undefined);
  const differences = formulas.flatMap(({ at }) => {
    const [own, other] = [plain.value(at), shown.get(placeOf(at))];
    const value = other?.error === "" ? (other.value ?? "") : other?.error;
    if (own instanceof CellProblem) return [[placeOf(at), own.code, value]];
    const agree = typeof own === "number" && typeof value === "number" ? Math.abs(own - value) <= 1e-9 : (own ?? "") === value;
    return agree ? [] : [[placeOf(at), own, value]];
  });
  expect(formulas.filter(({ at }) => typeof plain.value(at) === "number").length).toBeGreaterThan(30);
  expect(differences).toEqual([]);
});
