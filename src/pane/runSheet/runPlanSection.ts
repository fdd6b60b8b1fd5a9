import { has, isFired } from "../../runsheet/kinds";
import type { CarriedPlan, RunKind } from "../../runsheet/options/RunSheetOptions";
import { plainNumber } from "../../problems/quoted";
import { planInTheWay } from "../../problems/paneProblems";
import { button, element } from "../element";
import { Messages } from "../Messages";
import { asDegrees, followDegrees } from "./degreesTyped";
import { markWrong, typedIn } from "./field";
import type { PlanFieldName } from "./planFieldName";
import { type PlanOutcome, readRunPlanForm, type RunPlanForm } from "./runPlanForm";
import { runPlanFields } from "./runPlanFields";
import { runPlanText } from "./runPlanText";

const DEFER = "Local codes, fire rules and the makers' instructions set the limit, not this plan.";
const HEATED =
  "A larger sample gives off more toxic, flammable vapour, and faster. Vessel, vent and hood must be made for that much; if they are not, take a finer balance or a wider uncertainty. ";
const DRIED =
  "A larger sample gives off more vapour and dries more slowly. Spread it thin, keep the oven's vent open, and do not overfill the oven. ";

const LIQUIDS = "Receivers and trap must hold all of the liquid, which is flammable, toxic and may be regulated. ";

/** What a large sample brings with it, said where its size is planned. */
const planCaution = (kind: RunKind): string =>
  kind === "balance" ? DEFER : (has(kind, "caught") ? HEATED + LIQUIDS : isFired(kind) ? HEATED : DRIED) + DEFER;

const ALL_RUNS = ["wantedUncertainty", "expectedMoisture", "expectedLoss", "dryingHours"] as const;
const HEATED_RUNS = ["kiln", "heatingRate", "holdMinutes", "coolingHours"] as const;
const MORE = ["repeatability", "methodScatter", "bulkDensity", "molarMass", "vesselMaterial", "beginAt"] as const;

type Shared = Omit<RunPlanForm, PlanFieldName>;

export interface RunPlanSection {
  readonly block: HTMLElement;
  /** Plans anew from what is typed. */
  check(): void;
  /** Takes back what was said of an earlier plan. */
  hush(): void;
  /** What goes on the sheet, once the plan was carried into the form. @throws where an entry of the plan is in its way */
  carried(): CarriedPlan | undefined;
  /** Whether something was typed into the plan that was neither carried nor left out. */
  waits(): boolean;
}

/**
 * The step before the form: from balance, wanted uncertainty and what is expected of the sample to its mass, weigh-ins, gas and time.
 * @param shared what the form below already says
 * @param carry puts a planned number of weigh-ins into the form
 */
export function runPlanSection(shared: () => Shared, carry: (weighIns: number) => void): RunPlanSection {
  const messages = new Messages();
  const { controls, fields, label } = runPlanFields();
  const grid = (names: readonly PlanFieldName[]): HTMLElement => element("div", { class: "field-grid" }, ...names.map((name) => fields[name].block));
  const kiln = grid(HEATED_RUNS);
  const more = element("details", {}, element("summary", {}, "Balance, vessel and start"), grid(MORE));
  const outcomeLines = element("div", { class: "outcome", role: "status" });
  const caution = element("p");
  const take = button("Carry into the form", "secondary", () => void messages.report(take, carried));
  const leave = button("Leave the plan out", "secondary", () => void messages.report(leave, leftOut));
  leave.hidden = true;

  const follow = followDegrees(
    [
      { control: controls.kiln, holds: "temperature" },
      { control: controls.heatingRate, holds: "rate" },
    ],
    "C",
  );
  const check = (): PlanOutcome => {
    const others = shared();
    const isHeated = has(others.kind, "charring");
    const degrees = asDegrees(others.degrees);
    label(degrees);
    follow(degrees);
    const outcome = readRunPlanForm({ ...typedIn(controls), ...others });
    markWrong(fields, "problem" in outcome ? outcome : undefined);
    const lines = runPlanText(outcome);
    // A live region is written only when its words change, so that nothing is announced twice.
    if (outcomeLines.textContent !== lines.join("")) outcomeLines.replaceChildren(...lines.map((line) => element("p", {}, line)));
    for (const hidden of [kiln, fields.expectedLoss.block, fields.molarMass.block]) hidden.hidden = !isHeated;
    fields.methodScatter.block.hidden = others.replicates === "1" || others.samplesAre !== "repeats";
    // A marked entry has to be seen.
    if ("problem" in outcome && MORE.some((name) => name === outcome.field)) more.open = true;
    caution.replaceChildren(element("strong", {}, "Caution. "), planCaution(others.kind));
    return outcome;
  };

  const carried = async (): Promise<string> => {
    const outcome = check();
    if ("problem" in outcome) throw new Error(outcome.problem);
    carry(outcome.plan.weighIns);
    leave.hidden = false;
    isTyped = false;
    return `Weigh-ins in the form are now ${outcome.plan.weighIns}. The sheet will hold the plan: ${plainNumber(outcome.plan.moistGrams)}\u00a0g moist in each vessel, and what else is known.`;
  };
  const leftOut = async (): Promise<string> => {
    leave.hidden = true;
    isTyped = false;
    return "The sheet will hold nothing of the plan but what stands in the form.";
  };

  let isTyped = false;
  const block = element(
    "details",
    { class: "planner" },
    element("summary", {}, "Plan a run ", element("small", {}, "sample, weigh-ins, gas, time")),
    element("p", { class: "hint" }, "With the readability and the minutes apart above, and the samples, firings and degrees below."),
    grid(ALL_RUNS),
    kiln,
    more,
    outcomeLines,
    element("div", { class: "caution-box" }, caution),
    take,
    leave,
    messages.region,
  );
  block.addEventListener("input", () => {
    isTyped = true;
  });
  return {
    block,
    check,
    // What was carried before is read anew when the sheet is made.
    waits: () => isTyped && leave.hidden === true,
    hush: () => messages.tell(""),
    carried: () => {
      if (leave.hidden) return undefined;
      const outcome = check();
      if ("problem" in outcome) throw new Error(planInTheWay(outcome.problem));
      return outcome.carried;
    },
  };
}
