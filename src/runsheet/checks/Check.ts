import { glossary } from "../glossary";
import type { Layout } from "../layout";

/** What a check finds on one sample, from 1: a cell formula without "=" that gives "", "in order" or what to look at. */
export type CheckFormula = (rows: Layout, sample: number) => string;

/** "in order" as a cell formula has it. */
export const IN_ORDER = `"${glossary.checks.inOrder}"`;
