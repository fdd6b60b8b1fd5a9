import { unforeseenInPane } from "../problems/paneProblems";
import { element } from "./element";

/** The event that rises from a tab when a task of its failed. */
export const TASK_FAILED = "taskfailed";

/** What a tab says back: a polite region for what was done and an alert for what could not be. */
export class Messages {
  private readonly status = element("p", { role: "status", class: "status" });
  private readonly alert = element("p", { role: "alert", class: "alert" });
  readonly region = element("div", { class: "messages" }, this.status, this.alert);

  tell(text: string): void {
    this.alert.textContent = "";
    this.status.textContent = text;
  }

  complain(problem: unknown): void {
    this.status.textContent = "";
    this.alert.textContent = problem instanceof Error && problem.message !== "" ? problem.message : unforeseenInPane(String(problem));
  }

  /** Runs a task at the press of a button, once at a time, and says how it went. */
  async report(pressed: HTMLButtonElement, task: () => Promise<string>): Promise<void> {
    if (pressed.getAttribute("aria-disabled") === "true") return;
    pressed.setAttribute("aria-disabled", "true");
    this.tell("");
    try {
      this.tell(await task());
    } catch (problem) {
      this.complain(problem);
      this.region.dispatchEvent(new Event(TASK_FAILED, { bubbles: true }));
    } finally {
      pressed.removeAttribute("aria-disabled");
    }
  }
}
