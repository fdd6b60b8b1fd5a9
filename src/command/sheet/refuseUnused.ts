import type { BlockName } from "../../runsheet/BlockName";
import { has } from "../../runsheet/kinds";
import { RUN_KINDS } from "../../runsheet/options/RunSheetOptions";
import { WrongUsage } from "../Refusal";
import { optionOfOtherKinds } from "../words/sheetCommandWords";
import { optionTyped } from "./optionTyped";
import type { TypedOptions } from "./sheetOptions";

/** Blocks of a run without which an option would be ignored. */
const SERVES = {
  formula: ["compound", "openFire"],
  residue: ["compound"],
  receivers: ["caught"],
  stages: ["stages"],
  charFirings: ["charring", "heating"],
  ashFirings: ["ashing"],
  ...{
    coolingHours: ["charring", "stages", "heating"],
    heatingRate: ["charring", "stages", "heating"],
    holdMinutes: ["charring", "stages", "heating"],
  },
  ...{ expectedLoss: ["charring", "stages", "heating"], molarMass: ["charring", "stages", "heating"], kilnSetPoint: ["charring"] },
  ...{
    moistGrams: ["setup"],
    wantedUncertainty: ["setup"],
    expectedMoisture: ["setup"],
    dryingHours: ["setup"],
    bulkDensity: ["setup"],
    beginAt: ["setup"],
  },
} as const satisfies Partial<Record<keyof TypedOptions, readonly BlockName[]>>;

/** @throws WrongUsage for an option that the kind of run has no place for */
export function refuseUnused(asked: TypedOptions): void {
  for (const [option, blocks] of Object.entries(SERVES)) {
    if (asked[option as keyof typeof SERVES] === undefined) continue;
    const kinds = RUN_KINDS.filter((kind) => blocks.some((block) => has(kind, block)));
    if (!kinds.includes(asked.kind)) throw new WrongUsage(optionOfOtherKinds(optionTyped(option), asked.kind, kinds));
  }
}
