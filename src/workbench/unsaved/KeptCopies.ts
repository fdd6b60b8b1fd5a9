import type { GridName } from "../../workbook/grid/writing/definedNames";
import type { GridSheet } from "../../workbook/grid/writing/GridSheet";
import type { FileOrigins } from "../xlsx/inPlace/OpenedFile";
import { answerOf, change, isFull, openDatabase } from "./database";
import { KeptFiles, type FileContent } from "./KeptFiles";

/** The file that sheets come from. */
export interface FileOfCopy {
  readonly name: string;
  readonly origins: FileOrigins;
  /** What of it the sheets alone lack, each in words. */
  readonly lacks: readonly string[];
}

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
  /** Left out where they come from none. `isKept` where the file itself is there, too. */
  readonly file?: FileOfCopy & { readonly isKept: boolean };
}

const STORE = "copies";

/** Copies in the browser's own database. */
export class KeptCopies {
  private constructor(
    private readonly database: IDBDatabase,
    private readonly files: KeptFiles,
    /** This window's. */
    readonly id: string,
  ) {}

  /** Rejects where the browser keeps nothing, as in some private windows. */
  static async open(): Promise<KeptCopies> {
    const id = crypto.getRandomValues(new Uint32Array(4)).join("-");
    const copies = new KeptCopies(await openDatabase("Retort local workbook", STORE), await KeptFiles.open(id), id);
    await copies.holdOwn();
    return copies;
  }

  /** @returns false where there was no room for the file that the sheets come from */
  async keep(copy: Omit<KeptCopy, "id" | "file">, from?: FileOfCopy & { readonly content: FileContent }): Promise<boolean> {
    if (from === undefined) {
      await this.files.remove(this.id);
      await this.put(copy);
      return true;
    }
    const { content, ...file } = from;
    const isKept = await this.files.keep(content);
    try {
      await this.put({ ...copy, file: { ...file, isKept } });
      return isKept;
    } catch (problem) {
      if (!isKept || !isFull(problem)) throw problem;
      await this.files.giveWay(content);
      await this.put({ ...copy, file: { ...file, isKept: false } });
      return false;
    }
  }

  async remove(id: string): Promise<void> {
    await change(this.database, STORE, (store) => store.delete(id));
    await this.files.remove(id);
  }

  /** Those whose windows are gone, the latest first. */
  async leftBehind(): Promise<KeptCopy[]> {
    const all = await answerOf(this.database.transaction(STORE).objectStore(STORE).getAll() as IDBRequest<KeptCopy[]>);
    const held = this.knowsOpenWindows ? (await navigator.locks.query()).held : undefined;
    const open = new Set(held?.map(({ name }) => name));
    const isOpen = (id: string): boolean => id === this.id || open.has(lockOf(id));
    if (held !== undefined) await this.files.clear((id) => isOpen(id) || all.some((copy) => copy.id === id));
    return all.filter(({ id }) => !isOpen(id)).sort((one, other) => other.at - one.at);
  }

  /** The file that a copy comes from; undefined where it was not kept. */
  async fileOf({ id, file }: KeptCopy): Promise<FileContent | undefined> {
    return file?.isKept === true ? this.files.of(id) : undefined;
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

  private put(copy: Omit<KeptCopy, "id">): Promise<void> {
    return change(this.database, STORE, (store) => store.put({ ...copy, id: this.id }));
  }
}

const lockOf = (id: string): string => `Retort copy ${id}`;
