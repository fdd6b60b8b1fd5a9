import { hoursOrMinutes, unitOrUnit } from "../../problems/paneProblems";
import { MINUTES_PER_HOUR } from "../../runsheet/planning/plannedTime";
import type { Degrees } from "./degreesTyped";
import type { PlanFieldName } from "./planFieldName";
import type { WrongEntry } from "./WrongEntry";

/** A box in which another unit than its own lies near: minutes, °C an hour, hours, milligrams. */
interface UnitBox {
  /** A number with the box's own unit. */
  readonly signed: RegExp;
  /** True for so much or so little that another unit is likelier; own bounds, no source. */
  readonly isDoubted: (value: number, degrees: Degrees, readability: number) => boolean;
  /** Both readings. */
  readonly asked: (label: string, value: number, degrees: Degrees) => string;
}

// Longer times are planned for, and are minutes more often.
const MOST_HOURS = 24;
// Kilns are planned slower, holds longer, and balances repeat better.
const FASTEST = { C: 30, F: 54 } as const;
const SHORTEST_HOLD = 5;
const MOST_STEPS = 50;
const MILLI = 1000;

const HOURS: UnitBox = {
  signed: /^(.*\d) ?(?:h|hours?)$/i,
  isDoubted: (hours) => hours > MOST_HOURS,
  asked: hoursOrMinutes,
};

const BOXES = {
  dryingHours: HOURS,
  coolingHours: HOURS,
  heatingRate: {
    signed: /^(.*\d) ?(?:°? ?[CFK])? ?(?:\/|per ) ?min$/i,
    isDoubted: (rate, degrees) => rate > FASTEST[degrees],
    asked: (label, rate, degrees) => unitOrUnit(label, rate, `°${degrees}/min`, `°${degrees}/h`, rate / MINUTES_PER_HOUR),
  },
  holdMinutes: {
    signed: /^(.*\d) ?min(?:utes?)?$/i,
    isDoubted: (minutes) => minutes > 0 && minutes < SHORTEST_HOLD,
    asked: (label, minutes) => unitOrUnit(label, minutes, "min", "h", minutes * MINUTES_PER_HOUR),
  },
  repeatability: {
    signed: /^(.*\d) ?g$/i,
    isDoubted: (grams, _, readability) => grams > MOST_STEPS * readability,
    asked: (label, grams) => unitOrUnit(label, grams, "g", "mg", grams / MILLI),
  },
} as const satisfies Partial<Record<PlanFieldName, UnitBox>>;
type UnitName = keyof typeof BOXES;

const bareOf = (name: UnitName, typed: string): string | undefined => BOXES[name].signed.exec(typed.trim().split(/\s+/).join(" "))?.[1];

/** The same with these boxes bare of their own unit. */
export const withoutUnits = <Form extends Readonly<Record<UnitName, string>>>(form: Form): Form => ({
  ...form,
  ...Object.fromEntries((Object.keys(BOXES) as UnitName[]).map((name) => [name, bareOf(name, form[name]) ?? form[name]])),
});

/** The first of these boxes whose number is typed bare and is so likely of another unit that both readings are put; undefined where there is none. */
export function unitDoubted(
  names: readonly UnitName[],
  labels: Readonly<Record<PlanFieldName, string>>,
  degrees: Degrees,
  typed: Readonly<Record<UnitName, string>>,
  numbers: Readonly<Partial<Record<UnitName, number>>> & { readonly readability: number },
): WrongEntry<UnitName> | undefined {
  for (const field of names) {
    const value = numbers[field];
    const box: UnitBox = BOXES[field];
    if (value === undefined || !box.isDoubted(value, degrees, numbers.readability) || bareOf(field, typed[field]) !== undefined) continue;
    return { problem: box.asked(labels[field], value, degrees), field };
  }
  return undefined;
}
