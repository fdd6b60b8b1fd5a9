/**
 * The smallest change that a balance can be asked to decide, in display steps. Two readings are each off by up to half
 * a step, so one step of change can be rounding alone; ASTM D4442 method A takes twice the sensitivity.
 */
export const fewestSteps = 2;
