import { lossesAlike, lossOutsideBoth } from "../problems/functions/decompositionProblems";
import { decompose, type Decomposition } from "./decompose";

// Losses that agree in six decimals tell nothing that a balance could weigh.
const ALIKE = 1e-6;
/** Binary rounding of a share. */
export const SLACK = 1e-9;
/** How many standard uncertainties a loss may lie outside both; about 95 %. */
export const COVERAGE = 2;

/** From here on a loss tells two substances apart well: below, an error of the loss is more than 6 times as large in the share. */
export const WELL_APART = 0.15;

/** Two substances that lose mass, and what is heated and left of each. */
export interface Mixture {
  readonly loss: number;
  readonly start1: string;
  readonly residue1: string;
  readonly start2: string;
  readonly residue2: string;
  /** Standard uncertainty of the loss. */
  readonly u: number | undefined;
}

/** The share of the first of two substances, by mass. */
export interface MixtureShare {
  readonly loss1: number;
  readonly loss2: number;
  readonly share: number;
  readonly uncertainty: number | undefined;
}

/**
 * Share of the first of two substances from the loss of their mixture: x = (loss - w2) / (w1 - w2), u(x) = u(loss) / |w1 - w2|, with w1 and w2
 * their theoretical losses. Follows from the definition; the nearer w1 and w2, the less a loss tells.
 * @throws InputProblem when both lose the same, when the loss lies outside what either loses by more than 2 u, and as decompose
 */
export function mixtureFromLoss({ loss, start1, residue1, start2, residue2, u }: Mixture): MixtureShare {
  const { loss1, loss2 } = decompositionsOf({ start1, residue1, start2, residue2 });
  const apart = loss1 - loss2;
  const [least, most] = [Math.min(loss1, loss2), Math.max(loss1, loss2)];
  const allowed = COVERAGE * (u ?? 0) + SLACK;
  if (loss < least - allowed || loss > most + allowed) throw lossOutsideBoth(loss, least, most);
  return { loss1, loss2, share: (loss - loss2) / apart, uncertainty: u === undefined ? undefined : u / Math.abs(apart) };
}

/** The two decompositions and their theoretical losses. @throws InputProblem for formulas that do not read or balance, and for losses that are alike */
export function decompositionsOf({ start1, residue1, start2, residue2 }: Omit<Mixture, "loss" | "u">): {
  readonly first: Decomposition;
  readonly second: Decomposition;
  readonly loss1: number;
  readonly loss2: number;
} {
  const first = decompose(start1, residue1, undefined, { start: "start1", residue: "residue1" });
  const second = decompose(start2, residue2, undefined, { start: "start2", residue: "residue2" });
  if (Math.abs(first.loss - second.loss) < ALIKE) throw lossesAlike(start1, start2, first.loss);
  return { first, second, loss1: first.loss, loss2: second.loss };
}
