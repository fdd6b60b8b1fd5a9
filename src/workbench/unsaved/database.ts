/** Opens one of the browser's own databases, with one store of records under their ids, which a page keeps for itself: nothing leaves the computer. */
export function openDatabase(name: string, store: string): Promise<IDBDatabase> {
  const request = indexedDB.open(`${name} ${new URL(".", location.href).pathname}`, VERSION);
  request.onupgradeneeded = () => request.result.createObjectStore(store, { keyPath: "id" });
  return answerOf(request);
}

const VERSION = 1;

/** Resolves when the change is written, and rejects where it is not, as when the storage is full. */
export async function change(database: IDBDatabase, name: string, what: (store: IDBObjectStore) => IDBRequest): Promise<void> {
  const transaction = database.transaction(name, "readwrite");
  const done = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    // Storage that is full shows itself only here.
    transaction.onabort = () => reject(transaction.error ?? new Error("the copy was not kept"));
  });
  what(transaction.objectStore(name));
  await done;
}

export const isFull = (problem: unknown): boolean => problem instanceof DOMException && problem.name === "QuotaExceededError";

export const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's database did not answer"));
  });
