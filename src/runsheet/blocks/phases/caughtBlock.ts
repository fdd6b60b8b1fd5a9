import { cell, range } from "../../expressions/Expression";
import { boxSays, caughtTotalSays, partSays } from "../../formulas/sentences/caughtSays";
import { fedOf, foundOf, gainOf, liquidsOf, pairsWeighed } from "../../formulas/ledger";
import type { Caught } from "../../sheet/Caught";
import { APPARATUS, LEDGER_BOXES, MOST_PERCENT, type LedgerBox } from "../../sheet/caughtRows";
import { LABEL } from "../../sheet/Columns";
import type { RunSheet } from "../../sheet/RunSheet";
import { massWords } from "../../words/BoxWords";
import { caughtWords } from "../../words/caughtWords";
import { sheetWords } from "../../words/sheetWords";
import { weighingWords } from "../../words/weighingWords";
import { band, calculated, overSamples, working, workingLabel, type Allowed, type Block, type BlockCell, type BoxRule } from "../Block";
import { box, boxRule, masses, numbers } from "../entries";

// Percentages below 1 are fractions; g of gas as of any weight. Own bounds.
const BOUNDS: Readonly<Record<LedgerBox, Allowed>> = {
  gas: numbers({ atLeast: 0, atMost: 1_000_000 }),
  water: numbers({ atLeast: 1, atMost: 100 }),
  fed: numbers({ atLeast: 1, atMost: MOST_PERCENT.fed }),
  known: numbers({ atLeast: 0, atMost: MOST_PERCENT.known }),
};

/** What receivers, trap, tube and lid weigh before the fire and after it, the gas, and what the ledger's water rests on. */
export function caughtBlock(sheet: RunSheet, caught: Caught, number: number): Block {
  const { columns, samples, options, formats } = sheet;
  const { before, heading, first, total, boxes } = caught.rows;
  const across = (row: number, lastRow = row) => range(columns.box(row, 1), columns.box(lastRow, options.replicates));
  const labels = caught.parts.map((part) => {
    const name = APPARATUS[part];
    return name === undefined ? caughtWords.receiver(part - APPARATUS.length + 1) : caughtWords.parts[name];
  });
  const { beforeBox, afterBox } = caughtWords;
  return {
    cells: [
      ...band(sheet, before.heading, "runBand", {
        [LABEL]: caughtWords.before(number),
        ...Object.fromEntries(samples.map((sample) => [columns.box(1, sample).column, sheetWords.sample(sample)])),
        [columns.verdict]: sheetWords.says,
      }),
      workingLabel(sheet, before.heading, caughtWords.workings.fed),
      ...samples.map((sample) => working(caught.fed(sample), fedOf(sheet, caught, sample), formats.corrected)),
      ...labels.flatMap((content, part): BlockCell[] => [
        { at: cell(before.first + part, LABEL), content, style: "runLabel" },
        ...samples.map((sample) => box(columns.box(before.first + part, sample), { format: formats.read })),
        { at: columns.reckoned(before.first + part, 1), style: "runBeside" },
        { at: caught.says(before.first + part), content: caughtWords.says.weighEmpty, style: "runBeside" },
      ]),
      ...band(sheet, heading, "runLightBand", {
        [LABEL]: caughtWords.after(number),
        ...overSamples(sheet, sheetWords.sample, weighingWords.gained),
        [columns.verdict]: sheetWords.says,
      }),
      workingLabel(sheet, heading, caughtWords.workings.found),
      ...samples.map((sample) => working(caught.found(sample), foundOf(sheet, caught, sample), formats.corrected)),
      ...labels.flatMap((content, part): BlockCell[] => [
        { at: cell(first + part, LABEL), content, style: "runLabel" },
        ...samples.map((sample) => box(columns.box(first + part, sample), { format: formats.read })),
        ...samples.map((sample) => calculated(columns.reckoned(first + part, sample), gainOf(caught, part, sample), "runReckoned", formats.read)),
        calculated(caught.says(first + part), partSays(sheet, caught, part), "runVerdict"),
      ]),
      { at: cell(total, LABEL), content: caughtWords.total, style: "runTotal" },
      ...samples.map((sample) => calculated(columns.reckoned(total, sample), liquidsOf(caught, sample), "runTotalNumber", formats.read)),
      calculated(caught.says(total), caughtTotalSays(sheet, caught), "runVerdictStrong"),
      workingLabel(sheet, total, caughtWords.workings.pairs),
      ...samples.map((sample) => working(caught.pairs(sample), pairsWeighed(caught, sample))),
      ...LEDGER_BOXES.flatMap((name): BlockCell[] => [
        { at: cell(boxes[name], LABEL), content: caughtWords.boxes[name].label, style: "runLabel" },
        ...samples.map((sample) => box(columns.box(boxes[name], sample), { format: name === "gas" ? formats.read : "General" })),
        { at: columns.reckoned(boxes[name], 1), style: "runBeside" },
        calculated(caught.says(boxes[name]), boxSays(sheet, caught, name), "runVerdict"),
      ]),
    ],
    entryRules: [
      boxRule(across(before.first, before.last), massWords("", beforeBox.title, beforeBox.about, options.readability), masses(options.readability)),
      boxRule(across(first, caught.rows.last), massWords("", afterBox.title, afterBox.about, options.readability), masses(options.readability)),
      ...LEDGER_BOXES.map((name): BoxRule => boxRule(across(boxes[name]), caughtWords.boxes[name], BOUNDS[name])),
    ],
  };
}
