import type { Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { IActiveDirtyManagerService } from "@univerjs/engine-formula";
import { ClearSelectionFormatCommand, SetBorderCommand, SetRangeValuesMutation, SetStyleCommand } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { notCalculatedWithin } from "../../problems/workbookProblems";
import { WorkbookProblem } from "../Workbook";

export interface CalculationWatch {
  settled(): Promise<void>;
  /** True from a change until every cell shows what has come of it. */
  isUnderWay(): boolean;
  onStart(listener: () => void): void;
}

const LOOK_AGAIN_MS = 5;
// The engine gathers changes for 100 ms before it calculates; when nothing has begun after this time, nothing will.
const STARTS_WITHIN_MS = 2000;
const LONGEST_WAIT_MS = 60_000;
const LOOKS_ONLY: readonly unknown[] = [SetStyleCommand.id, SetBorderCommand.id, ClearSelectionFormatCommand.id];

/**
 * Tells when a calculation is over. The engine's own promise waits half a second when there is nothing to wait for, and
 * misses changes that are still being gathered.
 */
export function calculationWatch(api: FUniver, injector: Injector): CalculationWatch {
  const session = injector.get(FormulaCalculationSessionService);
  const dirtying = injector.get(IActiveDirtyManagerService);
  const began: (() => void)[] = [];
  const gathering: { since: number | undefined } = { since: undefined };

  api.addEvent(api.Event.CommandExecuted, ({ id, params, options }) => {
    // The same rule as the engine's trigger-calculation controller (0.25.1) for what makes it calculate.
    const isNoChange =
      id === SetRangeValuesMutation.id && (options?.onlyLocal === true || LOOKS_ONLY.includes((params as { trigger?: string })?.trigger));
    if (dirtying.get(id) !== undefined && !isNoChange) gathering.since = performance.now();
  });
  api.getFormula().calculationStart(() => {
    gathering.since = undefined;
    began.forEach((listener) => listener());
  });

  /** @param from the time before which nothing could have begun, because the page was busy */
  const isGathering = (from = 0): boolean => gathering.since !== undefined && performance.now() - Math.max(gathering.since, from) < STARTS_WITHIN_MS;
  const isCalculating = (): boolean => session.state.started && !session.state.resultApplied;
  return {
    isUnderWay: () => isGathering() || isCalculating(),
    onStart: (listener) => void began.push(listener),
    settled: async () => {
      // Putting in a large sheet keeps the page busy for longer than the engine gathers; only from here on can it begin.
      const from = performance.now();
      const latest = from + LONGEST_WAIT_MS;
      while (isGathering(from) || isCalculating()) {
        if (performance.now() > latest) throw new WorkbookProblem(notCalculatedWithin(LONGEST_WAIT_MS / 1000));
        await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS));
      }
      // Nothing came of it, so nobody has to wait for it again.
      gathering.since = undefined;
    },
  };
}
