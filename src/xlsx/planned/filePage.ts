import type { ConditionalFormattingOptions, PageSetup } from "exceljs";
import { footDays } from "../../problems/workbook/printWords";
import { today } from "../../workbook/dayOf";
import { withDay, type Emphasis, type PrintPlan } from "../../workbook/SheetPlan";
import { emphasisStyles } from "../../workbook/sheetStyles";
import { storedFormula } from "../formulas/storedFormula";

const POINTS_PER_INCH = 72;

/** The printed page as the file library has it. */
export function pageSetup({ area, landscape, titleRows, titleFrom = 1, scale, margins }: PrintPlan): Partial<PageSetup> {
  const inches = Object.fromEntries(Object.entries(margins).map(([side, points]) => [side, points / POINTS_PER_INCH]));
  return {
    orientation: landscape ? "landscape" : "portrait",
    scale,
    // The names of the sides are those of the plan.
    margins: inches as unknown as NonNullable<PageSetup["margins"]>,
    horizontalCentered: true,
    // The library marks the column of the first corner alone as fixed, which other programs then refuse; with rows marked here they take it.
    printArea: area.replace(/[A-Z]+/g, "$&$"),
    printTitlesRow: `${titleFrom}:${titleRows}`,
  };
}

export const footerOf = ({ footer: { left, centre, right } }: PrintPlan): string =>
  withDay(`&L${left}&C${centre}&R${right}`, footDays.saved(today()));

export const headerOf = ({ header }: PrintPlan): string | undefined => header && `&C${header}`;

/** A look under a condition as the file library has it. */
export function conditional({ range, condition, look }: Emphasis): ConditionalFormattingOptions {
  const { fill, fontColour, bold } = emphasisStyles[look];
  const colour = (hex: string) => ({ argb: hex.replace("#", "FF") });
  const style = { font: { bold, color: colour(fontColour) }, fill: { type: "pattern", pattern: "solid", bgColor: colour(fill) } } as const;
  return { ref: range, rules: [{ type: "expression", priority: 1, formulae: [storedFormula(condition)], style }] };
}
