/** Lines that a text takes when none is longer than the limit: broken at its own ends of lines, at spaces and after hyphens, or inside a longer word. */
export const wrappedLines = (text: string, limit: number): number => text.split(/\r\n|\r|\n/).reduce((sum, line) => sum + linesOfOne(line, limit), 0);

function linesOfOne(text: string, limit: number): number {
  if (text.length <= limit) return 1;
  let lines = 1;
  let used = 0;
  let gap = 0;
  for (const [piece] of text.matchAll(/\s+|[^\s-]+-*|-+/g)) {
    if (piece.trimStart() === "") {
      gap = 1;
      continue;
    }
    const word = piece.length;
    const needed = used === 0 ? word : used + gap + word;
    gap = 0;
    if (needed <= limit) {
      used = needed;
      continue;
    }
    lines += (used === 0 ? 0 : 1) + Math.ceil(word / limit) - 1;
    used = word % limit || limit;
  }
  return lines;
}
