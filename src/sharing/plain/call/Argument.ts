import { BLANK, CellError, type CellValue } from "../../../inputs/CellValue";
import type { Input } from "../../../inputs/Input";
import { numberText } from "../../../inputs/numberText";
import type { CellArea } from "../../../workbook/cellArea";
import type { CellReading } from "../../../workbook/Workbook";
import type { Size } from "../writing/sizeOf";

/** One argument: left out or typed, which is decided here and now, or asked of a cell each time the sheet calculates. */
export type Argument =
  | { readonly kind: "settled"; readonly value: CellValue; readonly text: string }
  | {
      readonly kind: "asked";
      readonly text: string;
      readonly size: Size;
      readonly held: () => Held | undefined;
      /** Of several cells, where it is told which of their numbers are truths. */
      readonly truths?: string;
    };

/** What the cells of a reference, or a name that stands for a value, held when the workbook was read. */
export interface Held extends Size {
  /** Undefined for the name: no cell tells that it stands for something else by now. */
  readonly cells: { readonly sheet: string; readonly area: CellArea } | undefined;
  readonly at: (row: number, column: number) => CellReading | undefined;
}

export type NamedInput = readonly [name: string, input: Input<unknown>];

export const settled = (value: CellValue): Extract<Argument, { readonly kind: "settled" }> => ({
  kind: "settled",
  value,
  text: settledText(value),
});

function settledText(value: CellValue): string {
  if (typeof value === "number") return numberText(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "string" ? inQuotes(value) : "";
}

/** A text in a cell formula. */
export const inQuotes = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** What a cell read like that hands to an argument. */
export function valueHeld(reading: CellReading | undefined): CellValue {
  if (reading === undefined) return BLANK;
  if (reading.error !== "") return new CellError(reading.error);
  return reading.value === null || reading.value === "" ? BLANK : reading.value;
}
