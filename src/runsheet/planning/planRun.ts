import { plainNumber } from "../../problems/quoted";
import { has } from "../kinds";
import { bounded, optionBounds } from "../options/optionBounds";
import type { RunKind } from "../options/RunSheetOptions";
import { VESSEL_MATERIALS, type VesselMaterial } from "../words/vesselMaterials";
import { gasLitres, USUAL_MOLAR_MASS } from "./gasLitres";
import { plannedSample, type PlannedSample, type SampleWanted } from "./plannedSample";
import { plannedTime, type PlannedTime, type TimeWanted } from "./plannedTime";
import { roundedUp } from "./roundedUp";

/** What is known and wanted before a run. Shares and their uncertainties are fractions. */
export interface RunWanted extends Omit<SampleWanted, "vapour">, TimeWanted {
  readonly kind: RunKind;
  /** Share of the dry sample that will leave as vapour; left out: any. It counts for a run that goes on after drying. */
  readonly expectedLoss?: number;
  /** Mean of the vapour, g/mol; left out: 25. */
  readonly molarMass?: number;
  /** Of the moist sample as it lies in the vessel, g/mL; left out: not known. */
  readonly bulkDensity?: number;
  /** A name from VESSEL_MATERIALS; left out: not said. */
  readonly vesselMaterial?: string;
  /** Left out: not known. */
  readonly ovenCelsius?: number;
}

export interface RunPlan extends PlannedSample, PlannedTime {
  /** What is to be weighed out as the balance can show it, and what is left of it when dry, g in each vessel. */
  readonly moistGrams: number;
  readonly dryGrams: number;
  /** Hot gas of all samples together, up to where the loss is not known; undefined without a kiln temperature. */
  readonly gasLitres: number | undefined;
  /** Filled by the moist sample in each vessel, mL; undefined without a bulk density. */
  readonly millilitres: number | undefined;
  /** The vessel's material and the planned temperature, °C, where that is above what it stands. */
  readonly tooHot: { readonly material: VesselMaterial; readonly celsius: number } | undefined;
}

const SCATTER = { name: "scatter between samples", atLeast: 0.000001, atMost: 0.1, unit: "" };
const REPEATABILITY = { name: "repeatability", atLeast: 0.0000001, atMost: 100, unit: "g" };

/**
 * The smallest sample, the weigh-ins, the time and the gas of a run.
 * @throws InputProblem naming the entry that cannot serve
 */
export function planRun(wanted: RunWanted): RunPlan {
  check(wanted);
  const { kind, readability, moisture, expectedLoss, samples, bulkDensity, molarMass = USUAL_MOLAR_MASS } = wanted;
  const isHeated = has(kind, "charring");
  const sample = plannedSample({ ...wanted, vapour: isHeated ? (expectedLoss ?? 0) : undefined });
  const time = plannedTime(isHeated ? wanted : { intervalMinutes: wanted.intervalMinutes, dryingHours: wanted.dryingHours });
  const kilnCelsius = isHeated ? wanted.kilnCelsius : undefined;
  // Without binary residue, because it is written on the sheet.
  const moistGrams = Number(plainNumber(roundedUp(sample.weighOutGrams, readability)));
  const dryGrams = moistGrams * (1 - moisture);
  return {
    ...sample,
    ...time,
    moistGrams,
    dryGrams,
    gasLitres: kilnCelsius === undefined ? undefined : gasLitres(samples * dryGrams * (expectedLoss ?? 1), molarMass, kilnCelsius),
    millilitres: bulkDensity === undefined ? undefined : moistGrams / bulkDensity,
    tooHot: tooHot(wanted.vesselMaterial, Math.max(wanted.ovenCelsius ?? -Infinity, kilnCelsius ?? -Infinity)),
  };
}

function check({
  readability,
  repeatability,
  wantedUncertainty,
  samples,
  expectedLoss,
  moisture,
  methodScatter,
  molarMass,
  bulkDensity,
}: RunWanted): void {
  const given = (bounds: Parameters<typeof bounded>[0], value: number | undefined): void => void (value === undefined || bounded(bounds, value));
  bounded(optionBounds.readability, readability);
  given(REPEATABILITY, repeatability);
  bounded(optionBounds.wanted, wantedUncertainty);
  bounded(optionBounds.replicates, samples);
  given(optionBounds.expectedLoss, expectedLoss);
  bounded(optionBounds.expectedMoisture, moisture);
  given(SCATTER, methodScatter);
  given(optionBounds.molarMass, molarMass);
  given(optionBounds.bulkDensity, bulkDensity);
}

function tooHot(name: string | undefined, celsius: number): RunPlan["tooHot"] {
  const material = VESSEL_MATERIALS.find((one) => one.name === name);
  return material !== undefined && celsius > material.standsCelsius ? { material, celsius } : undefined;
}
