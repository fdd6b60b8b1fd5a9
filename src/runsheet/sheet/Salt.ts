import { cell, fixed, type Cell } from "../expressions/Expression";
import { CLOCK, type Columns } from "./Columns";

/** What a salt or mineral is by its formula, and what follows from that. */
export interface Salt {
  readonly rows: { readonly heading: number; readonly formula: number; readonly residue: number; readonly water: number };
  readonly formula: Cell;
  readonly residue: Cell;
  /** Whether its surface water is dried off first, or it is heated as weighed in. */
  readonly water: Cell;
  /** Theoretical loss, its equation, and g/mol of start and residue: calls of ours alone in a cell, nothing while not asked. */
  readonly theory: Cell;
  readonly equation: Cell;
  readonly startMass: Cell;
  readonly residueMass: Cell;
  /** Waters lost by theory for one formula of the residue; and 1 where nothing but water leaves, else 0. */
  readonly waters: Cell;
  readonly isWater: Cell;
}

export function saltCells(at: Columns, rows: Salt["rows"]): Salt {
  const value = (row: number): Cell => fixed(cell(row, CLOCK));
  const work = (row: number, place: number): Cell => fixed(at.working(row, place));
  return {
    rows,
    formula: value(rows.formula),
    residue: value(rows.residue),
    water: value(rows.water),
    theory: work(rows.formula, 1),
    startMass: work(rows.formula, 2),
    equation: work(rows.residue, 1),
    residueMass: work(rows.residue, 2),
    waters: work(rows.water, 1),
    isWater: work(rows.water, 2),
  };
}
