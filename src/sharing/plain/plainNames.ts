import { tokenize, tokenTypes } from "@borgar/fx";
import type { WhyFixed } from "../../problems/plainCellProblems";
import { catalogueName } from "../catalogueName";
import { formulaTree, type FormulaTree, type Part } from "./formulaTree";
import type { NameReading } from "./PlainReading";
import { plainFormula } from "./plainFormula";
import { mayBeOurs } from "./change/precedents";
import { namesOf } from "./ReadSheets";
import type { PlainOptions } from "./Surroundings";

export interface PlainNames {
  /** Names as they will stand, those left out that cannot be written without our functions: formulas that use them are fixed. */
  readonly usable: readonly NameReading[];
  /** The ones among them whose formula changes. */
  readonly changed: readonly NameReading[];
  /** The others, each as it was and why. */
  readonly gone: readonly { readonly name: NameReading; readonly why: WhyFixed }[];
}

/** Defined names whose formulas call our functions, written in built-in functions, where every reference in them is absolute. */
export function plainNames(names: readonly NameReading[], sheets: readonly string[], options: PlainOptions): PlainNames {
  const [usable, changed]: [NameReading[], NameReading[]] = [[], []];
  const gone = new Map<NameReading, WhyFixed>();
  const nameOf = namesOf(names);
  for (const one of names) {
    const formula = one.formula.startsWith("=") ? one.formula : `=${one.formula}`;
    const tree = formulaTree(formula);
    if (tree === undefined ? !mayBeOurs(formula) : !callsOurs(tree)) {
      usable.push(one);
      continue;
    }
    const sheet = one.sheet ?? sheets[0] ?? "";
    const place = { sheet, cell: "A1", area: "A1", nameOf, tableOf: () => undefined, spillOf: () => undefined };
    const plain = tree !== undefined && isAbsolute(tree) ? plainFormula(formula, place, options) : undefined;
    if (plain?.kind !== "formula" || plain.isArray) {
      gone.set(one, plain?.kind === "none" ? plain.why : "argumentForm");
      continue;
    }
    const written = { ...one, formula: plain.formula };
    usable.push(written);
    changed.push(written);
  }
  return withoutUsersOf(gone, { usable, changed });
}

/** A name that uses one that goes stands for nothing, and so does one that uses it. */
function withoutUsersOf(gone: Map<NameReading, WhyFixed>, { usable, changed }: Omit<PlainNames, "gone">): PlainNames {
  const isLeft = (one: NameReading): boolean => !gone.has(one);
  for (let known = -1; known < gone.size;) {
    known = gone.size;
    const names = new Set([...gone.keys()].map(({ name }) => name.toUpperCase()));
    for (const one of usable.filter(isLeft)) if (namesUsed(one.formula).some((name) => names.has(name))) gone.set(one, "goneName");
  }
  return { usable: usable.filter(isLeft), changed: changed.filter(isLeft), gone: [...gone].map(([name, why]) => ({ name, why })) };
}

const namesUsed = (formula: string): string[] =>
  tokenize(formula.startsWith("=") ? formula : `=${formula}`).flatMap(({ type, value }) =>
    type === tokenTypes.REF_NAMED || type === tokenTypes.FUNCTION ? [value.slice(value.lastIndexOf("!") + 1).toUpperCase()] : [],
  );

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
