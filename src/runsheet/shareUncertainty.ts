import type { Share } from "./quantities";
import type { SampleCells } from "./sampleCells";

/**
 * The call that gives a share's standard uncertainty. Each share is a loss fraction or a function of one alone: char yield
 * and ash are 1 less a loss; without ash the ash weighing stands in for the empty vessel, which cancels; on the dry basis
 * U = w / (1 - w), so u(U) = u(w) (1 + U)^2.
 * @param value cell of the share itself
 * @param u cell of the standard uncertainty of one weighing, g
 */
export const shareUncertainty = (share: Share, cells: SampleCells, value: string, u: string): string => FORMULAS[share](cells, value, u);

const lossUncertainty = (vessel: string, before: string, after: string, u: string): string =>
  `RETORT.LOSSFRACTION.U(${vessel},${before},${after},${u})`;

const ofChar = (cells: SampleCells, _: string, u: string): string => lossUncertainty(cells.vessel, cells.dry, cells.heating("char"), u);

const FORMULAS: Readonly<Record<Share, (cells: SampleCells, value: string, u: string) => string>> = {
  moistureWet: ({ vessel, moist, dry }, _, u) => lossUncertainty(vessel, moist, dry, u),
  moistureDry: ({ vessel, moist, dry }, value, u) => `${lossUncertainty(vessel, moist, dry, u)}*(1+${value})^2`,
  volatile: ofChar,
  charYield: ofChar,
  charYieldAshFree: (cells, _, u) => lossUncertainty(cells.heating("ash"), cells.dry, cells.heating("char"), u),
  ash: (cells, _, u) => lossUncertainty(cells.vessel, cells.dry, cells.heating("ash"), u),
};
