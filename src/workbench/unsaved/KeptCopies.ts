import type { GridName } from "../../workbook/grid/writing/definedNames";
import type { GridSheet } from "../../workbook/grid/writing/GridSheet";

/** The sheets of one window that were not saved as a file. */
export interface KeptCopy {
  /** The window's own; no other window writes under it. */
  readonly id: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly sheets: readonly GridSheet[];
  readonly names: readonly GridName[];
  /** Cells whose formulas the grid cannot calculate and the copy does not have; left out by earlier versions. */
  readonly lacking?: readonly string[];
}

const STORE = "copies";
const VERSION = 1;

/** Copies in the browser's own database, which a page keeps for itself: nothing of it leaves the computer. */
export class KeptCopies {
  private constructor(
    private readonly database: IDBDatabase,
    /** This window's. */
    readonly id: string,
  ) {}

  /** Rejects where the browser keeps nothing, as in some private windows. */
  static async open(): Promise<KeptCopies> {
    // Several pages of one host share its databases.
    const request = indexedDB.open(`Retort local workbook ${new URL(".", location.href).pathname}`, VERSION);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE, { keyPath: "id" });
    const copies = new KeptCopies(await answerOf(request), crypto.getRandomValues(new Uint32Array(4)).join("-"));
    await copies.holdOwn();
    return copies;
  }

  async keep(copy: Omit<KeptCopy, "id">): Promise<void> {
    await this.change((store) => store.put({ ...copy, id: this.id }));
  }

  async remove(id: string): Promise<void> {
    await this.change((store) => store.delete(id));
  }

  /** Those whose windows are gone, the latest first. */
  async leftBehind(): Promise<KeptCopy[]> {
    const all = await answerOf(this.database.transaction(STORE).objectStore(STORE).getAll() as IDBRequest<KeptCopy[]>);
    const held = this.knowsOpenWindows ? (await navigator.locks.query()).held : undefined;
    const open = new Set(held?.map(({ name }) => name));
    return all.filter(({ id }) => id !== this.id && !open.has(lockOf(id))).sort((one, other) => other.at - one.at);
  }

  /** False where a page is not trusted with locks, as on a host without https: whose window is gone cannot be told there. */
  get knowsOpenWindows(): boolean {
    return (navigator as { readonly locks?: LockManager }).locks !== undefined;
  }

  /** Held for as long as the window lives, and let go of by the browser when it is closed, reloaded or has crashed. */
  private holdOwn(): Promise<void> {
    return new Promise((resolve) => {
      if (!this.knowsOpenWindows) return resolve();
      void navigator.locks.request(lockOf(this.id), () => {
        resolve();
        return new Promise(() => undefined);
      });
    });
  }

  private async change(what: (store: IDBObjectStore) => IDBRequest): Promise<void> {
    const transaction = this.database.transaction(STORE, "readwrite");
    const done = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      // Storage that is full shows itself only here.
      transaction.onabort = () => reject(transaction.error ?? new Error("the copy was not kept"));
    });
    what(transaction.objectStore(STORE));
    await done;
  }
}

const lockOf = (id: string): string => `Retort copy ${id}`;

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's database did not answer"));
  });
