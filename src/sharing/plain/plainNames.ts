import { tokenize, tokenTypes } from "@borgar/fx";
import type { WhyFixed } from "../../problems/sharing/plainCellProblems";
import { findCalls } from "../findCalls";
import { catalogueName } from "../catalogueName";
import { mayBeOurs } from "./change/precedents";
import { formulaTree, type FormulaTree } from "./formula/formulaTree";
import { anyPart, nameCalled } from "./formula/parts";
import { isAbsolute } from "./writing/named";
import type { NameReading } from "./reading/PlainReading";
import { plainFormula } from "./plainFormula";
import { namesOf, type ReadSheets } from "./reading/ReadSheets";
import type { PlainOptions } from "./reading/Surroundings";

export interface PlainNames {
  /** Names as cells are written by them: what still calls our functions is written out where it is used, or the cell is fixed. */
  readonly inCells: readonly NameReading[];
  /** Those whose formula changes. */
  readonly changed: readonly NameReading[];
  /** Those that have no such formula and go, each as it was and why. */
  readonly gone: readonly { readonly name: NameReading; readonly why: WhyFixed }[];
}

/**
 * Defined names whose formulas call our functions, written in built-in functions, where every reference in them is absolute. One over arrays is
 * changed too, and written out in cells all the same: older programs take a name for one value where the cell is. A LAMBDA stays one, as programs
 * that know it take nothing else for a function.
 */
export function plainNames(names: readonly NameReading[], sheets: Pick<ReadSheets, "names" | "spillOf">, options: PlainOptions): PlainNames {
  const inCells: NameReading[] = [];
  const changed = new Map<NameReading, NameReading>();
  const gone = new Map<NameReading, WhyFixed>();
  const unreadable = new Set<NameReading>();
  const nameOf = namesOf(names);
  for (const one of names) {
    const formula = one.formula.startsWith("=") ? one.formula : `=${one.formula}`;
    const tree = formulaTree(formula);
    if (tree === undefined ? !mayBeOurs(formula) : !callsOursItself(tree)) {
      inCells.push(one);
      continue;
    }
    if (tree === undefined) {
      gone.set(one, "unreadable");
      unreadable.add(one);
      continue;
    }
    const sheet = one.sheet ?? sheets.names[0] ?? "";
    const place = { sheet, cell: "A1", area: "A1", nameOf, tableOf: () => undefined, spillOf: sheets.spillOf };
    const isFunction = tree.root.type === "LambdaExpression";
    const plain = isAbsolute(tree) ? plainFormula(formula, place, isFunction ? { ...options, newerFunctions: true } : options) : undefined;
    const written = plain?.kind === "formula" ? { ...one, formula: plain.formula } : undefined;
    inCells.push(written === undefined || isFunction || (plain?.kind === "formula" && plain.isArray) ? one : written);
    if (written === undefined) gone.set(one, plain?.kind === "none" ? plain.why : "argumentForm");
    else changed.set(one, written);
  }
  // A name that uses one that goes stands for nothing in the file.
  const formulaNow = (one: NameReading): string => (changed.get(one) ?? one).formula;
  for (const user of usersOf(new Set(gone.keys()), names, formulaNow)) if (!gone.has(user)) gone.set(user, "goneName");
  const without = usersOf(unreadable, names, formulaNow);
  return {
    inCells: inCells.filter((one) => !without.has(one)),
    changed: [...changed].flatMap(([one, written]) => (gone.has(one) ? [] : [written])),
    gone: [...gone].map(([name, why]) => ({ name, why })),
  };
}

/** A name that called us, and its formula in built-in functions. */
export interface NameWritten {
  readonly name: NameReading;
  readonly now: string;
}

/** Those of the names that called us and are written otherwise by now. */
export const namesWritten = (before: readonly NameReading[], now: readonly NameReading[]): NameWritten[] =>
  before.flatMap((name) => {
    const written = now.find((one) => one.name === name.name && one.sheet === name.sheet);
    return written === undefined || findCalls(name.formula).length === 0 ? [] : [{ name, now: written.formula }];
  });

const callsOursItself = ({ root }: FormulaTree): boolean =>
  anyPart(root, (part) => part?.type === "CallExpression" && catalogueName(nameCalled(part)) !== undefined);

/** Some names and all that use them, at any distance. */
function usersOf(some: ReadonlySet<NameReading>, names: readonly NameReading[], formulaNow: (one: NameReading) => string): Set<NameReading> {
  const users = new Set(some);
  if (users.size === 0) return users;
  for (let known = -1; known < users.size;) {
    known = users.size;
    const used = new Set([...users].map(({ name }) => name.toUpperCase()));
    for (const one of names) if (!users.has(one) && namesUsed(formulaNow(one)).some((name) => used.has(name))) users.add(one);
  }
  return users;
}

const namesUsed = (formula: string): string[] =>
  tokenize(formula.startsWith("=") ? formula : `=${formula}`).flatMap(({ type, value }) =>
    type === tokenTypes.REF_NAMED || type === tokenTypes.FUNCTION ? [value.slice(value.lastIndexOf("!") + 1).toUpperCase()] : [],
  );
