import { all, isNumber, NOTHING, when } from "../../expressions/choices";
import { cell, range, reckon } from "../../expressions/Expression";
import { centre, farthest, hasCentre } from "../../formulas/balance/history";
import { cornerSays } from "../../formulas/balance/roundSays";
import type { BalanceSheet } from "../../sheet/BalanceSheet";
import { PLACES } from "../../sheet/balanceRows";
import { CLOCK, LABEL } from "../../sheet/Columns";
import { balanceWords } from "../../words/balance/balanceWords";
import { massWords } from "../../words/BoxWords";
import { sheetWords } from "../../words/sheetWords";
import { band, calculated, type Block, type BlockCell } from "../Block";
import { ANYTHING, box, boxRule, masses, wideBox } from "../entries";

const words = balanceWords.corners;

/** One load at the centre and the four corners of the pan. */
export function cornersBlock(sheet: BalanceSheet): Block {
  const { rows, columns, formats, options, corner } = sheet;
  const { heading, total } = rows.corners;
  const [first, last] = [corner("centre").box, corner("centreAgain").box];
  const offs = range(corner("centre").off, corner("centreAgain").off);
  return {
    cells: [
      ...band(sheet, heading, "runBand", {
        [LABEL]: words.heading,
        [first.column]: words.columns.reading,
        [corner("centre").off.column]: words.columns.off,
        [columns.verdict]: sheetWords.says,
      }),
      ...PLACES.flatMap((place): BlockCell[] => {
        const { box: at, off, says } = corner(place);
        const value = when(all(isNumber(at), hasCentre(sheet)), reckon(at, "-", centre(sheet)), NOTHING);
        return [
          { at: cell(at.row, LABEL), content: words.places[place], style: "runLabel" },
          box({ ...at, fixed: "nothing" }, { format: formats.read }),
          calculated({ ...off, fixed: "nothing" }, value, "runReckoned", formats.corrected),
          calculated(says, cornerSays(sheet, place), "runVerdict"),
        ];
      }),
      { at: cell(total, LABEL), content: words.total, style: "runTotal" },
      calculated(columns.reckoned(total, 1), farthest(offs), "runTotalNumber", formats.corrected),
      { at: cell(total, columns.verdict), content: words.says.about, style: "runBeside" },
    ],
    entryRules: [boxRule(range(first, last), massWords("", words.box.title, words.box.about, options.readability), masses(options.readability))],
  };
}

/** What was done to the balance. */
export function notesBlock(sheet: BalanceSheet): Block {
  const { heading, first, last } = sheet.rows.notes;
  const { notes } = balanceWords;
  const every = Array.from({ length: last - first + 1 }, (_, index) =>
    wideBox(cell(first + index, CLOCK), sheet.columns.verdict, notes.box, ANYTHING),
  );
  return {
    cells: [
      ...band(sheet, heading, "runBand", { [LABEL]: notes.heading }),
      { at: cell(first, LABEL), content: notes.label, style: "runLabel" },
      ...every.flatMap(({ cells }) => cells),
    ],
    entryRules: every.flatMap(({ entryRules }) => entryRules),
  };
}
