import { lacksNumber, NOTHING, when } from "../../expressions/choices";
import { cell, fn, range, reckon } from "../../expressions/Expression";
import { vesselSays } from "../../formulas/sentences/rowSays";
import { correctionFor } from "../../formulas/strip";
import { LABEL } from "../../sheet/Columns";
import type { RunSheet } from "../../sheet/RunSheet";
import { massWords } from "../../words/BoxWords";
import { plannedLines } from "../../words/planWords";
import { sheetWords } from "../../words/sheetWords";
import { weighingWords } from "../../words/weighingWords";
import { band, calculated, ofCells, overSamples, together, type Block, type BlockCell } from "../Block";
import { ANYTHING, box, boxRule, massesAgain, wideBox } from "../entries";
import { stripBlock } from "./stripBlock";

const words = weighingWords.end;

/** The empty vessel weighed again, so that what grew on it is not counted as char, and notes. */
export function endBlock(sheet: RunSheet, number: number): Block {
  const { rows, columns, samples, options, formats, end } = sheet;
  const { heading, vessel, strip, planned, notes } = rows.end;
  const lines = plannedLines(options.plan, options.degrees);
  const lastNote = Array.from({ length: notes.last - notes.first + 1 }, (_, index) => notes.first + index);
  const headings = vessel === undefined ? {} : { ...overSamples(sheet, sheetWords.sample, weighingWords.gained), [columns.verdict]: sheetWords.says };
  const weighed: Block =
    vessel === undefined || end === undefined
      ? ofCells()
      : {
          cells: [
            { at: cell(vessel, LABEL), content: words.vessel, style: "runLabel" },
            ...samples.map((sample) => box(columns.box(vessel, sample), { format: formats.read })),
            ...samples.map((sample): BlockCell => {
              const at = columns.box(vessel, sample);
              const correction = strip && correctionFor(sheet, { ...strip, first: strip.vessel }, "vessel");
              const mass = correction === undefined ? at : reckon(at, "-", fn("N", correction));
              const gain = when(lacksNumber(at, sheet.vessel(sample)), NOTHING, reckon(mass, "-", sheet.vessel(sample)));
              return calculated(columns.reckoned(vessel, sample), gain, "runReckoned", formats.reckoned);
            }),
            calculated(cell(vessel, columns.verdict), vesselSays(sheet, end), "runVerdict"),
          ],
          entryRules: [
            boxRule(
              range(columns.box(vessel, 1), columns.box(vessel, options.replicates)),
              massWords("", words.box.title, words.box.about, options.readability),
              massesAgain(options.readability),
            ),
          ],
        };
  return together(
    ofCells(...band(sheet, heading, "runBand", { [LABEL]: words.heading(number), ...headings })),
    weighed,
    strip === undefined ? ofCells() : stripBlock(sheet, { ...strip, first: strip.vessel + 1 }, [], false),
    ofCells(...planned.map((row, index): BlockCell => ({ at: cell(row, LABEL), content: lines[index] ?? "", style: "runHelp" }))),
    ofCells({ at: cell(notes.first, LABEL), content: words.notes, style: "runLabel" }),
    ...lastNote.map((row) => wideBox(cell(row, 1), columns.verdict, words.notesBox, ANYTHING)),
  );
}
