import { sampleMoments } from "../../numerics/sampleMoments";
import { allOfGroupEqual, oneGroup, tooManyGroups, unnamedValue, valueAlone } from "../../problems/functions/reportingProblems";
import type { Replicate, ZeroMeaning } from "../countedReplicates";

/** The results of one group, summed up. */
export interface Group {
  readonly label: string;
  readonly count: number;
  readonly mean: number;
  readonly deviation: number;
}

// 20 groups make 190 pairs, more than anybody reads. Common practice, no source.
const MOST_GROUPS = 20;

/**
 * The results without rows at the end that have neither a group nor a value other than 0: those are cells not filled in yet, which most hosts
 * hand over as 0. Where a 0 is said to count, nothing is left off.
 */
export function filledRows(
  values: readonly (number | undefined)[],
  labels: readonly (string | undefined)[],
  zeros: ZeroMeaning | undefined,
): readonly (number | undefined)[] {
  if (zeros === "count") return values;
  let rows = values.length;
  while (rows > labels.length && !values[rows - 1]) rows--;
  return values.slice(0, rows);
}

/**
 * The results by group, in the order in which the groups first appear; letter case does not tell groups apart, as in a spreadsheet's own
 * comparisons.
 * @param labels by row, undefined where blank
 * @throws InputProblem for a value without a group, for one group and for too many; NoAnswer for a group without scatter
 */
export function groupsOf(replicates: readonly Replicate[], labels: readonly (string | undefined)[]): readonly Group[] {
  const found = new Map<string, { label: string; values: number[] }>();
  for (const { row, value } of replicates) {
    const label = labels[row - 1];
    if (label === undefined) throw unnamedValue(row);
    const held = found.get(label.toLowerCase());
    if (held === undefined) found.set(label.toLowerCase(), { label, values: [value] });
    else held.values.push(value);
  }
  const groups = [...found.values()];
  if (groups.length < 2) throw oneGroup();
  if (groups.length > MOST_GROUPS) throw tooManyGroups(groups.length, MOST_GROUPS);
  return groups.map(({ label, values }) => {
    if (values.length < 2) throw valueAlone(label);
    const { mean, deviation } = sampleMoments(values);
    if (deviation === 0) throw allOfGroupEqual(label, values.length);
    return { label, count: values.length, mean, deviation };
  });
}
