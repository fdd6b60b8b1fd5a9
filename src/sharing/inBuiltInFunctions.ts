import { everyFunction } from "../functions/catalogue";
import { findCalls, type RetortCall } from "./findCalls";

// Excel specifications and limits. What is longer, such as a dozen conversions inside one another, each of which writes its argument
// several times, is shared as its value.
const LONGEST_FORMULA = 8192;

/**
 * The cell formula with every Retort call written out in built-in functions, or undefined where one of its calls
 * cannot be.
 */
export function inBuiltInFunctions(cellFormula: string): string | undefined {
  let text = cellFormula;
  for (const call of outermost(findCalls(cellFormula)).reverse()) {
    const written = writtenOut(call);
    if (written === undefined) return undefined;
    text = `${text.slice(0, call.start)}(${written})${text.slice(call.end)}`;
  }
  return text.length > LONGEST_FORMULA ? undefined : text;
}

/** @param calls in the order they begin */
function outermost(calls: readonly RetortCall[]): RetortCall[] {
  let end = 0;
  return calls.filter((call) => {
    if (call.start < end) return false;
    end = call.end;
    return true;
  });
}

function writtenOut({ name, argumentTexts }: RetortCall): string | undefined {
  const definition = everyFunction.find((one) => one.name === name);
  const inputs = Object.entries(definition?.inputs ?? {});
  if (definition?.inCells === undefined || argumentTexts.length > inputs.length) return undefined;
  const texts: Record<string, string> = {};
  for (const [index, [argument, input]] of inputs.entries()) {
    const text = inBuiltInFunctions(argumentTexts[index] ?? "");
    if (text === undefined) return undefined;
    // Empty text reads as an optional input left out.
    texts[argument] = input.optional && text === '""' ? "" : text;
  }
  return definition.inCells(texts);
}
