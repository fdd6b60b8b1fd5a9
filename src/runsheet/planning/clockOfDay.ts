const MINUTES_PER_HOUR = 60;

/** "9:05" of minutes after midnight, within the day. */
export const clockOfDay = (minutes: number): string =>
  `${Math.floor(minutes / MINUTES_PER_HOUR)}:${String(minutes % MINUTES_PER_HOUR).padStart(2, "0")}`;
