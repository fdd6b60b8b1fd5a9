import { isOn } from "../../parts/readXml";
import { attributeOf, readMarkup, type Tag } from "../parts/markup";

/**
 * The looks, by their numbers, that a sheet's part gives to whole rows and columns: cells that do not stand in it have them, the row's before the
 * column's (ECMA-376 Part 1, 18.3.1.13 and 18.3.1.73).
 */
export class LineLooks {
  private readonly columns: { readonly from: number; readonly to: number; readonly look: number }[] = [];
  private readonly rows = new Map<number, number>();

  column(tag: Tag): void {
    const look = attributeOf(tag, "style");
    if (look !== undefined)
      this.columns.push({ from: Number(attributeOf(tag, "min")) - 1, to: Number(attributeOf(tag, "max")) - 1, look: Number(look) });
  }

  row(row: number, tag: Tag): void {
    if (isOn(attributeOf(tag, "customFormat"))) this.rows.set(row, Number(attributeOf(tag, "s") ?? 0));
  }

  /** @returns undefined where neither says any */
  at(row: number, column: number): number | undefined {
    return this.rows.get(row) ?? this.columns.find(({ from, to }) => column >= from && column <= to)?.look;
  }
}

export function lineLooksIn(part: string, text: string): LineLooks {
  const looks = new LineLooks();
  let before = -1;
  readMarkup(part, text, {
    open: (tag, depth) => {
      if (depth !== 2) return;
      if (tag.name === "col") looks.column(tag);
      if (tag.name !== "row") return;
      before = attributeOf(tag, "r") === undefined ? before + 1 : Number(attributeOf(tag, "r")) - 1;
      looks.row(before, tag);
    },
  });
  return looks;
}
