import type { Injector } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { IActiveDirtyManagerService, ICalculateFormulaService, IFormulaDependencyGenerator } from "@univerjs/engine-formula";
import { ClearSelectionFormatCommand, SetBorderCommand, SetRangeValuesMutation, SetStyleCommand } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { notCalculatedWithin } from "../../problems/workbook/workbookProblems";
import { WorkbookProblem } from "../Workbook";

export interface CalculationWatch {
  /** @param goOn asked again and again while there is something to wait for; throws where nobody wants to wait any longer */
  settled(goOn?: () => void): Promise<void>;
  /** True from a change until every cell shows what has come of it. */
  isUnderWay(): boolean;
  onStart(listener: () => void): void;
}

const LOOK_AGAIN_MS = 5;
/** How often whoever waits is asked whether they still want to. */
const ASK_AGAIN_MS = 500;
// The engine gathers changes for 100 ms before it calculates; when nothing has begun after this time, nothing will.
const STARTS_WITHIN_MS = 2000;
/** Without any formula having been worked out. Many formulas take as long as they take. */
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
  const progress = progressOf(injector);
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
    settled: async (goOn = () => undefined) => {
      // Putting in a large sheet keeps the page busy for longer than the engine gathers; only from here on can it begin.
      const from = performance.now();
      let asked = from;
      while (isGathering(from) || isCalculating()) {
        if (performance.now() > asked + ASK_AGAIN_MS) {
          asked = performance.now();
          goOn();
        }
        if (performance.now() > Math.max(from, progress.heard) + LONGEST_WAIT_MS)
          throw new WorkbookProblem(notCalculatedWithin(LONGEST_WAIT_MS / 1000));
        await new Promise((resolve) => setTimeout(resolve, LOOK_AGAIN_MS));
      }
      // Nothing came of it, so nobody has to wait for it again.
      gathering.since = undefined;
    },
  };
}

/** When the engine last got on: it tells of every few hundred formulas worked out, and is seen finding what each formula reads. */
function progressOf(injector: Injector): { readonly heard: number } {
  const progress = { heard: performance.now() };
  const hear = (): void => void (progress.heard = performance.now());
  injector.get(ICalculateFormulaService).executionInProgressListener$.subscribe(hear);
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as { _getRangeListByNode(asked: unknown): unknown };
  const find = generator._getRangeListByNode.bind(generator);
  generator._getRangeListByNode = (asked) => {
    hear();
    return find(asked);
  };
  return progress;
}
