import type { Injector } from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import { tokenize, tokenTypes } from "@borgar/fx";

/**
 * Mends a defect of engine 0.25.1: it puts the text of a name's formula in place of the name, so that =total*2 with total as B2+B3 is calculated as
 * B2+B3*2, and =-total not at all. Hands out in brackets what is more than one reference, value or call.
 */
export function bracketNames(injector: Injector): void {
  const names = injector.get(IDefinedNamesService);
  const original = names.getValueByName.bind(names);
  names.getValueByName = (unitId, name) => {
    const found = original(unitId, name);
    if (found === null || found === undefined || !isArithmetic(found.formulaOrRefString)) return found;
    return { ...found, formulaOrRefString: `(${found.formulaOrRefString.replace(/^=/, "")})` };
  };
}

// These hold references together, which brackets would not change.
const OF_REFERENCES: readonly string[] = [":", ",", " ", "!"];

/** True where an operator stands outside all brackets. */
function isArithmetic(formula: string): boolean {
  let depth = 0;
  return tokenize(formula.startsWith("=") ? formula : `=${formula}`).some(({ type, value }, at) => {
    const isBracket = ["(", ")", "{", "}"].includes(value);
    if (isBracket) depth += value === "(" || value === "{" ? 1 : -1;
    return at > 0 && !isBracket && depth === 0 && type === tokenTypes.OPERATOR && !OF_REFERENCES.includes(value);
  });
}
