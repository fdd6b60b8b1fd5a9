// The grid's engine (0.25.1) works formulas out by recursion; its stack ran out at 2,700 brackets within one another and at 4,000 operators in a row,
// and it then never finishes, were it not for answerWhateverIsTyped. A spreadsheet nests 64 functions at most (Excel specifications and limits), and no sum of cells that fits into 8,192
// characters has so many operators.
export const MOST_NESTED = 500;
export const MOST_OPERATORS = 3000;

/** True where a cell formula is nested too deeply, or has too many operators, to be worked out. @param text without "=" */
export function isTooNested(text: string): boolean {
  let [depth, operators] = [0, 0];
  let quote = "";
  for (const character of text) {
    if (quote !== "") quote = character === quote ? "" : quote;
    else if (character === '"' || character === "'") quote = character;
    else if (character === "(") depth++;
    else if (character === ")") depth--;
    else if ("+-*/^&%=<>".includes(character)) operators++;
    if (depth > MOST_NESTED || operators > MOST_OPERATORS) return true;
  }
  return false;
}

// Excel specifications and limits, "Length of formula contents".
export const LONGEST_FORMULA = 8192;

/** True where the grid does not work a formula out at all, however it got into a cell. */
export const isBeyondGrid = (formula: string): boolean => formula.length > LONGEST_FORMULA || isTooNested(formula.replace(/^=/, ""));
