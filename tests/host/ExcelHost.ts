import { cellArea } from "../../src/workbook/cellArea";
import { answerBatch, type Batch, type BatchAnswer } from "./answerBatch";
import { BookState, type BookEvent } from "./BookState";
import { FunctionCalls } from "./FunctionCalls";
import { HostError, notFound, unmodelled } from "./HostError";
import { recalculate, type Calculate } from "./recalculate";
import { workbookObject } from "./workbookObject";

interface Request {
  readonly id: number;
  readonly type: number;
  readonly flags: number;
  readonly message: { readonly url: string; readonly body: Batch };
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
  /** Characters of the longest request and the longest answer. */
  readonly longest = { request: 0, answer: 0 };
  readonly functions = new FunctionCalls((entry) => this.notify(entry));
  readonly bridge: Bridge = { onMessageFromHost: null, sendMessageToHost: (text) => this.hear(text) };
  private watched = new Set<BookEvent["kind"]>();
  private failures: (HostError | undefined)[] = [];
  private editing = false;
  private held: Request[] = [];
  private underWay = 0;

  /** A new workbook of one sheet, named "Sheet1". */
  newBook(): void {
    this.book = new BookState();
    this.watched = new Set();
    this.failures = [];
    this.requests.length = 0;
    Object.assign(this.longest, { request: 0, answer: 0 });
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
    this.failures = [...new Array<undefined>(after).fill(undefined), new HostError(code, `made to fail with ${code}`)];
  }

  /** As when answers arrive late: formulas come to something else though nobody changed a cell. */
  calculateAgain(): void {
    this.settleBook();
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
    this.longest.request = Math.max(this.longest.request, text.length);
    this.receive(JSON.parse(text) as Request);
  }

  private receive(request: Request): void {
    if (this.editing && request.flags & WAIT_WHILE_CELL_IS_EDITED) {
      this.held.push(request);
      return;
    }
    this.underWay++;
    setTimeout(() => {
      this.underWay--;
      const body = JSON.stringify(this.answer(request));
      this.longest.answer = Math.max(this.longest.answer, body.length);
      this.send({ id: request.id, type: ANSWER, flags: 0, message: { statusCode: OK, headers: {}, body } });
      this.settleBook();
    }, 0);
  }

  private answer({ type, message }: Request): BatchAnswer {
    if (type !== REQUEST || message.url !== "ProcessQuery") throw unmodelled(`a request for ${message.url}`);
    this.requests.push(message.body);
    const failure = this.editing ? new HostError("InvalidOperationInCellEditMode", "a cell is being edited") : this.failureFor(message.body);
    if (failure) {
      return { Error: { Code: failure.code, Message: failure.message, Location: "", HttpStatusCode: 400, ActionIndex: 0 }, Results: [] };
    }
    return answerBatch(message.body, {
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
    });
  }

  /** Requests that only let go of ranges come when the library likes and are not counted. */
  private failureFor({ Actions }: Batch): HostError | undefined {
    const letsGo = Actions.some(({ Name }) => Name === "_RemoveReference");
    return letsGo ? undefined : this.failures.shift();
  }

  private settleBook(): void {
    recalculate(this.book, this.calculate);
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
