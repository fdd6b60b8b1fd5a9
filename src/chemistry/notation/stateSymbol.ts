const STATES = ["(s)", "(l)", "(g)", "(aq)"];
const SMALL_A = 0x61;

/** The state symbol that stands at an index, in exactly one of its four forms; undefined where none does. */
export function stateSymbol(text: string, at: number): string | undefined {
  // Most brackets hold a capital first, and need no search.
  if (text.charAt(at) !== "(" || !(text.charCodeAt(at + 1) >= SMALL_A)) return undefined;
  return STATES.find((state) => text.startsWith(state, at));
}
