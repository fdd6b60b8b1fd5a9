const MINUTES_PER_HOUR = 60;
const HOURS = 24;
const NOON = 12;
const CLOCK = /^(\d{1,2}?)(?:(:|\.|\s?h\s?)?(\d{2}))?\s?(h)?\s?(?:(a|p)\.?m\.?)?$/i;

/**
 * Minutes after midnight of a clock time as people type it: "9:30", "9:30am", "9.30 p.m.", "930 pm", "9h30", "9 am"; undefined for anything that
 * can be read otherwise. A bare 9.30, 930 or 0930 may be a number, so only a colon, an h, or am and pm make a time of figures.
 */
export function clockTyped(text: string): number | undefined {
  const [, hourFigures, mark = "", minuteFigures, lastH, half] = CLOCK.exec(text.trim()) ?? [];
  if (hourFigures === undefined) return undefined;
  const byColonOrH = mark === ":" || mark.trim().toLowerCase() === "h";
  // "9:30 h" has its minutes, "9 h" has none; "9.30 h" may be hours.
  const isHours = lastH !== undefined && (minuteFigures === undefined || mark === ":");
  if (lastH !== undefined && !isHours) return undefined;
  if (!byColonOrH && !isHours && half === undefined) return undefined;
  const minutes = Number(minuteFigures ?? 0);
  const hours = hoursOf(Number(hourFigures), half?.toLowerCase());
  return hours === undefined || minutes >= MINUTES_PER_HOUR ? undefined : hours * MINUTES_PER_HOUR + minutes;
}

/** 12 am is midnight, 12 pm noon; 13:30 pm says twice what it is, and 13:30 am contradicts itself. */
function hoursOf(hours: number, half: string | undefined): number | undefined {
  if (hours >= HOURS) return undefined;
  if (half === "a") return hours > NOON ? undefined : hours % NOON;
  if (half === "p") return hours === 0 ? undefined : hours < NOON ? hours + NOON : hours;
  return hours;
}
