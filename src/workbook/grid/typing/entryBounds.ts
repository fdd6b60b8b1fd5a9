import {
  formulaArgumentsBeyond,
  formulaCharactersBeyond,
  formulaNestedBeyond,
  formulaOperatorsBeyond,
  formulaTextBeyond,
  textBeyondCell,
  wordBeyondCell,
} from "../../../problems/workbook/entryProblems";
import { LONGEST_FORMULA, MOST_NESTED } from "./nesting";

// Excel specifications and limits (Microsoft), from memory: levels of functions within one another, arguments of a function, characters of a text within
// a formula and of a cell.
export const MOST_CALLS_NESTED = 64;
export const MOST_ARGUMENTS = 255;
export const LONGEST_TEXT_IN_FORMULA = 255;
export const LONGEST_CELL = 32_767;
// The editor of the grid (0.25.1) takes 2 s to colour a formula of 1,000 operators, 10 s for 3,000, and its stack runs out at 4,000.
export const MOST_TYPED_OPERATORS = 1000;
// Its stack runs out at a word of some 8,000 characters, which it has nowhere to break.
export const LONGEST_WORD = 4000;

/** Why a text cannot be typed into a cell, in words; undefined where it can. Takes time in proportion to the text. */
export function whyNotTyped(text: string): string | undefined {
  if (!text.startsWith("=")) {
    if (text.length > LONGEST_CELL) return textBeyondCell(text.length, LONGEST_CELL);
    const word = longestWord(text);
    return word > LONGEST_WORD ? wordBeyondCell(word, LONGEST_WORD) : undefined;
  }
  if (text.length > LONGEST_FORMULA) return formulaCharactersBeyond(text.length, LONGEST_FORMULA);
  const { operators, calls, brackets, most, longestText } = sizesOf(text);
  if (longestText > LONGEST_TEXT_IN_FORMULA) return formulaTextBeyond(longestText, LONGEST_TEXT_IN_FORMULA);
  if (calls > MOST_CALLS_NESTED) return formulaNestedBeyond(calls, MOST_CALLS_NESTED);
  if (brackets > MOST_NESTED) return formulaNestedBeyond(brackets, MOST_NESTED);
  if (most > MOST_ARGUMENTS) return formulaArgumentsBeyond(most, MOST_ARGUMENTS);
  return operators > MOST_TYPED_OPERATORS ? formulaOperatorsBeyond(operators, MOST_TYPED_OPERATORS) : undefined;
}

const WHITE = /\s/;

function longestWord(text: string): number {
  let [longest, length] = [0, 0];
  for (const character of text) {
    length = WHITE.test(character) ? 0 : length + 1;
    longest = Math.max(longest, length);
  }
  return longest;
}

const OPERATORS = "+-*/^&%=<>";
const OF_NAME = /[\p{L}\d._]/u;

interface Sizes {
  operators: number;
  /** Calls within one another, and brackets of any kind. */
  calls: number;
  brackets: number;
  /** Arguments of the call with the most. */
  most: number;
  longestText: number;
}

function sizesOf(formula: string): Sizes {
  const sizes: Sizes = { operators: 0, calls: 0, brackets: 0, most: 0, longestText: 0 };
  const open: { readonly isCall: boolean; arguments: number }[] = [];
  let [calls, quote, text, before] = [0, "", 0, ""];
  for (const character of formula.slice(1)) {
    if (quote !== "") {
      text += 1;
      if (character === quote) {
        if (quote === '"') sizes.longestText = Math.max(sizes.longestText, text - 1);
        quote = "";
      }
    } else if (character === '"' || character === "'") [quote, text] = [character, 0];
    else if (character === "(" || character === "{") {
      const isCall = character === "(" && OF_NAME.test(before);
      open.push({ isCall, arguments: 1 });
      if (isCall) calls += 1;
      sizes.calls = Math.max(sizes.calls, calls);
      sizes.brackets = Math.max(sizes.brackets, open.length);
    } else if (character === ")" || character === "}") {
      if (open.pop()?.isCall === true) calls -= 1;
    } else if (character === ",") {
      const innermost = open.at(-1);
      if (innermost?.isCall === true) sizes.most = Math.max(sizes.most, (innermost.arguments += 1));
    } else if (OPERATORS.includes(character)) sizes.operators += 1;
    if (character !== " ") before = character;
  }
  if (quote === '"') sizes.longestText = Math.max(sizes.longestText, text);
  return sizes;
}
