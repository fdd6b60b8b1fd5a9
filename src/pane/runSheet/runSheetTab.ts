import { has } from "../../runsheet/kinds";
import { cautions } from "../../runsheet/words/cautions";
import type { Workbook } from "../../workbook/Workbook";
import { planNotCarried } from "../../problems/paneProblems";
import { button, element } from "../element";
import { Messages } from "../Messages";
import type { Tab } from "../tabs";
import { chartsSection } from "./chart/chartsSection";
import { asDegrees, followDegrees, ovenLabel, type Degrees } from "./degreesTyped";
import { markWrong, typedIn } from "./field";
import { everyGuide } from "../../help/guides/everyGuide";
import { guideLines } from "../guides/guideLines";
import { guideWords } from "../guides/guideWords";
import { gatherSection } from "./gatherSection";
import { insertRunSheet } from "./insertRunSheet";
import { reportSection } from "./reportSection";
import { runAnswerSection } from "./runAnswerSection";
import { runPlanSection } from "./runPlanSection";
import { extraColumns, kindChoice, runSheetFields } from "./runSheetFields";
import { FIELD_LABELS, HEATINGS, type FormOutcome, planText, readRunSheetForm } from "./runSheetForm";

const START_KIND = "charring";

/** Fields that a balance check has no use for. */
const OF_SAMPLES = ["intervalMinutes", "replicates", "ovenCelsius", "degrees", "timing", "vessel"] as const;

/** Plans a run and inserts a blank sheet for it; while a run is weighed, its drying chart comes first. */
export function runSheetTab(workbook: Workbook): Tab & { readonly degrees: () => Degrees } {
  const form = runSheetFormBlock(workbook);
  const panel = element(
    "div",
    {},
    element("h2", {}, "New run sheet"),
    element("p", {}, "Adds a blank sheet to weigh into. Nothing you have is written over."),
    element(
      "details",
      { class: "guides" },
      element("summary", {}, guideWords.heading),
      element("p", { class: "hint" }, guideWords.about),
      guideLines(workbook, everyGuide, form.degrees),
    ),
    form.block,
    reportSection(workbook),
    gatherSection(workbook),
  );
  if (workbook.drawsCharts) {
    const answer = runAnswerSection(workbook, () => undefined);
    panel.prepend(answer.section);
    return { id: "run", label: "Run sheet", panel, onShow: answer.refresh, degrees: form.degrees };
  }
  const answer = runAnswerSection(workbook, () => chart.refresh());
  panel.prepend(answer.section);
  const chart = chartsSection(workbook, (isWeighing) => (isWeighing ? answer.section.after(chart.section) : panel.append(chart.section)));
  panel.append(chart.section);
  const refresh = (): void => {
    answer.refresh();
    chart.refresh();
  };
  return { id: "run", label: "Run sheet", panel, onShow: refresh, degrees: form.degrees };
}

function runSheetFormBlock(workbook: Workbook): { readonly block: HTMLFormElement; readonly degrees: () => Degrees } {
  const messages = new Messages();
  const kinds = kindChoice(FIELD_LABELS.kind, START_KIND);
  const { controls, fields } = runSheetFields();
  const extras = extraColumns();
  const plan = element("p", { class: "plan", role: "status" });
  const cautionList = element("ul");
  const insert = button("Insert blank run sheet", "primary", () => void messages.report(insert, inserted));
  const planner = runPlanSection(
    () => ({ ...typedIn(controls), kind: kinds.chosen() }),
    (weighIns) => {
      controls.weighIns.value = String(weighIns);
      check();
    },
  );
  const grid = (...names: readonly (keyof typeof fields)[]): HTMLElement =>
    element("div", { class: "field-grid" }, ...names.map((name) => fields[name].block));
  const form = element(
    "form",
    { novalidate: true },
    kinds.block,
    grid("readability", "intervalMinutes"),
    planner.block,
    grid(
      "weighIns",
      "replicates",
      "samplesAre",
      "charFirings",
      "ashFirings",
      "receivers",
      "stages",
      "formula",
      "residue",
      "ovenCelsius",
      "degrees",
      "timing",
      "vessel",
    ),
    extras.block,
    element("section", { class: "caution-box", "aria-label": "Cautions for this kind of run" }, element("h3", {}, "Before you start"), cautionList),
    plan,
    insert,
    messages.region,
  );

  const followOven = followDegrees([{ control: controls.ovenCelsius, holds: "temperature" }], "C");
  const check = (): FormOutcome => {
    const kind = kinds.chosen();
    const degrees = asDegrees(controls.degrees.value);
    followOven(degrees);
    fields.ovenCelsius.call(ovenLabel(degrees));
    const outcome = readRunSheetForm({ ...typedIn(controls), ...extras.ticked(), kind });
    fields.charFirings.block.hidden = !has(kind, "charring") && !has(kind, "heating");
    fields.ashFirings.block.hidden = !has(kind, "ashing");
    fields.receivers.block.hidden = !has(kind, "caught");
    fields.charFirings.call(has(kind, "heating") ? HEATINGS : FIELD_LABELS.charFirings);
    for (const name of ["formula", "residue"] as const) fields[name].block.hidden = !has(kind, "compound");
    fields.stages.block.hidden = !has(kind, "stages");
    const isOfSamples = has(kind, "setup");
    for (const name of OF_SAMPLES) fields[name].block.hidden = !isOfSamples;
    fields.samplesAre.block.hidden = !isOfSamples || controls.replicates.value === "1";
    for (const block of [planner.block, extras.block]) block.hidden = !isOfSamples;
    markWrong(fields, "problem" in outcome ? outcome : undefined);
    // A live region is written only when its words change, so that nothing is announced twice.
    if (plan.textContent !== planText(outcome)) plan.textContent = planText(outcome);
    cautionList.replaceChildren(...cautions[kinds.chosen()].map((caution) => element("li", {}, caution)));
    planner.check();
    return outcome;
  };

  const inserted = async (): Promise<string> => {
    const outcome = check();
    if ("problem" in outcome) throw new Error(outcome.problem);
    const plan = planner.carried();
    const said = await insertRunSheet(workbook, plan === undefined ? outcome.options : { ...outcome.options, plan });
    return planner.waits() && !planner.block.hidden ? `${said}${planNotCarried}` : said;
  };

  form.addEventListener("input", () => {
    messages.tell("");
    planner.hush();
    check();
  });
  form.addEventListener("submit", (event) => event.preventDefault());
  check();
  return { block: form, degrees: () => asDegrees(controls.degrees.value) };
}
