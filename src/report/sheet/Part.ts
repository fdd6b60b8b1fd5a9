import type { BlockCell } from "../../runsheet/blocks/Block";
import { LABEL } from "../../runsheet/sheet/Columns";
import type { ShownCells } from "./ShownCells";

/** A part of a run sheet: a band of headings and the rows below it, down to the next band. */
export interface Part {
  readonly heading: number;
  readonly rows: readonly PartRow[];
  /** Words of the band, by column. */
  readonly headings: ReadonlyMap<number, string>;
}

/** A row as planned and shown. */
export interface PartRow {
  readonly row: number;
  readonly label: string;
  /** Boxes and calculated cells right of the label, from left to right. */
  readonly cells: readonly ShownCell[];
  /** What stands beside them whatever is filled in. */
  readonly beside: string;
  readonly isTotal: boolean;
}

export interface ShownCell {
  readonly column: number;
  /** Columns that a box is drawn over. */
  readonly over: number;
  readonly text: string;
  readonly isNumber: boolean;
  readonly isBox: boolean;
  readonly isError: boolean;
}

const BANDS: readonly string[] = ["runBand", "runBandWrapped", "runLightBand", "runLightBandWrapped"];
const BOXES: readonly string[] = ["runBox", "runBoxStart"];
const REST_OF_BOX: readonly string[] = ["runBoxMore", "runBoxEnd"];

/** The parts of a sheet from top to bottom, in its own words. @param width columns that are printed */
export function partsOf(planned: readonly BlockCell[], shown: ShownCells, width: number): readonly Part[] {
  const rows = new Map<number, BlockCell[]>();
  for (const one of planned) {
    if (one.at.column >= width) continue;
    const row = rows.get(one.at.row) ?? [];
    row.push(one);
    rows.set(one.at.row, row);
  }
  const sorted = [...rows.entries()].sort(([one], [other]) => one - other);
  const bands = sorted.filter(([, cells]) => cells.some(({ at, style }) => at.column === LABEL && BANDS.includes(style))).map(([row]) => row);
  return bands.map((heading, index): Part => {
    const end = bands[index + 1] ?? Infinity;
    return {
      heading,
      headings: new Map((rows.get(heading) ?? []).flatMap(({ at }) => (shown.text(at) === "" ? [] : [[at.column, shown.text(at)] as const]))),
      rows: sorted.filter(([row]) => row > heading && row < end).map(([row, cells]) => partRow(row, cells, shown)),
    };
  });
}

function partRow(row: number, cells: readonly BlockCell[], shown: ShownCells): PartRow {
  const inOrder = [...cells].sort((one, other) => one.at.column - other.at.column);
  const label = inOrder.find(({ at }) => at.column === LABEL);
  return {
    row,
    label: label === undefined ? "" : shown.text(label.at, label.format),
    cells: inOrder
      .filter(({ at, style, formula }) => at.column > LABEL && (BOXES.includes(style) || formula !== undefined))
      .map((one) => shownCell(one, inOrder, shown)),
    beside: inOrder
      .filter(({ at, style, formula }) => at.column > LABEL && formula === undefined && !BOXES.includes(style) && !REST_OF_BOX.includes(style))
      .map(({ at }) => shown.text(at))
      .filter((text) => text !== "")
      .join(" "),
    isTotal: label?.style === "runTotal",
  };
}

function shownCell({ at, style, format }: BlockCell, row: readonly BlockCell[], shown: ShownCells): ShownCell {
  const rest = style === "runBoxStart" ? row.filter((one) => one.at.column > at.column && REST_OF_BOX.includes(one.style)) : [];
  return {
    column: at.column,
    over: 1 + rest.length,
    text: shown.text(at, format),
    isNumber: shown.number(at) !== undefined,
    isBox: BOXES.includes(style),
    isError: shown.isError(at),
  };
}
