import { BooleanNumber, HorizontalAlign, WrapStrategy, type IStyleData, type Nullable, type Worksheet } from "@univerjs/core";

/** The look that a row, or else a column, gives to cells without one of their own. */
export function lineLook(sheet: Pick<Worksheet, "getRowStyle" | "getColumnStyle">, row: number, column: number): IStyleData | undefined {
  return asLook(sheet.getRowStyle(row)) ?? asLook(sheet.getColumnStyle(column));
}

const asLook = (style: unknown): IStyleData | undefined =>
  typeof style === "object" && style !== null && Object.keys(style).length > 0 ? (style as IStyleData) : undefined;

/** A look over that of a line: the engine takes from the line whatever the cell does not say itself. */
export const overLine = (own: Nullable<IStyleData>, line: IStyleData | undefined): IStyleData | undefined =>
  line === undefined ? (own ?? undefined) : { ...line, ...own };

const USUAL_SIZE = 11;

/** What says that a cell is plain, in each thing that the look of a line may say otherwise. */
export const PLAIN: IStyleData = {
  ...{ bl: BooleanNumber.FALSE, it: BooleanNumber.FALSE, fs: USUAL_SIZE },
  ...{ cl: { rgb: "#000000" }, n: { pattern: "General" }, ht: HorizontalAlign.UNSPECIFIED, tb: WrapStrategy.UNSPECIFIED },
  // There is no other word for these.
  ...{ bg: null, bd: null, pd: null },
};
