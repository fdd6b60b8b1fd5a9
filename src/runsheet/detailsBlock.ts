import { CONSTANCY_CRITERIA } from "../drying/constantWeight/constancyCriteria";
import type { PlannedCell } from "../workbook/SheetPlan";
import type { Block } from "./Block";
import { band } from "./band";
import { COLUMNS } from "./columns";
import { detailBox } from "./constantWeightArguments";
import { DETAIL_RULES } from "./detailRules";
import { glossary } from "./glossary";
import { DETAILS, type Detail } from "./quantities";
import type { Layout } from "./layout";
import { massFormat } from "./massFormat";
import type { RunSheetOptions } from "./RunSheetOptions";

// Twice the sensitivity of the balance, ASTM D4442 method A: the one limit that every balance can decide.
const USUAL_CRITERION: (typeof CONSTANCY_CRITERIA)[number] = "readability";
const USUAL_LIMIT = 2;
// Half a percentage point; common practice, no source.
const USUAL_WANTED = 0.005;

const FORMATS: Partial<Record<Detail, string>> = { date: "yyyy-mm-dd", wanted: "0.0##%" };

/** Who, what, when, and the numbers that the verdict on dryness and the uncertainties rest on. */
export function detailsBlock(options: RunSheetOptions, rows: Layout): Block {
  const contents = prefilled(options);
  return {
    cells: [
      ...band(rows, rows.detailsHeading, glossary.details.heading, "heading"),
      ...DETAILS.flatMap((detail): PlannedCell[] => {
        const [content, format] = [contents[detail], FORMATS[detail]];
        return [
          { cell: `${COLUMNS.label}${rows.details[detail]}`, content: glossary.details[detail], style: "label" },
          {
            cell: `${COLUMNS.value}${rows.details[detail]}`,
            ...(content === undefined ? {} : { content }),
            style: "input",
            ...(format === undefined ? {} : { format }),
          },
        ];
      }),
      { cell: `${COLUMNS.label}${rows.weighingUncertainty}`, content: glossary.details.weighingUncertainty, style: "label" },
      {
        cell: `${COLUMNS.value}${rows.weighingUncertainty}`,
        formula: weighingUncertainty(rows),
        style: "computed",
        format: massFormat(options.readability / FIGURES_MORE),
      },
    ],
    entryRules: DETAILS.map((detail) => ({ range: `${COLUMNS.value}${rows.details[detail]}`, ...DETAIL_RULES[detail] })),
  };
}

// Two figures more than the display shows.
const FIGURES_MORE = 100;

/**
 * The balance is zeroed before each weighing, so both zero and load are rounded. A weighing corrected by two zeros is known
 * a little better than that, by sqrt(3 / 4), which is not claimed.
 */
function weighingUncertainty(rows: Layout): string {
  const [readability, repeatability] = [detailBox(rows, "readability"), detailBox(rows, "repeatability")];
  const call = (known: string): string => `RETORT.READING.U(${readability},${known},,TRUE)`;
  return `=IF(COUNT(${readability})=0,"",IF(COUNT(${repeatability})=0,${call("")},${call(repeatability)}))`;
}

const prefilled = (options: RunSheetOptions): Partial<Record<Detail, string | number>> => ({
  vessel: options.vessel,
  readability: options.readability,
  wanted: USUAL_WANTED,
  interval: options.intervalMinutes,
  ...(options.ovenCelsius === undefined ? {} : { oven: options.ovenCelsius }),
  criterion: USUAL_CRITERION,
  limit: USUAL_LIMIT,
});
