import type { Formula } from "../chemistry/Formula";
import { molarMass } from "../chemistry/molarMass";
import { hydrateDots } from "../chemistry/notation/hydrates/hydrateDot";
import { parseFormula } from "../chemistry/parseFormula";
import { lossUncertainty } from "../confidence/lossUncertainty";
import { hydrateForAnhydrous } from "../problems/functions/decompositionProblems";
import { lighterThanVessel } from "../problems/functions/weighingProblems";
import { roundingSlack } from "../weighing/roundingSlack";
import { weighingsInOrder } from "../weighing/weighingsInOrder";
import { solid } from "./solidsOf";

/** The weighings of a hydrate, g; a vessel of 0 g was zeroed away. */
export interface HydrateWeighings {
  readonly vessel: number;
  readonly before: number;
  readonly after: number;
  /** Standard uncertainty of one weighing, g, if known. */
  readonly u: number | undefined;
}

/** The water of a hydrate. */
export interface HydrateWater {
  readonly anhydrous: Formula;
  /** g/mol */
  readonly anhydrousMass: number;
  /** g/mol */
  readonly waterMass: number;
  /** Water lost, share of the hydrate. */
  readonly loss: number;
  readonly lossUncertainty: number | undefined;
  /** Water per formula of the anhydrous salt. */
  readonly n: number;
  readonly uncertainty: number | undefined;
}

/**
 * Water of crystallisation from a loss on heating: n = w / (1 - w) M(anhydrous) / M(water), with u(n) = n / (w (1 - w)) u(w), where w is the
 * loss (before - after) / (before - vessel) and u(w) that of LOSSFRACTION.U. Follows from the definition. The atomic weights add less than
 * 4 parts in 100,000 of n and are not counted in u(n).
 * @param anhydrousText the salt without its water
 * @throws InputProblem for a formula that holds its water, and for weighings out of order
 * @throws NoAnswer when u is more than a tenth of the sample
 */
export function hydrateWater({ vessel, before, after, u }: HydrateWeighings, anhydrousText: string): HydrateWater {
  weighingsInOrder({ vessel, before, after });
  if (after - vessel <= roundingSlack) throw lighterThanVessel(["after", after], ["vessel", vessel]);
  const anhydrous = anhydrousSalt(anhydrousText);
  const [anhydrousMass, waterMass] = [molarMass(anhydrous, "anhydrous"), molarMass(parseFormula("H2O"))];
  const loss = (before - after) / (before - vessel);
  const ratio = anhydrousMass / waterMass;
  const spread = u === undefined ? undefined : lossUncertainty(vessel, before, after, u);
  const uLoss = spread === undefined ? undefined : vessel === 0 ? spread.separateTaring : spread.commonTare;
  return {
    anhydrous,
    anhydrousMass,
    waterMass,
    loss,
    lossUncertainty: uLoss,
    n: (loss / (1 - loss)) * ratio,
    uncertainty: uLoss === undefined ? undefined : (ratio / (1 - loss) ** 2) * uLoss,
  };
}

/** The salt without its water. @throws InputProblem for a formula that holds it, and for one that does not read */
export function anhydrousSalt(text: string): Formula {
  const anhydrous = solid(text, "anhydrous");
  if (holdsWater(text)) throw hydrateForAnhydrous(text);
  return anhydrous;
}

const WATER = ["H2O", "H₂O"];
// A times sign of bottle labels stands for the dot: CuSO4 x 5H2O.
const MARKS = `${hydrateDots}x×X✕⨯([`;
const COUNTED = /^[^A-Za-z]*/;

/** True where water follows a hydrate dot, a times sign or a bracket, with nothing but its count between. */
function holdsWater(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    if (!MARKS.includes(text.charAt(at))) continue;
    const behind = text.slice(at + 1);
    const counted = COUNTED.exec(behind)?.[0].length ?? 0;
    if (WATER.some((water) => behind.startsWith(water, counted))) return true;
  }
  return false;
}
