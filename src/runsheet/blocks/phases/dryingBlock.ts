import { all, isNumber, when } from "../../expressions/choices";
import { cell, is, range, type Cell } from "../../expressions/Expression";
import { elapsed, isClockForMinutes } from "../../formulas/clock";
import { dryPartFedMoist } from "../../formulas/ledger";
import { drySays, lostSince, roundSays } from "../../formulas/sentences/rowSays";
import { asWeighed } from "../../formulas/salt";
import { correctionFor, countedWeighing } from "../../formulas/strip";
import { unlessTruth } from "../../formulas/truths";
import { dryNet, vesselCounted } from "../../formulas/weighings";
import { CLOCK, LABEL } from "../../sheet/Columns";
import type { RunSheet } from "../../sheet/RunSheet";
import { clockWords, massWords } from "../../words/BoxWords";
import { saltWords } from "../../words/saltWords";
import { sheetWords } from "../../words/sheetWords";
import { weighingWords } from "../../words/weighingWords";
import { band, calculated, ofCells, overSamples, together, working, workingLabel, type Allowed, type Block, type BlockCell } from "../Block";
import { box, boxRule, clockAt, CLOCK_FORMAT, masses, vesselOr } from "../entries";
import { stripBlock } from "./stripBlock";

// Minutes since round 1: up to a quarter of a year.
const MOST_MINUTES = 131_400;

/** The empty vessels and the rounds of weighing while drying, all samples side by side. */
export function dryingBlock(sheet: RunSheet): Block {
  const { rows, columns, options, samples, formats, drying } = sheet;
  const { heading, vessel, first, last, total, strip } = rows.drying;
  const { workings } = sheetWords;
  const isClock = options.timing === "clock";
  const words = {
    [LABEL]: sheet.salt === undefined ? weighingWords.drying : saltWords.drying,
    [CLOCK]: isClock ? weighingWords.clock : weighingWords.minute,
    ...overSamples(sheet, sheetWords.sample, weighingWords.lost),
    [columns.verdict]: sheetWords.says,
  };
  const rounds = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const boxes = range(drying.box(first, 1), drying.box(last, options.replicates));
  const vessels = range(columns.box(vessel, 1), columns.box(vessel, options.replicates));
  const { label, title, prompt, refusal, beside } = weighingWords.vessel;
  const clocks = range(cell(first, CLOCK), cell(last, CLOCK));
  const roundWords = (of: { readonly title: string; readonly about: string }) => massWords("", of.title, of.about, options.readability);
  return together(
    {
      cells: [
        ...band(sheet, heading, "runBand", words),
        workingLabel(sheet, heading, workings.corrected),
        { at: cell(heading, columns.elapsed), content: sheetWords.elapsed, style: "runWorkingHeading" },
        { at: cell(vessel, LABEL), content: label, style: "runLabel" },
        ...samples.map((sample) => box(columns.box(vessel, sample), { format: formats.read })),
        // Nothing is reckoned in the first two rows; the heavy line runs past them.
        { at: columns.reckoned(vessel, 1), style: "runBeside" },
        { at: columns.reckoned(first, 1), style: "runBeside" },
        { at: cell(vessel, columns.verdict), content: beside, style: "runBeside" },
        workingLabel(sheet, vessel, workings.vessel),
        ...samples.map((sample) =>
          working(
            sheet.vessel(sample),
            unlessTruth(sheet, vesselCounted(columns.box(vessel, sample), correctionFor(sheet, strip, "vessel"))),
            formats.reckoned,
          ),
        ),
        ...rounds.flatMap((row) => roundRow(sheet, row)),
        { at: cell(total, LABEL), content: sheet.salt === undefined ? weighingWords.dry : saltWords.before, style: "runTotal" },
        ...samples.map((sample) => calculated(columns.reckoned(total, sample), dryOf(sheet, sample), "runTotalNumber", formats.reckoned)),
        calculated(cell(total, columns.verdict), drySays(sheet), "runVerdictStrong"),
      ],
      entryRules: [
        boxRule(vessels, { title, prompt, refusal }, vesselOr(vessels.from, sheet.settings.readability)),
        boxRule(clocks, ...timeRule(isClock, clocks.from)),
        boxRule(
          range(boxes.from, drying.box(first, options.replicates)),
          roundWords(sheet.salt === undefined ? weighingWords.moistBox : saltWords.firstBox),
          masses(options.readability),
        ),
        ...(last > first
          ? [boxRule(range(drying.box(first + 1, 1), boxes.to), roundWords(weighingWords.roundBox), masses(options.readability))]
          : []),
      ],
    },
    strip === undefined
      ? ofCells()
      : stripBlock(
          sheet,
          strip,
          rounds.map((_, index) => weighingWords.round(index + 1)),
          options.temperatures,
        ),
  );
}

/** The dry sample, or a salt as it was weighed in; where liquids are caught, the dry part of one that is charred moist too. */
function dryOf(sheet: RunSheet, sample: number) {
  if (sheet.salt !== undefined) return dryNet(sheet, sample, asWeighed(sheet, sheet.salt, sample));
  return sheet.caught === undefined ? dryNet(sheet, sample) : dryNet(sheet, sample, dryPartFedMoist(sheet, sheet.caught, sample));
}

const timeRule = (isClock: boolean, at: Parameters<typeof clockAt>[0]): [Parameters<typeof boxRule>[1], Parameters<typeof boxRule>[2]] =>
  isClock ? [clockWords(weighingWords.clockBox.title, weighingWords.clockBox.prompt), clockAt(at)] : [weighingWords.minuteBox, minutesAt(at)];

/** Minutes; a clock time typed in their place is none. */
const minutesAt = (at: Cell): Allowed => ({
  kind: "condition",
  condition: when(isNumber(at), all(is(at, ">=", 0), is(at, "<=", MOST_MINUTES), is(isClockForMinutes(at), "=", 0)), false),
});

function roundRow(sheet: RunSheet, row: number): BlockCell[] {
  const { rows, columns, options, samples, formats, drying } = sheet;
  const { first, strip } = rows.drying;
  const correction = correctionFor(sheet, strip, row - first);
  const counts = (sample: number, at: number) => (options.panZeros ? columns.working(at, sample) : drying.box(at, sample));
  return [
    {
      at: cell(row, LABEL),
      content: row === first && sheet.salt !== undefined ? saltWords.firstRound : weighingWords.round(row - first + 1),
      style: "runLabel",
    },
    box(cell(row, CLOCK), { format: options.timing === "clock" ? CLOCK_FORMAT : "General" }),
    ...samples.map((sample) => box(drying.box(row, sample), { format: formats.read })),
    ...(row === first
      ? []
      : samples.map((sample) =>
          calculated(drying.lost(row, sample), lostSince(counts(sample, row - 1), counts(sample, row)), "runReckoned", formats.reckoned),
        )),
    calculated(drying.verdict(row), roundSays(sheet, row), "runVerdict"),
    working(cell(row, columns.elapsed), elapsed(sheet, row), "0"),
    ...(options.panZeros
      ? samples.map((sample) => working(columns.working(row, sample), countedWeighing(drying.box(row, sample), correction), formats.reckoned))
      : []),
  ];
}
