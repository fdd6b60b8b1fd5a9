/** Things to be measured against one another, by name; each gives what it measured. */
export type Contenders<T> = Readonly<Record<string, () => T | Promise<T>>>;

/**
 * Runs all contenders in every round, each round beginning with the next of them: a busy machine slows all of them alike, and none always
 * pays for the rubbish that the same one left.
 * @returns what each measured, round by round
 */
export async function inTurn<T>(contenders: Contenders<T>, rounds: number, warmUpRounds: number): Promise<ReadonlyMap<string, readonly T[]>> {
  const names = Object.keys(contenders);
  const measured = new Map(names.map((name): [string, T[]] => [name, []]));
  for (let round = -warmUpRounds; round < rounds; round++) {
    for (let turn = 0; turn < names.length; turn++) {
      const name = names[(turn + round + warmUpRounds) % names.length] as string;
      const one = await (contenders[name] as () => T | Promise<T>)();
      if (round >= 0) measured.get(name)?.push(one);
    }
  }
  return measured;
}

/** The milliseconds that a run takes, as a contender. */
export const timed = (run: () => void) => (): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

/** What a run takes, in milliseconds: the time that passes, and the processor's time of this process, which others' work hardly touches. */
export interface Took {
  readonly elapsed: number;
  readonly processor: number;
}

/** Starts a stopwatch; each call of what it gives tells what was taken since. */
export function stopwatch(): () => Took {
  const [start, used] = [performance.now(), process.cpuUsage()];
  return () => {
    const { user, system } = process.cpuUsage(used);
    return { elapsed: performance.now() - start, processor: (user + system) / 1000 };
  };
}

/** Both times of runs of some seconds, printed one after the other. */
export function printedTook(measured: ReadonlyMap<string, readonly Took[]>, base: string): void {
  for (const [side, title] of [
    ["processor", "processor time"],
    ["elapsed", "elapsed time"],
  ] as const) {
    console.log(`  ${title}`);
    printed(new Map([...measured].map(([name, rounds]) => [name, rounds.map((round) => round[side])])), base);
  }
}

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);
export const minimum = (values: readonly number[]): number => sorted(values)[0] ?? NaN;
export const median = (values: readonly number[]): number => sorted(values)[values.length >> 1] ?? NaN;

/** The ratio of one contender's times to another's, of minima, of medians, and with its spread from round to round (middle half). */
export function ratio(times: readonly number[], base: readonly number[]): string {
  const rounds = sorted(times.map((time, round) => time / (base[round] ?? NaN)));
  const quarter = (share: number): string => (rounds[Math.round((rounds.length - 1) * share)] ?? NaN).toFixed(2);
  const [least, middle] = [minimum(times) / minimum(base), median(times) / median(base)];
  return `${least.toFixed(2)} of minima, ${middle.toFixed(2)} of medians, ${quarter(0.25)} to ${quarter(0.75)} in the middle half of rounds`;
}

/** One line a contender: minimum, median, and the ratio to one of them. */
export function printed(measured: ReadonlyMap<string, readonly number[]>, base: string, unit = "ms"): void {
  const width = Math.max(...[...measured.keys()].map((name) => name.length));
  for (const [name, times] of measured) {
    const [least, middle] = [minimum(times), median(times)].map((time) => time.toFixed(2).padStart(8));
    const against = name === base ? "" : `  × ${base}: ${ratio(times, measured.get(base) ?? [])}`;
    console.log(`${name.padEnd(width)} min ${least} median ${middle} ${unit}${against}`);
  }
}

/** @throws Error naming the first place where two lists of answers are further apart than a share of their size */
export function agree(name: string, ours: readonly number[], theirs: readonly number[], tolerance: number): void {
  const apart = ours.findIndex((answer, index) => !(Math.abs(answer / (theirs[index] ?? NaN) - 1) <= tolerance));
  if (apart >= 0 || ours.length !== theirs.length) throw new Error(`${name}: ${ours[apart]} is not ${theirs[apart]} in place ${apart}`);
}
