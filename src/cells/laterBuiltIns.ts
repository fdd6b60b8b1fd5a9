// What functions.js calls of editions after ECMAScript 2016, for an engine that lacks it, each as its specification (ECMA-262) has it for the
// lists, plain records and strings of this program. A package of such parts brings ten times the bytes in machinery of its own.

function add(owner: object, name: string, value: (...given: never[]) => unknown): void {
  if (!Reflect.has(owner, name)) Object.defineProperty(owner, name, { value, writable: true, configurable: true });
}

add(Array.prototype, "at", function (this: readonly unknown[], index: number): unknown {
  return this[index < 0 ? this.length + index : index];
});

add(
  Array.prototype,
  "flatMap",
  function (this: readonly unknown[], made: (value: unknown, index: number, all: readonly unknown[]) => unknown): unknown[] {
    const flat: unknown[] = [];
    this.forEach((value, index) => {
      const one = made(value, index, this);
      if (Array.isArray(one)) one.forEach((part) => flat.push(part));
      else flat.push(one);
    });
    return flat;
  },
);

add(Object, "entries", (of: Readonly<Record<string, unknown>>) => Object.keys(of).map((name) => [name, of[name]]));

add(Object, "fromEntries", (entries: Iterable<readonly [PropertyKey, unknown]>) => {
  const made = {};
  for (const [name, value] of entries) Object.defineProperty(made, name, { value, writable: true, configurable: true, enumerable: true });
  return made;
});

// A letter at the other end keeps the spaces there: unlike a pattern, trim takes the same time for any text.
add(String.prototype, "trimStart", function (this: string): string {
  return `${this}x`.trim().slice(0, -1);
});

add(String.prototype, "trimEnd", function (this: string): string {
  return `x${this}`.trim().slice(1);
});
