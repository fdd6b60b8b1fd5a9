import { noSuchElement } from "../problems/functions/compoundProblems";
import { elementNames } from "./elementNames";
import { isotopicMasses } from "./isotopicMasses";
import { onFirstUse } from "./onFirstUse";

// Spellings of American and older British books.
const SPELLINGS: readonly (readonly [name: string, symbol: string])[] = [
  ["aluminum", "Al"],
  ["cesium", "Cs"],
  ["sulphur", "S"],
  ["deuterium", "D"],
  ["2h", "D"],
  ["hydrogen-2", "D"],
  ["tritium", "T"],
  ["3h", "T"],
  ["hydrogen-3", "T"],
];

const symbols = onFirstUse(() => new Map([...[...elementNames()].map(([symbol, name]): [string, string] => [name, symbol]), ...SPELLINGS]));
const isotopes = onFirstUse(() => new Set(isotopicMasses.keys()));

/**
 * The symbol of an element or of an isotope ("13C", "D") from its symbol or its English name in any case.
 * @throws InputProblem under "symbol" for anything else; the case of a symbol is not mended, because Co and CO differ by it
 */
export function elementNamed(text: string): string {
  const typed = text.trim();
  const bare = typed.startsWith("[") && typed.endsWith("]") ? typed.slice(1, -1).trim() : typed;
  if (elementNames().has(bare) || isotopes().has(bare)) return bare;
  const known = symbols().get(bare.toLowerCase()) ?? isotopeNamed(bare);
  if (known !== undefined) return known;
  throw noSuchElement(
    text,
    [...elementNames().keys()].find((symbol) => symbol.toLowerCase() === bare.toLowerCase()),
  );
}

/** `C-13` or `carbon-13` as the symbol of the isotope. */
function isotopeNamed(text: string): string | undefined {
  const [element = "", mass = "", ...more] = text.split("-");
  if (more.length > 0) return undefined;
  const symbol = elementNames().has(element) ? element : symbols().get(element.toLowerCase());
  return symbol !== undefined && isotopes().has(`${mass}${symbol}`) ? `${mass}${symbol}` : undefined;
}
