import { cell, type Cell } from "../../expressions/Expression";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { LABEL } from "../../sheet/Columns";
import { optionBounds } from "../../options/optionBounds";
import { balanceWords } from "../../words/balance/balanceWords";
import type { BoxWords } from "../../words/BoxWords";
import { setupWords } from "../../words/setupWords";
import { band, ofCells, together, type Allowed, type Block } from "../Block";
import { ANYTHING, box, boxRule, dateAt, masses, numbers, wideBox } from "../entries";

const words = balanceWords.setup;
// A drum scale's, g.
const HEAVIEST = 1_000_000;

/** Which balance, which check weight, and how well that is known. */
export function weightBlock(sheet: BalanceSheet): Block {
  const { columns, rows, setup, options } = sheet;
  const { heading, ...labelled } = rows.weight;
  const lastBox = columns.box(1, columns.slots).column;
  const beside = columns.reckoned(1, 1).column;
  const ruled = (at: Cell, said: Omit<BoxWords, "label">, allow: Allowed, look: Parameters<typeof box>[1] = {}): Block => ({
    cells: [box(at, look)],
    entryRules: [boxRule(at, said, allow)],
  });
  const names = Object.keys(words.labels) as (keyof typeof words.labels)[];
  return together(
    ofCells(
      ...band(sheet, heading, "runBand", { [LABEL]: words.heading, [beside]: setupWords.legend }),
      ...names.flatMap((name) => [
        { at: cell(labelled[name], LABEL), content: words.labels[name], style: "runLabel" } as const,
        { at: cell(labelled[name], beside), content: words.beside[name], style: "runBeside" } as const,
      ]),
    ),
    ruled(setup.date, words.date, dateAt(cell(setup.date.row, setup.date.column)), { format: "yyyy-mm-dd" }),
    wideBox(setup.operator, lastBox, words.operator, ANYTHING),
    wideBox(setup.balance, lastBox, words.balance, ANYTHING),
    ruled(setup.value, words.value, masses(options.readability), { format: "General" }),
    wideBox(setup.mark, lastBox, words.mark, ANYTHING),
    ruled(setup.known, words.known, numbers({ atLeast: 0, atMost: HEAVIEST })),
    ruled(setup.step, words.step, numbers(optionBounds.readability), { content: options.readability }),
  );
}
