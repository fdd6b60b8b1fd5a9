/**
 * A weighing less the balance's zero halfway between the readings before and after it, as a cell formula without "=". A
 * zero of 0 g is a reading; where one of the two is blank the weighing stands as read. Empty until weighed.
 */
export const driftCorrected = (weighing: string, before: string, after: string): string =>
  `IF(COUNT(${weighing})=0,"",IF(COUNT(${before},${after})<2,${weighing},${weighing}-(${before}+${after})/2))`;
