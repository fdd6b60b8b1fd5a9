/**
 * Standard uncertainty of a loss fraction w, times sample mass over the uncertainty of a reading, when one empty-vessel
 * weighing serves both loads: sqrt((1-w)^2 + 1 + w^2). The partial derivatives of (m1 - m2) / (m1 - m0), GUM
 * (JCGM 100:2008) equation 10: (1-w)/m for m1, -1/m for m2, w/m for m0. Between sqrt(1.5) and sqrt(2).
 */
export const commonTareFactor = (loss: number): number => Math.sqrt((1 - loss) ** 2 + 1 + loss ** 2);
