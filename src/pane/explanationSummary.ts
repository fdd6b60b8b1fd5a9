import type { CellExplanation } from "../explanation/CellExplanation";

/** An explanation in a breath, for the live region: the cell, and its answer or what is wrong. */
export function explanationSummary({ address, calls, opening, notes, shown }: CellExplanation): string {
  const [call] = calls;
  if (call === undefined) return [opening, ...notes].join(" ");
  if (call.waiting) return [`${address.cell}, ${call.name}:`, ...notes].join(" ");
  if (call.problem !== undefined) return `${address.cell}, ${call.name}: ${call.problem.message}`;
  if (call.result === "") return `${address.cell} shows ${shown === "" ? "nothing" : shown}; ${call.name} is explained below.`;
  return `${address.cell}, ${call.name}: ${call.resultAbout} ${call.result.replace(/\.$/, "")}.`;
}
