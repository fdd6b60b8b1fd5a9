const QUOTE = '"';

/**
 * The cells of a text as spreadsheets put it on the clipboard: lines of cells with tabs between, of which the last line may end in a line end. A cell in
 * quotation marks may hold tabs and line ends, and each mark in it stands twice. All rows are as long as the longest; what a shorter one lacks is blank.
 */
export function blockOfText(text: string): string[][] {
  const whole = text.replace(/\r\n?/g, "\n").replace(/\n$/, "");
  const rows: string[][] = [[]];
  for (let at = 0; at <= whole.length;) {
    const { cell, end } = quotedCell(whole, at) ?? plainCell(whole, at);
    rows.at(-1)?.push(cell);
    if (whole[end] === "\n") rows.push([]);
    at = end + 1;
  }
  const longest = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return rows.map((row) => [...row, ...Array.from({ length: longest - row.length }, () => "")]);
}

interface Found {
  readonly cell: string;
  /** Where the tab, the line end or the end of the text stands. */
  readonly end: number;
}

function plainCell(text: string, at: number): Found {
  const ends = ["\t", "\n"].map((mark) => text.indexOf(mark, at)).filter((place) => place >= 0);
  const end = Math.min(text.length, ...ends);
  return { cell: text.slice(at, end), end };
}

/** Undefined where the cell does not begin with a quotation mark, or where another one does not end it: an inch mark, say. */
function quotedCell(text: string, at: number): Found | undefined {
  if (text[at] !== QUOTE) return undefined;
  for (let place = text.indexOf(QUOTE, at + 1); place >= 0; place = text.indexOf(QUOTE, place + 1)) {
    if (text[place + 1] === QUOTE) place += 1;
    else {
      const end = place + 1;
      const isEnd = end === text.length || text[end] === "\t" || text[end] === "\n";
      return isEnd ? { cell: text.slice(at + 1, place).replaceAll('""', QUOTE), end } : undefined;
    }
  }
  return undefined;
}
