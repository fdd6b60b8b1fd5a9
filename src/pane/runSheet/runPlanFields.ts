import { VESSEL_MATERIALS } from "../../runsheet/words/vesselMaterials";
import { element } from "../element";
import { choiceList, field, type Field, underEachName } from "./field";
import type { PlanFieldName } from "./planFieldName";
import { planLabels } from "./runPlanForm";

// Half a percentage point, half of green wood water, and three hours of drying; common practice, no source.
const START: Readonly<Record<PlanFieldName, string>> = {
  wantedUncertainty: "0.5",
  expectedMoisture: "50",
  expectedLoss: "",
  dryingHours: "3",
  kiln: "",
  heatingRate: "",
  holdMinutes: "",
  coolingHours: "",
  repeatability: "",
  methodScatter: "",
  bulkDensity: "",
  molarMass: "",
  vesselMaterial: "",
  beginAt: "",
};

const HINTS: Readonly<Record<PlanFieldName, string>> = {
  wantedUncertainty: "percentage points of the share that left, 95 %",
  expectedMoisture: "water, of the moist weight",
  expectedLoss: "vapour, of the dry sample; blank: any",
  dryingHours: "until dry, as a trial or a like run took",
  kiln: "may stay blank",
  heatingRate: "needed for a kiln",
  holdMinutes: "blank: none",
  coolingHours: "closed, until cold; blank: not reckoned",
  repeatability: "standard deviation; blank: rounding alone",
  methodScatter: "standard deviation of the share, earlier work",
  bulkDensity: "of the moist sample; kg/m³ over 1000",
  molarMass: "mean of what leaves; blank: 25",
  vesselMaterial: "and its lid",
  beginAt: "such as 9:00",
};

/** The boxes of the plan with their controls, labelled in degrees Celsius until told otherwise. */
export interface RunPlanFields {
  readonly controls: Readonly<Record<PlanFieldName, HTMLInputElement | HTMLSelectElement>>;
  readonly fields: Readonly<Record<PlanFieldName, Field>>;
  label(degrees: "C" | "F"): void;
}

export function runPlanFields(): RunPlanFields {
  const materials = choiceList("plan-vesselMaterial", [["", "not said"], ...VESSEL_MATERIALS.map(({ name }) => [name, name] as const)], "");
  const controls = underEachName<PlanFieldName, string, HTMLInputElement | HTMLSelectElement>(START, (value, name) =>
    name === "vesselMaterial" ? materials : box(name, value),
  );
  const labels = planLabels("C");
  const fields = underEachName<PlanFieldName, HTMLInputElement | HTMLSelectElement, Field>(controls, (control, name) =>
    field(labels[name], control, HINTS[name]),
  );
  return {
    controls,
    fields,
    label: (degrees) => {
      for (const [name, label] of Object.entries(planLabels(degrees))) {
        const shown = fields[name as PlanFieldName].block.querySelector("label");
        if (shown !== null && shown.textContent !== label) shown.textContent = label;
      }
    },
  };
}

const box = (name: string, value: string): HTMLInputElement =>
  element("input", { id: `plan-${name}`, type: "text", inputmode: name === "beginAt" ? "text" : "decimal", value, autocomplete: "off" });
