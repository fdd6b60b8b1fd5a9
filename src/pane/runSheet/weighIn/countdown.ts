import { weighInWords } from "../../../problems/runsheet/weighInWords";
import { element } from "../../element";
import { durationText } from "../durationText";

const MILLISECONDS_PER_SECOND = 1000;
const SECONDS_PER_MINUTE = 60;

/** A line that counts down to a moment, each second but without being read out. */
export interface Countdown {
  readonly line: HTMLElement;
  /** Counts down to another moment; undefined for none. @param words what is counted down to */
  until(moment: number | undefined, words: CountdownWords): void;
}

export interface CountdownWords {
  readonly due: (remaining: string) => string;
  readonly overdue: (since: string) => string;
  readonly isDue: string;
}

/** @param whenDue called once as the moment comes */
export function countdown(whenDue: (words: CountdownWords) => void): Countdown {
  const line = element("p", { class: "countdown", role: "timer", "aria-live": "off" });
  let due: number | undefined;
  let said: CountdownWords = weighInWords;
  let timer: ReturnType<typeof setInterval> | undefined;
  const draw = (): void => {
    line.hidden = due === undefined;
    if (due === undefined) return;
    const left = Math.ceil((due - Date.now()) / MILLISECONDS_PER_SECOND);
    line.textContent = left > 0 ? said.due(clockOf(left)) : said.overdue(lateText(-left));
    line.classList.toggle("overdue", left <= 0);
  };
  const tick = (): void => {
    const wasWaiting = line.dataset.waiting === "yes";
    draw();
    const isWaiting = due !== undefined && due > Date.now();
    line.dataset.waiting = isWaiting ? "yes" : "no";
    if (wasWaiting && !isWaiting && due !== undefined) whenDue(said);
  };
  return {
    line,
    until: (moment, words) => {
      if (moment === due && words === said) return;
      [due, said] = [moment, words];
      clearInterval(timer);
      line.dataset.waiting = "no";
      tick();
      if (moment !== undefined) timer = setInterval(tick, MILLISECONDS_PER_SECOND);
    },
  };
}

/** "12:05", and from an hour on "1 h 5 min", which nobody takes for a time of day. */
const lateText = (seconds: number): string =>
  seconds < SECONDS_PER_MINUTE ** 2 ? clockOf(seconds) : durationText(Math.floor(seconds / SECONDS_PER_MINUTE));

/** "29:07", "1:05:00" */
export function clockOf(seconds: number): string {
  const two = (part: number): string => String(part).padStart(2, "0");
  const [minutes, hours] = [Math.floor(seconds / SECONDS_PER_MINUTE), Math.floor(seconds / SECONDS_PER_MINUTE ** 2)];
  const rest = `${two(hours === 0 ? minutes : minutes % SECONDS_PER_MINUTE)}:${two(seconds % SECONDS_PER_MINUTE)}`;
  return hours === 0 ? rest : `${hours}:${rest}`;
}
