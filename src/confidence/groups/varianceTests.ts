import { varianceRatioTail } from "../../numerics/varianceRatio";
import type { Group } from "./groups";

/** A test of whether several means are one. */
export interface VarianceTest {
  readonly ratio: number;
  readonly between: number;
  readonly within: number;
  /** Chance of so large a ratio where all means are one. */
  readonly p: number;
}

const sum = (groups: readonly Group[], of: (group: Group) => number): number => groups.reduce((total, group) => total + of(group), 0);

/**
 * Welch's test of several means with spreads that need not be equal: Welch, Biometrika 38 (1951) 330. The usual one here, because furnaces and
 * people scatter unequally, and it costs little where they do not.
 */
export function welchTest(groups: readonly Group[]): VarianceTest {
  const k = groups.length;
  const weight = ({ count, deviation }: Group): number => count / deviation ** 2;
  const total = sum(groups, weight);
  const origin = groups[0]?.mean ?? 0;
  const centre = sum(groups, (group) => weight(group) * (group.mean - origin)) / total;
  const scatter = sum(groups, (group) => (1 - weight(group) / total) ** 2 / (group.count - 1));
  const spread = sum(groups, (group) => weight(group) * (group.mean - origin - centre) ** 2) / (k - 1);
  const ratio = spread / (1 + ((2 * (k - 2)) / (k * k - 1)) * scatter);
  const within = (k * k - 1) / (3 * scatter);
  return { ratio, between: k - 1, within, p: varianceRatioTail(ratio, k - 1, within) };
}

/** The one-way analysis of variance with equal spreads: mean square between groups over mean square within. */
export function equalSpreadTest(groups: readonly Group[]): VarianceTest {
  const results = sum(groups, ({ count }) => count);
  const [between, within] = [groups.length - 1, results - groups.length];
  const origin = groups[0]?.mean ?? 0;
  const centre = sum(groups, ({ count, mean }) => count * (mean - origin)) / results;
  const ofMeans = sum(groups, ({ count, mean }) => count * (mean - origin - centre) ** 2) / between;
  const ofResults = sum(groups, ({ count, deviation }) => (count - 1) * deviation ** 2) / within;
  const ratio = ofMeans / ofResults;
  return { ratio, between, within, p: varianceRatioTail(ratio, between, within) };
}
