import { footDays } from "../../../problems/workbook/printWords";
import { today } from "../../dayOf";
import { withDay, type Emphasis, type PrintPlan } from "../../SheetPlan";
import { emphasisStyles } from "../../sheetStyles";

/** Sets up the printed page. The size of the paper stays the reader's own: a plan fits the shorter of A4 and Letter. */
export function setPage(
  worksheet: Excel.Worksheet,
  { area, landscape, titleRows, titleFrom = 1, scale, margins, header, footer, breaksBefore }: PrintPlan,
): void {
  const page = worksheet.pageLayout;
  page.orientation = landscape ? Excel.PageOrientation.landscape : Excel.PageOrientation.portrait;
  page.zoom = { scale };
  page.setPrintArea(area);
  page.setPrintTitleRows(`$${titleFrom}:$${titleRows}`);
  page.centerHorizontally = true;
  page.leftMargin = margins.left;
  page.rightMargin = margins.right;
  page.topMargin = margins.top;
  page.bottomMargin = margins.bottom;
  page.headerMargin = margins.header;
  page.footerMargin = margins.footer;
  const pages = page.headersFooters.defaultForAllPages;
  // What the user may have put there stays where nothing is wanted.
  if (header !== undefined) pages.centerHeader = header;
  const day = footDays.setUp(today());
  pages.leftFooter = withDay(footer.left, day);
  pages.centerFooter = withDay(footer.centre, day);
  pages.rightFooter = withDay(footer.right, day);
  for (const row of breaksBefore) worksheet.horizontalPageBreaks.add(`A${row}`);
}

/** How cells look while a condition holds. */
export function emphasise(worksheet: Excel.Worksheet, { range, condition, look }: Emphasis): void {
  const { fill, fontColour, bold } = emphasisStyles[look];
  const { rule, format } = worksheet.getRange(range).conditionalFormats.add(Excel.ConditionalFormatType.custom).custom;
  rule.formula = condition;
  format.fill.color = fill;
  format.font.color = fontColour;
  format.font.bold = bold;
}
