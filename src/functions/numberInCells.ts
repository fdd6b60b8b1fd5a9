/**
 * A number in a cell formula that may be left out, blank, or a word for nothing ("none", "tared"), with the value it then
 * counts as. ISNUMBER works on each cell of a range; N() would look at the first alone.
 */
export function numberInCells(text: string, otherwise: number): string {
  if (text === "" || text.startsWith('"')) return String(otherwise);
  return Number.isFinite(Number(text)) ? text : `IF(ISNUMBER(${text}),${text},${otherwise})`;
}
