import { elementOf } from "../chemistry/elementOf";
import type { Formula } from "../chemistry/Formula";
import type { Decomposition } from "./decompose";
import { SAME_COUNT } from "./residueCounts";

const HALOGENS = ["F", "Cl", "Br", "I"];
const WITH_A_GAS = ["C", "H", "O", "S", "N"];

/** Gases of a decomposition [mol for one formula of the start], and what their oxygen comes to. */
export interface OxygenBalance {
  /** Full gases and whatever else leaves, in order; none that are 0. */
  readonly gases: readonly (readonly [formula: string, moles: number])[];
  /** Atoms of each element that leaves, isotopes counted as their element. */
  readonly gone: Readonly<Record<"C" | "H" | "O" | "S" | "X", number>>;
  /** Oxygen in the oxides that were named as leaving. */
  readonly inNamed: number;
  /** Oxygen atoms beyond what the leaving gases need; below 0 it is taken up, unless poorer gases leave. */
  readonly oxygen: number;
}

/**
 * Oxygen that leaves beyond what the leaving carbon, hydrogen and sulfur need as CO2, H2O and SO2:
 * dO - 2 dC - (dH - dX) / 2 - 2 dS, atoms for one formula of the start; halogens (X) leave as HX and take hydrogen with them, nitrogen leaves
 * as N2, and an oxide that was named as leaving takes its own oxygen along. 0: nothing is taken up. Below 0: oxygen is taken from the air, or a poorer gas such as CO leaves. Above 0: O2 leaves, or a richer
 * gas such as SO3 or NO2. Source: conservation of oxygen.
 */
export function oxygenBalance({ gone: atoms, leaves }: Decomposition): OxygenBalance {
  const goneOf = (...elements: readonly string[]): number =>
    [...atoms].reduce((sum, [symbol, count]) => sum + (elements.includes(elementOf(symbol)) ? count : 0), 0);
  const gone = { C: goneOf("C"), H: goneOf("H"), O: goneOf("O"), S: goneOf("S"), X: goneOf(...HALOGENS) };
  const asWater = Math.max(0, gone.H - gone.X) / 2;
  const others = [...atoms]
    .filter(([symbol]) => ![...WITH_A_GAS, ...HALOGENS].includes(elementOf(symbol)))
    .map(([symbol, count]) => named(symbol, count, leaves));
  const inNamed = others.reduce((sum, { oxygen }) => sum + oxygen, 0);
  const exact = gone.O - 2 * gone.C - asWater - 2 * gone.S - inNamed;
  const oxygen = Math.abs(exact) < SAME_COUNT ? 0 : exact;
  const halogens = HALOGENS.flatMap((halogen): [string, number][] => {
    const count = goneOf(halogen);
    const share = gone.X === 0 ? 0 : Math.min(1, gone.H / gone.X);
    return [
      [`H${halogen}`, count * share],
      [`${halogen}2`, (count * (1 - share)) / 2],
    ];
  });
  const gases: [string, number][] = [
    ["CO2", gone.C],
    ["H2O", asWater],
    ["SO2", gone.S],
    ["N2", goneOf("N") / 2],
    ...halogens,
    ...others.map(({ gas, moles }): [string, number] => [gas, moles]),
  ];
  return { gases: gases.filter(([, moles]) => moles > SAME_COUNT), gone, inNamed, oxygen };
}

/** An element that leaves only where it was named: as its named oxide, else by itself. */
function named(symbol: string, count: number, leaves: readonly Formula[]): { gas: string; moles: number; oxygen: number } {
  const oxide = leaves.find(({ atoms }) => atoms.has(symbol) && [...atoms.keys()].every((other) => other === symbol || other === "O"));
  if (oxide === undefined) return { gas: symbol, moles: count, oxygen: 0 };
  const moles = count / (oxide.atoms.get(symbol) as number);
  return { gas: oxide.text.trim(), moles, oxygen: moles * (oxide.atoms.get("O") ?? 0) };
}
