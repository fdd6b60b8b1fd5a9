import { cellArea } from "../workbook/cellArea";
import type { CellAddress, InputsReading, WantedCells, Workbook } from "../workbook/Workbook";

// Each range of a request may hold its share of what is read at once; an area of a run sheet needs a tenth of it.
const MOST_BESIDE_AN_AREA = 8;

/** References of a formula and, undefined where it is not read, a whole area around them. */
export interface ReadTogether extends InputsReading {
  readonly around: InputsReading["ranges"][number];
}

/**
 * Reads the cells that a formula refers to and a whole area of its sheet in one request; what lies within the area is read once, as a
 * part of it. A formula that refers to much elsewhere is read without the area.
 */
export async function readTogether(
  workbook: Pick<Workbook, "readInputs">,
  address: CellAddress,
  references: readonly WantedCells[],
  area: WantedCells | undefined,
): Promise<ReadTogether> {
  const outside = references.filter((one) => area === undefined || placeWithin(one, area) === undefined);
  if (area === undefined || outside.length > MOST_BESIDE_AN_AREA) return { ...(await workbook.readInputs(address, references)), around: undefined };
  const { again, ranges } = await workbook.readInputs(address, [...outside, area]);
  const around = ranges[outside.length];
  return {
    again,
    around,
    ranges: references.map((one) => {
      const place = placeWithin(one, area);
      if (place === undefined) return ranges[outside.indexOf(one)];
      return around?.slice(place.row, place.row + place.rows).map((row) => row.slice(place.column, place.column + place.columns));
    }),
  };
}

/** Where a range lies within another, from 0; undefined for whole columns, spills, other sheets and what reaches out of it. */
function placeWithin({ sheet, range, spill }: WantedCells, within: WantedCells) {
  const [one, whole] = [cellArea(range), cellArea(within.range)];
  if (one === undefined || whole === undefined || spill || sheet.toLowerCase() !== within.sheet.toLowerCase()) return undefined;
  const [row, column] = [one.row - whole.row, one.column - whole.column];
  const isInside = row >= 0 && column >= 0 && row + one.rows <= whole.rows && column + one.columns <= whole.columns;
  return isInside ? { ...one, row, column } : undefined;
}
