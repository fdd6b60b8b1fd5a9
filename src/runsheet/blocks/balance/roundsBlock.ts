import { isNumber, onceNumbers, when } from "../../expressions/choices";
import { cell, fixed, fn, is, range, reckon } from "../../expressions/Expression";
import { apartFrom, bias, expectedNext, expectedOff } from "../../formulas/balance/history";
import { roundSays, roundsSay } from "../../formulas/balance/roundSays";
import { FIRST_DATE } from "../../formulas/clock";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { LABEL } from "../../sheet/Columns";
import { balanceWords } from "../../words/balance/balanceWords";
import { massWords } from "../../words/BoxWords";
import { sheetWords } from "../../words/sheetWords";
import { band, calculated, working, type Block, type BlockCell } from "../Block";
import { box, boxRule, masses, zeros } from "../entries";

const words = balanceWords.rounds;

/** The check weight's history, a round a row: what it read, and against the rounds before whether that is in order. */
export function roundsBlock(sheet: BalanceSheet): Block {
  const { rows, columns, formats, options, round } = sheet;
  const { heading, first, last, total } = rows.rounds;
  const every = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const [top, bottom] = [round(first), round(last)];
  const { reading, zero } = words;
  return {
    cells: [
      ...band(sheet, heading, "runBand", {
        [LABEL]: words.heading,
        [top.date.column]: words.columns.date,
        [top.reading.column]: words.columns.reading,
        [top.zero.column]: words.columns.zero,
        [top.off.column]: words.columns.off,
        [top.apart.column]: words.columns.apart,
        [top.expected.column]: words.columns.expected,
        [columns.verdict]: sheetWords.says,
      }),
      ...every.flatMap((row): BlockCell[] => {
        const at = round(row);
        return [
          { at: cell(row, LABEL), content: words.round(row - first + 1), style: "runLabel" },
          box(at.date, { format: "yyyy-mm-dd" }),
          box(at.reading, { format: formats.read }),
          box(at.zero, { format: formats.read }),
          calculated(at.off, onceNumbers([at.reading, sheet.setup.value], reckon(at.reading, "-", sheet.setup.value)), "runReckoned", formats.read),
          calculated(at.apart, apartFrom(sheet, row), "runReckoned", formats.corrected),
          calculated(at.expected, expectedOff(sheet, row), "runReckoned", formats.corrected),
          calculated(at.says, roundSays(sheet, row), "runVerdict"),
          working(at.number, fn("ROWS", range(fixed(top.reading), at.reading)), "0"),
        ];
      }),
      { at: cell(total, LABEL), content: words.total, style: "runTotal" },
      calculated(columns.reckoned(total, 1), bias(sheet), "runTotalNumber", formats.corrected),
      calculated(columns.reckoned(total, 3), expectedNext(sheet), "runTotalNumber", formats.corrected),
      calculated(cell(total, columns.verdict), roundsSay(sheet), "runVerdictStrong"),
    ],
    entryRules: [
      boxRule(range(top.date, bottom.date), words.date, {
        kind: "condition",
        condition: when(isNumber(top.date), is(top.date, ">=", FIRST_DATE), false),
      }),
      boxRule(range(top.reading, bottom.reading), massWords("", reading.title, reading.about, options.readability), masses(options.readability)),
      boxRule(range(top.zero, bottom.zero), { ...zero, refusal: massWords("", "", "", options.readability).refusal }, zeros(options.readability)),
    ],
  };
}
