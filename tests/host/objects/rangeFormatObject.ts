import type { CellArea } from "../../../src/workbook/cellArea";
import { badArgument } from "../HostError";
import type { HostObject } from "../HostObject";
import type { SheetState } from "../SheetState";

// Points: Excel specifications and limits.
const HIGHEST_ROW = 409;
const LINES = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", "InsideHorizontal", "InsideVertical"];

/** Looks are kept cell by cell under names such as "font.color". */
export function rangeFormatObject(sheet: SheetState, area: CellArea): HostObject {
  const set = (property: string) => (value: unknown) => {
    for (let row = area.row; row < area.row + area.rows; row++) {
      for (let column = area.column; column < area.column + area.columns; column++) sheet.setLook(row, column, property, value);
    }
  };
  const part = (kind: string, name: string, ...properties: string[]): HostObject => ({
    kind,
    writes: Object.fromEntries(properties.map((property) => [property, set(`${name}.${property.toLowerCase()}`)])),
  });
  const line = (which: string): HostObject => {
    if (!LINES.includes(which)) throw badArgument(which);
    if ((which === "InsideHorizontal" && area.rows === 1) || (which === "InsideVertical" && area.columns === 1)) throw badArgument(which);
    return {
      kind: "RangeBorder",
      writes: { Style: set(`border.${which}.style`), Color: set(`border.${which}.color`), Weight: set(`border.${which}.weight`) },
    };
  };
  return {
    kind: "RangeFormat",
    writes: {
      HorizontalAlignment: set("horizontalAlignment"),
      VerticalAlignment: set("verticalAlignment"),
      WrapText: set("wrapText"),
      IndentLevel: set("indentLevel"),
      RowHeight: (points: number) => {
        if (!(points >= 0 && points <= HIGHEST_ROW)) throw badArgument(String(points));
        for (let row = area.row; row < area.row + area.rows; row++) sheet.rowHeights.set(row, points);
      },
      ColumnWidth: (points: number) => {
        for (let column = area.column; column < area.column + area.columns; column++) sheet.columnWidths.set(column, points);
      },
    },
    parts: {
      Font: () => part("RangeFont", "font", "Color", "Bold", "Italic", "Size"),
      Fill: () => ({ ...part("RangeFill", "fill", "Color"), methods: { Clear: () => set("fill.color")(undefined) } }),
      Borders: () => ({ kind: "RangeBorderCollection", methods: { GetItem: line }, item: line }),
    },
  };
}
