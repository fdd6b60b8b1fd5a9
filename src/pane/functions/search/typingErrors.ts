const SHORTEST_MENDED = 4;
// Most short words have a neighbour by one letter.
const ANY_ERROR_FROM = 6;
const TWO_ERRORS_FROM = 8;

/** How many typing errors a word of this length may hold and still be told. */
const allowed = (length: number): number => (length < SHORTEST_MENDED ? 0 : length < TWO_ERRORS_FROM ? 1 : 2);

/**
 * The known words that a mistyped one may stand for: those with the fewest letters left out, put in, put wrong or put the wrong way round
 * (optimal string alignment distance), at most one error in short words and two in longer ones. In words of four or five letters it is
 * one that hurried fingers make: two letters the wrong way round, one left out behind the first, or one doubled.
 */
export function nearestWords(typed: string, known: Iterable<string>): string[] {
  let least = allowed(typed.length);
  if (least === 0) return [];
  let nearest: string[] = [];
  for (const word of known) {
    if (Math.abs(word.length - typed.length) > least || word.length < SHORTEST_MENDED - 1 || word.startsWith("{")) continue;
    const errors = typingErrors(typed, word, least);
    if (errors > least || (errors > 0 && typed.length < ANY_ERROR_FROM && !isHurried(typed, word))) continue;
    if (errors < least) nearest = [];
    least = errors;
    nearest.push(word);
  }
  // The first letter is the one that is seldom wrong.
  const sameStart = nearest.filter((word) => word[0] === typed[0]);
  return sameStart.length > 0 ? sameStart : nearest;
}

/** True where one word becomes the other by two letters put the wrong way round, one left out behind the first, or one doubled. */
function isHurried(typed: string, word: string): boolean {
  const at = [...typed, ""].findIndex((letter, place) => letter !== word[place]);
  const [here, next] = [typed.slice(at), word.slice(at)];
  if (typed.length < word.length) return at > 0 && here === next.slice(1);
  if (typed.length > word.length) return typed[at] === typed[at - 1] && here.slice(1) === next;
  return here[0] === next[1] && here[1] === next[0] && here.slice(2) === next.slice(2);
}

/** Letters left out, put in, put wrong, or two beside one another the wrong way round; anything above `most` once it is more. */
function typingErrors(a: string, b: string, most: number): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const wrong = a[i - 1] === b[j - 1] ? 0 : 1;
      let errors = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + wrong);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) errors = Math.min(errors, (beforeLast[j - 2] ?? 0) + 1);
      row.push(errors);
    }
    if (Math.min(...row) > most) return most + 1;
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? most + 1;
}
