import { CommandType } from "@univerjs/core";
import { formulasLost, keptFromBefore } from "../../problems/files/packageProblems";
import type { GridEngine } from "../../workbook/grid/GridEngine";
import type { Doubts } from "../withDoubts";
import type { KeptFormulas } from "../xlsx/kept/KeptFormulas";

// As many as a line holds.
const NAMED = 5;

/** Which cells hold values from before; none where all hold. */
export function keptInWords(kept: KeptFormulas | undefined): readonly string[] {
  const cells = kept?.fromBefore() ?? [];
  return cells.length === 0 ? [] : [keptFromBefore(cells.slice(0, NAMED), Math.max(0, cells.length - NAMED))];
}

/** Which cells have lost their formulas; none where none has. */
export const lackingInWords = (lacking: readonly string[]): readonly string[] => (lacking.length === 0 ? [] : [formulasLost(lacking)]);

// Long enough for the grid to calculate what follows from a change.
const PAUSE_MS = 500;

interface Watched {
  readonly engine: GridEngine;
  readonly doubts: Doubts;
}

/** Says which cells hold no longer as soon as something was changed that they are calculated from. */
export function watchKept({ engine, doubts }: Watched, say: (text: string, kind?: string) => void): { begin(): void } {
  let [told, timer]: [string, number | undefined] = ["", undefined];
  const words = (): string => keptInWords(doubts.kept).join(" ");
  const look = async (): Promise<void> => {
    await engine.settled();
    const now = words();
    if (now !== told && now !== "") say(now, "problem");
    told = now;
  };
  engine.api.addEvent(engine.api.Event.CommandExecuted, ({ type }) => {
    if (type !== CommandType.MUTATION || doubts.kept === undefined) return;
    clearTimeout(timer);
    timer = window.setTimeout(() => void look().catch(() => undefined), PAUSE_MS);
  });
  return { begin: () => void (told = words()) };
}
