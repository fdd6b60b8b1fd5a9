import type { Expression, Infix } from "../../runsheet/expressions/Expression";
import { isError } from "./Plain";
import { evaluate, workOut, type ValueAt } from "./workOut";

/** One choice on the way through a formula. */
export interface Choice {
  readonly condition: Expression;
  readonly holds: boolean;
}

/** Which of a formula's branches gives its value, and by what choices. */
export interface Way {
  readonly choices: readonly Choice[];
  readonly leaf: Expression;
}

/** The way that a spreadsheet takes through IF and IFERROR. An error in a condition is the answer itself. */
export function wayThrough(expression: Expression, at: ValueAt): Way {
  const choices: Choice[] = [];
  let leaf = expression;
  while (typeof leaf === "object" && (leaf.kind === "bracketed" || leaf.kind === "call")) {
    if (leaf.kind === "bracketed") {
      leaf = leaf.inner;
      continue;
    }
    const [first = "", then = false, otherwise = false] = leaf.given;
    if (leaf.name === "IFERROR") leaf = isError(workOut(first, at)) ? then : first;
    else if (leaf.name === "IF") {
      const value = workOut(first, at);
      if (isError(value)) return { choices, leaf: first };
      choices.push({ condition: first, holds: Boolean(value) });
      leaf = value ? then : otherwise;
    } else break;
  }
  return { choices, leaf };
}

/** The same expression with each choice inside it made, and without what makes a number of a blank. */
export function resolved(expression: Expression, at: ValueAt): Expression {
  const { leaf } = wayThrough(expression, at);
  if (typeof leaf !== "object") return leaf;
  switch (leaf.kind) {
    case "call": {
      const given = leaf.given.map((one) => resolved(one, at));
      const [only] = given;
      // Over cells of a block it sums; of one number it is that number.
      if (leaf.name === "SUMPRODUCT" && given.length === 1 && only !== undefined && typeof evaluate(only, at) === "number") return only;
      if (leaf.name !== "N" || only === undefined) return { ...leaf, given };
      return typeof workOut(only, at) === "number" ? only : 0;
    }
    case "infix":
      return withoutNothing({ ...leaf, left: resolved(leaf.left, at), right: resolved(leaf.right, at) });
    case "joined":
      return { ...leaf, parts: leaf.parts.map((part) => resolved(part, at)) };
    case "bracketed":
      return resolved(leaf.inner, at);
    default:
      return leaf;
  }
}

/** A blank correction adds nothing and takes nothing off. */
const withoutNothing = (sum: Infix): Expression => ((sum.operator === "+" || sum.operator === "-") && sum.right === 0 ? sum.left : sum);
