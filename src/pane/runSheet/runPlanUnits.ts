import { unitOrUnit } from "../../problems/paneProblems";
import { MINUTES_PER_HOUR } from "../../runsheet/planning/plannedTime";
import type { Degrees } from "./degreesTyped";
import type { PlanFieldName } from "./runPlanForm";
import type { WrongEntry } from "./WrongEntry";

/** Boxes in which another unit than their own lies near: °C an hour, hours, milligrams. */
type UnitName = "heatingRate" | "holdMinutes" | "repeatability";

const SIGNED: Readonly<Record<UnitName, RegExp>> = {
  heatingRate: /^(.*\d) ?(?:°? ?[CFK])? ?(?:\/|per ) ?min$/i,
  holdMinutes: /^(.*\d) ?min(?:utes?)?$/i,
  repeatability: /^(.*\d) ?g$/i,
};
const spacedOnce = (typed: string): string => typed.trim().split(/\s+/).join(" ");
const NAMES = ["heatingRate", "holdMinutes", "repeatability"] as const satisfies readonly UnitName[];

/** The same with these boxes bare of their own unit. */
export const withoutUnits = <Form extends Readonly<Record<UnitName, string>>>(form: Form): Form => ({
  ...form,
  ...Object.fromEntries(NAMES.map((name) => [name, SIGNED[name].exec(spacedOnce(form[name]))?.[1] ?? form[name]])),
});

/** Own bounds, no source: kilns are planned slower, holds longer, and balances repeat better. */
const DOUBTED = { degreesPerMinute: { C: 30, F: 54 }, holdMinutes: 5, steps: 50 } as const;
const MILLI = 1000;

/** A number typed bare that is so likely of another unit that both readings are put; undefined where there is none. */
export function unitDoubted(
  labels: Readonly<Record<PlanFieldName, string>>,
  degrees: Degrees,
  typed: Readonly<Record<UnitName, string>>,
  { heatingRate, holdMinutes, repeatability, readability }: Readonly<Partial<Record<UnitName, number>>> & { readonly readability: number },
): WrongEntry<UnitName> | undefined {
  const isBare = (name: UnitName): boolean => !SIGNED[name].test(spacedOnce(typed[name]));
  const ask = (field: UnitName, value: number, other: number, units: readonly [own: string, other: string]): WrongEntry<UnitName> | undefined =>
    isBare(field) ? { problem: unitOrUnit(labels[field], value, units[0], units[1], other), field } : undefined;
  const isFast = heatingRate !== undefined && heatingRate > DOUBTED.degreesPerMinute[degrees];
  const isShort = holdMinutes !== undefined && holdMinutes > 0 && holdMinutes < DOUBTED.holdMinutes;
  const isWide = repeatability !== undefined && repeatability > DOUBTED.steps * readability;
  return (
    (isFast ? ask("heatingRate", heatingRate, heatingRate / MINUTES_PER_HOUR, [`°${degrees}/min`, `°${degrees}/h`]) : undefined) ??
    (isShort ? ask("holdMinutes", holdMinutes, holdMinutes * MINUTES_PER_HOUR, ["min", "h"]) : undefined) ??
    (isWide ? ask("repeatability", repeatability, repeatability / MILLI, ["g", "mg"]) : undefined)
  );
}
