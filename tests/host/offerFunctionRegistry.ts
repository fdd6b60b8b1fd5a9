/** The registry of custom functions, which office.js makes before it loads the Excel client library. */
export function offerFunctionRegistry(global: Record<string, unknown>): void {
  const listeners: (() => void)[] = [];
  const registry = {
    mappings: {} as Record<string, unknown>,
    associate(id: string | Record<string, unknown>, call?: unknown): void {
      const added = typeof id === "string" ? { [id]: call } : id;
      for (const [name, one] of Object.entries(added)) registry.mappings[name.toUpperCase()] = one;
      listeners.forEach((changed) => changed());
    },
    onchange: (listener: () => void) => void listeners.push(listener),
  };
  global.CustomFunctionMappings = {};
  global.CustomFunctions = { _association: registry, associate: registry.associate };
}
