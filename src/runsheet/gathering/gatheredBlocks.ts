import type { CellStyle } from "../../workbook/SheetPlan";
import { calculated, ofCells, working, type Block, type BlockCell } from "../blocks/Block";
import { box, boxRule, numbers } from "../blocks/entries";
import { NOTHING, when } from "../expressions/choices";
import { cell, fn, is, type Expression } from "../expressions/Expression";
import { gatherWords } from "../words/gatherWords";
import { AT, WORK, type GatheredSheet } from "./GatheredSheet";
import { answerSays, apartSays, bandSays, countedEnd, scatterOf } from "./headFormulas";
import { areAlike, beyond, countedShare, FEWEST, fromMedian, markOf, nameShown, outsideBand, robustZ, shown, standsApart } from "./rowFormulas";
import { GATHERED_SHARES, type GatheredShare, type RunRow } from "./RunRow";

const SHARE = "0.00%";
const PLUS_MINUS = "0.000%";
const PERCENT = { atLeast: 1, atMost: 100 } as const;
/** Printed columns. */
export const WIDTH = AT.mark + 1;

const label = (row: number, column: number, content: string, style: CellStyle = "runLabel"): BlockCell => ({ at: cell(row, column), content, style });

/** A line of headings across the printed width. */
export const bandOf = (row: number, words: Readonly<Record<number, string>>): BlockCell[] =>
  Array.from({ length: WIDTH }, (_, column) => ({
    at: cell(row, column),
    style: "runBand",
    ...(words[column] === undefined ? {} : { content: words[column] }),
  }));

/** What the runs come to, the target band and the headings. */
export function headBlock(sheet: GatheredSheet): Block {
  const { head, stats, band } = sheet;
  const { workings, band: words } = gatherWords;
  const heading = (row: number, column: number, content: string): BlockCell => label(row, column, content, "runWorkingHeading");
  return {
    cells: [
      label(head.title, 0, gatherWords.title, "runTitle"),
      calculated(cell(head.answer, 0), answerSays(sheet), "runAnswer"),
      calculated(cell(head.apart, 0), apartSays(sheet), "runStrong"),
      label(head.band, 0, words.from),
      box(band.from, { format: "0.0" }),
      label(head.band, AT.sample, words.to, "runBeside"),
      box(band.to, { format: "0.0" }),
      calculated(cell(head.band, AT.volatile), bandSays(sheet), "runBeside"),
      label(head.about, 0, gatherWords.about, "runHelp"),
      ...bandOf(head.headings, { ...gatherWords.columns }),
      heading(head.title, WORK.label, workings.title),
      heading(head.answer, WORK.label, workings.count),
      working(stats.count, fn("COUNT", sheet.counted("volatile"))),
      working(stats.median, when(is(stats.count, "<", FEWEST), NOTHING, fn("MEDIAN", sheet.counted("volatile"))), "0.000000"),
      working(stats.mad, when(is(stats.count, "<", FEWEST), NOTHING, fn("MEDIAN", sheet.distances("volatile"))), "0.000000"),
      working(stats.beyond, beyond(stats.count), "0.0"),
      working(stats.apart, fn("COUNTIF", sheet.down(WORK.isApart), 1)),
      heading(head.band, WORK.label, workings.band),
      working(band.countedFrom, countedEnd(sheet, band.from)),
      working(band.countedTo, countedEnd(sheet, band.to)),
      heading(head.about, WORK.chart.row, workings.chartAbout),
      ...[...workings.columns, ...workings.others].map((content, index) => heading(head.headings, WORK.volatile.counted + index, content)),
      ...workings.chart.map((content, index) => heading(head.headings, WORK.chart.row + index, content)),
      heading(head.headings, WORK.name, workings.name),
    ],
    entryRules: [band.from, band.to].map((at) => boxRule(at, words.box, numbers(PERCENT))),
  };
}

/** One sample. */
export function rowBlock(sheet: GatheredSheet, run: RunRow, row: number): Block {
  const shares = GATHERED_SHARES.filter((name) => run.shares[name] !== undefined);
  const has = (name: GatheredShare): boolean => shares.includes(name);
  return ofCells(
    label(row, AT.run, run.sheet),
    calculated(cell(row, AT.trust), run.ownTrust ?? shown(run.trust), "runMark"),
    calculated(cell(row, AT.sample), nameShown(sheet, run, row), "runLabel"),
    ...GATHERED_SHARES.map((name): BlockCell => {
      const share = run.shares[name];
      return share === undefined
        ? { at: cell(row, AT[name]), style: "runReckoned" }
        : calculated(cell(row, AT[name]), shown(share), "runReckoned", SHARE);
    }),
    ...(run.plusMinus === undefined ? [] : [calculated(cell(row, AT.plusMinus), shown(run.plusMinus), "runReckoned", PLUS_MINUS)]),
    calculated(cell(row, AT.mark), markOf(run, row), "runVerdict"),
    ...(run.own === undefined ? [] : [working(cell(row, WORK.name), shown(run.own.at))]),
    // The water of a salt, or of what is heated in stages, is no water of plants.
    ...shares
      .filter((name) => run.loss === undefined || name !== "moistureWet")
      .flatMap((name) => [
        working(cell(row, WORK[name].counted), countedShare(row, name), "0.000000"),
        working(cell(row, WORK[name].apart), fromMedian(sheet, row, name), "0.000000"),
      ]),
    ...(has("volatile")
      ? [
          working(cell(row, WORK.z), robustZ(sheet, row), "0.00"),
          working(cell(row, WORK.isApart), standsApart(sheet, row)),
          working(cell(row, WORK.outside), outsideBand(sheet, row)),
        ]
      : []),
  );
}

const scatterOrAlike = (mad: Expression): Expression => when(areAlike(mad), gatherWords.alike, scatterOf(mad));

/** Below the rows: the median and the scatter of each share, and the run sheets that have no row. */
export function footBlock(sheet: GatheredSheet): Block {
  const { median, scatter, leftOut, without, runs } = sheet;
  const enough = (name: GatheredShare, then: Expression): Expression => when(is(fn("COUNT", sheet.counted(name)), "<", FEWEST), NOTHING, then);
  return ofCells(
    label(median, 0, gatherWords.median, "runTotal"),
    label(scatter, 0, gatherWords.scatter, "runTotal"),
    ...GATHERED_SHARES.flatMap((name) => [
      calculated(cell(median, AT[name]), enough(name, fn("MEDIAN", sheet.counted(name))), "runTotalNumber", SHARE),
      calculated(cell(scatter, AT[name]), enough(name, scatterOrAlike(fn("MEDIAN", sheet.distances(name)))), "runTotalNumber", SHARE),
    ]),
    ...(leftOut === undefined
      ? []
      : [
          ...bandOf(leftOut.heading, { 0: gatherWords.leftOut.heading }),
          ...runs.leftOut.flatMap((one, index) => [
            label(leftOut.first + index, AT.run, one.sheet),
            label(leftOut.first + index, AT.trust, one.why, "runBeside"),
          ]),
        ]),
    ...(without === undefined
      ? []
      : [
          ...bandOf(without.heading, { 0: gatherWords.without.heading }),
          ...without.kinds.flatMap((name, index) => [
            label(without.first + index, AT.run, gatherWords.without.kinds[name]),
            label(without.first + index, AT.trust, gatherWords.without[name], "runBeside"),
          ]),
        ]),
  );
}
