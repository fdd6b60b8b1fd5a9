/** Density of air at which weights are adjusted, kg/m3 (OIML D 28). */
export const USUAL_AIR = 1.2;
/** Density that weights are taken to have, kg/m3 (OIML D 28). */
export const USUAL_REFERENCE = 8000;

/**
 * The mass of a body from its reading in air, g: reading (1 - air / reference) / (1 - air / density). OIML D 28. A balance
 * shows what weights of the reference density would weigh in the same air, so body and weights are both freed of their lift.
 * @param reading g
 * @param density of the body itself, not of a heap of it, kg/m3; above that of the air
 * @param air, reference kg/m3
 */
export const buoyancy = (reading: number, density: number, air = USUAL_AIR, reference = USUAL_REFERENCE): number =>
  (reading * (1 - air / reference)) / (1 - air / density);
