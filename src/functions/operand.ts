// A reference, a name or a plain number binds tighter than any operator and needs no brackets.
const STANDS_ALONE = /^[A-Za-z0-9_.$!:]+$/;

/** An argument's text as one operand of a cell formula: B2 and (B2-0.1) stay, B2-0.1 becomes (B2-0.1). */
export const operand = (text: string): string => (STANDS_ALONE.test(text) || isInBrackets(text) ? text : `(${text})`);

/** True where the first bracket closes at the very end; a bracket in a text counts for none. */
function isInBrackets(text: string): boolean {
  if (!text.startsWith("(")) return false;
  let [depth, isText] = [0, false];
  for (let index = 0; index < text.length; index++) {
    const character = text[index];
    if (character === '"') isText = !isText;
    else if (!isText && character === "(") depth++;
    else if (!isText && character === ")" && --depth === 0) return index === text.length - 1;
  }
  return false;
}
