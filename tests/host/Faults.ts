import { HostError } from "./HostError";

/** An answer that no code of Excel's explains: the promise is rejected with an error of another kind. */
export const OTHER_KIND = "another kind of error";

export interface Fault {
  /** A code of Excel's, or OTHER_KIND. */
  readonly code: string;
  /** How many requests that ask for something go well before it. */
  readonly after: number;
  /** True where the work is done and only the answer is lost; false where nothing is done. */
  readonly answerLost: boolean;
  /** True where every later request meets it too. */
  readonly forGood: boolean;
  /**
   * How many actions of the request are done before it, where it comes half-way; Excel takes none of them back. The answer then
   * tells what the actions before it found, unless it is lost.
   */
  readonly actionsDone?: number;
}

/** The faults that a test has the host make. */
export class Faults {
  private next: Fault | undefined;

  /** One fault to come, in the place of any other. */
  plan(fault: Fault): void {
    this.next = fault;
  }

  none(): void {
    this.next = undefined;
  }

  /** Called once for each request that asks for something. */
  take(): Fault | undefined {
    const fault = this.next;
    if (fault === undefined) return undefined;
    if (fault.after > 0) {
      this.next = { ...fault, after: fault.after - 1 };
      return undefined;
    }
    // A host that is gone does nothing of what it is asked from then on.
    this.next = fault.forGood ? { code: fault.code, after: 0, answerLost: false, forGood: true } : undefined;
    return fault;
  }
}

export const asHostError = ({ code }: Fault): HostError => new HostError(code, `made to fail with ${code}`);
