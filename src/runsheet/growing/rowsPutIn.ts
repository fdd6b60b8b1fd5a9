import { movesUp } from "../../problems/runsheet/growingProblems";
import type { RowsIn } from "../../workbook/SheetGrowth";
import type { Layout } from "../sheet/layout";

// What a layout says besides where things stand.
const NO_PLACES: readonly string[] = ["heights", "order", "breaks", "last", "page", "printedTo"] satisfies readonly (keyof Layout)[];
// The last row of a run moves away from the first as rows are put in between; every other row stays the same thing.
const END_OF_RUN = "last";

/**
 * Where rows are put in so that a sheet of one layout becomes one of a larger: above the next thing that both have, so that they
 * belong to whatever reaches from the thing above to the one below. Taken from the layouts alone, whatever the kind of run.
 */
export function rowsPutIn(from: Layout, to: Layout): RowsIn[] {
  const [before, after] = [places(from), places(to)];
  const both = [...before].flatMap(([name, row]) => {
    const now = after.get(name);
    return now === undefined ? [] : [{ row, now }];
  });
  // The row below the sheet ends it, so that what stands there moves too.
  const marks = [...both, { row: from.last + 1, now: to.last + 1 }].sort((one, other) => one.row - other.row);
  const steps: RowsIn[] = [];
  let moved = 0;
  for (const { row, now } of marks) {
    const count = now - row - moved;
    if (count < 0) throw new Error(movesUp(row));
    if (count > 0) steps.push({ above: now - count, count });
    moved += count;
  }
  return steps;
}

/** Every row that has a name, under the way to it: "drying.strip.first". */
function places(layout: Layout): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const walk = (value: unknown, way: string): void => {
    if (typeof value === "number") found.set(way, value);
    else if (Array.isArray(value)) value.forEach((one: { check?: string }, index) => walk(one, `${way}.${one.check ?? index}`));
    else if (typeof value === "object" && value !== null)
      for (const [name, one] of Object.entries(value)) if (name !== END_OF_RUN) walk(one, `${way}.${name}`);
  };
  for (const [name, one] of Object.entries(layout)) if (!NO_PLACES.includes(name)) walk(one, name);
  return found;
}
