import { weighInWords } from "../../../problems/runsheet/weighInWords";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import type { Workbook } from "../../../workbook/Workbook";
import { button, element } from "../../element";
import { Messages } from "../../Messages";
import { chime } from "./chime";
import { countdown } from "./countdown";
import { wholeScreenButton } from "./wholeScreenButton";
import { WeighIn } from "./WeighIn";

/** One large box for the next reading of the selected run sheet. */
export interface WeighInSection {
  readonly section: HTMLElement;
  /** Reads where the work stands. @param sheet undefined where no run sheet is selected */
  show(sheet: string | undefined): Promise<void>;
}

/** @param changed called after something was put into the sheet or taken back */
export function weighInSection(workbook: Workbook, changed: () => void): WeighInSection {
  const weighIn = new WeighIn(workbook);
  const messages = new Messages();
  const sound = chime();
  const timer = countdown((words) => {
    messages.tell(words.isDue);
    sound.play();
  });
  const reading = element("input", { id: "weigh-reading", class: "weigh-box", inputmode: "decimal", autocomplete: "off", enterkeyhint: "enter" });
  const label = element("label", { for: reading.id, class: "weigh-next" });
  const time = element("input", { id: "weigh-time", autocomplete: "off" });
  const timeLabel = element("label", { for: time.id });
  const timeField = element("div", { class: "weigh-time" }, timeLabel, time);
  const enter = element("button", { type: "submit", class: "primary" }, weighInWords.enter);
  const allTheSame = button(weighInWords.allTheSame, "secondary", () => void entered(true));
  const leaveBlank = (which: () => void): void => {
    which();
    reset();
  };
  const pass = button(weighInWords.pass, "secondary", () => leaveBlank(() => weighIn.pass()));
  const takeBack = button(weighInWords.takeBack, "secondary", () => void takenBack());
  const skips = element("div", { class: "weigh-skips" });
  const caution = element("p", { class: "weigh-caution" });
  const form = element("form", { novalidate: true, class: "weigh-form" }, caution, label, reading, timeField, enter, allTheSame);
  const rest = element("p", { class: "weigh-rest" });
  const section = element(
    "section",
    { class: "weigh-in", "aria-labelledby": "weigh-heading", hidden: true },
    element("h3", { id: "weigh-heading" }, weighInWords.heading),
    rest,
    messages.region,
    timer.line,
    element("div", { class: "weigh-more" }, pass, skips, takeBack, wholeScreenButton()),
    sound.block,
  );
  let busy = false;
  let shown: string | undefined;

  const nameEnter = (): void => {
    const step = weighIn.next;
    const isNow = step?.kind === "clock" && reading.value.trim() === "";
    enter.textContent = isNow ? weighInWords.clockEnter(step.name) : weighInWords.enter;
  };

  const draw = (): void => {
    const step = weighIn.next;
    section.hidden = !weighIn.isRunSheet;
    // Beside any other sheet the form for a new one is the only one.
    if (weighIn.isRunSheet && form.parentNode === null) rest.before(form);
    if (!weighIn.isRunSheet) form.remove();
    form.hidden = step === undefined;
    rest.hidden = step !== undefined;
    // A live region is written only when its words change, so that nothing is announced twice.
    if (step === undefined) rest.textContent = weighIn.rest;
    pass.hidden = step?.isOptional !== true;
    takeBack.hidden = !weighIn.canTakeBack;
    const opening = weighIn.opening(new Date());
    timer.until(opening ?? weighIn.due(new Date()), opening === undefined ? weighInWords : weighInWords.opening);
    skips.replaceChildren(...(step?.skips ?? []).map((skip) => button(skip.words, "secondary", () => leaveBlank(() => weighIn.skip(skip)))));
    if (step === undefined) return;
    const isClock = step.kind === "clock";
    label.textContent = `${weighInWords.box(step.name, placeOf(step.at))}${step.unit === "" ? "" : `, ${step.unit}`}`;
    caution.textContent = weighIn.caution;
    caution.hidden = weighIn.caution === "";
    nameEnter();
    reading.inputMode = step.kind === "reading" ? "decimal" : "text";
    timeField.hidden = !weighIn.asksForTime;
    timeLabel.textContent = { clock: weighInWords.clock, minutes: weighInWords.minute, day: weighInWords.day }[weighIn.timed];
    const stamp = weighIn.stamp(new Date());
    const offered = stamp === "" ? weighInWords.typeIt : (weighIn.timed === "day" ? weighInWords.today : weighInWords.now)(stamp);
    time.placeholder = offered;
    reading.placeholder = isClock ? offered : "";
  };

  const hush = (): void => {
    allTheSame.hidden = true;
    for (const box of [reading, time]) box.removeAttribute("aria-invalid");
  };

  /** The next box, blank, with the focus in it. */
  const reset = (): void => {
    hush();
    reading.value = "";
    time.value = "";
    draw();
    if (form.hidden) return;
    reading.focus({ preventScroll: true });
    // What is asked for stays in view above the box.
    label.scrollIntoView({ block: "nearest" });
  };

  /** What is said stands below the buttons, often out of view; what is asked for matters more where there is no room for both. */
  const inView = (): void => {
    messages.region.scrollIntoView({ block: "nearest" });
    label.scrollIntoView({ block: "nearest" });
  };

  const tell = (what: string): void => {
    messages.tell(what);
    inView();
  };

  const refuse = (why: string, box: HTMLInputElement): void => {
    messages.complain(new Error(why));
    box.setAttribute("aria-invalid", "true");
    box.focus({ preventScroll: true });
    inView();
  };

  const once = async (task: () => Promise<void>): Promise<void> => {
    // A second Enter before the first is through would go into the same box.
    if (busy) return;
    busy = true;
    try {
      await task();
    } catch (problem) {
      messages.complain(problem);
    } finally {
      busy = false;
    }
  };

  const entered = (isAllTheSame: boolean): Promise<void> =>
    once(async () => {
      const outcome = await weighIn.enter(reading.value, time.value, new Date(), isAllTheSame);
      hush();
      if ("refused" in outcome) return refuse(outcome.refused, outcome.of === "time" ? time : reading);
      if ("doubt" in outcome) {
        refuse(outcome.doubt, reading);
        allTheSame.hidden = false;
        return;
      }
      reset();
      tell(outcome.told);
      changed();
    });

  const takenBack = (): Promise<void> =>
    once(async () => {
      const last = await weighIn.takeBack();
      reset();
      [reading.value, time.value] = [last.reading, last.time];
      nameEnter();
      reading.select();
      tell(last.told);
      changed();
    });

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void entered(false);
  });
  form.addEventListener("input", () => {
    hush();
    nameEnter();
  });
  hush();
  const show = async (sheet: string | undefined): Promise<void> => {
    if (sheet === undefined) {
      section.hidden = true;
      form.remove();
    } else if (!busy) {
      if (shown !== sheet) messages.tell("");
      shown = sheet;
      await weighIn.look(sheet);
      draw();
    }
  };
  return { section, show };
}
