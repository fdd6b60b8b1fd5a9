import { catalogueName } from "../catalogueName";
import { formulaTree, type FormulaTree, type Part } from "./formulaTree";
import type { NameReading } from "./PlainReading";
import { plainFormula } from "./plainFormula";
import { namesOf } from "./ReadSheets";
import type { PlainOptions } from "./Surroundings";

export interface PlainNames {
  /** Names as they will stand, those left out that cannot be written without our functions: formulas that use them are fixed. */
  readonly usable: readonly NameReading[];
  /** The ones among them whose formula changes. */
  readonly changed: readonly NameReading[];
}

/** Defined names whose formulas call our functions, written in built-in functions, where every reference in them is absolute. */
export function plainNames(names: readonly NameReading[], sheets: readonly string[], options: PlainOptions): PlainNames {
  const [usable, changed]: [NameReading[], NameReading[]] = [[], []];
  const nameOf = namesOf(names);
  for (const one of names) {
    const formula = one.formula.startsWith("=") ? one.formula : `=${one.formula}`;
    const tree = formulaTree(formula);
    if (tree === undefined || !callsOurs(tree)) {
      usable.push(one);
      continue;
    }
    const sheet = one.sheet ?? sheets[0] ?? "";
    const place = { sheet, cell: "A1", area: "A1", nameOf, tableOf: () => undefined, spillOf: () => undefined };
    const plain = isAbsolute(tree) ? plainFormula(formula, place, options) : undefined;
    if (plain?.kind !== "formula" || plain.isArray) continue;
    const written = { ...one, formula: plain.formula };
    usable.push(written);
    changed.push(written);
  }
  return { usable, changed };
}

const callsOurs = ({ root }: FormulaTree): boolean =>
  some(root, (part) => part?.type === "CallExpression" && catalogueName(part.callee.name ?? "") !== undefined);

/** A relative reference in a name means another cell in each cell that uses the name. */
const isAbsolute = ({ root, textOf }: FormulaTree): boolean =>
  !some(
    root,
    (part) => part?.type === "ReferenceIdentifier" && part.kind === "range" && !/^(?:.*!)?\$[A-Z]+\$\d+(?::\$[A-Z]+\$\d+)?$/i.test(textOf(part)),
  );

function some(root: Part, isSuch: (part: Part) => boolean): boolean {
  const ahead: Part[] = [root];
  while (ahead.length > 0) {
    const part = ahead.pop();
    if (isSuch(part)) return true;
    if (part?.type === "CallExpression" || part?.type === "BinaryExpression" || part?.type === "UnaryExpression") ahead.push(...part.arguments);
    if (part?.type === "LetExpression") ahead.push(part.body, ...part.declarations.map(({ init }) => init));
    if (part?.type === "LambdaExpression") ahead.push(part.body);
  }
  return false;
}
