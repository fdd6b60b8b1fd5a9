import { isotopicMasses } from "../isotopicMasses";
import { onFirstUse } from "../onFirstUse";

// Nuclides that tracer studies and sources use, and the stable ones of metals and their like that are sold enriched, for spectroscopy and
// dating, whose masses are not in the table. Source: radiochemistry texts and tables of isotopic composition, from memory.
const IN_USE =
  "18F 22Na 24Na 33P 36Cl 38Cl 42K 45Ca 47Ca 46Sc 51Cr 54Mn 55Fe 59Fe 57Co 58Co 60Co 63Ni 64Cu 67Cu 65Zn 67Ga 68Ga 75Se 82Br 85Kr 86Rb " +
  "85Sr 89Sr 90Sr 90Y 99Mo 111In 123I 124I 125I 131I 133Xe 134Cs 137Cs 133Ba 140La 177Lu 192Ir 198Au 201Tl 203Hg 210Pb 210Po 226Ra 232Th " +
  "233U 234U 236U 239Pu 241Am " +
  "42Ca 43Ca 46Ca 48Ca 46Ti 47Ti 48Ti 49Ti 50Ti 50Cr 52Cr 53Cr 54Cr 58Ni 60Ni 61Ni 62Ni 64Ni 64Zn 66Zn 67Zn 68Zn 70Zn 69Ga 71Ga 70Ge 72Ge " +
  "73Ge 74Ge 76Ge 74Se 76Se 77Se 78Se 80Se 82Se 85Rb 87Rb 84Sr 86Sr 87Sr 88Sr 90Zr 91Zr 92Zr 94Zr 96Zr 92Mo 94Mo 95Mo 96Mo 97Mo 98Mo 100Mo " +
  "107Ag 109Ag 106Cd 110Cd 111Cd 112Cd 113Cd 114Cd 116Cd 113In 115In 112Sn 116Sn 117Sn 118Sn 119Sn 120Sn 122Sn 124Sn 121Sb 123Sb 122Te 123Te " +
  "124Te 125Te 126Te 128Te 130Te 124Xe 129Xe 131Xe 136Xe 130Ba 134Ba 135Ba 136Ba 137Ba 138Ba 142Nd 143Nd 144Nd 146Nd 148Nd 150Nd 151Eu 153Eu " +
  "155Gd 157Gd 158Gd 160Gd 171Yb 174Yb 176Yb 180W 182W 183W 184W 186W 185Re 187Re 187Os 188Os 191Ir 193Ir 194Pt 195Pt 196Pt 198Pt 198Hg 199Hg " +
  "200Hg 201Hg 202Hg 204Hg 203Tl 205Tl 204Pb 206Pb 207Pb 208Pb";
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
