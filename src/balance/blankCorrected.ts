import { blankAboveLoss } from "../problems/balanceProblems";

/**
 * The loss of the sample alone, g, loss - blankLoss: its loss with the vessel less what the empty vessel lost in the same
 * programme, by the definition of a blank. A vessel that gained (oxide on metal) has a negative blank, which adds.
 * @param loss, blankLoss g, weight before minus weight after
 * @throws InputProblem when the blank changed by more than the loss
 */
export function blankCorrected(loss: number, blankLoss: number): number {
  if (Math.abs(blankLoss) > loss) throw blankAboveLoss(blankLoss, loss);
  return loss - blankLoss;
}
