/** Takes an option that may be given more than once. */
export const severalNames = (name: string, before: readonly string[]): readonly string[] => [...before, name];
