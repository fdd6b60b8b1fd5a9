import type { Formula } from "../../src/chemistry/Formula";

/** A formula from its atoms, for tests of what is computed from one once it is read. */
export const formulaOf = (atoms: Readonly<Record<string, number>>, charge = 0): Formula => ({
  text: Object.entries(atoms)
    .map(([symbol, count]) => symbol + (count === 1 ? "" : String(count)))
    .join(""),
  atoms: new Map(Object.entries(atoms)),
  charge,
  notes: [],
});
