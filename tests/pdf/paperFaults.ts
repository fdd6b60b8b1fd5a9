import { cellArea } from "../../src/workbook/cellArea";
import type { PlannedCell, SheetPlan } from "../../src/workbook/SheetPlan";
import { emphasisStyles, sheetStyles } from "../../src/workbook/sheetStyles";
import type { Box, PrintedPage, PrintedText } from "./readPdf";
import { contrast } from "../workbook/contrast";

const LEAST_TEXT = 8;
/** 6 mm in points. */
const LEAST_BOX = (6 * 72) / 25.4;
// What rounding to hundredths of a millimetre makes of a length.
const ROUNDED = 0.03;
/** WCAG 2.2, 1.4.3: what text needs at least on its ground. */
const LEAST_CONTRAST = 4.5;
// Nearer the edge many printers do not print: 4.2 mm.
const UNPRINTABLE = 12;

/** What is wrong with a run sheet on paper, a sentence each; nothing where it can be filled in and read. */
export function paperFaults(plan: SheetPlan, pages: readonly PrintedPage[]): string[] {
  return [
    ...pages.flatMap((page, index) => [
      ...textFaults(page, LEAST_TEXT),
      ...boxFaults(page),
      ...headFaults(plan, page, pages[0] ?? page),
      ...(said(page).includes(`Page${index + 1}of${pages.length}`) ? [] : ["no page number"]),
      ...beginFaults(plan, page, index),
    ].map((fault) => `page ${index + 1}: ${fault}`)), // prettier-ignore
    ...contentFaults(plan, pages),
  ];
}

/** @param least points that a text may be small */
export function textFaults({ texts, width, height }: PrintedPage, least = LEAST_TEXT): string[] {
  return [
    ...texts.filter(({ size }) => size < least - ROUNDED).map(({ text, size }) => `"${text}" is ${size.toFixed(2)} points`),
    ...texts.filter((one) => isCut(one)).map(({ text }) => `"${text}" is cut off`),
    ...texts
      .filter(({ left, right, bottom }) => left < UNPRINTABLE || right > width - UNPRINTABLE || bottom > height - UNPRINTABLE)
      .map(({ text }) => `"${text}" is too near the edge`),
    ...texts.filter(({ text }) => text.includes("###")).map(() => "a number is too wide for its cell"),
    ...texts.flatMap((one, index) => texts.slice(index + 1).flatMap((other) => (collide(one, other) ? [`"${one.text}" and "${other.text}" stand on each other`] : []))), // prettier-ignore
    ...texts.filter(({ colour }) => !isWhite(colour) && contrast(hex(colour), "#FFFFFF") < LEAST_CONTRAST).map(({ text }) => `"${text}" is too faint`), // prettier-ignore
  ];
}

/** Letters rise about 0.7 of their size above the base line. */
const isCut = ({ left, right, bottom, size, shown }: PrintedText): boolean =>
  left < shown.left - 1 || right > shown.right + 1 || bottom > shown.bottom + ROUNDED || bottom - 0.7 * size < shown.top - ROUNDED;

function collide(one: PrintedText, other: PrintedText): boolean {
  const least = Math.min(one.size, other.size);
  const [across, down] = [Math.min(one.right, other.right) - Math.max(one.left, other.left), Math.abs(one.bottom - other.bottom)];
  return one.isUpright && other.isUpright && across > 1 && down < 0.6 * least;
}

const hex = (colour: readonly number[]): string => `#${colour.map((part) => Math.round(part * 255).toString(16).padStart(2, "0")).join("")}`; // prettier-ignore
const isWhite = (colour: readonly number[]): boolean => colour.every((part) => part > 0.99);
const near = (one: readonly number[], colour: string): boolean => hex(one).toUpperCase() === colour.toUpperCase();

/** A box lies between two lines of its own colour, one below the other, with a box's ground between them. */
function boxFaults({ lines, fills }: PrintedPage): string[] {
  const { border = "" } = sheetStyles.runBox;
  // Some programs draw a line with a pen, others fill it.
  const across = [...lines, ...fills]
    .filter((line) => near(line.colour, border) && line.bottom - line.top < 2 && line.right - line.left > 2)
    .map((line) => ({ ...line, middle: (line.top + line.bottom) / 2 }));
  const grounds = fills.filter(({ colour }) => GROUNDS.some((ground) => near(colour, ground)));
  return across.flatMap((line) => {
    const below = across.filter((other) => other.middle > line.middle + 1 && overlap(line, other) > 1);
    const [foot] = below.sort((one, other) => one.middle - other.middle);
    if (foot === undefined) return [];
    const [height, middle] = [foot.middle - line.middle, (line.middle + foot.middle) / 2];
    const isBox = grounds.some((ground) => ground.top < middle && ground.bottom > middle && overlap(ground, foot) > 1 && overlap(ground, line) > 1);
    return isBox && height < LEAST_BOX - ROUNDED ? [`a box is ${((height * 25.4) / 72).toFixed(2)} mm high`] : [];
  });
}

const GROUNDS = [sheetStyles.runBox.fill ?? "", emphasisStyles.next.fill];
const overlap = (one: Box, other: Box): number => Math.min(one.right, other.right) - Math.max(one.left, other.left);

/** What every page repeats, told by where it stands on the first. */
function headFaults(plan: SheetPlan, page: PrintedPage, first: PrintedPage): string[] {
  const head = first.texts.filter(({ bottom }) => bottom < headEnd(plan, first));
  const missing = head.filter(
    (one) => !page.texts.some(({ text, left, bottom }) => text === one.text && Math.abs(left - one.left) < 1 && Math.abs(bottom - one.bottom) < 1),
  );
  return head.length < 3 ? ["the head is missing"] : missing.map(({ text }) => `the head's "${text}" is missing`);
}

/** Where the repeated rows end, points from the top; a line in the margin above them is no row. */
function headEnd({ rowHeights = [], print }: SheetPlan, { texts: every }: PrintedPage): number {
  const texts = every.filter(({ bottom }) => print?.header === undefined || bottom > print.margins.top + 1);
  const high = rowHeights.flatMap(({ from, to, height }) => Array.from({ length: to - from + 1 }, () => height));
  const scale = (print?.scale ?? 100) / 100;
  const top = Math.min(...texts.map((text) => text.top)) - 2;
  return top + high.slice(0, print?.titleRows ?? 0).reduce((sum, height) => sum + height, 0) * scale;
}

/** Each page after the first goes on with a block's heading below its head. */
function beginFaults(plan: SheetPlan, page: PrintedPage, index: number): string[] {
  if (index === 0) return [];
  const end = headEnd(plan, page);
  const below = page.texts.filter(({ bottom }) => bottom > end).sort((one, other) => one.bottom - other.bottom);
  const band = page.fills.filter(({ top, colour }) => near(colour, sheetStyles.runBand.fill ?? "") && top > end - 4).sort((one, other) => one.top - other.top)[0]; // prettier-ignore
  const first = below[0];
  const begins = first !== undefined && band !== undefined && first.bottom > band.top && first.bottom < band.bottom;
  return begins ? [] : [`begins with "${first?.text ?? ""}", which is no heading`];
}

function contentFaults(plan: SheetPlan, pages: readonly PrintedPage[]): string[] {
  const area = cellArea(plan.print?.area ?? "");
  const place = ({ cell }: PlannedCell) => cellArea(cell) ?? { row: 0, column: 0 };
  const texts = plan.cells.flatMap((one) => (typeof one.content === "string" ? [{ ...place(one), text: one.content, style: one.style }] : []));
  const [everything, onFirst] = [pages.map(said).join("\n"), said(pages[0] ?? { width: 0, height: 0, texts: [], lines: [], fills: [] })];
  const pieces = new Set(pages.flatMap((page) => page.texts.map(({ text }) => plain(text))));
  const isPrinted = ({ row, column }: { row: number; column: number }): boolean => row < (area?.rows ?? 0) && column < (area?.columns ?? 0);
  const cautions = texts.filter(({ style }) => style === "runCaution");
  return [
    ...(cautions.length < 3 ? ["no cautions"] : cautions.filter(({ text }) => !onFirst.includes(plain(text))).map(({ text }) => `not on page one: ${text}`)), // prettier-ignore
    ...texts.filter((one) => isPrinted(one) && one.column === 0 && !everything.includes(plain(one.text))).map(({ text }) => `not printed: ${text}`),
    ...texts.filter(({ style, text }) => style === "runWorkingHeading" && pieces.has(plain(text))).map(({ text }) => `a working is printed: ${text}`), // prettier-ignore
  ];
}

const plain = (text: string): string => text.replace(/\s+/g, "");

/** All that a page says without its spaces, line by line: pieces of a line are drawn one by one. */
function said({ texts }: PrintedPage): string {
  const lines = new Map<number, (Box & { text: string })[]>();
  for (const one of texts) {
    const at = [...lines.keys()].find((bottom) => Math.abs(bottom - one.bottom) < 1) ?? one.bottom;
    lines.set(at, [...(lines.get(at) ?? []), one]);
  }
  const inOrder = [...lines.entries()].sort(([one], [other]) => one - other);
  return inOrder.map(([, pieces]) => plain(pieces.sort((one, other) => one.left - other.left).map(({ text }) => text).join(""))).join("\n"); // prettier-ignore
}
