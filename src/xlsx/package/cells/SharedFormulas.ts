import { slideFormula } from "../../../workbook/slideFormula";
import { cellArea, rangeOf } from "../../../workbook/cellArea";
import { attributeOf, escapedText, tagWith, withoutEnd, type Tag } from "../parts/markup";
import type { Edit } from "../parts/partText";

/** A formula's element, whose it is, and whether the cell keeps it. */
export interface StandingFormula {
  readonly row: number;
  readonly column: number;
  readonly tag: Tag;
  /** Where the element ends. */
  readonly end: number;
  readonly text: string;
  readonly isKept: boolean;
}

interface Group {
  readonly first: StandingFormula;
  readonly heirs: StandingFormula[];
}

const NO_SUCH_CELL = "#REF!";

/**
 * Formulas that one cell of a group holds for all of it (ECMA-376 Part 1, 18.3.1.40). Where that cell gets another content, the next one that
 * still needs the formula holds it, so that no more than one other cell is touched.
 */
export class SharedFormulas {
  private readonly groups = new Map<string, Group>();

  /** @param names the workbook's defined names in capitals */
  constructor(private readonly names: ReadonlySet<string>) {}

  add(formula: StandingFormula): void {
    const id = attributeOf(formula.tag, "si") ?? "";
    const group = this.groups.get(id);
    if (group === undefined && formula.text !== "") this.groups.set(id, { first: formula, heirs: [] });
    // A cell of the group with a text of its own goes by that.
    else if (formula.text === "" && formula.isKept) group?.heirs.push(formula);
  }

  edits(text: string): Edit[] {
    return [...this.groups.values()].flatMap(({ first, heirs }) => (first.isKept ? [] : this.handedOn(text, first, heirs)));
  }

  private handedOn(text: string, first: StandingFormula, heirs: readonly StandingFormula[]): Edit[] {
    const [next] = heirs;
    if (next === undefined) return [];
    const slid = (to: StandingFormula): string =>
      slideFormula(first.text, { rows: to.row - first.row, columns: to.column - first.column }, this.names);
    const leaves = (formula: string): boolean => formula.split(NO_SUCH_CELL).length > first.text.split(NO_SUCH_CELL).length;
    // A reference that leaves the sheet at the next cell may be on it again further on, so nothing can be slid from there.
    if (leaves(slid(next))) return heirs.map((heir) => withText(text, heir, slid(heir), { t: undefined, si: undefined, ref: undefined }));
    return [withText(text, next, slid(next), { ref: areaOf(heirs) })];
  }
}

function withText(text: string, { tag, end }: StandingFormula, formula: string, given: Readonly<Record<string, string | undefined>>): Edit {
  const open = `${withoutEnd(tagWith(text, tag, given))}>`;
  return { from: tag.start, to: end, text: `${open}${escapedText(formula)}</${tag.prefix}f>` };
}

/** The smallest area around the cells. */
function areaOf(cells: readonly StandingFormula[]): string {
  let [top, left, bottom, right] = [Infinity, Infinity, -1, -1];
  for (const { row, column } of cells)
    [top, left, bottom, right] = [Math.min(top, row), Math.min(left, column), Math.max(bottom, row), Math.max(right, column)];
  return rangeOf({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
}

/** The area of a formula that fills several cells or stands for a what-if table; undefined for any other. */
export function areaFilled(
  tag: Tag,
): { readonly isTable: boolean; readonly ref: string; readonly area: NonNullable<ReturnType<typeof cellArea>> } | undefined {
  const [type, ref = ""] = [attributeOf(tag, "t"), attributeOf(tag, "ref")];
  const area = type === "array" || type === "dataTable" ? cellArea(ref) : undefined;
  return area === undefined ? undefined : { isTable: type === "dataTable", ref, area };
}
