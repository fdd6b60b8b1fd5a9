const MINUTES_IN_AN_HOUR = 60;

const NO_BREAK_SPACE = "\u00a0";

/** Minutes in words that stay on one line: "45 min", "3 h 30 min". */
export function durationText(minutes: number): string {
  const hours = Math.floor(minutes / MINUTES_IN_AN_HOUR);
  const rest = Number((minutes - hours * MINUTES_IN_AN_HOUR).toFixed(1));
  return [...(hours > 0 ? [[hours, "h"].join(NO_BREAK_SPACE)] : []), ...(rest > 0 || hours === 0 ? [[rest, "min"].join(NO_BREAK_SPACE)] : [])].join(
    NO_BREAK_SPACE,
  );
}
