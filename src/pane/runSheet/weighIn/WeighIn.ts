import { clockText } from "../../../explanation/runSheet/plainText";
import type { Plain } from "../../../explanation/runSheet/Plain";
import { isOfSamples, RUN_SHEET_AREA, sheetCells, type SheetCells } from "../../../explanation/runSheet/RunCells";
import { weighInWords } from "../../../problems/runsheet/weighInWords";
import type { Cell } from "../../../runsheet/expressions/Expression";
import { placeOf } from "../../../runsheet/expressions/formulaText";
import { NEXT } from "../../../runsheet/blocks/headBlock";
import { nextAsTold } from "../../../runsheet/reading/readHead";
import { LABEL } from "../../../runsheet/sheet/Columns";
import { briefCaution } from "../../../runsheet/words/cautions";
import type { Workbook } from "../../../workbook/Workbook";
import { doubtOf } from "./doubtOf";
import { nextStep } from "./nextStep";
import type { Skip, Step } from "./order/Step";
import { dayText } from "./readClock";
import { readEntry } from "./readEntry";
import { report, timeText } from "./report";
import { begunAt, dueAt, openedFrom, stampNow, stampOfFire, typedStamp } from "./stamp";

/** What one press did: boxes filled by Enter, or none where boxes were left blank. */
interface Done {
  readonly sheet: string;
  readonly step: Step;
  readonly cells: readonly { readonly at: Cell; readonly content: number | string }[];
  /** The boxes that were to stay blank before it. */
  readonly passed: ReadonlySet<string>;
  /** When minutes were counted from before it, as a moment. */
  readonly begun: number | undefined;
}

/** What came of an entry: done, refused, or questioned. */
export type Outcome = { readonly told: string } | { readonly refused: string; readonly of: "reading" | "time" } | { readonly doubt: string };

/** Weighing into one run sheet after another: reads where the work stands, and puts each reading into the next box. */
export class WeighIn {
  private sheet = "";
  private cells: SheetCells | undefined;
  private readonly passed = new Map<string, ReadonlySet<string>>();
  private readonly begun = new Map<string, number>();
  private readonly history: Done[] = [];

  constructor(private readonly workbook: Workbook) {}

  /** Reads the sheet, in one request. @returns the next box; undefined where there is none, or no run sheet */
  async look(sheet: string): Promise<Step | undefined> {
    const { ranges } = await this.workbook.readInputs({ sheet, cell: "A1" }, [{ sheet, range: RUN_SHEET_AREA, spill: false }]);
    this.sheet = sheet;
    this.cells = sheetCells(sheet, ranges[0] ?? []);
    return this.next;
  }

  get isRunSheet(): boolean {
    return this.cells !== undefined;
  }

  get next(): Step | undefined {
    return this.cells && nextStep(this.cells, this.passedOn(this.sheet));
  }

  /** When the next round is due, as a moment. */
  due(now: Date): number | undefined {
    return this.cells && isOfSamples(this.cells) ? dueAt(this.cells, now, this.begun.get(this.sheet)) : undefined;
  }

  /** When the vessel that is cooling has been closed as long as is set, as a moment. */
  opening(now: Date): number | undefined {
    return this.cells && isOfSamples(this.cells) ? openedFrom(this.cells, now) : undefined;
  }

  /** What would stand beside a reading made now: "10:42", "34", or "" where only the person can tell. */
  stamp(now: Date): string {
    const step = this.next;
    if (this.cells === undefined || step === undefined) return "";
    if (step.kind === "clock") return isOfSamples(this.cells) ? clockText(stampOfFire(this.cells, step.at, now)) : "";
    const held = step.clock && this.cells.at(step.clock.row, step.clock.column);
    if (typeof held === "number") return timeText(this.cells, held);
    const stamp = step.clock && stampNow(this.cells, step.clock.row, now, this.begun.get(this.sheet));
    return stamp === undefined ? "" : timeText(this.cells, stamp);
  }

  /** Whether the next box is one beside which a time is to be put. */
  get asksForTime(): boolean {
    const clock = this.next?.clock;
    return clock !== undefined && this.cells?.at(clock.row, clock.column) === null;
  }

  /** What is asked for beside a reading. */
  get timed(): "clock" | "minutes" | "day" {
    if (this.cells !== undefined && !isOfSamples(this.cells)) return "day";
    return this.cells?.sheet.options.timing === "minutes" ? "minutes" : "clock";
  }

  /** What to mind beside the next box, where it is about a fire; "" elsewhere. */
  get caution(): string {
    return this.cells !== undefined && this.next?.isOfFire === true ? briefCaution[this.cells.sheet.options.kind] : "";
  }

  pass(): void {
    const step = this.next;
    if (step?.isOptional === true) this.leaveBlank([step.at]);
  }

  /** Leaves several boxes blank at once. */
  skip({ over }: Skip): void {
    this.leaveBlank(over);
  }

  private leaveBlank(boxes: readonly Cell[]): void {
    const step = this.next;
    if (step === undefined) return;
    this.remember(this.sheet, step, []);
    this.passed.set(this.sheet, new Set([...this.passedOn(this.sheet), ...boxes.map(placeOf)]));
  }

  private passedOn(sheet: string): ReadonlySet<string> {
    return this.passed.get(sheet) ?? new Set();
  }

  private remember(sheet: string, step: Step, cells: Done["cells"]): void {
    this.history.push({ sheet, step, cells, passed: this.passedOn(sheet), begun: this.begun.get(sheet) });
  }

  /**
   * Puts a reading into the next box, and its time beside it where that is blank.
   * @param time as typed; "" for now
   * @param allTheSame true where the person has read what the sheet doubts
   */
  async enter(typed: string, time: string, now: Date, allTheSame: boolean): Promise<Outcome> {
    const [cells, step, sheet] = [this.cells, this.next, this.sheet];
    if (cells === undefined || step === undefined) return { refused: weighInWords.done, of: "reading" };
    const isNow = step.kind === "clock" && typed.trim() === "" && isOfSamples(cells);
    const entry = isNow ? { content: stampOfFire(cells, step.at, now) } : readEntry(cells, step, typed, now);
    if ("refused" in entry) return { refused: entry.refused, of: "reading" };
    const stamp = this.stampBeside(cells, step, time, now);
    if (typeof stamp === "object") return { refused: stamp.refused, of: "time" };
    const wanted: Done["cells"] = [
      { at: step.at, content: entry.content },
      ...(stamp === undefined || step.clock === undefined ? [] : [{ at: step.clock, content: stamp }]),
    ];
    const doubt = allTheSame ? "" : doubtOf(cells, step, new Map<string, Plain>(wanted.map(({ at, content }) => [placeOf(at), content])));
    if (doubt !== "") return { doubt: weighInWords.doubted(doubt) };
    return { told: await this.put(sheet, step, wanted, now) };
  }

  private stampBeside(cells: SheetCells, { clock }: Step, time: string, now: Date): number | undefined | { readonly refused: string } {
    if (clock === undefined || cells.at(clock.row, clock.column) !== null) return undefined;
    const stamp = time.trim() === "" ? stampNow(cells, clock.row, now, this.begun.get(this.sheet)) : typedStamp(cells, time.trim(), now);
    // Only of a run in minutes the page cannot tell what is now.
    if (stamp === undefined) return { refused: weighInWords.noMinute };
    if (typeof stamp === "object") return stamp;
    const judged = readEntry(cells, { at: clock, kind: "reading", name: "" }, String(stamp), now);
    return "refused" in judged ? { refused: judged.refused } : stamp;
  }

  private async put(sheet: string, step: Step, wanted: Done["cells"], now: Date): Promise<string> {
    const done: { at: Cell; content: number | string }[] = [];
    let problem = "";
    for (const one of wanted) {
      try {
        await this.workbook.replaceValue({ sheet, cell: placeOf(one.at) }, null, one.content);
        done.push(one);
      } catch (thrown) {
        // Without the reading there is nothing to put a time beside.
        if (done.length === 0) throw thrown;
        problem = weighInWords.clockLeft((thrown as Error).message);
      }
    }
    this.remember(sheet, step, done);
    const stamp = done[1]?.content;
    if (typeof stamp === "number" && this.timed === "minutes") this.begun.set(sheet, begunAt(stamp, now));
    await this.look(sheet);
    return [this.cells === undefined ? "" : report(this.cells, step, done[0]?.content ?? ""), problem].filter((one) => one !== "").join(" ");
  }

  get canTakeBack(): boolean {
    return this.history.some(({ sheet }) => sheet === this.sheet);
  }

  /**
   * Undoes the last press on this sheet: takes out exactly what was put there, and only where it still stands, and asks again for boxes that
   * were left blank. @returns what was put, to be corrected, where its box is the next one again
   */
  async takeBack(): Promise<{ readonly told: string; readonly reading: string; readonly time: string }> {
    const last = this.history.filter(({ sheet }) => sheet === this.sheet).at(-1);
    if (last === undefined) return { told: "", reading: "", time: "" };
    const { sheet, step } = last;
    const [own, beside] = last.cells;
    const taken = (one: Done["cells"][number]): Promise<void> => this.workbook.replaceValue({ sheet, cell: placeOf(one.at) }, one.content, null);
    if (own !== undefined) await taken(own);
    // A time that was changed meanwhile stays for the reading to come.
    if (beside !== undefined) await taken(beside).catch(() => undefined);
    this.history.splice(this.history.indexOf(last), 1);
    this.passed.set(sheet, last.passed);
    if (last.begun === undefined) this.begun.delete(sheet);
    await this.look(sheet);
    const [name, cell] = [step.name, placeOf(step.at)];
    if (own === undefined) return { told: weighInWords.askedAgain(name, cell), reading: "", time: "" };
    // A box before it was emptied by hand: what was put belongs to its own box alone.
    if (this.next === undefined || placeOf(this.next.at) !== cell) return { told: weighInWords.takenOut(name, cell), reading: "", time: "" };
    return {
      told: weighInWords.takenBack(name, cell),
      reading: step.kind === "clock" && typeof own.content === "number" ? clockText(own.content) : String(own.content),
      time: this.asTyped(beside?.content),
    };
  }

  private asTyped(content: number | string | undefined): string {
    if (typeof content !== "number" || this.timed === "minutes") return String(content ?? "");
    return this.timed === "day" ? dayText(content) : clockText(content);
  }

  /** What is said where no box is next. */
  get rest(): string {
    const { at, sheet } = this.cells ?? {};
    const [next, checks] = [at?.(sheet?.rows.head.title ?? 0, NEXT), at?.(sheet?.rows.head.checks ?? 0, LABEL)];
    return typeof next === "string" && next !== "" ? nextAsTold(next, String(checks ?? "")) : weighInWords.done;
  }
}
