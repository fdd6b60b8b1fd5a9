import { isMetal } from "../../isMetal";
import { onFirstUse } from "../../onFirstUse";
import { usualStates } from "../../usualStates";
import type { AtomsInText } from "../Reading";

// Ions of more than one atom by the size of their charge. Source: tables of common ions in general chemistry texts, from memory.
const POSITIVE: Readonly<Record<number, string>> = {
  1: "NH4 H3O H5O2 NO NO2 VO2 NbO2 SbO BiO PH4 N2H5 CH6N C2H8N C3H10N C4H12N Ag(NH3)2 Cu(NH3)2 Al(OH)2 Fe(OH)2 FeCl2 CrCl2 AlF2 H3S",
  2: "Hg2 VO TiO UO2 ZrO PuO2 MoO2 FeOH AlOH AlF FeCl FeSCN Cu(NH3)4 Zn(NH3)4 Cd(NH3)4 Ni(NH3)6 Co(NH3)6 Cu(H2O)4 Cu(H2O)6 Fe(H2O)6 Co(H2O)6 Ni(H2O)6 Mn(H2O)6 Zn(H2O)6",
  3: "Co(NH3)6 Cr(NH3)6 Fe(H2O)6 Al(H2O)6 Cr(H2O)6 Ti(H2O)6",
};
const NEGATIVE: Readonly<Record<number, string>> = {
  1: "OH CN SCN OCN NCO NO2 NO3 N3 NH2 HCO3 HSO3 HSO4 HS HO2 O2 O3 ClO ClO2 ClO3 ClO4 BrO BrO3 BrO4 IO IO3 IO4 I3 Br3 ICl2 IBr2 MnO4 ReO4 TcO4 H2PO4 H2PO3 H2PO2 PO3 H2AsO4 AsO2 BO2 BF4 BH4 B(OH)4 PF6 AsF6 SbF6 AlH4 AlO2 AlCl4 Al(OH)4 FeCl4 AuCl4 Au(CN)2 Ag(CN)2 AgCl2 CuCl2 HF2 VO3 NbO3 TaO3 CHO2 HCO2 C2H3O2 CH3CO2 C3H5O3 C3H5O2 C7H5O2 C6H5CO2 C2HO4 HC2O4 HC8H4O4 C8H5O4 HS2O3 SO3F SO3NH2 CF3SO3 CF3CO2 HCrO4 HSeO3 HSeO4 HSiO3 CrO3Cl FeO2",
  2: "O2 S2 S3 S4 S5 CO3 SO3 SO4 S2O3 S2O4 S2O5 S2O6 S2O7 S2O8 S4O6 HPO4 HPO3 PO3F C2O4 CrO4 Cr2O7 MnO4 MoO4 WO4 SeO3 SeO4 TeO3 TeO4 SiO3 SnO3 TiO3 ZrO3 PbO3 ZnO2 SiF6 TiF6 GeF6 ZrF6 SnCl6 PtCl4 PtCl6 PdCl4 CuCl4 CoCl4 ZnCl4 HgI4 HgCl4 MnF6 Zn(OH)4 Sn(OH)6 Cu(OH)4 Ni(CN)4 Zn(CN)4 Cd(CN)4 Hg(CN)4 Pt(CN)4 B4O7 C2 FeO4 HAsO4 C8H4O4 C4H4O6 C4H4O4 C4H2O4 C3H2O4 C6H6O7 HVO4 CS3 Co(SCN)4",
  3: "PO4 PO3 AsO4 AsO3 BO3 VO4 SbO4 SbS4 AlF6 FeF6 CoF6 Fe(CN)6 Co(CN)6 Cr(CN)6 Mn(CN)6 Co(NO2)6 Fe(C2O4)3 Al(OH)6 Cr(OH)6 C6H5O7 Cu(CN)4 IrCl6 RhCl6 P3O9",
  4: "SiO4 P2O7 Fe(CN)6 GeO4 TiO4 SnO4 XeO6 As2O7 V2O7 Mo(CN)8 W(CN)8 P4O12 C10H12N2O8",
  5: "P3O10 IO6 AlO4",
  6: "TeO6 Si2O7 Mo7O24 P6O18 V10O28",
};

/** One key for all ways of writing the same atoms: symbols in alphabetical order, each with its count. */
const keyOf = (atoms: ReadonlyMap<string, number>): string =>
  [...atoms]
    .map(([symbol, count]) => symbol + String(count))
    .sort()
    .join(" ");

const PARTS = /\(([^()]*)\)(\d*)|([A-Z][a-z]?)(\d*)/g;
// For one of them: without /g it keeps no place from one text to the next.
const PART = new RegExp(PARTS.source);

function atomsOf(ion: string): ReadonlyMap<string, number> {
  const atoms = new Map<string, number>();
  for (const part of ion.match(PARTS) ?? []) {
    const [, group, groups, symbol, count] = PART.exec(part) as RegExpExecArray;
    if (symbol !== undefined) atoms.set(symbol, (atoms.get(symbol) ?? 0) + Number(count === "" ? 1 : count));
    else if (group !== undefined)
      for (const [inner, number] of atomsOf(group)) atoms.set(inner, (atoms.get(inner) ?? 0) + number * Number(groups === "" ? 1 : groups));
  }
  return atoms;
}

const known = onFirstUse(
  () =>
    new Set(
      [
        [1, POSITIVE],
        [-1, NEGATIVE],
      ].flatMap(([sign, list]) =>
        Object.entries(list as Readonly<Record<number, string>>).flatMap(([size, ions]) =>
          ions.split(" ").map((ion) => `${keyOf(atomsOf(ion))} ${Number(sign) * Number(size)}`),
        ),
      ),
    ),
);

// Single nonmetal atoms; halide ions carry one charge, and two or three of their atoms none.
const ANIONS: Readonly<Record<string, number>> = { H: -1, F: -1, Cl: -1, Br: -1, I: -1, O: -2, S: -2, Se: -2, Te: -2, N: -3, P: -3, As: -3, C: -4 };

/** True for an ion that chemistry knows: a single atom with a usual charge, or one of the common ions of more atoms. */
export function isKnownIon(atoms: ReadonlyMap<string, number>, charge: number): boolean {
  const [only] = atoms;
  if (atoms.size === 1 && only?.[1] === 1) {
    const [symbol] = only;
    if (symbol === "H" && charge === 1) return true;
    return isMetal(symbol) ? (usualStates(symbol)?.includes(charge) ?? false) : ANIONS[symbol] === charge;
  }
  return known().has(`${keyOf(atoms)} ${charge}`);
}

/**
 * The atoms read so far with those from `first` on, and a last one still to be added, times a count.
 * @param last the symbol that the count stands behind; undefined behind a bracket
 */
export function withCount(read: AtomsInText, first: number, last: string | undefined, count: number): ReadonlyMap<string, number> {
  const atoms = new Map<string, number>();
  const add = (symbol: string, number: number): unknown => atoms.set(symbol, (atoms.get(symbol) ?? 0) + number);
  for (let index = 0; index < read.length; index++) {
    const factor = last === undefined && index >= first ? count : 1;
    add(read.symbol[index] as string, (read.count[index] as number) * factor);
  }
  if (last !== undefined) add(last, count);
  return atoms;
}
