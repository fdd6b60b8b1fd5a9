import { sampleGrew, weighingNotAboveVessel } from "../problems/constancyProblems";
import { roundingSlack } from "./roundingSlack";
import { withoutRounding } from "./withoutRounding";

// A dried sample that meets room air takes up some per cent (char 6 to 8 %, Lin et al.; wood about 12 %, common
// practice, no source), but a series starts moist: a tenth above the first weighing is a wrong cell or another vessel.
const LARGEST_GAIN = 0.1;

/**
 * The sample alone at each weighing, g, cleared of binary rounding.
 * @param weights g, with the vessel
 * @param vessel g, 0 when the weighings are net
 * @throws InputProblem naming the row that is not above the vessel, or a tenth of the sample above row 1
 */
export function netSamples(weights: readonly number[], vessel: number): number[] {
  const samples = weights.map((grams, index) => {
    if (grams - vessel <= roundingSlack) throw weighingNotAboveVessel(index + 1, grams, vessel);
    return withoutRounding(grams - vessel);
  });
  const first = samples[0] ?? 0;
  const grown = samples.findIndex((sample) => sample > (1 + LARGEST_GAIN) * first + roundingSlack);
  if (grown !== -1) throw sampleGrew(grown + 1, weights[grown] as number, weights[0] as number);
  return samples;
}
