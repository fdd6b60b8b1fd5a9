import { tokenize, tokenTypes } from "@borgar/fx";

const OPENS_ARRAY = "{";
const CLOSES_ARRAY = "}";

/** True where the text of an argument, or a whole cell formula, has a semicolon that is neither in text nor between the rows of an array. */
export function hasSemicolons(text: string): boolean {
  let arrays = 0;
  for (const { type, value } of tokenize(text.startsWith("=") ? text : `=${text}`)) {
    if (type !== tokenTypes.OPERATOR) continue;
    if (value === OPENS_ARRAY) arrays++;
    if (value === CLOSES_ARRAY) arrays--;
    if (value === ";" && arrays === 0) return true;
  }
  return false;
}
