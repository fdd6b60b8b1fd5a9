import type { RunKind } from "../../runsheet/options/RunSheetOptions";
import { button, element } from "../element";
import { Messages } from "../Messages";
import { field, markWrong, typedIn, underEachName } from "./field";
import { PLAN_LABELS, type PlanFieldName, type PlanOutcome, readRunPlanForm, type RunPlanForm } from "./runPlanForm";
import { runPlanText } from "./runPlanText";

// Half a percentage point and three hours of drying; common practice, no source.
const START: Readonly<Record<PlanFieldName, string>> = {
  wantedUncertainty: "0.5",
  expectedLoss: "",
  dryingHours: "3",
  kilnCelsius: "",
  celsiusPerMinute: "",
  holdMinutes: "",
};

const HINTS: Readonly<Record<PlanFieldName, string>> = {
  wantedUncertainty: "percentage points of the loss, k = 2",
  expectedLoss: "of the sample; blank: any",
  dryingHours: "until dry, as a trial or a like run took",
  kilnCelsius: "may stay blank",
  celsiusPerMinute: "needed for a kiln",
  holdMinutes: "blank: none",
};

const DEFER = "Local codes, fire rules and the makers' instructions set the limit, not this plan.";
const HEATED =
  "A larger sample gives off more toxic, flammable vapour, and faster. Vessel, vent and hood must be made for that much; if they are not, take a finer balance or a wider uncertainty. ";

const LIQUIDS = "Receivers and trap must hold all of the liquid, which is flammable, toxic and may be regulated. ";

/** What a large sample brings with it, said where its size is planned. */
const planCaution: Readonly<Record<RunKind, string>> = {
  drying: `A larger sample gives off more vapour and dries more slowly. Spread it thin, keep the oven's vent open, and do not overfill the oven. ${DEFER}`,
  charring: HEATED + DEFER,
  ashing: HEATED + DEFER,
  liquids: HEATED + LIQUIDS + DEFER,
  staged: HEATED + DEFER,
  balance: DEFER,
};

const ALL_RUNS = ["wantedUncertainty", "expectedLoss", "dryingHours"] as const;
const HEATED_RUNS = ["kilnCelsius", "celsiusPerMinute", "holdMinutes"] as const;

type Shared = Omit<RunPlanForm, PlanFieldName>;

export interface RunPlanSection {
  readonly block: HTMLElement;
  /** Plans anew from what is typed. */
  check(): void;
  /** Takes back what was said of an earlier plan. */
  hush(): void;
}

/**
 * The step before the form: from balance, wanted uncertainty and expected loss to sample, weigh-ins and time.
 * @param shared what the form below already says
 * @param carry puts a planned number of weigh-ins into the form
 */
export function runPlanSection(shared: () => Shared, carry: (weighIns: number) => void): RunPlanSection {
  const messages = new Messages();
  const controls = underEachName(START, (value, name) => box(name, value));
  const fields = underEachName(controls, (control, name) => field(PLAN_LABELS[name], control, HINTS[name]));
  const grid = (names: readonly PlanFieldName[]): HTMLElement => element("div", { class: "field-grid" }, ...names.map((name) => fields[name].block));
  const kiln = grid(HEATED_RUNS);
  const outcomeLines = element("div", { class: "outcome", role: "status" });
  const caution = element("p");
  const take = button("Carry weigh-ins into the form", "secondary", () => void messages.report(take, carried));

  const check = (): PlanOutcome => {
    const { kind, ...others } = shared();
    const outcome = readRunPlanForm({ ...typedIn(controls), kind, ...others });
    markWrong(fields, "problem" in outcome ? outcome : undefined);
    const lines = runPlanText(outcome);
    // A live region is written only when its words change, so that nothing is announced twice.
    if (outcomeLines.textContent !== lines.join("")) outcomeLines.replaceChildren(...lines.map((line) => element("p", {}, line)));
    kiln.hidden = kind === "drying";
    caution.replaceChildren(element("strong", {}, "Caution. "), planCaution[kind]);
    return outcome;
  };

  const carried = async (): Promise<string> => {
    const outcome = check();
    if ("problem" in outcome) throw new Error(outcome.problem);
    carry(outcome.plan.weighIns);
    return `Weigh-ins in the form are now ${outcome.plan.weighIns}. Note the sample mass for the bench.`;
  };

  const block = element(
    "details",
    { class: "planner" },
    element("summary", {}, "Plan a run ", element("small", {}, "sample, weigh-ins, time")),
    element("p", { class: "hint" }, "With the readability and the minutes apart above."),
    grid(ALL_RUNS),
    kiln,
    outcomeLines,
    element("div", { class: "caution-box" }, caution),
    take,
    messages.region,
  );
  return { block, check, hush: () => messages.tell("") };
}

const box = (name: string, value: string): HTMLInputElement =>
  element("input", { id: `plan-${name}`, type: "text", inputmode: "decimal", value, autocomplete: "off" });
