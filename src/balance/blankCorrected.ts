import { blankAboveLoss, gainedBeyondScatter } from "../problems/functions/balanceProblems";

// A net loss stands on four weighings, each with the uncertainty u: 2 u in all, and twice that covers about 95 % (GUM, JCGM 100:2008,
// equation 10).
export const SCATTER = 4;
// A vessel may gain more oxide than the sample in it loses; ten times the change of both is another cell or another unit. Common
// practice, no source.
export const LARGEST_SHARE = 10;

/**
 * The loss of the sample alone, g, loss - blankLoss: its loss with the vessel less what the empty vessel lost in the same
 * programme, by the definition of a blank. A vessel that gained (oxide on metal) has a negative blank, which adds, and may make
 * vessel and sample together gain. Near zero the scatter of the weighings decides, so u lets a small gain pass.
 * @param loss, blankLoss g, weight before minus weight after
 * @param u standard uncertainty of one weighing, g
 * @throws InputProblem when the sample would have gained more than the weighings scatter, or the blank changed by more than the loss
 *   (ten times more, where both gained)
 */
export function blankCorrected(loss: number, blankLoss: number, u = 0): number {
  const net = loss - blankLoss;
  if (isWithinScatter(net, u)) return net;
  if (loss < 0 && net < 0) throw gainedBeyondScatter(loss, -net);
  const largest = loss < 0 ? LARGEST_SHARE * -loss : loss;
  if (Math.abs(blankLoss) > largest) throw blankAboveLoss(blankLoss, loss);
  return net;
}

/** True where a net loss, or a gain, is no more than its four weighings scatter. */
export const isWithinScatter = (net: number, u: number): boolean => u > 0 && Math.abs(net) <= SCATTER * u;
