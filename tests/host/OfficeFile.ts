/** Where asking for the workbook's file goes wrong, and how. */
export interface FileFault {
  readonly at: "getFileAsync" | "getSliceAsync" | "closeAsync";
  /** "silent": the callback never comes. "short": a slice lacks its last byte. */
  readonly how: "failed" | "throws" | "silent" | "short";
  /** Which slice; left out: the first. */
  readonly slice?: number;
}

// "Office.Document.getFileAsync": larger slices end in "Internal Error", and so does a third document in memory ("Office.File.closeAsync").
const LARGEST_SLICE = 4_194_304;
const MOST_OPEN = 2;

interface Result {
  readonly status: "succeeded" | "failed";
  readonly value?: unknown;
  readonly error?: { readonly code: number; readonly message: string };
}
type Answered = (result: Result) => void;

const succeeded = (value?: unknown): Result => ({ status: "succeeded", value });
const failed = (code: number, message: string): Result => ({ status: "failed", error: { code, message } });
const INTERNAL = failed(5001, "An internal error has occurred.");

/** The workbook as the file that Excel would save, handed over in slices. */
export class OfficeFile {
  /** What Excel hands over; undefined on a platform that hands nothing over. */
  content: Uint8Array | undefined;
  /** The contents of the next files, where each is another one: as a file that follows what is typed some moments later. */
  readonly next: Uint8Array[] = [];
  fault: FileFault | undefined;
  /** Files handed over and not closed. */
  open = 0;
  readonly asked: string[] = [];

  readonly document = {
    getFileAsync: (type: string, { sliceSize }: { sliceSize: number }, answered: Answered): void => {
      this.asked.push("getFileAsync");
      const content = this.next.shift() ?? this.content;
      this.meet("getFileAsync", 0, answered, () => {
        if (type !== "compressed" || content === undefined) return failed(11001, "A network problem has prevented retrieval of the file.");
        if (sliceSize > LARGEST_SLICE || this.open >= MOST_OPEN) return INTERNAL;
        this.open++;
        return succeeded(this.handed(content, sliceSize));
      });
    },
  };

  private handed(content: Uint8Array, sliceSize: number): object {
    let isOpen = true;
    return {
      size: content.length,
      sliceCount: Math.ceil(content.length / sliceSize),
      getSliceAsync: (index: number, answered: Answered): void => {
        this.asked.push(`getSliceAsync ${index}`);
        this.meet("getSliceAsync", index, answered, () => {
          if (!isOpen) return INTERNAL;
          const end = Math.min(content.length, (index + 1) * sliceSize) - (this.fault?.how === "short" ? 1 : 0);
          return succeeded({ index, size: end - index * sliceSize, data: [...content.subarray(index * sliceSize, end)] });
        });
      },
      closeAsync: (answered: Answered): void => {
        this.asked.push("closeAsync");
        this.meet("closeAsync", 0, answered, () => {
          if (isOpen) this.open--;
          isOpen = false;
          return succeeded();
        });
      },
    };
  }

  private meet(at: FileFault["at"], slice: number, answered: Answered, work: () => Result): void {
    const fault = this.fault?.at === at && (this.fault.slice ?? 0) === slice ? this.fault : undefined;
    if (fault?.how === "throws") throw new Error("The document is gone.");
    if (fault?.how === "silent") return;
    setTimeout(() => answered(fault?.how === "failed" ? INTERNAL : work()), 0);
  }
}
