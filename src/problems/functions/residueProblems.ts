import { InputProblem } from "../InputProblem";
import { plainNumber, quoted } from "../quoted";

// Four figures say how large a share is; more would crowd the sentence.
const SHARE_FIGURES = 4;
const share = (value: number): string => plainNumber(value, SHARE_FIGURES);

export const moistureAboveLoss = (moisture: number, loss: number): InputProblem =>
  new InputProblem(
    "moisture",
    `${plainNumber(moisture)} is more than the whole loss on heating, ${share(loss)}`,
    "Take both from one sample; moisture on the wet basis.",
  );

export const ashAndMoistureAboveOne = (ash: number, moisture: number): InputProblem =>
  new InputProblem(
    "moisture",
    `${plainNumber(moisture)} and an ash of ${share(ash)} come to more than the sample`,
    "Give the moisture of the sample as weighed, or leave it out.",
  );

export const sharesAboveOne = (moisture: number, volatile: number, ash: number): InputProblem =>
  new InputProblem(
    "volatile",
    `moisture ${share(moisture)}, volatile ${share(volatile)} and ash ${share(ash)} come to more than 1`,
    "Check the bases, and moisture counted twice.",
  );

export const neededForBasis = (argument: string, basis: string, advice: string): InputProblem =>
  new InputProblem(argument, `left out, blank or 0, but the basis ${quoted(basis)} needs it`, advice);

export const noAshFreeAsh = (): InputProblem =>
  new InputProblem("quantity", `ash has no value on the basis "ash-free", which leaves it out`, `Use "dry" for ash.`);

export const moistureDoesNotConvert = (from: string, to: string): InputProblem =>
  new InputProblem(
    "quantity",
    `moisture does not go from ${quoted(from)} to ${quoted(to)}: its own loss changes the basis`,
    "For wet and dry use MOISTURE.CONVERT.",
  );

export const lessThanWaterHolds = (value: number, quantity: string, inWater: number): InputProblem =>
  new InputProblem(
    "value",
    `${plainNumber(value)} is less ${quantity} than the moisture alone holds, ${share(inWater)}`,
    "If it leaves that water out, leave quantity out.",
  );

export const wholeOrMore = (value: number, result: number, to: string): InputProblem =>
  new InputProblem(
    "value",
    `${plainNumber(value)} would be ${share(result)} on the basis ${quoted(to)}, and no share is 1 or more`,
    "Check value, bases, moisture and ash.",
  );
