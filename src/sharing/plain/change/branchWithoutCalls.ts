import { nameCalled, type Call, type Part } from "../formula/parts";
import { CannotWrite } from "../writing/CannotWrite";
import { formulaTree } from "../formula/formulaTree";
import type { Scope } from "../writing/Scope";
import type { PlainOptions, Surroundings } from "../reading/Surroundings";
import { writing } from "../writing/written";

/** What stands for a branch that only our functions can give. */
const UNKNOWN = "NA()";

/**
 * What a formula gives as long as its outermost IFs lead past every call of ours, as a text for any sheet, and #N/A where they lead to one:
 * `IF(COUNT(Run!C12:C19)<3,"",NA())`. A value that was fixed still stands where this gives the same. Defined names and tables are not
 * followed, since what they stand for may hold calls.
 * @returns undefined where no branch is free of calls
 */
export function branchWithoutCalls(formula: string, place: Surroundings, options: PlainOptions): string | undefined {
  const tree = formulaTree(formula);
  if (tree === undefined || !isIf(tree.root)) return undefined;
  const here: Surroundings = { ...place, nameOf: () => undefined, tableOf: () => undefined };
  const scope: Scope = { tree, place: here, options, variables: new Map(), isSingle: false, isOnEach: false, isQualified: true };
  const text = branch(tree.root, scope);
  return text === UNKNOWN ? undefined : text;
}

const isIf = (part: Part): part is Call => part?.type === "CallExpression" && nameCalled(part).toUpperCase() === "IF" && part.arguments.length === 3;

function branch(part: Part, scope: Scope): string {
  if (!isIf(part)) return withoutCalls(part, scope);
  const [condition, then, otherwise] = part.arguments;
  const asked = withoutCalls(condition, scope);
  return asked === UNKNOWN ? UNKNOWN : `IF(${asked},${branch(then, scope)},${branch(otherwise, scope)})`;
}

function withoutCalls(part: Part, scope: Scope): string {
  try {
    return writing(() => {
      throw new CannotWrite("noForm");
    })(part, scope);
  } catch (thrown) {
    if (thrown instanceof CannotWrite) return UNKNOWN;
    throw thrown;
  }
}
