import { readingTooCoarse } from "../problems/functions/confidenceProblems";
import { charAboveDryFeed, productsAboveFeed } from "../problems/functions/liquidProblems";
import { roundingSlack } from "../weighing/roundingSlack";

// The same share from which LOSSFRACTION.U calls a weighing too coarse for its sample.
export const LARGEST_SHARE = 0.1;
/** How many standard uncertainties a sum may stray before it is called wrong; about 95 %. */
export const COVERAGE = 2;

/** What went into a retort, g; gas, u and the water content of the liquids (a fraction) where they are known. */
export interface LedgerEntries {
  readonly feed: number;
  /** Water in the feed as weighed, fraction of it. */
  readonly moisture: number;
  readonly char: number;
  readonly liquids: number;
  readonly gas: number | undefined;
  /** Standard uncertainty of each of the masses, g. */
  readonly u: number | undefined;
  readonly liquidsWater: number | undefined;
}

/** The ledger of one run, masses in g. */
export interface ProductLedger {
  readonly dryFeed: number;
  readonly feedWater: number;
  /** Liquids less the water that the feed brought: what was made of dry matter. */
  readonly madeLiquids: number;
  readonly waterInLiquids: number | undefined;
  /** Water in the liquids beyond what the feed brought; below 0 where less was caught than that. */
  readonly waterFormed: number | undefined;
  readonly gas: number;
  readonly isGasMeasured: boolean;
  readonly products: number;
  readonly unaccounted: number;
  /** How many masses stand in the sum; each carries u. */
  readonly weighed: number;
  /** Standard uncertainty of what is unaccounted, or of the gas where it is the difference. */
  readonly uncertainty: number | undefined;
}

/**
 * What became of a feed: dry feed = feed (1 - moisture), feed water = feed x moisture, water formed = liquids x their water - feed water,
 * unaccounted = feed - char - liquids - gas. Conservation of mass. Yields are on dry feed, so the liquids are given less the feed's own water
 * as well. Where the gas is not measured it is the difference, holds every leak, and nothing is left unaccounted by construction.
 * Uncertainty: u sqrt(n) for n weighed masses, GUM (JCGM 100:2008) equation 10; liquids of 0 were not weighed.
 * @throws InputProblem when the products weigh more than the feed, or the char more than the dry feed, by more than twice the uncertainty
 * @throws NoAnswer when u is more than a tenth of the feed
 */
export function productLedger({ feed, moisture, char, liquids, gas, u, liquidsWater }: LedgerEntries): ProductLedger {
  if (u !== undefined && u > LARGEST_SHARE * feed) throw readingTooCoarse(u, feed);
  const feedWater = feed * moisture;
  const dryFeed = feed - feedWater;
  const weighed = 2 + (liquids > 0 ? 1 : 0) + (gas === undefined ? 0 : 1);
  const uncertainty = u === undefined ? undefined : u * Math.sqrt(weighed);
  const caught = char + liquids + (gas ?? 0);
  if (caught - feed > COVERAGE * (uncertainty ?? 0) + roundingSlack) throw productsAboveFeed(caught, feed, uncertainty);
  if (char - dryFeed > COVERAGE * (u ?? 0) * Math.SQRT2 + roundingSlack) throw charAboveDryFeed(char, dryFeed);
  const rest = feed - caught;
  const waterInLiquids = liquidsWater === undefined ? undefined : liquids * liquidsWater;
  return {
    dryFeed,
    feedWater,
    madeLiquids: liquids - feedWater,
    waterInLiquids,
    waterFormed: waterInLiquids === undefined ? undefined : waterInLiquids - feedWater,
    gas: gas ?? rest,
    isGasMeasured: gas !== undefined,
    products: gas === undefined ? feed : caught,
    unaccounted: gas === undefined ? 0 : rest,
    weighed,
    uncertainty,
  };
}
