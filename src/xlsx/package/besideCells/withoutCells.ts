/** The part with blanks in place of its cells, so that everything else keeps its place and few elements are made. */
export function withoutCells(text: string): string {
  const open = /<(\w+:)?sheetData[\s>]/.exec(text);
  if (open === null) return text;
  // One pattern over all of it would take time in proportion to the square of the text.
  const from = text.indexOf(">", open.index) + 1;
  const to = text.lastIndexOf(`</${open[1] ?? ""}sheetData`);
  return to <= from ? text : `${text.slice(0, from)}${" ".repeat(to - from)}${text.slice(to)}`;
}
