import { isNumber, when } from "../../expressions/choices";
import { cell, fn, is, range, reckon, type Cell, type Expression } from "../../expressions/Expression";
import { provingFirings, unproven } from "../../formulas/proving";
import { firedVessel } from "../../formulas/results";
import { firedSays, firingSays, lostSince } from "../../formulas/sentences/rowSays";
import { correctionFor, countedWeighing } from "../../formulas/strip";
import { allSteady, beforeFiring, block, countOf, firedNet, steadyFiring } from "../../formulas/weighings";
import { inDegrees } from "../../options/degrees";
import { optionBounds } from "../../options/optionBounds";
import { LABEL } from "../../sheet/Columns";
import { areClose } from "../../sheet/columnWidths";
import type { RunSheet } from "../../sheet/RunSheet";
import { FIRE_COLUMNS, type Fired, type FireColumn } from "../../sheet/Weighed";
import { clockWords, degreeWords, massWords, type BoxWords } from "../../words/BoxWords";
import { fireWords } from "../../words/fireWords";
import { saltWords } from "../../words/saltWords";
import { sheetWords } from "../../words/sheetWords";
import { weighingWords } from "../../words/weighingWords";
import { band, calculated, ofCells, overSamples, together, working, workingLabel, type Allowed, type Block, type BlockCell } from "../Block";
import { ANYTHING, box, boxRule, clockAt, CLOCK_FORMAT, masses, numbers, wideBox } from "../entries";
import { stripBlock } from "./stripBlock";

const LONGEST_HOLD = 10_000;

type Phase = "charring" | "ashing" | "heating";

const WEIGHED: Readonly<Record<Phase, { readonly box: { readonly title: string; readonly about: string }; readonly total: string }>> = {
  charring: { box: weighingWords.charBox, total: weighingWords.char },
  ashing: { box: weighingWords.ashBox, total: weighingWords.ash },
  heating: { box: saltWords.box, total: saltWords.left },
};

/** One phase of firing: what is noted of each firing, and the weighings when cold. */
export function firingBlock(sheet: RunSheet, table: Fired, phase: Phase, number: number): Block {
  const words = {
    ...fireWords,
    ...(phase === "heating" ? saltWords.fire : {}),
    heading: fireWords.heading[phase],
    row: fireWords.firing,
    columns: { ...fireWords.columns(sheet.options.degrees, areClose(sheet.options)), ...(phase === "heating" ? saltWords.columns : {}) },
    setPoint: phase === "charring" ? sheet.options.plan?.kilnSetPoint : undefined,
  };
  return together(fireTable(sheet, table, words), weighedTable(sheet, table, phase, number));
}

/** What a fire table is called, its rows and its columns, and what is said of the two columns that differ. */
export interface FireTableWords {
  readonly heading: string;
  readonly row: (number: number) => string;
  readonly columns: Readonly<Record<FireColumn, string>>;
  readonly set: { readonly title: string; readonly prompt: string };
  readonly seen: Omit<BoxWords, "label">;
  /** What the kiln is set to by the plan of the run. */
  readonly setPoint?: number | undefined;
}

/** The one table that crosses the heavy line: all of it is written by hand. */
export function fireTable(sheet: RunSheet, { rows, fire }: Fired, words: FireTableWords): Block {
  const { degrees } = sheet.options;
  const { heading, first, last } = rows.fire;
  const every = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const at = fire(first);
  const kiln = inDegrees(optionBounds.kiln, degrees);
  const rules: Readonly<Record<Exclude<FireColumn, "seen">, readonly [Omit<BoxWords, "label">, Allowed, string]>> = {
    lit: [clockWords(fireWords.lit.title, fireWords.lit.prompt), clockAt(at.lit), CLOCK_FORMAT],
    set: [degreeWords(words.set.title, words.set.prompt, degrees, kiln), numbers(kiln), "0"],
    measured: [degreeWords(fireWords.measured.title, fireWords.measured.prompt, degrees, kiln), numbers(kiln), "0"],
    held: [fireWords.held, numbers({ atLeast: 0, atMost: LONGEST_HOLD }), "General"],
    quiet: [clockWords(fireWords.quiet.title, fireWords.quiet.prompt), clockAt(at.quiet), CLOCK_FORMAT],
    opened: [clockWords(fireWords.opened.title, fireWords.opened.prompt), clockAt(at.opened), CLOCK_FORMAT],
  };
  const { setPoint } = words;
  const boxed = Object.entries(rules) as [Exclude<FireColumn, "seen">, (typeof rules)["lit"]][];
  const headings = { [LABEL]: words.heading, ...Object.fromEntries(FIRE_COLUMNS.map((name) => [at[name].column, words.columns[name]])) };
  return together(
    {
      cells: [
        ...band(sheet, heading, "runBand", headings).map(
          // What was seen has room over two columns.
          (one): BlockCell => (one.at.column > LABEL && one.at.column < at.seen.column ? { ...one, style: "runBandWrapped" } : one),
        ),
        ...every.flatMap((row): BlockCell[] => [
          { at: cell(row, LABEL), content: words.row(row - first + 1), style: "runLabel" },
          ...boxed.map(([name, [, , format]]) =>
            box(fire(row)[name], name === "set" && setPoint !== undefined ? { format, content: setPoint } : { format }),
          ),
        ]),
      ],
      entryRules: boxed.map(([name, [words, allow]]) => boxRule(range(at[name], fire(last)[name]), words, allow)),
    },
    ...every.map((row) => wideBox(fire(row).seen, sheet.columns.verdict, words.seen, ANYTHING)),
  );
}

function weighedTable(sheet: RunSheet, table: Fired, phase: Phase, number: number): Block {
  const { columns, samples, options, formats } = sheet;
  const { heading, first, last, total, strip, fire } = table.rows;
  const { workings } = sheetWords;
  const every = Array.from({ length: last - first + 1 }, (_, index) => first + index);
  const { box: words, total: left } = WEIGHED[phase];
  const boxes = range(table.box(first, 1), table.box(last, options.replicates));
  const label = (row: number): string => weighingWords.afterFiring(row - first + 1);
  return together(
    {
      cells: [
        ...band(sheet, heading, "runLightBand", {
          [LABEL]: weighingWords.weighedCold(number),
          ...overSamples(sheet, sheetWords.sample, weighingWords.lost),
          [columns.verdict]: sheetWords.says,
        }),
        workingLabel(sheet, fire.first, workings.steadyFiring),
        ...samples.map((sample) => working(table.steady(sample), steadyFiring(sheet, table, sample))),
        working(table.allSteady, allSteady(sheet, table, is(unproven(sheet, table), "=", 0))),
        working(table.proving, provingFirings(sheet, table), "0"),
        workingLabel(sheet, fire.heading, workings.firedVessel),
        ...samples.map((sample) => working(table.vessel(sample), firedVessel(sheet, table, sample), formats.corrected)),
        workingLabel(sheet, heading, workings.before),
        ...samples.map((sample) => working(columns.working(heading, sample), beforeFiring(sheet, table, sample), formats.reckoned)),
        heldBefore(sheet, table),
        ...every.flatMap((row): BlockCell[] => [
          { at: cell(row, LABEL), content: label(row), style: "runLabel" },
          ...samples.map((sample) => box(table.box(row, sample), { format: formats.read })),
          ...samples.map((sample) =>
            calculated(
              table.lost(row, sample),
              lostSince(columns.working(row - 1, sample), columns.working(row, sample)),
              "runReckoned",
              formats.reckoned,
            ),
          ),
          calculated(table.verdict(row), firingSays(sheet, table, row), "runVerdict"),
          ...samples.map((sample) =>
            working(
              columns.working(row, sample),
              countedWeighing(table.box(row, sample), correctionFor(sheet, strip, row - first)),
              formats.reckoned,
            ),
          ),
          working(cell(row, columns.elapsed), heldSoFar(sheet, table, row), "0"),
        ]),
        { at: cell(total, LABEL), content: left, style: "runTotal" },
        ...samples.map((sample) => calculated(columns.reckoned(total, sample), firedNet(table, sample), "runTotalNumber", formats.reckoned)),
        calculated(cell(total, columns.verdict), firedSays(sheet, table), "runVerdictStrong"),
      ],
      entryRules: [boxRule(boxes, massWords("", words.title, words.about, options.readability), masses(options.readability))],
    },
    strip === undefined ? ofCells() : stripBlock(sheet, strip, every.map(label), false),
  );
}

/** Char is ashed after it was fired, so the minutes of ash count on from those of char: a chart of both has them in their order. */
function heldBefore({ charring, samples, columns }: RunSheet, table: Fired): BlockCell {
  const at = cell(table.rows.heading, columns.elapsed);
  if (charring === undefined || table.rows === charring.rows) return { at, content: 0, format: "0", style: "runWorking" };
  const firings = fn("MAX", ...samples.map((sample) => countOf(charring, sample)));
  return working(at, fn("N", fn("INDEX", charring.minutes, reckon(firings, "+", 1))), "0");
}

/**
 * Minutes at temperature so far, for a limit per hour; a firing without its minutes counts one, so that the next one is later. While nothing is
 * weighed it counts none: on a blank sheet a chart would number its axis by it.
 */
function heldSoFar(sheet: RunSheet, table: Fired, row: number): Expression {
  const { fire, first } = table.rows;
  const held: Cell = table.fire(fire.first + row - first).held;
  const before = cell(row - 1, sheet.columns.elapsed);
  return reckon(before, "+", when(isNumber(held), fn("MAX", held, 1), when(is(fn("COUNT", block(sheet, table)), ">", 0), 1, 0)));
}
