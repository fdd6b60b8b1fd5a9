import type { IStyleData } from "@univerjs/core";
import { cellAt } from "../../../workbook/cellArea";
import { storedFormula } from "../../../xlsx/formulas/storedFormula";
import { worksOnRanges, type NamesForSeveral } from "../../../xlsx/formulas/worksOnRanges";
import type { FileValue, NewContent } from "../../../xlsx/package/cells/CellChange";
import type { LookChange } from "../../../xlsx/package/StylesPart";
import { DAYS_TO_1904 } from "../../../xlsx/parts/cellValue";
import { showsDate } from "../reading/numberFormats";
import { isUnread } from "../../unreadFormula";
import type { HeldCell, HeldCells } from "./heldCells";
import { lookDifference } from "./lookDifference";

/** What is to become of one cell of the file. */
export interface CellDifference {
  readonly cell: string;
  readonly content: NewContent;
  readonly look: LookChange | undefined;
}

interface Around {
  readonly names: NamesForSeveral;
  /** The formulas that the file brought along. */
  readonly fromFile: ReadonlySet<string>;
  /** True where the file counts days from 1904 and the grid from 1900. */
  readonly from1904: boolean;
  /** A formula as it was before, under what its sheets are called now. */
  readonly renamed: (formula: string) => string;
}

interface WithLines {
  /** The look that the row or column of a cell gave it before, where it had none of its own. */
  readonly lineLook: (row: number, column: number) => IStyleData | undefined;
}

/** Where a sheet of the grid differs from what it was when it was read, cell by cell. */
export function cellDifferences(before: HeldCells, now: HeldCells, around: Around & WithLines): CellDifference[] {
  const found: CellDifference[] = [];
  for (const [place, held] of now) {
    const was = before.get(place);
    const content = was !== undefined && isSame(was, held, around) ? undefined : contentOf(was, held, around);
    const look = lookDifference(was === undefined ? around.lineLook(held.row, held.column) : was.look, held.look);
    if (content !== undefined || look !== undefined) found.push({ cell: cellAt(held.row, held.column), content: content ?? { kind: "kept" }, look });
  }
  for (const [place, { row, column, isFilled, look }] of before) {
    // What a formula no longer fills is blank by it, not by anybody's hand.
    if (!now.has(place))
      found.push({
        cell: cellAt(row, column),
        content: { kind: isFilled ? "recalculated" : "value", value: null },
        look: lookDifference(look, around.lineLook(row, column)),
      });
  }
  return found;
}

function isSame(was: HeldCell, held: HeldCell, { renamed }: Around): boolean {
  const isSameFormula = was.formula === held.formula || (was.formula !== "" && renamed(was.formula) === held.formula);
  return isSameFormula && was.spill === held.spill && was.isFilled === held.isFilled && isSameValue(was.value, held.value);
}

const isBlocked = (value: FileValue): boolean => typeof value === "object" && value?.error === "#SPILL!";

const isSameValue = (one: FileValue, other: FileValue): boolean =>
  one === other || (typeof one === "object" && typeof other === "object" && one?.error === other?.error);

function contentOf(was: HeldCell | undefined, held: HeldCell, { names, fromFile, from1904, renamed }: Around): NewContent {
  const { formula, spill, isFilled } = held;
  const value = from1904 && typeof held.value === "number" && showsDate(held.look?.n?.pattern ?? "") ? held.value - DAYS_TO_1904 : held.value;
  if (isFilled) return { kind: "recalculated", value };
  if (formula === "") return was?.isFilled === true && value === null ? { kind: "recalculated", value } : { kind: "value", value };
  const isSameFormula = was !== undefined && (was.formula === formula || renamed(was.formula) === formula);
  if (isSameFormula && was.spill === spill) return { kind: "recalculated", value };
  if (!fromFile.has(formula) && isUnread(formula)) return { kind: "value", value: formula };
  const stored = { kind: "formula", formula: storedFormula(formula), value } as const;
  // One that spilled and gives a single value now, or that something stands in the way of, spills again in the file once it can.
  const isSpilling = spill !== "" || (isSameFormula && was.spill !== "") || isBlocked(value);
  if (isSpilling) return { ...stored, array: spill === "" ? cellAt(held.row, held.column) : spill, spills: true };
  return worksOnRanges(formula, names) ? { ...stored, array: cellAt(held.row, held.column) } : stored;
}
