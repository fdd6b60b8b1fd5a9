import type { AstExpression } from "@borgar/fx";
import { CellError, type CellValue } from "../../../inputs/CellValue";
import { isSingle, oneCell, valueAt, type Cells, onlyValue } from "../../formula/Cells";
import { each, type Arguments } from "../../formula/workedOut";
import { certainOrder, certainTruth, type Certain } from "./certain";

type Worked = (part: AstExpression | null) => Certain<Cells>;
type Choice = (given: Arguments, worked: Worked, isOverArrays: boolean) => Certain<Cells>;

/** What the first part gives, or the second where it is such an error, cell by cell. */
const unless =
  (isSuch: (code: string) => boolean): Choice =>
  ([first = null, second = null], worked, isOverArrays) => {
    const cells = worked(first);
    if (cells === undefined || (!isSingle(cells) && !isOverArrays)) return undefined;
    const isInstead = (value: CellValue): boolean => value instanceof CellError && isSuch(value.code);
    if (isSingle(cells)) return isInstead(cells[0]?.[0] as CellValue) ? worked(second) : cells;
    if (!cells.some((row) => row.some(isInstead))) return cells;
    const instead = worked(second);
    return instead && each(cells, (line, row) => each(line, (value, column) => (isInstead(value) ? valueAt(instead, { row, column }) : value)));
  };

/** One part or the other, cell by cell of a condition over an array. */
function eachWay(conditions: Cells, then: AstExpression | null, otherwise: AstExpression | null | undefined, worked: Worked): Certain<Cells> {
  const ways = { then: undefined as Cells | undefined, otherwise: undefined as Cells | undefined };
  return each(conditions, (line, row) =>
    each(line, (condition, column) => {
      if (condition instanceof CellError) return condition;
      const holds = certainTruth(condition);
      if (holds === undefined) return undefined;
      const cells = holds ? (ways.then ??= worked(then)) : (ways.otherwise ??= otherwise === undefined ? oneCell(false) : worked(otherwise));
      return cells && valueAt(cells, { row, column });
    }),
  );
}

/** Functions that give one of their parts, and work out no other. */
export const CHOICES: Readonly<Record<string, Choice>> = {
  IF: ([condition = null, then = null, otherwise], worked, isOverArrays) => {
    const conditions = worked(condition);
    if (conditions !== undefined && !isSingle(conditions)) return isOverArrays ? eachWay(conditions, then, otherwise, worked) : undefined;
    const value = onlyValue(conditions);
    if (value === undefined || value instanceof CellError) return value && oneCell(value);
    const holds = certainTruth(value);
    if (holds === undefined) return undefined;
    return holds ? worked(then) : otherwise === undefined ? oneCell(false) : worked(otherwise);
  },
  IFS: (given, worked) => {
    for (let at = 0; at + 1 < given.length; at += 2) {
      const value = onlyValue(worked(given[at] ?? null));
      if (value === undefined || value instanceof CellError) return value && oneCell(value);
      const holds = certainTruth(value);
      if (holds === undefined) return undefined;
      if (holds) return worked(given[at + 1] ?? null);
    }
    return oneCell(new CellError("#N/A"));
  },
  SWITCH: ([of = null, ...given], worked) => {
    const value = onlyValue(worked(of));
    if (value === undefined || value instanceof CellError) return value && oneCell(value);
    for (let at = 0; at + 1 < given.length; at += 2) {
      const other = onlyValue(worked(given[at] ?? null));
      const order = other === undefined ? undefined : typeof other === typeof value ? certainOrder(value, other, true) : 1;
      if (order === undefined) return undefined;
      if (order === 0) return worked(given[at + 1] ?? null);
    }
    return given.length % 2 === 1 ? worked(given.at(-1) ?? null) : oneCell(new CellError("#N/A"));
  },
  IFERROR: unless(() => true),
  IFNA: unless((code) => code === "#N/A"),
  CHOOSE: ([which = null, ...choices], worked) => {
    const value = onlyValue(worked(which));
    if (value instanceof CellError) return oneCell(value);
    const chosen = typeof value === "number" && Number.isInteger(value) ? choices[value - 1] : undefined;
    return chosen === undefined ? undefined : worked(chosen);
  },
};
