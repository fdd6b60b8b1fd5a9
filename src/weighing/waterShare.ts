// CIAAW 2021, abridged standard atomic weights.
const HYDROGEN = 1.008;
const OXYGEN = 15.999;
const WATER = 2 * HYDROGEN + OXYGEN;

/** The mass fraction of water that is this element: 0.1119 hydrogen (ASTM D3180), 0.8881 oxygen, 0 for all else. */
export const waterShare = (quantity: string): number =>
  quantity === "hydrogen" ? (2 * HYDROGEN) / WATER : quantity === "oxygen" ? OXYGEN / WATER : 0;
