import { cellArea } from "../../src/workbook/cellArea";
import { answerBatch, type Batch, type BatchAnswer, type Roots, type Stop } from "./answerBatch";
import { BookState, type BookEvent } from "./BookState";
import { OfficeFile } from "./OfficeFile";
import { asHostError, Faults, OTHER_KIND } from "./Faults";
import { FunctionCalls } from "./FunctionCalls";
import { HostError, notFound, unmodelled } from "./HostError";
import { calculateEntered, recalculate, wouldChange, type Calculate } from "./recalculate";
import { workbookObject } from "./objects/workbookObject";

interface Request {
  readonly id: number;
  readonly type: number;
  readonly flags: number;
  readonly message: { readonly url: string; readonly body: Batch };
  readonly isTooLong?: boolean;
}

/** The client library's seam for a native host: it writes text to us and assigns the function that takes our answers. */
export interface Bridge {
  onMessageFromHost: ((text: string) => void) | null;
  sendMessageToHost(text: string): void;
}

const REQUEST = 1;
const ANSWER = 2;
const NOTICE = 3;
const OK = 200;
// Resource limits and performance optimization for Office Add-ins: Excel on the web, 5 MB for a request and for its answer.
const MOST_BYTES = 5_000_000;
const EVENT_CATEGORY = 65_536;
const EVENT_TYPE = { selected: 14, activated: 11, changed: 10, calculated: 16 } as const;
const WAIT_WHILE_CELL_IS_EDITED = 64;

/**
 * An Excel in memory that answers the real client library. It knows the members that Retort uses, refuses the rest, and
 * has the few knobs that tests turn; it does not calculate, a test says what a formula comes to.
 */
export class ExcelHost {
  book = new BookState();
  calculate: Calculate = (formula) => {
    throw new Error(`no test said what ${formula} comes to`);
  };
  /** Every request that came, newest last. */
  readonly requests: Batch[] = [];
  /** Bytes of the longest request and of the longest answer that was sent. */
  readonly longest = { request: 0, answer: 0 };
  /** Bytes that a request and an answer may hold, as on the web. */
  mostBytes = MOST_BYTES;
  readonly functions = new FunctionCalls((entry) => this.notify(entry));
  readonly bridge: Bridge = { onMessageFromHost: null, sendMessageToHost: (text) => this.hear(text) };
  private watched = new Set<BookEvent["kind"]>();
  readonly faults = new Faults();
  /** What Excel hands over as the workbook's file. */
  readonly file = new OfficeFile();
  /** What a person does just before a request reaches the workbook, told how many have asked for something so far. */
  meanwhile: (requestsBefore: number) => void = () => undefined;
  private acted = 0;
  private editing = false;
  private held: Request[] = [];
  private underWay = 0;

  /** A new workbook of one sheet, named "Sheet1". */
  newBook(): void {
    this.book = new BookState();
    this.watched = new Set();
    this.faults.none();
    this.meanwhile = () => undefined;
    this.acted = 0;
    this.requests.length = 0;
    Object.assign(this.longest, { request: 0, answer: 0 });
  }

  /** Counts requests from none again. @param meanwhile what a person does just before each */
  startCounting(meanwhile: (requestsBefore: number) => void): void {
    this.acted = 0;
    this.meanwhile = meanwhile;
  }

  /** As a person would: selects nothing, and a formula calculates at once. */
  type(sheet: string, cell: string, content: number | string | boolean | null): void {
    const area = cellArea(cell);
    if (area === undefined) throw new Error(`${cell} is no cell`);
    const state = this.book.sheet(sheet);
    state.write(area.row, area.column, content ?? "");
    this.book.events.push({ kind: "changed", sheet: state, range: cell });
    this.settleBook();
  }

  /** The next request that asks for something, or one so many after it, meets this error at its first action. */
  failNext(code: string, after = 0): void {
    this.faults.plan({ code, after, answerLost: false, forGood: false });
  }

  /** As when answers arrive late: formulas come to something else though nobody changed a cell. */
  calculateAgain(): void {
    this.settleBook();
  }

  /** As F9 does: whatever waits is calculated. */
  calculateNow(): void {
    this.book.calculation.waits = false;
    recalculate(this.book, this.calculate);
    this.book.calculation.state = "Done";
    this.settleBook();
  }

  /** Formulas keep the values they show, in this state, until calculateNow(). */
  keepCalculating(state: "Calculating" | "Pending" = "Calculating"): void {
    Object.assign(this.book.calculation, { waits: true, state });
  }

  /** As a workbook in manual mode: what is typed from now on leaves the other formulas as they are until calculateNow(). */
  calculateManually(): void {
    this.book.calculation.mode = "Manual";
  }

  startEditing(): void {
    this.editing = true;
  }

  stopEditing(): void {
    this.editing = false;
    this.held.splice(0).forEach((request) => this.receive(request));
  }

  /** Resolves when no request and no event is under way. */
  async quiet(): Promise<void> {
    do await new Promise((resolve) => setTimeout(resolve, 0));
    while (this.underWay > 0);
  }

  private hear(text: string): void {
    this.longest.request = Math.max(this.longest.request, bytesOf(text));
    this.receive({ ...(JSON.parse(text) as Request), isTooLong: bytesOf(text) > this.mostBytes });
  }

  private receive(request: Request): void {
    if (this.editing && request.flags & WAIT_WHILE_CELL_IS_EDITED) {
      this.held.push(request);
      return;
    }
    this.underWay++;
    soon(() => {
      this.underWay--;
      const answer = this.answerText(request);
      const tooLong = bytesOf(answer) > this.mostBytes;
      const body = tooLong ? JSON.stringify(refusal(new HostError("ResponsePayloadSizeLimitExceeded", "the answer"))) : answer;
      this.longest.answer = Math.max(this.longest.answer, bytesOf(body));
      this.send({ id: request.id, type: ANSWER, flags: 0, message: { statusCode: OK, headers: {}, body } });
      this.settleBook();
    });
  }

  /** A reader that expects JSON fails on what stands in for an error of another kind. */
  private answerText({ type, message, isTooLong }: Request): string {
    if (type !== REQUEST || message.url !== "ProcessQuery") throw unmodelled(`a request for ${message.url}`);
    this.requests.push(message.body);
    if (isTooLong === true) return JSON.stringify(refusal(new HostError("RequestPayloadSizeLimitExceeded", "the request")));
    if (this.editing) return JSON.stringify(refusal(new HostError("InvalidOperationInCellEditMode", "a cell is being edited")));
    const fault = this.asksForSomething(message.body) ? this.faults.take() : undefined;
    const stop = fault?.actionsDone === undefined ? undefined : { actionsDone: fault.actionsDone, error: asHostError(fault) };
    const nothingDone = fault !== undefined && !fault.answerLost && stop === undefined;
    const answer = nothingDone ? undefined : this.answer(message.body, stop);
    if (fault === undefined || (stop !== undefined && !fault.answerLost)) return JSON.stringify(answer);
    return fault.code === OTHER_KIND ? "no answer that can be read" : JSON.stringify(refusal(asHostError(fault)));
  }

  private answer(batch: Batch, stop?: Stop): BatchAnswer {
    const roots: Roots = {
      workbook: () => workbookObject(this.book, this.watched),
      service: (name) => {
        if (!name.endsWith("CustomFunctions")) throw unmodelled(`the service ${name}`);
        return this.functions.service();
      },
      reference: (id) => {
        const kept = this.book.references.get(id);
        if (kept === undefined) throw notFound(id);
        return kept;
      },
    };
    return answerBatch(batch, roots, stop);
  }

  /** Requests that only let go of ranges come when the library likes and are not counted. */
  private asksForSomething({ Actions }: Batch): boolean {
    if (Actions.some(({ Name }) => Name === "_RemoveReference")) return false;
    this.meanwhile(this.acted++);
    return true;
  }

  private settleBook(): void {
    const { book, calculate } = this;
    if (book.calculation.waits || book.calculation.mode === "Manual") {
      calculateEntered(book, calculate);
      if (book.calculation.state === "Done" && wouldChange(book, calculate)) book.calculation.state = "Pending";
    } else recalculate(book, calculate);
    for (const { kind, sheet, range } of this.book.events.splice(0)) {
      if (!this.watched.has(kind)) continue;
      const what = { worksheetId: sheet.id, address: range, changeType: "RangeEdited", source: "Local", triggerSource: "Unknown" };
      this.notify([EVENT_CATEGORY, EVENT_TYPE[kind], "Workbook", JSON.stringify(what), 1]);
    }
  }

  private notify(entry: readonly unknown[]): void {
    this.send({ type: NOTICE, controlId: "", message: { entries: [entry] } });
  }

  private send(message: unknown): void {
    this.bridge.onMessageFromHost?.(JSON.stringify(message));
  }
}

const encoder = new TextEncoder();
const bytesOf = (text: string): number => encoder.encode(text).length;

/** A page has only the slower of the two. */
const soon = (answer: () => void): unknown => (typeof setImmediate === "function" ? setImmediate(answer) : setTimeout(answer, 0));

const refusal = ({ code, message }: HostError): BatchAnswer => ({
  Error: { Code: code, Message: message, Location: "", HttpStatusCode: 400, ActionIndex: 0 },
  Results: [],
});
