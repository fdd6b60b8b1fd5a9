import { durationText } from "./durationText";
import type { FormOutcome } from "./runSheetForm";

/** What the sheet will hold, or that an entry is in the way, in one sentence. */
export function planText(outcome: FormOutcome): string {
  if ("problem" in outcome) return outcome.field === undefined || outcome.field === "kind" ? outcome.problem : "Mend the marked entry to go on.";
  const { weighIns, intervalMinutes, replicates } = outcome.options;
  const samples = replicates === 1 ? "one sample" : `${replicates} samples`;
  return `${weighIns} weigh-ins of ${samples}, ${durationText(intervalMinutes)} apart: ${durationText((weighIns - 1) * intervalMinutes)} from first to last.`;
}
