/**
 * The same function of numbers, which keeps its last answers: a column of one test asks for one critical value again
 * and again. The answer kept longest goes first when the room is full.
 * @param room how many answers are kept
 */
export function remembered<A extends readonly number[]>(room: number, compute: (...given: A) => number): (...given: A) => number {
  const kept = new Map<string, number>();
  return (...given) => {
    const key = given.join(" ");
    const known = kept.get(key);
    if (known !== undefined) return known;
    const answer = compute(...given);
    const [oldest] = kept.keys();
    if (kept.size >= room && oldest !== undefined) kept.delete(oldest);
    kept.set(key, answer);
    return answer;
  };
}
