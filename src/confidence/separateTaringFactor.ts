/**
 * Standard uncertainty of a loss fraction w, times sample mass over the uncertainty of a reading, when each net mass was
 * zeroed for itself: both carry two readings and share none, sqrt(2) sqrt(1 + (1-w)^2). Never below commonTareFactor.
 */
export const separateTaringFactor = (loss: number): number => Math.sqrt(2 * (1 + (1 - loss) ** 2));
