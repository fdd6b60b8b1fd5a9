import { answerOf, change, isFull, openDatabase } from "./database";

export type FileContent = Uint8Array<ArrayBuffer>;

const STORE = "files";

/**
 * The files whose sheets are open in windows, for as long as there is a copy of unsaved sheets. In a database of their own: each is written once,
 * the copy with every pause, and pages of an earlier version go on reading the copies.
 */
export class KeptFiles {
  /** What is known to be there of this window, or to have no room. */
  private own: { readonly content: FileContent | undefined; readonly isThere: boolean } = { content: undefined, isThere: false };

  private constructor(
    private readonly database: IDBDatabase,
    private readonly id: string,
  ) {}

  static async open(id: string): Promise<KeptFiles> {
    return new KeptFiles(await openDatabase("Retort local workbook files", STORE), id);
  }

  /** @returns false where the browser has no room for it */
  async keep(content: FileContent): Promise<boolean> {
    if (this.own.content === content) return this.own.isThere;
    try {
      await change(this.database, STORE, (store) => store.put({ id: this.id, content }));
      this.own = { content, isThere: true };
    } catch (problem) {
      if (!isFull(problem)) throw problem;
      await this.giveWay(content);
    }
    return this.own.isThere;
  }

  /** Makes room where the copy of the sheets, which matters more, has none. */
  async giveWay(content: FileContent): Promise<void> {
    await this.remove(this.id);
    this.own = { content, isThere: false };
  }

  async remove(id: string): Promise<void> {
    if (id === this.id) this.own = { content: undefined, isThere: false };
    await change(this.database, STORE, (store) => store.delete(id));
  }

  async of(id: string): Promise<FileContent | undefined> {
    const found = await answerOf(this.store().get(id) as IDBRequest<{ readonly content: FileContent } | undefined>);
    return found?.content;
  }

  /** Takes out what belongs to no copy any longer. */
  async clear(isInUse: (id: string) => boolean): Promise<void> {
    for (const id of await answerOf(this.store().getAllKeys())) if (!isInUse(String(id))) await this.remove(String(id));
  }

  private store(): IDBObjectStore {
    return this.database.transaction(STORE).objectStore(STORE);
  }
}
