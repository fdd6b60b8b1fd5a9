import type { FallingRateFit } from "./fallingRateFit";

/** The sample on the fitted curve at some minutes, g. */
export const curveAt = ({ final, water, rate, from }: FallingRateFit, minutes: number): number => final + water * Math.exp(-rate * (minutes - from));
