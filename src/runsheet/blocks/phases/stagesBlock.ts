import { cell, range } from "../../expressions/Expression";
import { firedVessel } from "../../formulas/results";
import { isFull } from "../../formulas/sentences/rowSays";
import { leftAfter, leftNet, leftShown, stagesDone, stageTemperature, startTemperature } from "../../formulas/stages";
import { stageSays, stagesTotalSays } from "../../formulas/sentences/stageSays";
import { countOf } from "../../formulas/weighings";
import { areClose } from "../../sheet/columnWidths";
import { LABEL } from "../../sheet/Columns";
import type { RunSheet } from "../../sheet/RunSheet";
import type { Fired } from "../../sheet/Weighed";
import { massWords } from "../../words/BoxWords";
import { fireWords } from "../../words/fireWords";
import { sheetWords } from "../../words/sheetWords";
import { stageWords } from "../../words/stageWords";
import { band, calculated, ofCells, overSamples, together, working, workingLabel, type Block, type BlockCell } from "../Block";
import { box, boxRule, masses } from "../entries";
import { fireTable } from "./firingBlock";
import { stripBlock } from "./stripBlock";

const LEFT = "0.00%";

/** Staged heating: what is noted of each stage, the weighings when cold, and what is left of the dry sample after each. */
export function stagesBlock(sheet: RunSheet, table: Fired): Block {
  const columns = { ...fireWords.columns(sheet.options.degrees, areClose(sheet.options)), seen: stageWords.seen };
  const words = { heading: stageWords.fire, row: stageWords.stage, columns, set: stageWords.set, seen: stageWords.seenBox };
  return together(fireTable(sheet, table, words), leftTable(sheet, table));
}

function leftTable(sheet: RunSheet, table: Fired): Block {
  const { columns, samples, options, formats } = sheet;
  const { heading, first, last, total, strip, fire } = table.rows;
  const every = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const boxes = range(table.box(first, 1), table.box(last, options.replicates));
  const label = (row: number): string => stageWords.after(row - first + 1);
  return together(
    {
      cells: [
        ...band(sheet, heading, "runLightBand", {
          [LABEL]: stageWords.weighed,
          ...overSamples(sheet, sheetWords.sample, stageWords.left),
          [columns.verdict]: sheetWords.says,
        }),
        workingLabel(sheet, fire.first, stageWords.workings.done),
        ...samples.map((sample) => working(table.steady(sample), countOf(table, sample))),
        working(table.allSteady, stagesDone(sheet, table, isFull(sheet, table))),
        workingLabel(sheet, fire.heading, sheetWords.workings.firedVessel),
        ...samples.map((sample) => working(table.vessel(sample), firedVessel(sheet, table, sample), formats.corrected)),
        workingLabel(sheet, heading, stageWords.workings.left),
        // Before the first stage all of the dry sample is there.
        ...samples.map((sample) => working(columns.working(heading, sample), 1, LEFT)),
        working(cell(heading, columns.elapsed), startTemperature(sheet), "0"),
        ...every.flatMap((row): BlockCell[] => [
          { at: cell(row, LABEL), content: label(row), style: "runLabel" },
          ...samples.map((sample) => box(table.box(row, sample), { format: formats.read })),
          ...samples.map((sample) => calculated(table.lost(row, sample), leftShown(sheet, table, row, sample), "runReckoned", LEFT)),
          calculated(table.verdict(row), stageSays(sheet, table, row), "runVerdict"),
          ...samples.map((sample) => working(columns.working(row, sample), leftAfter(sheet, table, row, sample), LEFT)),
          working(cell(row, columns.elapsed), stageTemperature(sheet, table, row), "0"),
        ]),
        { at: cell(total, LABEL), content: stageWords.total, style: "runTotal" },
        ...samples.map((sample) => calculated(columns.reckoned(total, sample), leftNet(sheet, table, sample), "runTotalNumber", formats.reckoned)),
        calculated(cell(total, columns.verdict), stagesTotalSays(sheet, table), "runVerdictStrong"),
      ],
      entryRules: [boxRule(boxes, massWords("", stageWords.box.title, stageWords.box.about, options.readability), masses(options.readability))],
    },
    strip === undefined ? ofCells() : stripBlock(sheet, strip, every.map(label), false),
  );
}
