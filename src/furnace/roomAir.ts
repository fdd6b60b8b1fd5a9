import { closedWithoutEnd, roomFull } from "../problems/functions/furnaceProblems";

/** Litres of one mole of gas at 25 degC and 101 325 Pa, where exposure limits in ppm and mg/m3 are converted: R T / p. */
export const MOLAR_VOLUME = 24.4654;
const LITRES_PER_M3 = 1000;
const MINUTES_PER_HOUR = 60;
export const PPM = 1e6;
/** ppm that one litre makes in a cubic metre. */
export const PPM_OF_LITRES = PPM / LITRES_PER_M3;
const TENTH = 10;

/** A gas let into a room at an even rate. */
export interface GasSource {
  readonly gramsPerHour: number;
  readonly molarMass: number;
  /** m3 */
  readonly volume: number;
  /** per hour; 0 where the room is closed */
  readonly airChanges: number;
}

export interface RoomAir {
  /** The mean in the room when nothing changes any more, ppm; undefined where it never stops rising or would be more than the room holds. */
  readonly steady: number | undefined;
  /** After the minutes asked for, from clean air, ppm. */
  readonly after: number | undefined;
  /** For the larger of both, mg/m3. */
  readonly milligrams: number;
  /** Minutes until a tenth is left once the source has ended; undefined in a closed room. */
  readonly tenth: number | undefined;
}

/** @throws InputProblem where the gas would take more room than there is: figures that cannot be */
function notFull(ppm: number): number {
  if (ppm > PPM) throw roomFull(ppm);
  return ppm;
}

/** ppm that one gram adds to a closed room. */
export const ppmOfGram = ({ molarMass, volume }: GasSource): number => ((1 / molarMass) * MOLAR_VOLUME * PPM) / (volume * LITRES_PER_M3);

/**
 * The mean of a gas in room air: steady m' / (n V), and m' / (n V) (1 - e^(-n t)) after t; in a closed room m' t / V. A room that is mixed
 * at once: beside the source, along the ceiling and in corners there is more, so the figure is the least to reckon with.
 * @param minutes since the source began
 * @throws InputProblem for a closed room without minutes, and for more gas than the room holds
 */
export function roomAir(source: GasSource, minutes: number | undefined): RoomAir {
  const { gramsPerHour, airChanges } = source;
  const perHour = gramsPerHour * ppmOfGram(source);
  const hours = minutes === undefined ? undefined : minutes / MINUTES_PER_HOUR;
  if (airChanges === 0) {
    if (hours === undefined) throw closedWithoutEnd();
    const after = notFull(perHour * hours);
    return { steady: undefined, after, milligrams: milligramsOf(after, source), tenth: undefined };
  }
  const steady = hours === undefined ? notFull(perHour / airChanges) : perHour / airChanges;
  const after = hours === undefined ? undefined : notFull(-steady * Math.expm1(-airChanges * hours));
  const reached = steady > PPM ? undefined : steady;
  return {
    steady: reached,
    after,
    milligrams: milligramsOf(reached ?? after ?? 0, source),
    tenth: (MINUTES_PER_HOUR * Math.log(TENTH)) / airChanges,
  };
}

/** mg/m3 from ppm at 25 degC and 101 325 Pa. */
export const milligramsOf = (ppm: number, { molarMass }: Pick<GasSource, "molarMass">): number => (ppm * molarMass) / MOLAR_VOLUME;
