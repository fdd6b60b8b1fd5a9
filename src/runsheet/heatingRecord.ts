import { clockRule, massRule, temperatureRule, type Rule } from "./entryRules";
import type { HeatingRecord } from "./quantities";
import type { RunSheetOptions } from "./RunSheetOptions";

/** The number format of a clock time. */
export const CLOCK_FORMAT = "hh:mm";

interface HeatingEntry {
  /** Left out for a mass, which is shown as the balance shows it. */
  readonly format?: string;
  readonly rule: (options: RunSheetOptions) => Rule;
}

/** How each entry of the heating record is shown and asked for. */
export const HEATING: Readonly<Record<HeatingRecord, HeatingEntry>> = {
  kilnSet: { format: "0", rule: () => temperatureRule("Kiln set", "The temperature the kiln is set to.") },
  started: { format: CLOCK_FORMAT, rule: () => clockRule("Heating started", "When the kiln was switched on, vessel closed and vent open.") },
  smokeStopped: { format: CLOCK_FORMAT, rule: () => clockRule("Vent stopped smoking", "When no more vapour was seen at the vent.") },
  cooled: { format: CLOCK_FORMAT, rule: () => clockRule("Cold, vessel opened", "When the vessel, cooled closed, was cold and was opened.") },
  char: {
    rule: (options) =>
      massRule(options, "Vessel + char", "The same vessel and lid with the char, cold. Weigh soon: char takes up water from the air."),
  },
  furnaceSet: { format: "0", rule: () => temperatureRule("Ashing furnace set", "The temperature at which the char is burned to ash.") },
  ash: { rule: (options) => massRule(options, "Vessel + ash", "The same vessel and lid with the ash, cold, once no dark specks are left.") },
};
