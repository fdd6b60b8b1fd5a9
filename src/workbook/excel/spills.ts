import { inRequests, QUESTIONS_A_REQUEST } from "./inRequests";
import { withoutSheet } from "./withoutSheet";

export interface Spills {
  /** The area that each formula fills, under the formula's cell: "B7" -> "B7:C12". */
  readonly begun: ReadonlyMap<string, string>;
  /** Cells that only stand in the spill of another cell's formula. */
  readonly filled: ReadonlySet<string>;
}

/** Which of these cells begin a spill, and which only stand in one. Needs ExcelApi 1.12. */
export async function spills(context: Excel.RequestContext, worksheet: Excel.Worksheet, cells: readonly string[]): Promise<Spills> {
  const asked = await inRequests(context, cells, { limit: QUESTIONS_A_REQUEST, weigh: () => 1 }, (cell) => {
    const range = worksheet.getRange(cell);
    return { cell, area: range.getSpillingToRangeOrNullObject().load("address"), parent: range.getSpillParentOrNullObject().load("address") };
  });
  const begun = asked.flatMap(({ cell, area }) =>
    area.isNullObject || withoutSheet(area.address) === cell ? [] : [[cell, withoutSheet(area.address)] as const],
  );
  const filled = asked.flatMap(({ cell, parent }) => (parent.isNullObject || withoutSheet(parent.address) === cell ? [] : [cell]));
  return { begun: new Map(begun), filled: new Set(filled) };
}
