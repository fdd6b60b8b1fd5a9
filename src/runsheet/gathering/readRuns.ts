import type { RangeReading } from "../../workbook/Workbook";
import { gatherWords } from "../words/gatherWords";
import { readRunSheet } from "../reading/readRunSheet";
import { recorded } from "../growing/record";
import { formulasNotOwn } from "../reading/formulasNotOwn";
import { HeldCells } from "./HeldCells";
import { joined } from "../expressions/Expression";
import { heldAgain } from "./heldAgain";
import { readOlderRun } from "./readOlderRun";
import { readRun } from "./readRun";
import { trustOfSample } from "./trustOfSample";
import type { LeftOut, RunRow, RunsRead } from "./RunRow";

/**
 * One row a sample from every one of these run sheets, by references to it. Results are found by their headings, so rows put in by
 * hand and sheets of earlier versions are no hindrance; a sheet whose results are not found, or hold values alone, or whose weighings all
 * stand on another of them, is left out.
 */
export function readRuns(sheets: readonly RangeReading[]): RunsRead {
  const read = sheets.map((reading): readonly RunRow[] | LeftOut => {
    const { sheet } = reading;
    if (sheet.includes("!")) return { sheet, why: gatherWords.leftOut.unreadName };
    const whole = readRunSheet(reading);
    if (whole.is === "rearranged" && whole.stands !== undefined) return { sheet, why: gatherWords.leftOut.columnsMoved };
    const held = new HeldCells(reading);
    const rows = ofEachSample(reading, readRun(sheet, held)) ?? readOlderRun(sheet, held) ?? [];
    if (recorded(reading)?.kind === "balance") return { sheet, why: gatherWords.leftOut.balance };
    if (rows.length === 0) return { sheet, why: gatherWords.leftOut.noShares };
    const others = formulasNotOwn(reading);
    if (others.length > 0) return { sheet, why: gatherWords.leftOut.otherFormulas(others) };
    return rows.some((row) => isLive(held, row)) ? rows : { sheet, why: gatherWords.leftOut.copy };
  });
  const again = heldAgain(sheets.filter((_, index) => !isLeftOut(read[index] ?? [])));
  const once = read.map((one, index): readonly RunRow[] | LeftOut => {
    const sheet = sheets[index]?.sheet ?? "";
    const other = again.get(sheet);
    return other === undefined ? one : { sheet, why: gatherWords.leftOut.heldAgain(other) };
  });
  const own = setDemoAside(once, sheets.map((reading) => new HeldCells(reading).holds(gatherWords.demoNote))); // prettier-ignore
  return {
    rows: own.flatMap((one) => (isLeftOut(one) ? [] : one)),
    leftOut: own.flatMap((one) => (isLeftOut(one) ? [one] : [])),
  };
}

type Read = readonly RunRow[] | LeftOut;

/** The run of the opening workbook counts beside nobody's own; where it is all there is, its samples are named as the demo's. */
function setDemoAside(read: readonly Read[], isDemo: readonly boolean[]): readonly Read[] {
  const hasOwn = read.some((one, index) => !isLeftOut(one) && isDemo[index] !== true);
  return read.map((one, index) => {
    if (isDemo[index] !== true || isLeftOut(one)) return one;
    if (hasOwn) return { sheet: one[0]?.sheet ?? "", why: gatherWords.leftOut.demo };
    return one.map((row) => ({ ...row, name: joined(gatherWords.demo, row.name), isDemo: true as const }));
  });
}

/** Of several samples each has the trust that is its own. */
function ofEachSample(reading: RangeReading, rows: readonly RunRow[] | undefined): readonly RunRow[] | undefined {
  const read = rows !== undefined && rows.length > 1 ? readRunSheet(reading) : undefined;
  if (rows === undefined || read?.is !== "whole" || read.sheet.samples.length !== rows.length) return rows;
  return rows.map((row, index) => ({ ...row, ownTrust: trustOfSample(read.sheet, reading.sheet, row.trust, index + 1) }));
}

const isLeftOut = (one: readonly RunRow[] | LeftOut): one is LeftOut => "why" in one;

const isLive = (held: HeldCells, { shares, loss }: RunRow): boolean =>
  [...Object.values(shares), ...(loss === undefined ? [] : [loss.share])].some((share) => held.isCalculated(share));
