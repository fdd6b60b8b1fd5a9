import { isotopicMasses } from "../isotopicMasses";
import { onFirstUse } from "../onFirstUse";

// Nuclides that tracer studies and sources use and whose masses are not in the table. Source: radiochemistry texts, from memory.
const IN_USE =
  "18F 22Na 24Na 33P 36Cl 38Cl 42K 45Ca 47Ca 46Sc 51Cr 54Mn 55Fe 59Fe 57Co 58Co 60Co 63Ni 64Cu 67Cu 65Zn 67Ga 68Ga 75Se 82Br 85Kr 86Rb " +
  "85Sr 89Sr 90Sr 90Y 99Mo 111In 123I 124I 125I 131I 133Xe 134Cs 137Cs 133Ba 140La 177Lu 192Ir 198Au 201Tl 203Hg 210Pb 210Po 226Ra 232Th " +
  "233U 234U 236U 239Pu 241Am";
const tracers = onFirstUse((): ReadonlySet<string> => new Set(IN_USE.split(" ")));

/** The symbol a nuclide goes by, "D" and "T" for those of hydrogen; undefined where its mass is not in the table. */
export function nuclideSymbol(massNumber: string, element: string): string | undefined {
  const symbol = `${massNumber}${element}`;
  const known = { "2H": "D", "3H": "T" }[symbol] ?? symbol;
  return isotopicMasses.has(known) ? known : undefined;
}

export const isNuclide = (massNumber: string, element: string): boolean => nuclideSymbol(massNumber, element) !== undefined;

/** True for a nuclide in use whose mass the table does not hold. */
export const isTracer = (massNumber: string, element: string): boolean => tracers().has(massNumber + element);

const massNumbers = onFirstUse((): ReadonlyMap<string, readonly number[]> => {
  const ofElements = new Map<string, number[]>();
  for (const nuclide of [...isotopicMasses.keys(), ...tracers()]) {
    const [, digits, element] = /^(\d+)(\D+)$/.exec(nuclide) ?? [];
    if (digits !== undefined && element !== undefined) ofElements.set(element, [Number(digits), ...(ofElements.get(element) ?? [])]);
  }
  // The longest first: of 235 the 235 before the 35.
  ofElements.forEach((numbers) => numbers.sort((a, b) => b - a));
  return ofElements;
});

const NONE: readonly number[] = [];

/** The mass numbers of an element's nuclides that are in the table or in use, largest first. */
export const massNumbersOf = (element: string): readonly number[] => massNumbers().get(element) ?? NONE;
