import {
  calibrationOrder,
  correctionTooLarge,
  fixedPointInKelvin,
  onePoint,
  outsideCalibration,
  pointsDiffer,
} from "../problems/functions/furnaceProblems";

/** What a thermometer showed, and what was there. */
export interface CalibrationPoint {
  readonly reading: number;
  readonly reference: number;
}

// A thermocouple of class 2 may be off by 3.4 degC at 450 degC (IEC 60584-1); a tenth of that comes from a wrong cell or unit if larger.
// Common practice, no source.
export const MOST_OFF = 50;

// Fixed points of ITS-90 in kelvin (Preston-Thomas, Metrologia 27 (1990) 3), and ice and steam at 1 atm: whoever gives one gives kelvin.
const IN_KELVIN: readonly (readonly [kelvin: number, celsius: number, what: string])[] = [
  [273.15, 0, "ice"],
  [273.16, 0.01, "the triple point of water"],
  [302.9146, 29.7646, "gallium"],
  [429.7485, 156.5985, "indium"],
  [505.078, 231.928, "tin"],
  [692.677, 419.527, "zinc"],
  [933.473, 660.323, "aluminium"],
  [1234.93, 961.78, "silver"],
  [1337.33, 1064.18, "gold"],
  [1357.77, 1084.62, "copper"],
];
// As copied, not as read: a hundredth beside is a reading in degrees Celsius.
const AS_PRINTED = 0.0015;

/** @throws InputProblem for a fixed point in kelvin */
function refuseKelvin(references: readonly number[]): void {
  references.forEach((reference, index) => {
    const point = IN_KELVIN.find(([kelvin]) => Math.abs(reference - kelvin) < AS_PRINTED);
    if (point !== undefined) throw fixedPointInKelvin(index + 1, reference, point[1], point[2]);
  });
}

/** The pairs in order of the readings; 0 beside 0 at the end is what blank rows look like. @throws InputProblem for pairs that cannot be */
function inOrder(readings: readonly number[], references: readonly number[]): readonly CalibrationPoint[] {
  const longer = Math.max(readings.length, references.length);
  const pairs = Array.from({ length: longer }, (_, index) => ({ reading: readings[index] ?? 0, reference: references[index] ?? 0 }));
  while (pairs.length > 1 && pairs[pairs.length - 1]?.reading === 0 && pairs[pairs.length - 1]?.reference === 0) pairs.pop();
  if (pairs.length > Math.min(readings.length, references.length)) throw pointsDiffer(readings.length, references.length);
  if (pairs.length < 2) throw onePoint();
  refuseKelvin(references);
  pairs.forEach(({ reading, reference }, index) => {
    if (Math.abs(reading - reference) > MOST_OFF) throw correctionTooLarge(index + 1, reading, reference, MOST_OFF);
  });
  const sorted = pairs.sort((a, b) => a.reading - b.reading);
  sorted.slice(1).forEach(({ reading, reference }, index) => {
    const below = sorted[index] as CalibrationPoint;
    if (reading === below.reading || reference <= below.reference) throw calibrationOrder(below.reading, reading);
  });
  return sorted;
}

/** The two points between which a reading lies, or whose one it is. */
export type Span = readonly [below: CalibrationPoint, above: CalibrationPoint];

/** @throws InputProblem where the reading lies outside the points */
export function spanOf(reading: number, readings: readonly number[], references: readonly number[]): Span {
  const points = inOrder(readings, references);
  const index = points.findIndex((point) => point.reading >= reading);
  const [first, last] = [points[0] as CalibrationPoint, points[points.length - 1] as CalibrationPoint];
  if (index < 0 || reading < first.reading) throw outsideCalibration(reading, first.reading, last.reading);
  const above = Math.max(index, 1);
  return [points[above - 1] as CalibrationPoint, points[above] as CalibrationPoint];
}

/**
 * A reading put right by a straight line between the two calibration points around it. Straight pieces invent no bend between points; a
 * polynomial would, and beyond the outer points nothing is known, so nothing is answered.
 * @param reading degC, and the points' readings and references, degC
 * @throws InputProblem outside the points, for fewer than two, and for pairs that cannot be
 */
export function temperatureCorrected(reading: number, readings: readonly number[], references: readonly number[]): number {
  const [below, above] = spanOf(reading, readings, references);
  return below.reference + ((reading - below.reading) * (above.reference - below.reference)) / (above.reading - below.reading);
}
