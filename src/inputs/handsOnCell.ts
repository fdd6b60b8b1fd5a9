const CALL = /^(?:IF|IFERROR|IFNA|IFS|SWITCH|CHOOSE|INDEX|OFFSET|INDIRECT|LOOKUP|XLOOKUP|LET)\(/i;

const CELLS = /^(?:[^"()]*!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;

/** True for the text of one call that may give what a cell holds as it is, be it a truth, or of the cell: `(IF(D1>0,A1,""))`, not `IF(D1>0,A1,0)*2`. */
export function handsOnCell(text: string): boolean {
  let inside = text.replace(/^\++/, "");
  while (inside.startsWith("(") && endOfBrackets(inside) === inside.length - 1) inside = inside.slice(1, -1).replace(/^\++/, "");
  return CELLS.test(inside) || (CALL.test(inside) && endOfBrackets(inside) === inside.length - 1);
}

/** Where the first brackets of a text close, texts and quoted sheet names within it left aside. */
function endOfBrackets(text: string): number {
  let [depth, quoted] = [0, ""];
  for (let at = 0; at < text.length; at++) {
    const character = text.charAt(at);
    if (quoted !== "") quoted = character === quoted ? "" : quoted;
    else if (character === '"' || character === "'") quoted = character;
    else if (character === "(") depth++;
    else if (character === ")" && --depth === 0) return at;
  }
  return -1;
}
