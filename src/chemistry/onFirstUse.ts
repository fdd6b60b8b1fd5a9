/** A table that is made when it is first asked for: a host loads functions.js into every workbook, and few need every table. */
export function onFirstUse<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => (made ??= make());
}
